"""Relief beside a wall or in a wetland of no told status says so; nothing is drawn as if it were known."""

from datetime import date

import pytest
from shapely.geometry import LineString, box

from marram.course.model import Feature, Kind
from marram.relief import Drawn, Situation, relief_areas
from tests.relief.ground_for_tests import EMBEDDED, FREE_GENERAL, LATERAL_UNPLAYABLE, PLAYER, course_at

HOLE = (0.0, 0.0)
BALL = (0.0, 100.0)


def remarks(option, *features):
    links = course_at(HOLE, *features)
    situation = Situation(links, 1, played_on=date(2023, 6, 1), player=PLAYER, ball=BALL)
    (answer,) = relief_areas(situation, [option])
    assert isinstance(answer, Drawn)
    told = answer.areas[0].remarks
    return {"relief.barrier_near", "relief.wetland_in_area"} & set(told)


def wall(x):
    return Feature(Kind.BARRIER, "wall", LineString([(x, 90), (x, 130)]), tags={"barrier": "wall"})


def marsh(x):
    return Feature(Kind.WETLAND, "marsh", box(x, 90, x + 30, 130), tags={"natural": "wetland"})


@pytest.mark.parametrize("option", [LATERAL_UNPLAYABLE, EMBEDDED])
def test_relief_says_what_nobody_knows_of_the_ground_in_it(option):
    """A wall and a wetland within the area are told; out of reach of it they are not."""
    assert remarks(option, wall(0.5), marsh(0.3)) == {"relief.barrier_near", "relief.wetland_in_area"}
    assert remarks(option, wall(30), marsh(30)) == set()
    assert remarks(option) == set()


def test_a_wall_that_relief_is_taken_from_is_known():
    """Whoever takes free relief from a wall has said that it is an obstruction."""
    it = Feature(Kind.BARRIER, "wall", box(0.1, 90, 0.4, 130), tags={"barrier": "wall"})
    given = {"played_on": date(2023, 6, 1), "player": PLAYER, "ball": BALL, "condition": it}
    (answer,) = relief_areas(Situation(course_at(HOLE, it), 1, **given), [FREE_GENERAL])
    assert isinstance(answer, Drawn)
    assert "relief.barrier_near" not in answer.areas[0].remarks


@pytest.mark.parametrize("kind", [Kind.OBSTRUCTION, Kind.INTEGRAL_OBJECT])
def test_what_is_settled_is_not_told_as_unknown(kind):
    """An obstruction and an integral object are known."""
    known = Feature(kind, "wall", LineString([(0.5, 90), (0.5, 130)]), tags={"barrier": "wall"})
    assert remarks(LATERAL_UNPLAYABLE, known) == set()
