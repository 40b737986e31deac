"""Which of the options offered the player took: its strokes count, whatever happens next (Rule 1.3c(4))."""

from collections.abc import Set as AbstractSet
from dataclasses import replace

from marram.rules.engine.case import Case
from marram.rules.facts.several import Taken, ball_settled, option_taken
from marram.rules.ruling import Action, Deadline, Penalty, Ruling, strokes
from marram.rules.story.standing import Standing, ask

_FOLLOWS_RELIEF = ("14.3a", "14.3b", "14.3c")
"""Provisions on how a ball is dropped in taking relief: what is ruled under them happened after relief was chosen."""


def with_option_taken(case: Case, standing: Standing) -> Standing:
    """Take in what the player took of the relief that the standing ruling offers: nothing is left to choose."""
    ruling = standing.ruling
    if not ruling.relief or _took(case, standing, Taken.NOTHING_YET):
        return standing
    if _took(case, standing, Taken.AS_IT_LIES):
        lasting = tuple(one for one in standing.corrections if one.until is not Deadline.BEFORE_STROKE)
        played = replace(ruling.next(Action.PLAY_ON), relief=(), notes=())
        return replace(standing, ruling=played, corrections=lasting)
    done = replace(ruling.next(Action.PLAY_AS_IT_LIES), relief=(), notes=()).note("relief_has_been_taken")
    cost = _cost_of_option(case, standing)
    return replace(standing, ruling=done, relief_taken=standing.relief_taken + cost)


def put_or_played(case: Case, gap: int, before: Standing, told: AbstractSet[int]) -> bool:
    """Whether the ball had been put where the earlier ruling requires or lets it be put, or had been played."""
    if before.place in told or (relief_costs(before.ruling) and not _costs_one_way(before.ruling)):
        return not _took(case, before, Taken.NOTHING_YET)
    return ask(case, "14.5a", ball_settled[gap])


def cost_of_relief(case: Case, before: Standing, part: Ruling, told: AbstractSet[int]) -> tuple[Penalty, ...]:
    """What the relief cost that was taken before a later incident (Rule 1.3c(4): it comes on top)."""
    ruling = before.ruling
    if not relief_costs(ruling):
        return ()
    if before.place not in told and (_costs_one_way(ruling) or _follows_relief_at_one_cost(ruling, part)):
        return (strokes(ruling.relief[0].penalty, ruling.relief[0].citation),)
    return _cost_of_option(case, before)


def _cost_of_option(case: Case, standing: Standing) -> tuple[Penalty, ...]:
    """Read which option was taken, and return what it costs."""
    for option in standing.ruling.relief:
        if option.penalty and _took(case, standing, Taken(option.kind.value)):
            return (strokes(option.penalty, option.citation),)
    return ()


def _costs_one_way(ruling: Ruling) -> bool:
    """Whether relief must be taken, and costs the same whichever option is chosen."""
    return ruling.action is Action.TAKE_RELIEF and len({option.penalty for option in ruling.relief}) == 1


def relief_costs(ruling: Ruling) -> set[int]:
    """Return the strokes, other than none, that the relief offered by a ruling may cost."""
    return {option.penalty for option in ruling.relief} - {0}


def _follows_relief_at_one_cost(ruling: Ruling, part: Ruling) -> bool:
    """Whether an incident can only happen once a ball was dropped under one of the options, all at one price."""
    after_a_drop = any(citation.startswith(_FOLLOWS_RELIEF) for citation in part.citations)
    return after_a_drop and len({option.penalty for option in ruling.relief}) == 1


def _took(case: Case, before: Standing, taken: Taken) -> bool:
    """Read whether the player took this of what the standing ruling offered."""
    case.enter("1.3c(4)")
    took = case.is_one_of(option_taken[before.place], taken)
    case.leave()
    return took
