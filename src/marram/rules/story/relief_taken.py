"""Which of the options offered the player took: its strokes count, whatever happens next (Rule 1.3c(4))."""

from collections.abc import Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from typing import Any

from marram.errors import InputError
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.facts.several import Taken, ball_settled, option_taken, taken_as
from marram.rules.penalty import Penalty, strokes
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption, Setting
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Deadline, Ruling
from marram.rules.story.deeds import Deed, offers_stroke_and_distance
from marram.rules.story.standing import Standing, ask
from marram.said import said

AT_ANY_TIME = ReliefOption(
    ReliefKind.STROKE_AND_DISTANCE,
    "18.1",
    Reference.PREVIOUS_STROKE,
    None,
    (),
    1,
    Setting.AS_THE_SPOT_ALLOWS,
)
"""Stroke and distance, which a player may take at any time (Rule 18.1), whatever a ruling offers besides."""

_MUST_TAKE_RELIEF = (Action.TAKE_RELIEF, Action.DROP, Action.PLACE, Action.PLAY_FROM_TEEING_AREA)
_PUT_DOWN_BEFORE_PLAY = (
    Action.DROP,
    Action.DROP_AGAIN,
    Action.GO_ON_WITH_RELIEF,
    Action.PLACE,
    Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF,
)
"""What is done with the ball, if at all, before it is played: what shows that play went on leaves nothing of it to ask."""
_PLAYED_ANEW = (Action.REPLAY, Action.PLAY_FROM_TEEING_AREA)
"""After these only a stroke brings a ball to where it is lost, out of bounds or in a penalty area."""
_NO_BALL_LEFT = (Action.HOLED, Action.HOLE_OVER)
_MAY_BE_UNPLAYABLE_INSTEAD = frozenset({"relief_instead_of_replacing_in_tree", "need_not_go_back_into_tree"})
"""Notes of a ball brought down from a tree that need not go back: taken as unplayable, it was not played before."""


def with_option_taken(case: Case, standing: Standing) -> Standing:
    """Take in what the player took of the relief that the standing ruling offers: nothing is left to choose."""
    ruling = standing.ruling
    if _took(case, standing, Taken.NOTHING_YET):
        return standing
    if _took(case, standing, Taken.AS_IT_LIES):
        lasting = tuple(one for one in standing.corrections if one.until is not Deadline.BEFORE_STROKE)
        played = replace(ruling.next(Action.PLAY_ON), relief=(), notes=())
        return replace(standing, ruling=played, corrections=lasting)
    if not ruling.relief:
        return standing
    done = replace(ruling.next(Action.PLAY_AS_IT_LIES), relief=(), notes=(), which_ball=None)
    done = done.note("relief_has_been_taken")
    cost = _cost_of_option(case, standing)
    of = standing.relief_of + (standing.place,) * len(cost)
    return replace(standing, ruling=done, relief_taken=standing.relief_taken + cost, relief_of=of)


def put_or_played(case: Case, gap: int, before: Standing, deed: Deed, told: AbstractSet[int]) -> bool:
    """Whether the ball had been put where the earlier ruling requires or lets it be put, or had been played."""
    if before.ruling.relief and (deed.follows_relief or _is_taking(before, deed)):
        return True
    if before.place in told:
        return not _took(case, before, Taken.NOTHING_YET) or told_taken(case, gap + 1, deed, told)
    if deed.tells_of_two_balls and not relief_costs(before.ruling):
        return True
    if deed.is_replacing or deed.follows_a_drop or (gap + 1 in told and deed.ruling.relief):
        return True
    if _overtakes(before.ruling, deed):
        return True
    chosen = relief_costs(before.ruling) and not _costs_one_way(before.ruling)
    if chosen and not _goes_back_or_is_replaced(before.ruling):
        return not _took(case, before, Taken.NOTHING_YET)
    return ask(case, "14.5a", ball_settled[gap])


