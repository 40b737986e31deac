"""What speaks against a hole location: The R&A's guidance (four paces from the edge, three from a recent hole, three
from a severe slope, level ground around it) and Lemons's figures, on greens in closed form."""

from datetime import date

import pytest
from shapely.geometry import Point

from marram.course.greens.hole_warnings import Against, RecentHole, hole_warnings
from marram.course.greens.slope import GreenSlopes, slope_limits
from tests.course.test_slope import LINKS, measured, terraced

HOLE = LINKS.hole(1)
PACE = 0.9144


def kinds(place, **more):
    return [one.kind for one in hole_warnings(HOLE, place, **more)]


def test_the_middle_of_a_green_is_free_of_warnings() -> None:
    """Ten metres from every edge, no recent hole, no slope known."""
    assert kinds(Point(150, 0)) == []


@pytest.mark.parametrize(("paces", "expected"), [(3.99, [Against.NEAR_EDGE]), (4.01, [])])
def test_four_paces_from_the_edge(paces, expected) -> None:
    """The green is a square of 20 m about (150, 0); a pace is a yard."""
    assert kinds(Point(160 - paces * PACE, 0)) == expected


def test_off_the_green_is_all_that_is_said() -> None:
    """1.5 m beyond the edge."""
    (one,) = hole_warnings(HOLE, Point(161.5, 0))
    assert (one.kind, one.words) == (Against.OFF_GREEN, "It is 1.5 m off the green.")


def test_three_paces_from_a_recent_hole_with_its_day() -> None:
    """2.0 paces from one of yesterday; 3.1 paces from another is enough."""
    recent = [RecentHole(Point(150 + 2 * PACE, 0), date(2025, 6, 20)), RecentHole(Point(150, 3.1 * PACE))]
    (one,) = hole_warnings(HOLE, Point(150, 0), recent=recent)
    assert one.kind is Against.NEAR_RECENT
    assert one.words.startswith("It is 2.0 paces from the hole of 2025-06-20")


@pytest.mark.parametrize(
    ("percent", "expected"),
    [(3.8, []), (4.0, [Against.STEEP]), (5.3, [Against.STEEP]), (5.5, [Against.TOO_STEEP])],
)
def test_steep_and_too_steep_at_ten_feet(percent, expected) -> None:
    """Lemons at a Stimpmeter reading of 10: recommended to 3.90 %, marginal to 5.42 %."""
    slopes = GreenSlopes(LINKS, measured(lambda x, _y: percent / 100 * x), slope_limits(10))
    found = hole_warnings(HOLE, Point(150, 0), slopes=slopes)
    assert [one.kind for one in found] == expected
    assert all(f"falls {percent:g} %" in one.words for one in found)


def test_near_a_severe_slope() -> None:
    """2 m from the foot of a face of 17 % the hole's own ground is level, but three paces are asked for."""
    slopes = GreenSlopes(LINKS, measured(terraced), slope_limits(10))
    assert kinds(Point(153.6, 0), slopes=slopes) == [Against.NEAR_SEVERE_SLOPE]
    assert kinds(Point(156, 0), slopes=slopes) in ([], [Against.NEAR_EDGE])


def test_a_slope_just_beyond_a_figure_does_not_read_as_the_figure() -> None:
    """3.91 % is more than the 3.9 % recommended at ten feet, and is said with both decimals."""
    slopes = GreenSlopes(LINKS, measured(lambda x, _y: 0.03909 * x), slope_limits(10))
    (one,) = hole_warnings(HOLE, Point(150, 0), slopes=slopes)
    assert one.words.startswith("The ground around it falls 3.91 %")
