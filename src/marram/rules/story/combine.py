"""Several incidents of one story: how their penalties add up (Rule 1.3c(4)), and what to do with the ball."""

from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from datetime import date
from typing import Any

from marram.errors import InputError
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.request import Book, conditions, read_facts, walk
from marram.rules.facts.several import (
    MOST_INCIDENTS,
    Taken,
    acts_related,
    intervening_event,
    moved_ball_not_replaced_before,
    option_taken,
)
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Action, Penalty, PenaltyKind, Ruling, Who, strokes
from marram.rules.story.ball_after import ball_after, penalties_that_count

_LEVEL = {
    PenaltyKind.STROKES: 0,
    PenaltyKind.GENERAL: 1,
    PenaltyKind.LOSS_OF_HOLE: 1,
    PenaltyKind.HOLES_DEDUCTED: 1,
    PenaltyKind.POINTS_DEDUCTED: 1,
    PenaltyKind.DISQUALIFICATION: 2,
}


def combine(rulings: Sequence[Result], facts: Mapping[str, Any] | None = None, *, played_on: date) -> Result:
    """Combine the rulings on incidents that happened one after the other in one story.

    Penalty strokes that relief options cost are always added, and stay in the options where there is a choice.
    What happens with the ball, which ball counts and which mistakes can still be corrected follow from all
    incidents: see :mod:`marram.rules.story.ball_after`.

    Args:
        rulings: the rulings, in the order of what happened; one to six.
        facts: what lies between the incidents: those of :data:`marram.rules.facts.several.BETWEEN`, such as
            ``intervening_event_1`` (between incidents 1 and 2). What is not known is asked where it matters.
        played_on: the day of the round.

    Raises:
        InputError: no incident or more than six, or one that is not decided yet.
        DateNotCovered, UnknownFact, BadAnswer: as for :func:`marram.rule`.
    """
    if not 1 <= len(rulings) <= MOST_INCIDENTS:
        raise InputError(
            f"{len(rulings)} incidents cannot be combined; give one to {MOST_INCIDENTS} rulings."
        )
    parts: list[Ruling] = []
    undecided = []
    for place, one in enumerate(rulings, start=1):
        if isinstance(one, Ruling):
            parts.append(_with_forced_cost(one))
        else:
            undecided.append(f"Incident {place} is not decided yet ({type(one).__name__}); settle it first.")
    if undecided:
        raise InputError(*undecided)
    known = {**conditions(played_on, None, None), **read_facts(facts or {})}
    _check_taken(parts, known)
    penalties = walk(Book(lambda case: Ruling(penalties=combined_penalties(case, parts))), known)
    if not isinstance(penalties, Ruling):
        return penalties
    counted = penalties.penalties
    told = {place for place, fact in enumerate(option_taken) if fact in known}
    result = walk(Book(lambda case: combined(case, parts, counted, told)), known)
    if isinstance(result, NeedFacts):
        result = _only_offered(parts, result)
    before = {reason.fact: reason for reason in penalties.reasons}
    after = {reason.fact: reason for reason in result.reasons}
    return replace(result, reasons=tuple({**before, **after}.values()))


def _can_be_taken(parts: Sequence[Ruling], place: int) -> set[Taken]:
    """Return what the player can have done of what was open with the ball after an incident.

    What an earlier ruling offers stays open beside what a later one adds, until one of them is taken.
    """
    open_then = [part for part in parts if part.relief]
    can = {Taken.NOTHING_YET, *(Taken(option.kind.value) for part in open_then for option in part.relief)}
    must = parts[place].action is Action.TAKE_RELIEF and len(open_then) == 1
    return can if must else can | {Taken.AS_IT_LIES}


def _check_taken(parts: Sequence[Ruling], known: Mapping[Fact[Any], Any]) -> None:
    """Refuse an option said to have been taken that no ruling offers, or after no incident.

    Raises:
        InputError: there is such an option; all are listed.
    """
    faults = []
    for place, fact in enumerate(option_taken, start=1):
        taken = known.get(fact)
        if taken is None:
            continue
        if place > len(parts):
            faults.append(f"{fact.name}: there is no incident {place}; {len(parts)} were given.")
        elif taken not in (can := _can_be_taken(parts, place - 1)):
            offered = ", ".join(sorted(one.value for one in can))
            faults.append(
                f"{fact.name}: no ruling offers {taken.value}; what can have been done is {offered}."
            )
    if faults:
        raise InputError(*faults)


