"""What a Local Rule changes, in words: what it says, and the shortest situation that shows it wherever it is met."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from marram.errors import InputError
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.adoption import adopt, entry_named
from marram.rules.local_rules.register import REGISTER
from marram.said import said
from marram.teach.what_changed.adopted import Moved, adopted
from marram.teach.what_changed.telling import Shown, ruled_sheet, shown
from marram.words.language import translate
from marram.words.provisions import cited

MOST_SHOWN = 6
"""Incidents told whole before the rest is only named (own choice: what fits a screen and a sheet)."""


@dataclass(frozen=True, slots=True)
class Met:
    """Where a Local Rule is met: the situation that shows it, and how many situations of that incident it moves."""

    example: Shown
    situations: int


@dataclass(frozen=True, slots=True)
class Adoption:
    """What adopting a Local Rule changes.

    Attributes:
        code: its published code.
        title: what it is about.
        statement: what it says, in our own words.
        met: where it is met, what happens most on courses first.
    """

    code: str
    title: str
    statement: str
    met: tuple[Met, ...]

    @property
    def situations(self) -> int:
        """How many situations of the book are ruled otherwise with it."""
        return sum(one.situations for one in self.met)


def adoption(code: str, day: date, *, rare_first: bool = False) -> Adoption:
    """Return what adopting a Local Rule changes on a day.

    Args:
        code: its published code, or a numbered form of it.
        day: the day of play.
        rare_first: what is met least first, for those who know the rest.

    Raises:
        InputError: there is no such Local Rule, it cannot be adopted on that day, or no ruling rests on it.
    """
    found = adopt([code], day)
    if found.faults:
        raise InputError(*found.faults)
    entry = entry_named(code)
    assert entry is not None  # else it was a fault
    if entry.code not in LOCAL_RULES:
        raise InputError(
            said(
                "{code} says what or where something is; by itself it changes no ruling of the book.",
                code=entry.code,
            )
        )
    met = [_met(entry.code, one, day) for one in adopted(entry.code, day)]
    return Adoption(
        entry.code,
        translate()(REGISTER[entry.code].title),
        cited(entry.citation or entry.code).statement,
        tuple(met[::-1] if rare_first else met),
    )


def codes_on(day: date) -> Sequence[str]:
    """Return the Local Rules that can be adopted on a day and change a ruling, in the order of the list."""
    return [code for code in REGISTER if code in LOCAL_RULES and not adopt([code], day).faults]


def _met(code: str, one: Moved, day: date) -> Met:
    fact = LOCAL_RULES[code].name
    without, with_it = (ruled_sheet(one.incident, {**one.facts, fact: told}, day) for told in ("no", "yes"))
    return Met(shown(one.incident, one.facts, without, with_it), one.situations)