def told_taken(case: Case, place: int, deed: Deed, told: AbstractSet[int]) -> bool:
    """Whether it was told what the player took of what this act offers: what stood open before is then settled by it."""
    if place not in told or not deed.ruling.relief:
        return False
    case.enter("1.3c(4)")
    waits = case.is_one_of(option_taken[place], Taken.NOTHING_YET)
    case.leave()
    return not waits


def _is_taking(before: Standing, deed: Deed) -> bool:
    """Whether an act is the taking of stroke and distance, or unplayable relief, that the standing ruling requires."""
    taking = deed.takes_stroke_and_distance or deed.pays_stroke_and_distance
    return (taking and offers_stroke_and_distance(before.ruling)) or names_relief_due(before.ruling, deed)


def names_relief_due(before: Ruling, deed: Deed) -> bool:
    """Whether an act says once more what was due, or the only relief there was: the ball is declared unplayable.

    A ball brought down from a tree for it is due to be; one embedded in a bunker has that relief alone (Rule 16.3a(1)).
    """
    if deed.incident != "unplayable_ball":
        return False
    due = before.action is Action.TAKE_RELIEF and any(one.citation.startswith("19.") for one in before.relief)
    instead = not _MAY_BE_UNPLAYABLE_INSTEAD.isdisjoint(before.notes)
    return due or instead or _unplayable_alone(before, deed.ruling)


def _unplayable_alone(before: Ruling, unplayable: Ruling) -> bool:
    """Whether all the relief that a ruling left is that of Rule 19, as the ball declared unplayable has it."""
    left, has = ({(one.kind, one.citation) for one in ruling.relief} for ruling in (before, unplayable))
    return bool(left) and left <= has and all(citation.startswith(("19.", "17.2")) for _, citation in left)


def _overtakes(before: Ruling, deed: Deed) -> bool:
    """Whether an act leaves nothing to ask about what an earlier ruling required of the ball."""
    if before.action in _PLAYED_ANEW:
        return deed.follows_a_stroke
    if before.action is Action.TAKE_RELIEF:
        gone = "18.2b" in before.citations and deed.is_about_a_ball_at_rest
        went_on = deed.follows_a_stroke and not deed.finds_the_ball
        return went_on or gone  # where the ball is gone, one at rest was put in play for it
    if before.action is Action.REPLACE:
        again = deed.ruling.action is Action.REPLACE
        elsewhere = deed.ruling.action is Action.TAKE_RELIEF and not deed.follows_a_stroke
        return again or elsewhere or deed.shows_play_went_on or deed.pays_stroke_and_distance
    if before.action is Action.GO_ON_WITH_RELIEF and deed.ruling.action is Action.REPLACE:
        return True  # given up, or moved once it had been put down
    put_down = before.action in _PUT_DOWN_BEFORE_PLAY and not relief_costs(before)
    return put_down and (deed.shows_play_went_on or deed.pays_stroke_and_distance)


def cost_of_relief(case: Case, before: Standing, deed: Deed, told: AbstractSet[int]) -> tuple[Penalty, ...]:
    """What the relief cost that was taken before a later incident (Rule 1.3c(4): it comes on top)."""
    ruling = before.ruling
    if not relief_costs(ruling) or deed.voids_relief:
        return ()
    if _is_taking(before, deed) and before.place not in told:
        return ()  # the price stands in the options of the act itself
    if before.place not in told and _goes_back_or_is_replaced(ruling):
        return ()  # as after any ball that is replaced: stroke and distance is told, not asked for
    named = before.place in told and not (deed.follows_relief and _took(case, before, Taken.NOTHING_YET))
    if not named:
        shown = _costs_one_way(ruling) or (deed.follows_relief and _one_price(ruling))
        if shown:
            return (strokes(ruling.relief[0].penalty, ruling.relief[0].citation),)
    return _cost_of_option(case, before)