def _only_offered(parts: Sequence[Ruling], asked: NeedFacts) -> NeedFacts:
    """Ask only for what a ruling offers, where it is asked which option was taken."""
    for place, fact in enumerate(option_taken[: len(parts)]):
        if fact.name == asked.fact:
            can = _can_be_taken(parts, place)
            kept = [replace(one, answers=tuple(a for a in one.answers if a in can)) for one in asked.stakes]
            return replace(asked, stakes=tuple(one for one in kept if one.answers))
    return asked


def _with_forced_cost(part: Ruling) -> Ruling:
    """A provisional ball that must be played on costs its stroke whatever follows: it is no choice among options."""
    if part.action is not Action.PLAY_PROVISIONAL or len(part.relief) != 1:
        return part
    (forced,) = part.relief
    return replace(part.also(strokes(forced.penalty, forced.citation)), relief=())


def combined(
    case: Case, parts: Sequence[Ruling], penalties: tuple[Penalty, ...], told: AbstractSet[int]
) -> Ruling:
    """Put the incidents together into one ruling with ``penalties``."""
    case.enter("1.3c(4)")
    standing = ball_after(case, parts, told)
    case.leave()
    every = [key for part in parts for key in part.citations]
    return replace(
        standing.ruling,
        penalties=penalties + standing.relief_taken,
        corrections=standing.corrections,
        cautions=tuple(dict.fromkeys(key for part in parts for key in part.cautions)),
        citations=tuple(dict.fromkeys(["1.3c(4)", *every])),
        reasons=(),
    )


def combined_penalties(case: Case, parts: Sequence[Ruling]) -> tuple[Penalty, ...]:
    """Rule 1.3c(4): one penalty, the highest, for breaches that belong together; else one for each."""
    case.enter("1.3c(4)")
    counting = penalties_that_count(case, parts)
    people = dict.fromkeys(one.who for penalties in counting for one in penalties)
    found = [one for who in people for one in _penalties_of(case, who, counting)]
    case.leave()
    out = {one.who for one in found if one.kind is PenaltyKind.DISQUALIFICATION}
    return tuple(one for one in found if one.kind is PenaltyKind.DISQUALIFICATION or one.who not in out)


def _penalties_of(case: Case, who: Who, counting: Sequence[tuple[Penalty, ...]]) -> list[Penalty]:
    """Return what one person gets: the highest of each group of breaches that belong together, and all relief."""
    relief = [one for penalties in counting for one in penalties if one.who is who and _for_relief(one)]
    groups: list[list[tuple[Penalty, ...]]] = []
    last = 0
    for place, penalties in enumerate(counting):
        own = tuple(one for one in penalties if one.who is who and not _for_relief(one))
        if not own:
            continue
        if groups and not _separate(case, last, place, groups[-1], own):
            groups[-1].append(own)
        else:
            groups.append([own])
        last = place
    return [one for group in groups for one in max(group, key=_rank)] + relief


def _separate(
    case: Case, last: int, place: int, before: Sequence[tuple[Penalty, ...]], own: tuple[Penalty, ...]
) -> bool:
    """Tell whether the breach of incident ``place`` gets a penalty besides those from incident ``last`` on."""
    earlier = [one for penalties in before for one in penalties]
    if any(one.kind is PenaltyKind.DISQUALIFICATION for one in (*earlier, *own)):
        return False
    nearest = place - 1
    if _may_be_failure_to_replace(earlier, own) and case[moved_ball_not_replaced_before[nearest]]:
        return False
    if not case.played_since(EDITION_2023) and not case[acts_related[nearest]]:
        return True
    return any(case[intervening_event[gap]] for gap in range(last, place))


def _may_be_failure_to_replace(before: Sequence[Penalty], own: Sequence[Penalty]) -> bool:
    """Rule 1.3c(4) Exception: not replacing a ball moved under 9.4 costs the general penalty in total."""
    return all(one.citation.startswith("9.4") for one in before) and any(
        one.kind is PenaltyKind.GENERAL and one.citation.startswith("14.7a") for one in own
    )


def _for_relief(penalty: Penalty) -> bool:
    """Whether it is the cost of penalty relief, which is always added (Rule 1.3c(4), last sentence)."""
    return penalty.kind is PenaltyKind.STROKES and penalty.citation.startswith(("17.", "18.", "19."))


def _rank(penalties: tuple[Penalty, ...]) -> tuple[int, int]:
    return max(_LEVEL[one.kind] for one in penalties), sum(one.strokes for one in penalties)
