"""What is joined on the ground is one area: no seam is an edge, and nothing changes where nothing is joined."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import LineString, Point, Polygon, box

from marram.course.lies.decision import decider, points_at
from marram.course.lies.extents import extents
from marram.course.lies.regions import Ground, ground_of
from marram.course.lies.tolerance import SEAM
from marram.course.lies.united import unite
from marram.course.model import Kind
from tests.course import every_kind
from tests.course.drawing import BOUNDARY, course, feature, hole, square

CELLS = st.sets(st.tuples(st.integers(0, 4), st.integers(0, 4)), min_size=1, max_size=14)
"""Squares of a grid, each a piece by itself."""
ROUNDING = st.lists(st.integers(-5, 5), min_size=8 * 14, max_size=8 * 14)
"""Millimetres by which each corner is off, as in a map kept to seven decimals."""


def bunkers(shapes):
    return [feature(Kind.BUNKER, shape, f"piece {i}") for i, shape in enumerate(shapes)]


def united(shapes):
    return unite(extents(bunkers(shapes)))


def islands(cells):
    """The number of groups of squares that share a side or a corner, by flood fill."""
    left, count = set(cells), 0
    while left:
        count += 1
        reached = [left.pop()]
        while reached:
            x, y = reached.pop()
            near = {(x + i, y + j) for i in (-1, 0, 1) for j in (-1, 0, 1)} & left
            left -= near
            reached += near
    return count


def squares(cells, off=None):
    """The squares of a grid 10 m wide, their corners off by so many millimetres."""
    found = []
    for i, (x, y) in enumerate(sorted(cells)):
        corners = np.array([(0, 0), (10, 0), (10, 10), (0, 10)]) + np.array([10 * x, 10 * y])
        shift = np.zeros((4, 2)) if off is None else np.array(off[8 * i : 8 * i + 8]).reshape(4, 2) / 1000
        found.append(Polygon(corners + shift))
    return found


@settings(max_examples=60, deadline=None)
@given(cells=CELLS)
def test_squares_that_meet_are_one_area_with_the_outline_of_their_cells(cells) -> None:
    """Pieces that share corners: as many areas as flood fill finds, exactly the sum of the squares, no seam left."""
    areas = united(squares(cells))
    assert len(areas) == islands(cells)
    assert math.isclose(sum(area.geometry.area for area in areas), 100 * len(cells), rel_tol=1e-12)
    ring = sum(area.geometry.boundary.length for area in areas)
    sides = sum(
        10 for x, y in cells for near in ((x + 1, y), (x - 1, y), (x, y + 1), (x, y - 1)) if near not in cells
    )
    assert math.isclose(ring, sides, abs_tol=1e-9)


@settings(max_examples=60, deadline=None)
@given(cells=CELLS, off=ROUNDING)
def test_rounding_of_the_map_leaves_no_seam(cells, off) -> None:
    """Corners off by up to 5 mm each: along every side that two squares share no edge is left, and none is lost."""
    shapes = squares(cells, off)
    areas = united(shapes)
    assert len(areas) == islands(cells)
    whole = shapely.union_all([area.geometry for area in areas])
    for x, y in cells:
        for beside in ((x + 1, y), (x, y + 1)):
            if beside in cells:
                ends = [(10 * max(x, beside[0]), 10 * max(y, beside[1])), (10 * (x + 1), 10 * (y + 1))]
                seam = LineString(ends)
                inner = shapely.get_coordinates(seam.interpolate(np.linspace(0.1, 0.9, 9), normalized=True))
                assert (shapely.boundary(whole).distance(shapely.points(inner)) > 0.5).all()
                assert shapely.contains_xy(whole, inner).all()
    # What was added lies between pieces, and nowhere beyond them.
    added = whole.difference(shapely.union_all(shapes))
    beyond = shapely.convex_hull(shapely.union_all(shapes)).buffer(1e-5)
    assert added.difference(beyond).is_empty
    assert added.area <= SEAM * 10 * 4 * len(cells)


@settings(max_examples=40, deadline=None)
@given(cells=CELLS)
def test_what_is_not_joined_keeps_the_very_shape_of_the_map(cells) -> None:
    """Squares three centimetres apart are areas by themselves, and their geometry is that of the map, bit by bit."""
    apart = [box(10.03 * x, 10.03 * y, 10.03 * x + 10, 10.03 * y + 10) for x, y in sorted(cells)]
    areas = united(apart)
    assert [area.geometry.wkb for area in areas] == [shape.wkb for shape in apart]


@settings(max_examples=60, deadline=None)
@given(heights=st.lists(st.integers(0, 50), min_size=1, max_size=8), turn=st.integers(0, 359))
def test_a_gap_is_closed_where_it_is_two_centimetres_wide_at_most(heights, turn) -> None:
    """An edge with a corner every 5 m runs 0 to 5 cm beside a straight one, touching it at both ends: the gap is ground where
    it is no wider than the tolerance, but for some centimetres along it where it opens, and nowhere that it is wider."""
    opening = 3 * SEAM
    gaps = np.array([0, *heights, 0]) / 1000
    at = 5.0 * np.arange(len(gaps))
    edge = list(zip(at, gaps, strict=True))
    shapes = [box(-9, -10, at[-1] + 9, 0), Polygon([*edge, (at[-1], 9), (0, 9)])]
    one, other = (affinity.rotate(shape, turn, origin=(0, 0)) for shape in shapes)
    (area,) = united([one, other])
    added = area.geometry.difference(shapely.union_all([one, other])).buffer(-1e-5)
    corners = shapely.points(shapely.get_coordinates(added))
    assert (shapely.distance(one, corners) + shapely.distance(other, corners) <= SEAM + 1e-6).all()
    x = np.linspace(opening, at[-1] - opening, 300)
    near = np.abs(x[:, None] - at) <= opening
    widest = np.maximum.reduce(
        [np.interp(x - opening, at, gaps), np.interp(x + opening, at, gaps), (near * gaps).max(axis=1)]
    )
    middles = np.column_stack([x, np.interp(x, at, gaps) / 2])[widest <= SEAM]
    between = affinity.rotate(shapely.multipoints(middles), turn, origin=(0, 0))
    assert area.geometry.buffer(1e-5).covers(between)


def test_a_united_area_keeps_its_features_and_names_the_one_underfoot() -> None:
    """The pieces of a burn stay known: for names, dropping zones and messages."""
    (burn, *_) = ground_of(every_kind.COURSE, 1).specific[0].areas
    assert burn.features == every_kind.BURN
    assert (burn.ident, burn.name) == ("burn 0", "Burn")
    assert burn.holding(Point(78, -17)).ident == "burn 2"
    assert burn.edge_near(Point(60.5, -17)).ident == "burn 0"
    assert burn.geometry.equals(box(60, -20, 100, -14))


def test_a_bend_between_lines_is_ground_too() -> None:
    """Lines with a width that meet at an angle leave no notch: no place of the path's middle lies near an edge."""
    (path, *_) = (area for area in ground_of(every_kind.COURSE, 1).conditions if area.kind is Kind.PATH)
    assert [piece.ident for piece in path.features] == ["path 1", "path 2", "path 3", "path 4"]
    for joint, half in (((60, 22), 0.8), ((90, 34), 1.2)):
        assert path.geometry.boundary.distance(Point(joint)) >= half - 1e-9


