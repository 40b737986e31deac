"""How relief is measured on the ground, in words: distances agree with the area drawn, ways with where things lie.

Definitions of Club-Length and Relief Area, Rules of Golf 2019 and 2023: straight across a ditch, through a tree or fence.
"""

import re
from dataclasses import replace
from math import cos, radians, sin

import pytest
from shapely.geometry import Point, box

from marram.course.model import Feature, Kind
from marram.relief.areas.construction import Role
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.pictures.measuring import how_to_measure, how_to_measure_anywhere
from marram.words.texts import text as said
from tests.relief.test_drawing import CASES, COURSE, areas

YARD = 0.9144


def metres_in(words: str) -> list[tuple[float, float]]:
    return [(float(m), float(yd)) for m, yd in re.findall(r"([\d.]+) m \(([\d.]+) yd\)", words)]


@pytest.mark.parametrize("name", CASES)
def test_every_distance_is_one_of_the_area(name: str) -> None:
    """The size, the way to the hole and from the ball, the stretch of the line: each to the last digit said, in both units."""
    (area, *_) = areas(name)
    steps = " ".join(how_to_measure(area, COURSE))
    known = [area.radius or 0.0, *(one.metres for one in area.measures)]
    known += [end for stretch in (area.drop_line.stretches if area.drop_line else ()) for end in stretch]
    assert all(
        min(abs(metres - one) for one in known) <= 0.051 and metres / YARD == pytest.approx(yards, abs=0.12)
        for metres, yards in metres_in(steps)
    )
    assert bool(area.radius) == any(
        abs(metres - area.radius) < 0.006 for metres, _ in metres_in(steps) if area.radius
    )


@pytest.mark.parametrize(
    ("turn", "way"),
    [(0, "towards"), (50, "ahead_right"), (90, "right"), (180, "back"), (260, "left"), (310, "ahead_left")],
)
def test_the_way_from_the_ball_is_told_facing_the_hole(turn: float, way: str) -> None:
    """A point moved clockwise about the ball, from straight at the hole, comes by ahead right, right, back and left."""
    (area,) = areas("path")
    (moved,) = (one for one in area.measures if one.start is Role.BALL and one.end is Role.REFERENCE)
    ball = Point(area.reference).x, Point(area.reference).y
    hole = (ball[0], ball[1] + 100.0)  # north of the ball
    here = ball[0] + 2 * sin(radians(turn)), ball[1] + 2 * cos(radians(turn))
    turned = replace(
        area, reference=here, hole=hole, measures=(replace(moved, metres=2.0, bearing=float(turn)),)
    )
    assert said(f"relief.measuring.way.{way}") in how_to_measure(turned, COURSE)[0]


def with_a(kind: Kind, area: ReliefArea, away: float) -> tuple[str, ...]:
    """Return the steps with something one metre wide so far east of the reference point."""
    x, y = area.reference
    ditch = Feature(kind, "ditch", box(x + away, y - 5, x + away + 1, y + 5), name="Long Ditch")
    return how_to_measure(area, replace(COURSE, features=(*COURSE.features, ditch)))


def test_what_lies_within_reach_is_measured_straight_across() -> None:
    """A wall within the club-lengths is named; one beyond them, and a bunker, are not."""
    (area,) = areas("unplayable")
    assert area.radius
    here = said("relief.measuring.across_here", things="Long Ditch")
    assert here in with_a(Kind.OBSTRUCTION, area, area.radius - 0.1)
    assert here not in with_a(Kind.OBSTRUCTION, area, area.radius + 0.1)
    assert here not in with_a(Kind.BUNKER, area, area.radius - 0.1)


def test_the_club_is_the_players_own() -> None:
    """The longest club other than a putter, of the length that the drawings take."""
    assert "other than a putter" in how_to_measure_anywhere(1.1)
    assert "1.10 m" in how_to_measure_anywhere(1.1)
