"""Which acts of a story about strokes can be told one after the other: where the ball lay, and where it was last played from."""

from itertools import pairwise

from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.facts.penalty_area import (
    first_penalty_area_colour,
    last_stroke_from_penalty_area,
    penalty_area_colour,
)
from marram.rules.facts.several import Taken
from marram.rules.story.story import Happened

_IN_PENALTY_AREA = "ball_in_penalty_area"
"""An incident in which the ball lies in a penalty area, where it is played as it lies."""
_FEWEST_FROM_PENALTY_AREA = 2
"""Strokes taken before, where the last of them was made from a penalty area: one takes the ball there."""
_LOCAL_RULES = frozenset(fact.name for fact in LOCAL_RULES.values())
_WITHOUT_ALTERNATIVE = "dropped_where_lost"
"""An incident told where the alternative to stroke and distance (Model Local Rule E-5) is not in force."""
_NOTHING_PAID = (None, Taken.FREE.value, Taken.AS_IT_LIES.value)


def can_follow(happened: tuple[Happened, ...], before: int) -> bool:
    """Return whether acts can be told in this order by a person who has played golf.

    Nobody stands in the teeing area once strokes have been played with the ball, nor pays for relief on a putting green; and
    where the last stroke was made from must be where the act before left the ball.

    Args:
        happened: the acts, in order.
        before: the strokes taken before them.
    """
    if any(_is_on_tee(one) or _pays_on_green(one) for one in happened):
        return False
    if any(_lay_in(one) is Area.PUTTING_GREEN for one in happened[:-1]):
        return False
    if _from_penalty_area(happened[0]) and before < _FEWEST_FROM_PENALTY_AREA:
        return False
    if not _under_the_same_local_rules(happened):
        return False
    return all(_agree(one, after) for one, after in pairwise(happened))


def _under_the_same_local_rules(happened: tuple[Happened, ...]) -> bool:
    """Whether no Local Rule is in force in one act and not in another, nor one that the other act is told without."""
    told = [{name: each for name, each in one.facts.items() if name in _LOCAL_RULES} for one in happened]
    adopted = {name for each in told for name, answer in each.items() if answer == "yes"}
    denied = {name for each in told for name, answer in each.items() if answer == "no"}
    dropped = _WITHOUT_ALTERNATIVE in {one.incident for one in happened}
    return not adopted & denied and not (dropped and LOCAL_RULES["E-5"].name in adopted)


def _agree(one: Happened, after: Happened) -> bool:
    """Whether the last stroke that is told of was made from where the act before it left the ball."""
    told = _from_penalty_area(after)
    if told is None or (one.strokes or 0) > 1:  # the ball may have been in a penalty area in between
        return True
    colours = (
        one.facts.get(penalty_area_colour.name),
        after.facts.get(first_penalty_area_colour.name),
    )
    if None not in colours and colours[0] != colours[1]:
        return False  # it is the penalty area that the ball was just played from
    return told is _played_on_from_penalty_area(one)


def _played_on_from_penalty_area(one: Happened) -> bool:
    if one.option == Taken.STROKE_AND_DISTANCE.value:
        return bool(_from_penalty_area(one))
    inside = one.incident == _IN_PENALTY_AREA or _lay_in(one) is Area.PENALTY_AREA
    return inside and one.option == Taken.AS_IT_LIES.value


def _from_penalty_area(one: Happened) -> bool | None:
    """Whether the last stroke was made from a penalty area; ``None`` where it is not told."""
    told = one.facts.get(last_stroke_from_penalty_area.name)
    return None if told is None else told == "yes"


def _lay_in(one: Happened) -> Area | None:
    told = one.facts.get(area_of_ball.name)
    return None if told is None else Area(told)


def _is_on_tee(one: Happened) -> bool:
    return _lay_in(one) is Area.TEEING_AREA or one.facts.get("altered_place") == "own_teeing_area"


def _pays_on_green(one: Happened) -> bool:
    return _lay_in(one) is Area.PUTTING_GREEN and one.option not in _NOTHING_PAID