@pytest.mark.parametrize("angle", [10, 60, 89, 91, 120, 170])
def test_a_joint_is_as_wide_as_the_path_at_every_angle(angle) -> None:
    """Two lines 2 m wide from one place: whatever the angle, ground within 1 m of the middle is path, none beyond 2.01 m."""
    turned = (10 * math.cos(math.radians(angle)), 10 * math.sin(math.radians(angle)))
    lines = [
        every_kind.line(Kind.PATH, [(0, 0), (10, 0)], "one", 2),
        every_kind.line(Kind.PATH, [(0, 0), turned], "two", 2),
    ]
    (path,) = unite(extents(lines))
    around = Point(0, 0).buffer(0.999, quad_segs=32)
    behind = around.intersection(shapely.union_all([line.geometry for line in lines]).convex_hull)
    assert path.geometry.covers(behind)
    assert path.geometry.boundary.distance(Point(0, 0)) > 0.99
    middles = shapely.union_all([line.middle for line in lines])
    assert path.geometry.hausdorff_distance(middles) < 2.01


def test_only_pieces_of_one_colour_and_kind_are_united() -> None:
    """Red beside yellow, a hut beside a path: each stays what it is."""
    red = feature(Kind.RED_PENALTY_AREA, square(0, 0, 5), "red")
    yellow = feature(Kind.YELLOW_PENALTY_AREA, square(10, 0, 5), "yellow")
    hut = feature(Kind.OBSTRUCTION, square(30, 0, 5), "hut")
    path = feature(Kind.PATH, square(40, 0, 5), "path")
    ground = ground_of(course(BOUNDARY, red, yellow, hut, path), 1)
    assert [len(region.areas) for region in ground.specific] == [1, 1]
    assert [area.ident for area in ground.conditions] == ["hut", "path"]


