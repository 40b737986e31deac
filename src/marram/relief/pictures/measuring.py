"""How a relief area is measured on the ground: where its reference point is, with which club, how far, and straight across what.

Definition of Relief Area (Rules of Golf 2019 and 2023): club-lengths are measured straight across a ditch, a hole and
the like, and across or through a tree, a fence, a wall and the like, but not through ground that rises and falls by
nature. Definition of Club-Length: the longest club of the player other than a putter, from the toe to the butt end.
"""

from collections.abc import Iterator
from math import atan2, cos, degrees, radians, sin

from shapely.geometry import Point

from marram.course.lies.as_read import as_read
from marram.course.model import Course, Kind
from marram.relief.areas.construction import Measure, Role, distance
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.picture_words import TEE_USED, ground_words
from marram.rules.relief_option import Limit
from marram.words.lengths import length_words, near_words
from marram.words.messages import listed
from marram.words.penalties import count_words
from marram.words.place import writing
from marram.words.texts import text

ACROSS = (
    Kind.WATER,
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.OBSTRUCTION,
    Kind.BARRIER,
    Kind.INTEGRAL_OBJECT,
    Kind.WETLAND,
    Kind.TREES,
)
"""What on a map is measured straight across or through: ditches and water, walls and sheds, trees."""

WORTH_SAYING = 0.3
"""Metres: a point nearer the ball than this is not described from the ball (own choice)."""

EDGE = 0.1
"""Metres: a point so near an edge lies on it, not inside (own choice)."""

_FROM_BALL = {Role.REFERENCE: "from_ball", Role.FAIRWAY_POINT: "fairway_from_ball"}
_WAYS = ("towards", "ahead_right", "right", "back_right", "back", "back_left", "left", "ahead_left")


def how_to_measure(area: ReliefArea, course: Course) -> tuple[str, ...]:
    """Return how to measure a relief area on the ground, in the order in which it is done, from the reference point that the option names.

    Args:
        area: the relief area as drawn.
        course: the map, for what lies within reach.
    """
    return tuple(_steps(area, course))


def how_to_measure_anywhere(club_length: float) -> str:
    """Return which club is used and what is measured straight across, wherever relief is taken.

    Args:
        club_length: metres that the drawings take for the player's club.
    """
    if writing().yards:
        return text("relief.measuring.anywhere.feet", club=near_words(club_length))
    return text("relief.measuring.anywhere", club=f"{club_length:.2f}")


def _steps(area: ReliefArea, course: Course) -> Iterator[str]:
    for moved in area.measures:
        key = _FROM_BALL.get(moved.end) if moved.start is Role.BALL else None
        if moved.end is Role.FAIRWAY_POINT and TEE_USED in area.assumed:
            key = "tee_from_ball"
        if key is not None and moved.metres >= WORTH_SAYING:
            yield text(f"relief.measuring.{key}", length=length_words(moved.metres), way=_way(area, moved))
    if area.drop_line is not None and area.drop_line.stretches:
        line = area.drop_line
        near, far = line.stretches[0][0], line.stretches[-1][1]
        key = "line_on" if line.goes_on else "line"
        if near < EDGE:
            key += "_from_there"
        yield text(f"relief.measuring.{key}", near=length_words(near), far=length_words(far))
    if not area.radius:
        return
    clubs = area.option.club_lengths or area.radius / area.club_length
    yield text(
        "relief.measuring.one_club" if clubs == 1 else "relief.measuring.clubs",
        clubs=count_words(clubs),
        size=length_words(area.radius),
    )
    if Limit.NOT_NEARER in area.option.limits and area.drop_line is None:
        yield text("relief.measuring.not_nearer", length=length_words(distance(area.reference, area.hole)))
    across = _across(area, course)
    if across:
        yield text("relief.measuring.across_here", things=listed(across, "and"))


def _way(area: ReliefArea, moved: Measure) -> str:
    """Return where a point lies from the ball, for somebody at the ball who faces the hole."""
    assert moved.bearing is not None
    turn = radians(moved.bearing)
    x, y = area.reference
    if moved.end is Role.REFERENCE:
        x, y = x - moved.metres * sin(turn), y - moved.metres * cos(turn)
    to_hole = degrees(atan2(area.hole[0] - x, area.hole[1] - y))
    return text(f"relief.measuring.way.{_WAYS[round((moved.bearing - to_hole) / 45) % 8]}")


def _across(area: ReliefArea, course: Course) -> tuple[str, ...]:
    """Return what on the map a tape from the reference point meets within the club-lengths, in words."""
    reach = Point(area.reference).buffer(area.radius or 0.0)
    start = Point(area.reference)
    found = [
        feature.name or ground_words(feature.kind)
        for feature, ground in as_read(course, *ACROSS)
        if ground.intersects(reach) and not ground.buffer(-EDGE).contains(start)
    ]
    return tuple(dict.fromkeys(found))