def _cost_of_option(case: Case, standing: Standing) -> tuple[Penalty, ...]:
    """Read which option was taken, and return what it costs."""
    for option in standing.ruling.relief:
        if option.penalty and _took(case, standing, taken_as(option)):
            return (strokes(option.penalty, option.citation),)
    return ()


def _goes_back_or_is_replaced(ruling: Ruling) -> bool:
    """Whether the ball is replaced, and all that may be done instead is stroke and distance, as at any time."""
    return ruling.action is Action.REPLACE and all(
        option.kind is ReliefKind.STROKE_AND_DISTANCE for option in ruling.relief
    )


def _costs_one_way(ruling: Ruling) -> bool:
    """Whether relief must be taken, and costs the same whichever option is chosen."""
    return ruling.action in _MUST_TAKE_RELIEF and bool(ruling.relief) and _one_price(ruling)


def _one_price(ruling: Ruling) -> bool:
    return len({option.penalty for option in ruling.relief}) == 1


def cost_still_to_come(ruling: Ruling) -> int:
    """Return the strokes of relief that must still be taken, where all of it costs the same; else 0."""
    return ruling.relief[0].penalty if ruling.relief and _costs_one_way(ruling) else 0


def relief_costs(ruling: Ruling) -> set[int]:
    """Return the strokes, other than none, that the relief offered by a ruling may cost."""
    return {option.penalty for option in ruling.relief} - {0}


def _took(case: Case, before: Standing, taken: Taken) -> bool:
    """Read whether the player took this of what the standing ruling offered."""
    case.enter("1.3c(4)")
    took = case.is_one_of(option_taken[before.place], taken)
    case.leave()
    return took


def with_stroke_and_distance(part: Ruling, taken: Taken | None) -> Ruling:
    """Offer stroke and distance where the player took it though the ruling by itself does not speak of it."""
    if (
        taken is not Taken.STROKE_AND_DISTANCE
        or offers_stroke_and_distance(part)
        or part.action in _NO_BALL_LEFT
    ):
        return part
    return replace(part, relief=(*part.relief, AT_ANY_TIME))


def can_be_taken(parts: Sequence[Ruling], place: int) -> set[Taken]:
    """Return what the player can have done of what was open with the ball after an incident.

    What an earlier ruling offers stays open beside what a later one adds, until one of them is taken.
    """
    open_then = [part for part in parts if part.relief]
    can = {Taken.NOTHING_YET, *(taken_as(option) for part in open_then for option in part.relief)}
    if parts[place].action is Action.PLAY_PROVISIONAL:
        can.add(Taken.PROVISIONAL)
    if parts[place].action not in _NO_BALL_LEFT:
        can.add(Taken.STROKE_AND_DISTANCE)
    must = parts[place].action is Action.TAKE_RELIEF and len(open_then) == 1
    return can if must else can | {Taken.AS_IT_LIES}


def check_taken(parts: Sequence[Ruling], known: Mapping[Fact[Any], Any]) -> None:
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
            faults.append(
                said(
                    "{fact}: there is no incident {place}; {count} were given.",
                    fact=fact.name,
                    place=place,
                    count=len(parts),
                )
            )
        elif taken not in (can := can_be_taken(parts, place - 1)):
            offered = ", ".join(sorted(one.value for one in can))
            faults.append(
                said(
                    "{fact}: no ruling offers {taken}; what can have been done is {offered}.",
                    fact=fact.name,
                    taken=taken.value,
                    offered=offered,
                )
            )
    if faults:
        raise InputError(*faults)


def only_offered(parts: Sequence[Ruling], asked: NeedFacts) -> NeedFacts:
    """Ask only for what a ruling offers, where it is asked which option was taken."""
    for place, fact in enumerate(option_taken[: len(parts)]):
        if fact.name == asked.fact:
            can = can_be_taken(parts, place)
            kept = [replace(one, answers=tuple(a for a in one.answers if a in can)) for one in asked.stakes]
            return replace(asked, stakes=tuple(one for one in kept if one.answers))
    return asked
