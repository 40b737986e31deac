"""Whether Local Rules can be adopted: known, in the list on that day, and not against each other."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from marram.errors import did_you_mean, shown
from marram.rules.editions import EDITION_2019, edition_of
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.local_rule import LocalRule
from marram.rules.local_rules.register import REGISTER
from marram.said import Said, all_of, joined, said, sentences


@dataclass(frozen=True, slots=True)
class Adopted:
    """The Local Rules that a Committee has adopted.

    Attributes:
        codes: every code of the register that is meant, in the order given.
        in_rulings: those of them that can change a ruling; the others only say what or where something is.
        faults: why they cannot be adopted so; each says what, and what to do about it.
    """

    codes: tuple[str, ...]
    in_rulings: tuple[str, ...]
    faults: tuple[str, ...]


def adopt(given: Sequence[str], played_on: date | None = None) -> Adopted:
    """Return what is meant by codes as a Committee writes them, with every fault.

    Args:
        given: codes of the list, in any case; a numbered form ("B-2.1") stands for its entry ("B-2").
        played_on: the day of play, which decides the list; ``None`` where it is not known. An edition given
            without a day is its last, as then clarified.
    """
    entries: list[LocalRule] = []
    faults: list[str] = []
    for code in given:
        entry = entry_named(code)
        if entry is None:
            faults.append(_not_in_the_list(code))
        elif entry not in entries:
            entries.append(entry)
            faults.extend(_not_to_be_adopted(entry, played_on))
    faults.extend(_against_each_other(entries, played_on))
    codes = tuple(entry.code for entry in entries)
    return Adopted(codes, tuple(code for code in codes if code in LOCAL_RULES), tuple(faults))


def _not_in_the_list(code: str) -> str:
    near = did_you_mean(code.strip().upper(), REGISTER)
    return sentences(
        said("there is no Local Rule {code} in the list.", code=shown(code)),
        near,
        said("'marram local-rules' shows it."),
    )


def entry_named(code: str) -> LocalRule | None:
    """Return the entry with this code, or the one this is a numbered form of."""
    wanted = code.strip().upper()
    if wanted in REGISTER:
        return REGISTER[wanted]
    return next((entry for entry in REGISTER.values() if wanted in entry.forms), None)


def _not_to_be_adopted(entry: LocalRule, played_on: date | None) -> Iterator[str]:
    """Yield why this one cannot be adopted, for play on that day."""
    if entry.code not in LOCAL_RULES and not entry.defines:
        yield (
            said(
                "{code} is in the list, but marram works nothing out for it. {reason} "
                "Leave it out here, and apply the text the Committee has adopted.",
                code=entry.code,
                reason=Said(entry.reason),
            )
        )
    if played_on is None or played_on < EDITION_2019:
        return
    year = edition_of(played_on).year
    if year not in entry.editions:
        lists = all_of(entry.editions)
        yield (
            said(
                "{code} stands in the list of {lists} only, and play on {played_on} is under "
                "that of {year}. Leave it out.",
                code=entry.code,
                lists=lists,
                played_on=played_on.isoformat(),
                year=year,
            )
        )
    elif entry.since is not None and played_on < entry.since:
        yield (
            said(
                "{code} can be adopted for play from {since} on, not for play on "
                "{played_on}. Leave it out, or give the day of play.",
                code=entry.code,
                since=entry.since.isoformat(),
                played_on=played_on.isoformat(),
            )
        )


def _against_each_other(entries: Sequence[LocalRule], played_on: date | None) -> Iterator[str]:
    """Yield each pair that cannot be in force together."""
    for place, one in enumerate(entries):
        for other in entries[place + 1 :]:
            if other.code in one.not_with and _exclude_each_other_on(one, played_on):
                because = one.why_not_with or other.why_not_with
                yield (
                    said(
                        "{one} and {other} cannot be in force together{why}. Leave one of them out.",
                        one=one.code,
                        other=other.code,
                        why=joined(": ", "", Said(because)) if because else "",
                    )
                )


def _exclude_each_other_on(one: LocalRule, played_on: date | None) -> bool:
    if played_on is None or played_on < EDITION_2019:
        return True
    return edition_of(played_on).year in one.not_with_in


__all__ = ["Adopted", "adopt", "entry_named"]
