"""From relief options to relief areas: the entry of the layer."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from math import isfinite

from marram.course.model import Course, Feature
from marram.errors import BadPlace, DateNotCovered
from marram.relief.constructions.back_on_the_line import back_on_the_line
from marram.relief.constructions.free import free
from marram.relief.constructions.lateral import lateral
from marram.relief.constructions.maximum import maximum_available
from marram.relief.constructions.spots import at_the_ball, behind_embedded_ball, dropping_zone, provisional
from marram.relief.constructions.stroke_and_distance import stroke_and_distance
from marram.relief.constructions.two_points import two_points
from marram.relief.geometry.outline import XY, Outline
from marram.relief.interference.shape import Footprint
from marram.relief.interference.usual_footprint import USUAL_STROKE_CLUB, facing, footprint
from marram.relief.place.ground import Ground, ground_of
from marram.relief.place.player import Player
from marram.relief.place.situation import Answer, Drawn, NoRelief, Situation, Why
from marram.rules.editions import EDITION_2019
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption

_LARGEST = 100_000.0
"""Metres: a place farther from the middle of a course than this is not in local metres."""


def relief_areas(
    course: Course,
    hole_number: int,
    ball_xy: XY | None,
    options: Sequence[ReliefOption],
    *,
    played_on: date,
    player: Player,
    entry_xy: XY | None = None,
    previous_xy: XY | None = None,
    condition: Feature | Outline | Sequence[Feature | Outline] | None = None,
    footprint_of_stroke: Footprint | None = None,
    direction_of_play: float | None = None,
    stroke_club: float = USUAL_STROKE_CLUB,
    tall: bool = False,
    stance_counts: bool = True,
    tee_markers: tuple[XY, XY] | None = None,
    zone: Feature | Outline | None = None,
    provisional_xy: XY | None = None,
    opposite_xy: XY | None = None,
    last_outside_xy: XY | None = None,
    estimated_xy: XY | None = None,
    dropped_at: XY | None = None,
) -> list[Answer]:
    """Draw relief options at a place on a course.

    Args:
        course: the course.
        hole_number: the hole being played.
        ball_xy: the spot of the original ball in local metres (estimated if need be); for a ball out of
            bounds, where it last crossed the boundary; ``None`` when it is not known.
        options: the options to draw.
        played_on: the day of play.
        player: the player.
        entry_xy: where the ball last crossed the edge of the penalty area.
        previous_xy: where the previous stroke was made.
        condition: what relief is taken from; several where relief is taken from all of them at once.
        footprint_of_stroke: lie, stance and swing; when not given, a usual one is made.
        direction_of_play: radians anticlockwise from east; when not given, straight at the hole, and said.
        stroke_club: metres, the length of the club of the stroke that relief is judged by.
        tall: whether the condition stands up, so that the whole swing matters.
        stance_counts: whether the stance counts as interference (a Local Rule may say that it does not).
        tee_markers: where the tee-markers stand (the outside front of each).
        zone: the dropping zone to use.
        provisional_xy: where the provisional ball lies.
        opposite_xy: the point on the opposite edge as far from the hole (Model Local Rule B-2).
        last_outside_xy: where the last stroke from outside a penalty area was made.
        estimated_xy: where a ball deliberately deflected or stopped would have come to rest.
        dropped_at: back on the line: the spot the dropped ball first touched; for 2019 the point chosen, or
            where none was chosen the spot first touched, from which it follows.

    Returns:
        One answer per option, in order: drawn, what it still needs, or why there is no relief.

    Raises:
        BadPlace: a place, hole or length does not fit the course.
        DateNotCovered: the day of play lies before 2019, when relief areas came into the Rules.
    """
    if played_on < EDITION_2019:
        raise DateNotCovered(
            f"{played_on} lies before {EDITION_2019}: relief areas came with the Rules of that day, and former "
            "relief is not drawn."
        )
    _check_places(
        ball=ball_xy,
        crossing=entry_xy,
        previous=previous_xy,
        provisional=provisional_xy,
        opposite=opposite_xy,
        last_outside=last_outside_xy,
        estimated=estimated_xy,
        dropped=dropped_at,
    )
    ground = ground_of(course, hole_number)
    situation = Situation(
        ground=ground,
        player=player,
        played_on=played_on,
        ball=ball_xy,
        entry=entry_xy,
        previous=previous_xy,
        opposite=opposite_xy,
        last_outside=last_outside_xy,
        estimated=estimated_xy,
        conditions=_outlines(ground, condition),
        tee_markers=tee_markers,
        dropping_zone=_outlines(ground, zone)[0] if zone is not None else None,
        provisional=provisional_xy,
        dropped_at=dropped_at,
        line_of_play=ball_xy is not None and ground.area_at(ball_xy) is Area.PUTTING_GREEN,
    )
    situation = _with_footprint(
        situation, footprint_of_stroke, direction_of_play, stroke_club, tall=tall, stance=stance_counts
    )
    return [_with_room(draw(situation, option)) for option in options]


def draw(situation: Situation, option: ReliefOption) -> Answer:
    """Draw one option."""
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

_FREE_BY_REFERENCE: dict[Reference, Callable[[Situation, ReliefOption], Answer]] = {
    Reference.BEHIND_EMBEDDED_BALL: behind_embedded_ball,
    Reference.UNDER_BALL: at_the_ball,
    Reference.NEAREST_SPOT_IN_GENERAL_AREA: behind_embedded_ball,
    Reference.BALL: at_the_ball,
    Reference.ESTIMATED_SPOT: at_the_ball,
    Reference.MAXIMUM_POINT: maximum_available,
    Reference.DROPPING_ZONE: dropping_zone,
}


def _with_room(answer: Answer) -> Answer:
    """Say that there is no relief where no place fulfils all limits."""
    if not isinstance(answer, Drawn):
        return answer
    kept = tuple(area for area in answer.areas if area.has_room)
    return Drawn(answer.option, kept) if kept else NoRelief(answer.option, Why.NO_ROOM)


def _with_footprint(
    situation: Situation,
    given: Footprint | None,
    direction: float | None,
    club: float,
    *,
    tall: bool,
    stance: bool,
) -> Situation:
    if given is not None:
        return replace(situation, footprint=given)
    right_handed, ball = situation.player.right_handed, situation.ball
    if right_handed is None or ball is None or not situation.conditions:
        return situation
    assumed = (*situation.assumed, "relief.usual_stance_and_swing")
    if direction is None:
        direction = facing(ball, situation.hole)
        assumed = (*assumed, "relief.play_straight_at_hole")
    made = footprint(right_handed=right_handed, direction=direction, club=club, tall=tall, stance=stance)
    return replace(situation, footprint=made, assumed=assumed)


def _outlines(
    ground: Ground, shapes: Feature | Outline | Sequence[Feature | Outline] | None
) -> tuple[Outline, ...]:
    if shapes is None:
        return ()
    every = [shapes] if isinstance(shapes, Feature | Outline) else list(shapes)
    made = []
    for one in every:
        outline = ground.outline(one) if isinstance(one, Feature) else one
        if outline.geometry.geom_type not in {"Polygon", "MultiPolygon"}:
            name = one.ident if isinstance(one, Feature) else "the condition"
            raise BadPlace(
                f"{name} is mapped as a {outline.geometry.geom_type}, which has no area. Draw its outline, or "
                "give a line its width."
            )
        _ = outline.edges  # a shape that is no valid area is refused here, not where it is first used
        made.append(outline)
    return tuple(made)


def _check_places(**places: XY | None) -> None:
    faults = [
        f"The {name} place {place} is not in local metres of this course: give (x east, y north)."
        for name, place in places.items()
        if place is not None
        and (len(place) != 2 or not all(isfinite(one) and abs(one) < _LARGEST for one in place))
    ]
    if faults:
        raise BadPlace(*faults)
