"""Which dated branches of the book make the difference between two days of play.

A *turning point* is a place in a provision where the day of play is read (``case.played_since``). A difference
between two days comes from one or several of them: each is turned alone from the earlier day to the later one,
and those by which the outcome moves are the ones it comes from.
"""

import sys
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any, TypeVar

from marram.rules.engine.case import Case
from marram.rules.engine.changes import Change, substance
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import fact_named
from marram.rules.facts.conditions import date_of_play
from marram.rules.incidents import incident
from marram.rules.ruling import Outcome

T = TypeVar("T")
ROOT = "marram.rules."


@dataclass(frozen=True, slots=True, order=True)
class TurningPoint:
    """A place in the book where the day of play decides.

    Attributes:
        module: the module below ``marram.rules``.
        function: the function that reads the day.
        since: the day it asks about.
    """

    module: str
    function: str
    since: date

    def __str__(self) -> str:
        return f"{self.module}:{self.function}@{self.since.isoformat()}"


class _TurnedCase(Case):
    """A case on the earlier day, but for the turning points that are read as on the later one.

    What is known is answered; what is not is idle, so that any answer serves.
    """

    __slots__ = ("_days", "_known", "_turned", "met")

    def __init__(
        self, known: Mapping[Fact[Any], Any], days: tuple[date, date], turned: frozenset[TurningPoint]
    ) -> None:
        super().__init__()
        self._known = dict(known)
        self._days = days
        self._turned = turned
        self.met: dict[TurningPoint, None] = {}

    def __getitem__(self, fact: Fact[T]) -> T:
        answer: T = self._known.setdefault(fact, next(iter(fact.answers)))
        return answer

    def is_one_of(self, fact: Fact[T], *wanted: T) -> bool:
        return any(self[fact] == one for one in wanted)

    def at_most(self, fact: Fact[Any], bound: Any) -> bool:
        amount = self._days[0] if fact is date_of_play else self._known.setdefault(fact, bound)
        return bool(amount <= bound)

    def played_since(self, edition: date) -> bool:
        earlier, later = (day >= edition for day in self._days)
        if earlier == later:
            return earlier
        reader = sys._getframe(1)  # noqa: SLF001 - the provision that asks is what is looked for
        module = str(reader.f_globals["__name__"]).removeprefix(ROOT)
        point = TurningPoint(module, reader.f_code.co_name, edition)
        self.met[point] = None
        return later if point in self._turned else earlier


def turning_points(change: Change, earlier: date, later: date) -> tuple[TurningPoint, ...]:
    """Return the turning points that a change comes from, in the order in which they move the outcome.

    Args:
        change: a change between the two days.
        earlier: the earlier day.
        later: the later one.
    """
    entry = incident(change.incident).provision()
    known = {fact_named(name): answer for name, answer in change.facts}

    def ruled(turned: Iterable[TurningPoint]) -> tuple[Any, list[TurningPoint]]:
        case = _TurnedCase(known, (earlier, later), frozenset(turned))
        outcome: Outcome = entry(case)
        return substance(outcome), list(case.met)

    return tuple(_turned_one_by_one(ruled))


def _turned_one_by_one(
    ruled: Callable[[Iterable[TurningPoint]], tuple[Any, list[TurningPoint]]],
) -> list[TurningPoint]:
    moving: list[TurningPoint] = []
    turned: set[TurningPoint] = set()
    here, met = ruled(turned)
    while left := [point for point in met if point not in turned]:
        for point in left:
            there, met_there = ruled({*turned, point})
            if there != here:
                moving.append(point)
                turned.add(point)
                here, met = there, met_there
                break
        else:
            turned.update(left)
            there, met = ruled(turned)
            if there != here:  # only together
                moving.extend(left)
                here = there
    return moving
