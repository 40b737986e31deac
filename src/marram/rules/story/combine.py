"""Several incidents of one story: how their penalties add up (Rule 1.3c(4)), and what to do with the ball."""

from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from datetime import date
from typing import Any

from marram.errors import InputError
from marram.rules.engine.case import Case
from marram.rules.engine.request import Book, conditions, read_facts, walk
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.conditions import form_of_play as the_form
from marram.rules.facts.several import MOST_INCIDENTS, Taken, option_taken, play_resumed
from marram.rules.penalty import Penalty
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Action, HandOver, Ruling
from marram.rules.story.ball_after import NOT_ABOUT_THE_BALL, ball_after
from marram.rules.story.bearing import each_breach_once
from marram.rules.story.breaches import Told, penalties_together
from marram.rules.story.deeds import (
    NOTHING_DONE,
    Deed,
    by_another_player,
    disqualifies,
    drop_already_paid,
    relief_already_paid,
    stroke_and_distance_told,
)
from marram.rules.story.hole_completed import (
    OF_NEXT_HOLE,
    between_holes,
    made_while_stopped,
    of_the_last_hole,
    without_what_came_after,
)
from marram.rules.story.match import hole_lost_by, penalties_in_match
from marram.rules.story.mistakes import penalties_that_count
from marram.rules.story.notes_in_story import fitting
from marram.rules.story.outside_teeing_area import dropped_where_not_teed
from marram.rules.story.provisional import (
    in_play_at_its_cost,
    with_stroke_and_distance_once,
    without_abandoned,
)
from marram.rules.story.relief_taken import check_taken, only_offered, with_stroke_and_distance
from marram.rules.story.standing import ask
from marram.said import said


def combine(
    rulings: Sequence[Result],
    facts: Mapping[str, Any] | None = None,
    *,
    played_on: date,
    form_of_play: FormOfPlay | str | None = None,
    incidents: Sequence[str] = (),
    by_another: AbstractSet[int] = frozenset(),
    strokes: Sequence[int | None] = (),
) -> Result:
    """Combine the rulings on incidents that happened one after the other in one story.

    Penalty strokes that relief options cost are always added, and stay in the options where there is a choice.
    What happens with the ball, which ball counts and which mistakes can still be corrected follow from all
    incidents: see :mod:`marram.rules.story.ball_after`.

    Args:
        rulings: the rulings, in the order of what happened; one to six.
        facts: what lies between the incidents: those of :data:`marram.rules.facts.several.BETWEEN`, such as
            ``intervening_event_1`` (between incidents 1 and 2). What is not known is asked where it matters.
        played_on: the day of the round.
        form_of_play: the form of play, if known: in a match a hole is lost once.
        incidents: the names of what happened, in the same order; what they show by themselves is not asked.
        by_another: the places, from 0, of what another player did: its penalties are that player's, and what it
            leaves to be done is done with that player's ball.
        strokes: for each incident, strokes made from then until the next, where they were told.

    Raises:
        InputError: no incident or more than six, or one that is not decided yet.
        DateNotCovered, UnknownFact, BadAnswer: as for :func:`marram.rule`.
    """
    deeds = _played_on(dropped_where_not_teed(deeds_of(rulings, incidents)), strokes)
    known = {**conditions(played_on, form_of_play, None), **read_facts(facts or {})}
    if any(fact in known for fact in option_taken):
        check_taken([deed.ruling for deed in deeds], known)
        deeds = _with_options_told(deeds, known)
    match = known.get(the_form) is FormOfPlay.MATCH_PLAY
    every = deeds
    theirs = [by_another_player(deed, match=match) for deed in deeds] if by_another else []
    if by_another:
        deeds = [NOTHING_DONE if place in by_another else deed for place, deed in enumerate(deeds)]
        theirs = [one if place in by_another else NOTHING_DONE for place, one in enumerate(theirs)]
        every = [theirs[place] if place in by_another else deed for place, deed in enumerate(deeds)]

    def added_up(case: Case) -> Ruling:
        own = combined_penalties(case, deeds, theirs, known, match=match)
        return Ruling(penalties=own)

    penalties = walk(Book(added_up), known)
    if not isinstance(penalties, Ruling):
        return penalties
    counted = penalties.penalties
    lost = match and hole_lost_by([counted]) is not None

    def put_together(case: Case) -> Ruling | HandOver:
        if lost:
            return _hole_over(case, every, counted, known)
        return combined(case, deeds, every, counted, known)

    result = walk(Book(put_together), known)
    if isinstance(result, NeedFacts):
        result = only_offered([deed.ruling for deed in deeds], result)
    before = {reason.fact: reason for reason in penalties.reasons}
    after = {reason.fact: reason for reason in result.reasons}
    return replace(result, reasons=tuple({**before, **after}.values()))


def _played_on(deeds: Sequence[Deed], strokes: Sequence[int | None]) -> list[Deed]:
    """Note at each act whether strokes were told since the one before."""
    since = [None, *strokes]
    return [
        replace(deed, played_on_before=place < len(since) and bool(since[place]))
        for place, deed in enumerate(deeds)
    ]


def _with_options_told(deeds: Sequence[Deed], known: Told) -> list[Deed]:
    """Offer stroke and distance where it was told to have been taken, and let an act that tells how count nothing."""
    offered = [
        replace(deed, ruling=with_stroke_and_distance(deed.ruling, known.get(option_taken[place])))
        for place, deed in enumerate(deeds)
    ]
    return [
        relief_already_paid(deed) if _told_before(deed, place, known) else deed
        for place, deed in enumerate(offered)
    ]


