"""Entries of the register of Model Local Rules in words, for the command line and the generated page."""

from collections.abc import Iterator, Sequence

from marram.rules.local_rules.local_rule import EDITIONS_OF_2019_AND_2023, LocalRule
from marram.words.language import translate
from marram.words.messages import listed, say
from marram.words.texts import count_text, day_words, text


def area_title(code: str) -> str:
    """Return the heading of the area a code belongs to (Committee Procedures, Section 8), in our own words."""
    return text(f"local_rules.area.{code[0]}")


def changes_words(entry: LocalRule) -> str:
    """Return what a Local Rule changes: ``"Rules 17.1 and 18.3; Definition of out of bounds"``."""
    parts = [
        _named("rules", entry.modifies),
        _named("definitions", [translate()(one) for one in entry.definitions]),
        _named("codes", entry.beside),
        translate()(entry.subject) if entry.subject else "",
    ]
    return "; ".join(part for part in parts if part)


def state_words(entry: LocalRule) -> str:
    """Return how far marram goes: worked out, a definition that the questions ask for, or not worked out."""
    if entry.computed:
        return text("local_rules.computed")
    return text("local_rules.defines" if entry.defines else "local_rules.not_computed")


def time_words(entry: LocalRule) -> str:
    """Return when it can be adopted, where that is not in both editions; empty if it is."""
    if entry.since is not None:
        from_day = text("local_rules.from_day", day=day_words(entry.since))
        only = entry.editions == (2019,)
        return text("local_rules.only_2019_from", from_day=from_day) if only else from_day
    if entry.editions == EDITIONS_OF_2019_AND_2023:
        return ""
    return text("local_rules.only_2019" if entry.editions == (2019,) else "local_rules.since_2023")


def note_words(entry: LocalRule) -> Iterator[str]:
    """Yield what to know before adopting it, a sentence or two each."""
    if entry.discouraged:
        yield translate()(entry.discouraged)
    if entry.not_with:
        always = entry.not_with_in == EDITIONS_OF_2019_AND_2023
        key = "local_rules.not_with" if always else "local_rules.not_with_2019"
        because = (
            text("local_rules.because", why=translate()(entry.why_not_with)) if entry.why_not_with else ""
        )
        yield text(key, codes=listed(entry.not_with), because=because)
    if entry.reason:
        yield translate()(entry.reason)
    if entry.remark:
        yield translate()(entry.remark)


def statement(entry: LocalRule) -> str:
    """Return what the Local Rule says, where it is worked out under its own code; else an empty string."""
    return say("PROVISIONS", entry.citation) if entry.computed and not entry.citation[0].isdigit() else ""


def _named(key: str, names: Sequence[str]) -> str:
    return count_text(f"local_rules.{key}", len(names), names=listed(names, "and")) if names else ""
