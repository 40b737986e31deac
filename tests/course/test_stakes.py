"""Stakes and the string line between them, on squares drawn in metres.

Sources: where stakes define a boundary, its edge is the line between their course-side points at ground level
(Definition of out of bounds); a clear line of sight from each to the next and no more than 25 yards between them
where balls may come (Arizona Golf Association, rules committee handbook, chapter V, *Marking the Course*). Distances
and angles are closed forms on the figures drawn.
"""

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Point, Polygon, box

from marram.course import check
from marram.course.checks.stake_checks import FURTHEST, check_stakes
from marram.course.fault import FaultList, Severity
from marram.course.model import Kind
from tests.course.drawing import PLANE, course, drawn, feature, one_hole, write

GROUND = box(-100, -100, 300, 100)
"""A boundary of 1000 m with four corners."""


def boundary(shape=GROUND, **tags):
    return feature(Kind.BOUNDARY, shape, "boundary", tags={"marram": "boundary", **tags})


def stake(x, y, ident="", colour="white"):
    return feature(Kind.STAKE, Point(x, y), ident or f"stake {x:g} {y:g}", tags={"colour": colour})


def around(shape, apart):
    """Return stakes on every side of a polygon, its corners included, no further apart than given."""
    corners = list(shape.exterior.coords)
    places = []
    for start, end in itertools.pairwise(corners):
        parts = math.ceil(math.dist(start, end) / apart)
        places += [
            tuple(a + (b - a) * part / parts for a, b in zip(start, end, strict=True))
            for part in range(parts)
        ]
    return [stake(x, y, f"s{number}") for number, (x, y) in enumerate(places)]


def found(*features):
    faults = FaultList(PLANE)
    check_stakes(course(*features), faults)
    return faults.found


def at(fault):
    return PLANE.to_metres(fault.longitude, fault.latitude)


def test_a_well_staked_boundary_has_no_fault() -> None:
    """A stake at each corner and never more than 20 m between: each string is the mapped edge."""
    assert found(boundary(), *around(GROUND, 20)) == []


@settings(deadline=None, max_examples=30)
@given(turn=st.floats(0, 2 * math.pi), apart=st.floats(3, 22), sides=st.integers(3, 9))
def test_strings_on_a_regular_polygon_are_its_edge(turn, apart, sides) -> None:
    """Whichever way it lies, a polygon staked at its corners and along its sides has no fault."""
    r = 60.0
    corners = [
        (r * math.cos(turn + 2 * math.pi * k / sides), r * math.sin(turn + 2 * math.pi * k / sides))
        for k in range(sides)
    ]
    shape = Polygon(corners)
    assert found(boundary(shape), *around(shape, apart)) == []


def test_a_missing_stake_is_a_gap_with_its_place() -> None:
    """One of the stakes 20 m apart pulled: 40 m of string, more than 25 yards, said where the stake is missing."""
    stakes = around(GROUND, 20)
    gone = next(
        one
        for one in stakes
        if one.geometry.equals(Point(-60, -100)) or one.geometry.equals(Point(100, -100))
    )
    (fault,) = found(boundary(), *(one for one in stakes if one is not gone))
    assert fault.check == "stake_gap"
    assert "40.0 m apart, more than 22.9 m (25 yards)" in fault.what
    assert at(fault) == pytest.approx((gone.geometry.x, gone.geometry.y), abs=0.01)


def test_the_figure_is_25_yards() -> None:
    """25 yards of 0.9144 m are not too far, a centimetre more is."""
    yards = 25 * 0.9144
    assert pytest.approx(yards) == FURTHEST
    for apart, faulty in ((yards, False), (yards + 0.01, True)):
        shape = box(0, 0, apart, 10)
        checks = {one.check for one in found(boundary(shape), *around(shape, 30))}
        assert checks == ({"stake_gap"} if faulty else set())