def _told_before(deed: Deed, place: int, known: Told) -> bool:
    """Whether an act tells how stroke and distance was taken that the act before is told to have ended in."""
    taken = known.get(option_taken[place - 1]) if place else None
    return taken is Taken.STROKE_AND_DISTANCE and deed.takes_stroke_and_distance


def deeds_of(rulings: Sequence[Result], incidents: Sequence[str]) -> list[Deed]:
    """Return the acts.

    Raises:
        InputError: none, too many, or one that is not decided; all faults are listed.
    """
    if not 1 <= len(rulings) <= MOST_INCIDENTS:
        raise InputError(
            said(
                "{count} incidents cannot be combined; give one to {most_incidents} rulings.",
                count=len(rulings),
                most_incidents=MOST_INCIDENTS,
            )
        )
    deeds: list[Deed] = []
    undecided = []
    for place, one in enumerate(rulings, start=1):
        if isinstance(one, Ruling):
            name = incidents[place - 1] if place <= len(incidents) else ""
            relief_before = any(deed.ruling.relief for deed in deeds)
            deed = drop_already_paid(Deed(in_play_at_its_cost(one), name), relief_before=relief_before)
            deeds.append(stroke_and_distance_told(deed, deeds))
        else:
            undecided.append(
                said(
                    "Incident {place} is not decided yet ({kind}); settle it first.",
                    place=place,
                    kind=type(one).__name__,
                )
            )
    if undecided:
        raise InputError(*undecided)
    return deeds


def combined(
    case: Case, deeds: Sequence[Deed], every: Sequence[Deed], penalties: tuple[Penalty, ...], told: Told
) -> Ruling | HandOver:
    """Put the incidents together into one ruling with ``penalties``; ``every`` holds those of another player too."""
    if any(not ask(case, "5.7b", play_resumed[place - 1]) for place in made_while_stopped(deeds)):
        return HandOver("played_after_suspension", "5.7b")
    deeds = without_what_came_after(case, deeds, told)
    case.enter("1.3c(4)")
    taken = {place for place, fact in enumerate(option_taken) if fact in told}
    standing = ball_after(case, of_the_last_hole(deeds, told), taken, told)
    case.leave()
    costly = sum(1 for deed in every if deed.ruling.penalties) + bool(standing.relief_taken)
    return replace(
        fitting(standing.ruling, deeds, told),
        penalties=penalties if disqualifies(Ruling(penalties)) else penalties + standing.relief_taken,
        corrections=standing.corrections,
        cautions=_cautions(every),
        citations=_citations(every, costly),
        reasons=(),
    )


def combined_penalties(
    case: Case, deeds: Sequence[Deed], theirs: Sequence[Deed], told: Told, *, match: bool
) -> tuple[Penalty, ...]:
    """Rule 1.3c(4): one penalty, the highest, for breaches that belong together; else one for each.

    What does not count is left out first: strokes solely from a ball that does not count, an abandoned provisional
    ball, a breach told twice. In a match the hole is lost once.
    """
    deeds = without_what_came_after(case, deeds, told)
    case.enter("1.3c(4)")
    counting = penalties_that_count(case, deeds)
    counting = without_abandoned(case, deeds, counting, told)
    counting = with_stroke_and_distance_once(case, deeds, counting)
    counting = each_breach_once(counting, deeds)
    of_another = [deed.ruling.penalties for deed in theirs]
    both = [own + other for own, other in zip(counting, of_another or [()] * len(counting), strict=True)]
    lost_by = hole_lost_by(both) if match else None
    if lost_by is not None:
        acts = [
            one if one is not NOTHING_DONE else own for own, one in zip(deeds, theirs or deeds, strict=True)
        ]
        total = penalties_in_match(both, lost_by, set(between_holes(acts, told)))
    else:
        total = penalties_together(case, deeds, counting, told)
        total += penalties_together(case, theirs, of_another, told) if theirs else ()
    case.leave()
    return total


SIDE_IS_DONE = "side_has_completed_hole"
"""The note that no partner plays the hole on (Rule 23.3)."""


def _hole_over(case: Case, deeds: Sequence[Deed], counted: tuple[Penalty, ...], told: Told) -> Ruling:
    """In a match nothing is left to do with the ball once the hole is lost (Rules 1.3c(2) and 6.5)."""
    of_next = any(OF_NEXT_HOLE in deed.ruling.notes for deed in without_what_came_after(case, deeds, told))
    stopped = deeds[-1].ruling.action is Action.STOP_PLAY
    clubs = [one for deed in deeds for one in deed.ruling.corrections if one.what in NOT_ABOUT_THE_BALL]
    done = any(SIDE_IS_DONE in deed.ruling.notes for deed in deeds)
    return Ruling(
        penalties=counted,
        action=Action.STOP_PLAY if stopped else Action.HOLE_OVER,
        notes=((OF_NEXT_HOLE,) if of_next else ()) + ((SIDE_IS_DONE,) if done else ()),
        corrections=tuple(clubs),
        cautions=_cautions(deeds),
        citations=_citations(deeds, costly=sum(1 for deed in deeds if deed.ruling.penalties)),
    )


def _cautions(deeds: Sequence[Deed]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(key for deed in deeds for key in deed.ruling.cautions))


def _citations(deeds: Sequence[Deed], costly: int) -> tuple[str, ...]:
    """Return what all rulings rest on; Rule 1.3c(4) first where several acts cost something."""
    several = ["1.3c(4)"] if costly > 1 else []
    return tuple(dict.fromkeys([*several, *(key for deed in deeds for key in deed.ruling.citations)]))
