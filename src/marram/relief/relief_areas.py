"""From relief options to relief areas: the entry of the layer."""

from collections.abc import Callable, Sequence
from dataclasses import replace

from marram.relief.areas.unsettled_near import with_unsettled_told
from marram.relief.constructions.back_on_the_line import back_on_the_line
from marram.relief.constructions.free import free
from marram.relief.constructions.lateral import lateral
from marram.relief.constructions.maximum import maximum_available
from marram.relief.constructions.spots import at_the_ball, behind_embedded_ball, dropping_zone, provisional
from marram.relief.constructions.stroke_and_distance import stroke_and_distance
from marram.relief.constructions.two_points import two_points
from marram.relief.place.answer import Answer, Drawn, NoRelief, Why
from marram.relief.place.situation import Situation
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption


def relief_areas(situation: Situation, options: Sequence[ReliefOption]) -> list[Answer]:
    """Draw relief options in a situation.

    Args:
        situation: the course, the hole, the day, the player, and every place known.
        options: the options to draw.

    Returns:
        One answer per option, in order: drawn, what it still needs, or why there is no relief.

    Raises:
        BadPlace: a place given does not lie where the option needs it.
    """
    situation = situation.with_usual_footprint()
    answers = (_with_room(draw(situation, option)) for option in options)
    return [_with_unsettled(answer, situation) for answer in answers]


def draw(situation: Situation, option: ReliefOption) -> Answer:
    """Draw one option."""
    if option.clear_of_sight != situation.line_of_sight:
        situation = replace(situation, line_of_sight=option.clear_of_sight)
    if option.kind is ReliefKind.FREE and option.reference in _FREE_BY_REFERENCE:
        return _FREE_BY_REFERENCE[option.reference](situation, option)
    return _BY_KIND[option.kind](situation, option)


_BY_KIND: dict[ReliefKind, Callable[[Situation, ReliefOption], Answer]] = {
    ReliefKind.STROKE_AND_DISTANCE: stroke_and_distance,
    ReliefKind.BACK_ON_THE_LINE: back_on_the_line,
    ReliefKind.LATERAL: lateral,
    ReliefKind.FREE: free,
    ReliefKind.MAXIMUM_AVAILABLE: maximum_available,
    ReliefKind.EXTENDED: two_points,
    ReliefKind.DROPPING_ZONE: dropping_zone,
    ReliefKind.UNDER_WHERE_IT_CAME_TO_REST: at_the_ball,
    ReliefKind.PROVISIONAL: provisional,
    ReliefKind.NEAREST_SPOT: at_the_ball,
    ReliefKind.PREFERRED_LIE: at_the_ball,
    ReliefKind.REPLAY: stroke_and_distance,
    ReliefKind.COMPLETE_RELIEF_OUTSIDE: free,
}

_FOUND = frozenset({Reference.NEAREST_POINT, Reference.MAXIMUM_POINT})
"""Reference points that are searched for among the places that fulfil every limit."""

_FREE_BY_REFERENCE: dict[Reference, Callable[[Situation, ReliefOption], Answer]] = {
    Reference.BEHIND_EMBEDDED_BALL: behind_embedded_ball,
    Reference.UNDER_BALL: at_the_ball,
    Reference.NEAREST_SPOT_IN_GENERAL_AREA: behind_embedded_ball,
    Reference.BALL: at_the_ball,
    Reference.ESTIMATED_SPOT: at_the_ball,
    Reference.MAXIMUM_POINT: maximum_available,
    Reference.DROPPING_ZONE: dropping_zone,
}


def _with_unsettled(answer: Answer, situation: Situation) -> Answer:
    if not isinstance(answer, Drawn):
        return answer
    return replace(
        answer, areas=with_unsettled_told(answer.areas, situation.ground.lies, situation.every_condition)
    )


def _with_room(answer: Answer) -> Answer:
    """Say that there is no relief where no place fulfils all limits.

    A reference point that was searched for fulfils them itself: it is an answer even where nothing lies around it,
    so that complete relief exists exactly where the point of maximum available relief does not arise.
    """
    if not isinstance(answer, Drawn):
        return answer
    if answer.option.reference in _FOUND:
        return answer
    kept = tuple(area for area in answer.areas if area.has_room)
    return Drawn(answer.option, kept) if kept else NoRelief(answer.option, Why.NO_ROOM)