def test_a_corner_without_a_stake_says_how_far_the_string_cuts_it() -> None:
    """Stakes 10 m to each side of a right-angled corner: the string passes 10/sqrt(2) = 7.07 m inside it."""
    shape = box(0, 0, 60, 60)
    stakes = [one for one in around(shape, 10) if not one.geometry.equals(Point(60, 60))]
    (fault,) = found(boundary(shape), *stakes)
    assert fault.check == "corner_without_stake"
    assert "7.07 m inside" in fault.what
    assert at(fault) == pytest.approx((60, 60), abs=0.01)


def test_a_string_across_a_curve_departs_by_its_sagitta() -> None:
    """On a circle of radius R the string of a chord c lies R - sqrt(R² - c²/4) inside the edge; R 60 m, twelve stakes."""
    r, parts = 60.0, 24
    circle = Polygon(
        [(r * math.cos(2 * math.pi * k / 240), r * math.sin(2 * math.pi * k / 240)) for k in range(240)]
    )
    places = [circle.exterior.coords[k * 240 // parts] for k in range(parts)]
    faults = found(boundary(circle), *(stake(x, y) for x, y in places))
    chord = 2 * r * math.sin(math.pi / parts)
    sagitta = r - math.sqrt(r**2 - chord**2 / 4)
    assert {one.check for one in faults} == {"string_off_edge"}
    assert len(faults) == parts
    assert all(f"runs {sagitta:.2f} m inside" in one.what for one in faults)


@pytest.mark.parametrize(("off", "faulty"), [(0.0426, False), (0.0428, True)])
def test_a_departure_of_a_ball_is_too_much(off, faulty) -> None:
    """An edge bent by more than 42.67 mm, the least diameter of a ball (Equipment Rules), leaves a ball in doubt."""
    shape = Polygon([(0, 0), (10, -off), (20, 0), (20, 15), (0, 15)])
    stakes = [stake(x, y) for x, y in ((0, 0), (20, 0), (20, 15), (0, 15))]
    assert {one.check for one in found(boundary(shape), *stakes)} == (
        {"string_off_edge"} if faulty else set()
    )


def test_a_stake_off_the_mapped_line_says_how_far_and_on_which_side() -> None:
    """A stake 0.5 m inside and one 1.2 m outside the drawn edge, and nothing else."""
    shape = box(0, 0, 60, 60)
    stakes = [one for one in around(shape, 20) if one.geometry.y != 0 or one.geometry.x in {0, 60}]
    faults = found(boundary(shape), *stakes, stake(20, 0.5, "in"), stake(40, -1.2, "out"))
    assert [(one.check, one.feature) for one in faults] == [
        ("stake_off_edge", "in"),
        ("stake_off_edge", "out"),
    ]
    assert "stands 0.50 m inside the mapped edge" in faults[0].what
    assert "stands 1.20 m outside the mapped edge" in faults[1].what
    assert at(faults[1]) == pytest.approx((40, -1.2), abs=0.01)


def test_a_building_in_the_string_is_named_with_its_place() -> None:
    """A hut of 4 m across the edge between two stakes cuts their string; trees there are worth a look."""
    shape = box(0, 0, 60, 60)
    hut = feature(Kind.OBSTRUCTION, box(8, -2, 12, 2), "way/1", name="Pump house")
    tree = feature(Kind.TREES, Point(30, 0.2), "tree")
    (blocked, look) = found(boundary(shape), *around(shape, 20), hut, tree)
    assert (blocked.check, blocked.severity) == ("string_blocked", Severity.WARNING)
    assert "an obstruction (Pump house)" in blocked.what
    assert at(blocked) == pytest.approx((10, 0), abs=2.01)
    assert (look.check, look.severity) == ("string_blocked", Severity.NOTE)
    assert at(look) == pytest.approx((30, 0), abs=0.31)


def test_two_stakes_that_could_be_next_are_told() -> None:
    """A boundary that runs out and back 6 m apart, staked every 20 m: across is nearer than the next along it."""
    shape = Polygon([(0, 0), (60, 0), (60, 40), (80, 40), (80, 80), (-20, 80), (-20, 40), (0, 40)])
    assert found(boundary(shape), *around(shape, 20)) == []
    strip = Polygon([(0, 0), (60, 0), (60, 100), (33, 100), (33, 20), (27, 20), (27, 100), (0, 100)])
    faults = found(boundary(strip), *around(strip, 20))
    assert {one.check for one in faults} == {"two_next_stakes"}
    assert any(
        "from s" in one.what and "20.0 m away, and" in one.what and "6.0 m away" in one.what for one in faults
    )
    assert all(
        at(one)[0] == pytest.approx(33, abs=0.01) or at(one)[0] == pytest.approx(27, abs=0.01)
        for one in faults
    )


def test_stakes_beside_a_painted_line_only_point_it_out() -> None:
    """Where a line is painted it defines the edge, and no string is stretched: far apart is no fault."""
    stakes = around(GROUND, 100)
    assert found(boundary(), *stakes)
    assert found(boundary(marked_by="stakes;line"), *stakes) == []


def test_a_fence_along_a_part_needs_no_stakes() -> None:
    """Three sides fenced, the fourth staked: only the staked side is looked at, to both ends of the fence."""
    fence = feature(Kind.MARKING, LineString([(300, -100), (300, 100), (-100, 100), (-100, -100)]), "fence")
    row = [stake(x, -100) for x in range(-80, 300, 20)]
    assert found(boundary(), fence, *row) == []
    (fault,) = found(boundary(), fence, *row[1:])
    assert (fault.check, "the end of another marking" in fault.what) == ("stake_gap", True)


def test_a_boundary_marked_by_stakes_has_one_at_each_corner() -> None:
    """marked_by=stakes without mapped stakes: the corners as drawn are the stakes, and long sides are gaps."""
    assert found(boundary(box(0, 0, 20, 20), marked_by="stakes")) == []
    faults = found(boundary(box(0, 0, 20, 50), marked_by="stakes"))
    assert [one.check for one in faults] == ["stake_gap", "stake_gap"]
    assert "corner 1 of boundary" in faults[0].what or "corner 2 of boundary" in faults[0].what


def test_red_and_yellow_stakes_stand_on_penalty_areas() -> None:
    """A red stake by a red edge is its stake; a yellow one far from any yellow edge is told; blue is no colour here."""
    red = feature(Kind.RED_PENALTY_AREA, box(0, 0, 20, 20), "pond")
    stakes = [stake(x, y, colour="red") for x, y in ((0, 0), (20, 0), (20, 20), (0, 20))]
    assert found(red, *stakes) == []
    faults = found(
        red,
        *stakes,
        stake(0, 5, "y", colour="yellow"),
        stake(5, 0, "b", colour="blue"),
        stake(9, 0, "n", colour=""),
    )
    assert [(one.check, one.feature) for one in faults] == [
        ("stake_colour", "b"),
        ("stake_colour", "n"),
        ("stake_of_no_edge", "y"),
    ]


def test_one_stake_alone_marks_no_line() -> None:
    """A single stake on an edge is told as such, not as a gap with itself."""
    (fault,) = found(boundary(), stake(0, -100))
    assert fault.check == "stake_alone"


def test_lines_of_a_boundary_marked_in_different_ways(tmp_path) -> None:
    """A boundary drawn as a fence and a row of stakes that meet: the stakes' line is looked at, the fence is not."""
    corners = [(-60, 60), (260, 60), (260, -60), (-60, -60)]
    fence = drawn(
        LineString([corners[3], corners[0], corners[1], corners[2]]),
        "fence",
        marram="boundary",
        marked_by="fence",
    )
    row = LineString([(x, -60) for x in range(260, -61, -20)])
    staked = drawn(row, "row", marram="boundary", marked_by="stakes")
    assert not {one.check for one in check(write(tmp_path / "a.geojson", [staked, fence, *one_hole()]))} & {
        "stake_gap",
        "corner_without_stake",
    }
    long = drawn(
        LineString([corners[2], (100, -60), corners[3]]), "row", marram="boundary", marked_by="stakes"
    )
    faults = [
        one
        for one in check(write(tmp_path / "b.geojson", [long, fence, *one_hole()]))
        if one.check == "stake_gap"
    ]
    assert len(faults) == 2