def test_greens_that_adjoin_are_one_unless_the_committee_divided_them() -> None:
    """Definition of putting green: a double green is the green of the hole played, or divided by a line of the Committee."""
    one = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "one", holes=(1,))
    for tags, wrong in (({}, []), ({"double_green": "divided"}, ["other"])):
        other = feature(Kind.PUTTING_GREEN, square(150, 20, 10), "other", holes=(2,), tags=tags)
        holes = [hole(1, green=one), hole(2, cup=(150, 20), green=other)]
        ground = ground_of(course(BOUNDARY, one, other, holes=holes), 1)
        assert [green.ident for green in ground.wrong_greens] == wrong


def test_fairways_of_a_hole_come_with_what_is_joined() -> None:
    """A fairway in two pieces of which only one names its hole is one fairway."""
    (fairway,) = ground_of(every_kind.COURSE, 1).fairways
    assert [piece.ident for piece in fairway.features] == ["fairway 1a", "fairway 1b"]
    assert [one.ident for one in ground_of(every_kind.COURSE, 2).fairways] == ["fairway 2"]


SIDES = {Kind.RED_PENALTY_AREA: Kind.YELLOW_PENALTY_AREA, Kind.BUNKER: Kind.PUTTING_GREEN}
"""Kinds of area, each with another whose area it may adjoin."""


@settings(max_examples=60, deadline=None)
@given(
    kinds=st.sampled_from(list(SIDES.items())),
    gap=st.integers(0, 20),
    skew=st.integers(-20, 20),
    corner=st.integers(0, 40),
    swapped=st.booleans(),
)
def test_areas_of_different_kinds_that_adjoin_leave_nothing_between(
    kinds, gap, skew, corner, swapped
) -> None:
    """Edges drawn as one, up to 2 cm apart along 40 m, with corners of their own: no place between is general area.

    Ten centimetres from the ends, where the gap opens to the ground around, so that nothing closes it.
    """
    at = 5.0 * corner / 40
    # The edge of the one is straight; that of the other has a corner somewhere, and runs beside it.
    ends = [gap / 1000, max(0, min(20, gap + skew)) / 1000]
    middle = np.interp(at + 1, [0, 40], ends)
    one = box(0, -10, 40, 0)
    other = Polygon([(0, ends[0]), (at + 1, middle), (40, ends[1]), (40, 10), (0, 10)])
    first, second = (
        feature(kind, shape) for kind, shape in zip(kinds[:: -1 if swapped else 1], (one, other), strict=True)
    )
    links = course(
        BOUNDARY, first, second, holes=[hole(green=second if second.kind is Kind.PUTTING_GREEN else first)]
    )
    x = np.linspace(0.1, 39.9, 200)
    between = np.column_stack([x, 0.5 * np.interp(x, [0, at + 1, 40], [ends[0], middle, ends[1]])])
    found = decider(ground_of(links, 1)).decide(points_at(between), 1e-6)
    assert not (found == Ground.GENERAL_AREA).any()
    assert (found <= Ground.PENALTY_AREA_OF_TWO_COLOURS).all() or kinds[0] is Kind.BUNKER


@settings(max_examples=30, deadline=None)
@given(kinds=st.sampled_from(list(SIDES.items())), gap=st.integers(21, 60))
def test_areas_further_apart_have_general_area_between(kinds, gap) -> None:
    """From 2.1 cm on the strip between two areas is general area, and either keeps the shape of the map."""
    first = feature(kinds[0], box(0, -10, 40, 0))
    second = feature(kinds[1], box(0, gap / 1000, 40, 10))
    links = course(BOUNDARY, first, second, holes=[hole(green=second)])
    found = decider(ground_of(links, 1)).decide(points_at(np.array([[20.0, gap / 2000]])), 1e-6)
    assert found.tolist() == [Ground.GENERAL_AREA]
    (area,) = (
        area for region in ground_of(links, 1).specific for area in region.areas if area.kind is kinds[0]
    )
    assert area.geometry.wkb == first.geometry.wkb


@settings(max_examples=100, deadline=None)
@given(st.floats(0, 6.28), st.floats(0.1, 0.9), st.integers(-4, 4), st.integers(-4, 4))
def test_rounding_leaves_no_slit_where_one_piece_has_a_corner_on_the_edge_of_another(
    turn, along, off, other
) -> None:
    """A piece that ends on the middle of another's edge, micrometres off, is joined with it along all they share."""
    pond = Polygon([(0, 0), (6, 0), (6, 5), (0, 5)])
    sea = Polygon([(off * 1e-6, 5 * along), (-9, 5 * along - 3), (-9, 14), (2, 9), (other * 1e-6, 5)])
    turned = [affinity.rotate(one, turn, origin=(300, -200), use_radians=True) for one in (pond, sea)]
    (area,) = united(turned)
    seen_from_outside = pond.length + sea.length - 2 * 5 * (1 - along)
    assert shapely.length(area.geometry) == pytest.approx(seen_from_outside, abs=0.01)
