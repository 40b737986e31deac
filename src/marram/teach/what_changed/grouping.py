"""The differences between two days, grouped by what was decided: found, not listed by hand."""

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from marram.course.progress import Progress, no_progress
from marram.rules.editions import FIRST_DAY
from marram.rules.engine.changes import Change, changes, substance
from marram.rules.engine.request import fact_named, rule
from marram.rules.engine.turning_points import TurningPoint, turning_points
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.teach.situations.fitting_together import contradict
from marram.teach.situations.how_often import oddity
from marram.teach.what_changed.register import BY_KEY, BY_PLACE

COMPARING = "comparing"


@dataclass(frozen=True, slots=True)
class Example:
    """The shortest situation that shows a change: an incident and what must be known, as tokens."""

    incident: str
    facts: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Touched:
    """What a change touches.

    Attributes:
        key: the change's name in the register; the turning point as written, where it has no words yet.
        situations: how many differing situations of the book come from it (alone or with others).
        incidents: how many of them in each incident.
        example: the shortest situation that comes from it alone, or, where there is none, from it with others.
    """

    key: str
    situations: int
    incidents: dict[str, int]
    example: Example


@dataclass(slots=True)
class _Met:
    incidents: Counter[str] = field(default_factory=Counter)
    best: tuple[int, bool, bool, int, int] | None = None
    example: Example | None = None


def what_changed(
    earlier: date, later: date, names: Iterable[str] = (), progress: Progress = no_progress
) -> list[Touched]:
    """Return the changes between two days, by their names in the register.

    Args:
        earlier: the earlier day.
        later: the later one.
        names: the incidents to look at; none: every one that can be ruled on both days.
        progress: told how far it is.
    """
    met: dict[str, _Met] = {}
    every = [one for one in INCIDENTS if one.name in set(names)] or list(walked(earlier))
    for number, one in enumerate(every, start=1):
        for change in changes(one.name, earlier, later):
            if not change.renumbered_only and not contradict(tokens_of(change)):
                _note(met, change, turning_points(change, earlier, later))
        progress(COMPARING, number / len(every))
    found = [
        Touched(
            key,
            one.incidents.total(),
            dict(sorted(one.incidents.items())),
            _as_asked(key, one.example, (earlier, later)),
        )
        for key, one in met.items()
        if one.example is not None
    ]
    return sorted(found, key=lambda one: one.key)


def walked(earlier: date) -> Iterator[Incident]:
    """Yield the incidents to compare: those of teaching reach back, and repeat others from 2019 on."""
    yield from (one for one in INCIDENTS if (one.covered_from < FIRST_DAY) == (earlier < FIRST_DAY))


def place_of(point: TurningPoint) -> str:
    """Return a turning point as the register names it."""
    return f"{point.module.removeprefix('book.')}:{point.function}"


def key_of(point: TurningPoint) -> str:
    """Return the name of the change that a turning point belongs to."""
    known = BY_PLACE.get(place_of(point))
    return place_of(point) if known is None else known.key


def _note(met: dict[str, _Met], change: Change, points: Iterable[TurningPoint]) -> None:
    keys = list(dict.fromkeys(key_of(point) for point in points))
    for key in keys:
        one = met.setdefault(key, _Met())
        one.incidents[change.incident] += 1
        rank = (
            _untypical(key, change),
            len(keys) > 1,
            costs_the_same(change),
            other_local_rules(change),
            len(change.facts),
        )
        if one.best is None or rank < one.best:
            one.best = rank
            one.example = Example(change.incident, tokens_of(change))


def _as_asked(key: str, example: Example, days: tuple[date, date]) -> Example:
    """Put into an example what the register asks for, where the two days still differ by it."""
    asked = BY_KEY[key].facts if key in BY_KEY else ()
    wanted = Example(
        example.incident, {**example.facts, **{name: _kept(name, given) for name, given in asked}}
    )
    if contradict(wanted.facts):
        return example
    before, after = (rule(wanted.incident, wanted.facts, played_on=day) for day in days)
    if isinstance(before, NeedFacts) or isinstance(after, NeedFacts):
        return example
    return example if substance(before) == substance(after) else wanted


def _kept(name: str, given: str) -> Any:
    """Return an answer of the register as examples keep it: numbers as numbers."""
    fact = fact_named(name)
    return given if fact.answers else fact.parse(given)


def _untypical(key: str, change: Change) -> int:
    """How much of what the register asks of an example is missing."""
    known = BY_KEY.get(key)
    if known is None:
        return 0
    facts = tokens_of(change)
    missing = sum(1 for name, answer in known.facts if facts.get(name) != answer)
    return missing + (1 if known.incident not in {"", change.incident} else 0)


def costs_the_same(change: Change) -> bool:
    """Return whether a player would hardly notice: the same penalty, and the same thing to do next."""
    before, after = change.before, change.after
    if not (isinstance(before, Ruling) and isinstance(after, Ruling)):
        return False
    return (substance(before)[0], before.action) == (substance(after)[0], after.action)


def other_local_rules(change: Change) -> int:
    """Return how many Local Rules must be in force for it."""
    return sum(name.startswith("local_rule_") and answer is True for name, answer in change.facts)


def oddity_of(change: Change) -> float:
    """Return how far its answers are from the likeliest ones."""
    return oddity({fact_named(name): answer for name, answer in change.facts})


def tokens_of(change: Change) -> dict[str, Any]:
    """Return the facts of a change, answers as tokens; numbers and days as they are."""
    facts = {}
    for name, answer in change.facts:
        fact = fact_named(name)
        facts[name] = fact.token(answer) if fact.answers else answer
    return facts
