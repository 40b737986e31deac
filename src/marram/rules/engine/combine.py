"""Several incidents of one situation: how their penalties add up (Rule 1.3c(4))."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from marram.errors import InputError
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.request import Book, conditions, read_facts, walk
from marram.rules.facts.several import (
    MOST_INCIDENTS,
    acts_related,
    intervening_event,
    moved_ball_not_replaced_before,
)
from marram.rules.ruling import Penalty, PenaltyKind, Result, Ruling

_LEVEL = {
    PenaltyKind.STROKES: 0,
    PenaltyKind.GENERAL: 1,
    PenaltyKind.LOSS_OF_HOLE: 1,
    PenaltyKind.HOLES_DEDUCTED: 1,
    PenaltyKind.POINTS_DEDUCTED: 1,
    PenaltyKind.DISQUALIFICATION: 2,
}


def combine(rulings: Sequence[Result], facts: Mapping[str, Any] | None = None, *, played_on: date) -> Result:
    """Combine the rulings on incidents that happened one after the other in one situation.

    Penalty strokes that relief options cost are always added and stay in the options. The last ruling
    says what happens with the ball.

    Args:
        rulings: the rulings, in the order of what happened; two to six.
        facts: in the 2023 edition ``intervening_event_1`` (between incidents 1 and 2) and so on; in the 2019
            edition ``acts_related_1`` and so on. What is not known is asked.
        played_on: the day of the round.

    Raises:
        InputError: fewer than two or more than six incidents, or one that is not decided yet.
        DateNotCovered, UnknownFact, BadAnswer: as for :func:`marram.rule`.
    """
    if not 2 <= len(rulings) <= MOST_INCIDENTS:
        raise InputError(
            f"{len(rulings)} incidents cannot be combined; give two to {MOST_INCIDENTS} rulings."
        )
    parts: list[Ruling] = []
    undecided = []
    for place, one in enumerate(rulings, start=1):
        if isinstance(one, Ruling):
            parts.append(one)
        else:
            undecided.append(f"Incident {place} is not decided yet ({type(one).__name__}); settle it first.")
    if undecided:
        raise InputError(*undecided)
    known = {**conditions(played_on, None, None), **read_facts(facts or {})}
    return walk(Book(lambda case: combined(case, parts)), known)


def combined(case: Case, parts: Sequence[Ruling]) -> Ruling:
    """Rule 1.3c(4): one penalty, the highest, for breaches that belong together; else one for each."""
    case.enter("1.3c(4)")
    groups: list[list[Ruling]] = [[parts[0]]]
    for gap, part in enumerate(parts[1:]):
        before = [penalty for one in groups[-1] for penalty in one.penalties]
        if before and part.penalties and _separate(case, gap, before, part):
            groups.append([part])
        else:
            groups[-1].append(part)
    case.leave()
    penalties = [one for group in groups for one in _highest(group)]
    penalties = _of_the_disqualified(penalties)
    last = parts[-1]
    every = [key for part in parts for key in part.citations]
    return replace(
        last,
        penalties=tuple(penalties),
        corrections=tuple(dict.fromkeys(one for part in parts for one in part.corrections)),
        cautions=tuple(dict.fromkeys(key for part in parts for key in part.cautions)),
        citations=tuple(dict.fromkeys(["1.3c(4)", *every])),
        reasons=(),
    )


def _separate(case: Case, gap: int, before: Sequence[Penalty], part: Ruling) -> bool:
    """Tell whether the breach after this gap gets a penalty of its own."""
    if _may_be_failure_to_replace(before, part) and case[moved_ball_not_replaced_before[gap]]:
        return False
    if case.played_since(EDITION_2023):
        return case[intervening_event[gap]]
    return not case[acts_related[gap]]


def _may_be_failure_to_replace(before: Sequence[Penalty], part: Ruling) -> bool:
    """Rule 1.3c(4) Exception: not replacing a ball moved under 9.4 costs the general penalty in total."""
    return all(one.citation.startswith("9.4") for one in before) and any(
        one.kind is PenaltyKind.GENERAL and one.citation.startswith("14.7a") for one in part.penalties
    )


def _highest(group: Sequence[Ruling]) -> list[Penalty]:
    """Return, for each person, the highest of the penalties of a group."""
    highest: dict[Any, Penalty] = {}
    for penalty in (one for ruling in group for one in ruling.penalties):
        best = highest.get(penalty.who)
        if best is None or _rank(penalty) > _rank(best):
            highest[penalty.who] = penalty
    return list(highest.values())


def _rank(penalty: Penalty) -> tuple[int, int]:
    return _LEVEL[penalty.kind], penalty.strokes


def _of_the_disqualified(penalties: Sequence[Penalty]) -> list[Penalty]:
    """Drop what a disqualification makes idle for the same person."""
    out = {one.who for one in penalties if one.kind is PenaltyKind.DISQUALIFICATION}
    return [one for one in penalties if one.kind is PenaltyKind.DISQUALIFICATION or one.who not in out]
