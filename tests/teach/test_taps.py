"""Questions answered on a drawing: right answers are those that the relief area itself allows."""

from functools import cache
from itertools import islice
from math import cos, pi, sin

import pytest
import shapely

from marram.course import load
from marram.demo import COURSE
from marram.errors import InputError
from marram.relief.geometry.limits import Bound
from marram.teach.quizzes.taps import Kind, TapQuestion, judge, tap_questions

MAP = load(COURSE)
FOUR = range(4)


@cache
def asked(kind: Kind) -> list[TapQuestion]:
    """Four questions of a kind: drawn once, and not before a test asks."""
    return list(islice(tap_questions(5, MAP, kind), len(FOUR)))


@pytest.mark.parametrize("at", FOUR)
def test_a_place_in_the_relief_area_is_right_and_one_nearer_the_hole_is_not(at: int) -> None:
    """The middle of the area is right; past the reference point towards the hole it is said that it is nearer the hole."""
    one = asked(Kind.DROP)[at]
    inside = one.area.polygon.representative_point()
    assert judge(one, [(inside.x, inside.y)]).right
    x, y = one.area.reference
    way = shapely.LineString([(x, y), one.area.hole])
    ahead = way.interpolate(min(0.5 * one.area.radius, way.length / 2))
    judged = judge(one, [(ahead.x, ahead.y)])
    assert not judged.right
    assert Bound.NOT_NEARER in judged.outside or Bound.ON_LINE in judged.outside
    far = judge(one, [(x - 9 * one.area.radius, y - 9 * one.area.radius)])
    assert Bound.SIZE in far.outside


@pytest.mark.parametrize("at", FOUR)
def test_the_reference_point_is_found_within_a_fingertip(at: int) -> None:
    """Tapped on it the answer is right; 2 m beside it is not, and the distance is told."""
    one = asked(Kind.REFERENCE)[at]
    x, y = one.area.reference
    assert judge(one, [(x + 0.1, y)]).right
    wrong = judge(one, [(x + 2.0, y)])
    assert not wrong.right
    assert wrong.away == pytest.approx(2.0)


@pytest.mark.parametrize("at", FOUR)
def test_an_area_counts_where_it_is_nearly_the_relief_area(at: int) -> None:
    """Its own outline with few corners counts; the whole circle about the reference point, half nearer the hole, does not."""
    one = asked(Kind.AREA)[at]
    outline = one.area.polygon.simplify(0.05)
    parts = shapely.get_parts(outline)
    largest = max(parts, key=lambda part: part.area)
    corners = [tuple(at) for at in largest.exterior.coords[:-1]][:24]
    if len(parts) == 1 and len(largest.exterior.coords) <= 24:
        assert judge(one, corners).right
    x, y = one.area.reference
    r = one.area.radius * 1.3
    circle = [(x + r * cos(turn * pi / 8), y + r * sin(turn * pi / 8)) for turn in range(16)]
    judged = judge(one, circle)
    assert judged.shared < 0.6
    assert not judged.right


@pytest.mark.parametrize("at", FOUR)
@pytest.mark.parametrize("kind", Kind)
def test_the_frame_holds_what_is_asked_for(kind: Kind, at: int) -> None:
    """The reference point and the whole relief area lie in the drawing, so that they can be tapped."""
    one = asked(kind)[at]
    view = one.view(320.0)
    assert view.shows(one.area.reference)
    assert view.frame.buffer(1e-6).covers(one.area.polygon)


def test_an_answer_of_the_wrong_shape_is_refused() -> None:
    """Two places for a drop, and two corners for an area, are told with what to do."""
    with pytest.raises(InputError, match="one place"):
        judge(asked(Kind.DROP)[0], [(0, 0), (1, 1)])
    with pytest.raises(InputError, match="corners"):
        judge(asked(Kind.AREA)[0], [(0, 0), (1, 1)])


def test_the_kinds_take_turns_and_the_seed_gives_the_same() -> None:
    """Three questions in a row are of three kinds; asked again they are the same."""
    first, again = (list(islice(tap_questions(9, MAP), 3)) for _ in range(2))
    assert {one.kind for one in first} == set(Kind)
    assert [(one.kind, one.placed.ball) for one in first] == [(one.kind, one.placed.ball) for one in again]
