"""Entries of the register of Model Local Rules in words, for the command line and the generated page."""

from collections.abc import Iterator
from datetime import date

from marram.rules.local_rules.local_rule import EDITIONS_OF_2019_AND_2023, LocalRule
from marram.words.messages import listed, say

AREA_TITLES: dict[str, str] = {
    "A": "A: boundaries",
    "B": "B: penalty areas",
    "C": "C: bunkers",
    "D": "D: putting greens",
    "E": "E: special relief",
    "F": "F: abnormal course conditions",
    "G": "G: equipment",
    "H": "H: caddies and help",
    "I": "I: practice",
    "J": "J: bad weather",
    "K": "K: pace of play",
    "L": "L: scorecards",
    "M": "M: players with disabilities",
}
"""The areas of the Model Local Rules (Committee Procedures, Section 8), in our own words."""


def changes_words(entry: LocalRule) -> str:
    """Return what a Local Rule changes: ``"Rules 17.1 and 18.3; Definition of out of bounds"``."""
    numbers = [one for one in entry.modifies if one[0].isdigit()]
    defined = [one.removeprefix("Definitions: ") for one in entry.modifies if one.startswith("Definitions: ")]
    codes = [one for one in entry.modifies if one[1:2] == "-"]
    others = [one for one in entry.modifies if one not in (*numbers, *codes) and not one.startswith("Def")]
    parts = [
        _named("Rule", "Rules", numbers),
        _named("Definition of", "Definitions of", defined),
        _named("Local Rule", "Local Rules", codes),
        listed(others, "and"),
    ]
    return "; ".join(part for part in parts if part)


def state_words(entry: LocalRule) -> str:
    """Return how far marram goes: worked out, a definition that the questions ask for, or not worked out."""
    if entry.computed:
        return "worked out"
    return "sets a definition" if entry.defines else "not worked out"


def time_words(entry: LocalRule) -> str:
    """Return when it can be adopted, where that is not in both editions; empty if it is."""
    if entry.since is not None:
        from_day = f"from {_day(entry.since)}"
        return f"2019 list only, {from_day}" if entry.editions == (2019,) else from_day
    if entry.editions == EDITIONS_OF_2019_AND_2023:
        return ""
    return "2019 list only" if entry.editions == (2019,) else "since 2023"


def note_words(entry: LocalRule) -> Iterator[str]:
    """Yield what to know before adopting it, a sentence or two each."""
    if entry.discouraged:
        yield entry.discouraged
    if entry.not_with:
        because = f": {entry.why_not_with}" if entry.why_not_with else ""
        only = "" if entry.not_with_in == EDITIONS_OF_2019_AND_2023 else " in the list of 2019"
        yield f"Not together with {listed(entry.not_with)}{only}{because}."
    if entry.reason:
        yield entry.reason
    if entry.remark:
        yield entry.remark


def statement(entry: LocalRule) -> str:
    """Return what the Local Rule says, where it is worked out under its own code; else an empty string."""
    return say("PROVISIONS", entry.citation) if entry.computed and not entry.citation[0].isdigit() else ""


def _named(one: str, several: str, names: list[str]) -> str:
    if not names:
        return ""
    return f"{one if len(names) == 1 else several} {listed(names, 'and')}"


def _day(day: date) -> str:
    return f"{day.day} {day:%B %Y}"
