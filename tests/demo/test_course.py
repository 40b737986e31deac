"""The demonstration course: a map without faults, of believable sizes, in nobody's way."""

import json
from itertools import combinations

import pytest

from marram.course import check, load
from marram.course.greens.elevation import read_elevations
from marram.course.greens.slope import GreenSlopes, slope_limits
from marram.course.model import Course, Kind
from marram.demo import COURSE, GREENS
from marram.demo.draw_course import draw
from marram.demo.draw_greens import rows


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


def test_the_map_has_no_fault_and_no_warning() -> None:
    """The course check, which a real map must pass, finds nothing."""
    assert check(COURSE) == []


def test_eighteen_holes_of_par_71_with_every_stroke_index_once(course: Course) -> None:
    """Stroke indexes 1 to 18 are each given once, as a handicap allocation needs (Rules of Handicapping, App. E)."""
    assert list(course.holes) == list(range(1, 19))
    assert sum(hole.par or 0 for hole in course.holes.values()) == 71
    assert sorted(hole.stroke_index or 0 for hole in course.holes.values()) == list(range(1, 19))


def test_odd_stroke_indexes_lie_on_the_first_nine(course: Course) -> None:
    """Odd on one nine, even on the other (Rules of Handicapping, Appendix E, recommendation)."""
    assert all(
        (hole.stroke_index or 0) % 2 == (1 if hole.number <= 9 else 0) for hole in course.holes.values()
    )


@pytest.mark.parametrize(("kind", "least", "most"), [(Kind.PUTTING_GREEN, 400, 600), (Kind.BUNKER, 40, 200)])
def test_sizes_are_believable(course: Course, kind: Kind, least: float, most: float) -> None:
    """Greens and bunkers have sizes of common practice, in square metres."""
    assert all(least <= feature.geometry.area <= most for feature in course.of(kind))


def test_holes_measure_between_130_and_550_metres(course: Course) -> None:
    """Lengths fit pars of 3 to 5."""
    assert all(130 <= hole.line.length <= 550 for hole in course.holes.values())


def test_no_two_holes_cross(course: Course) -> None:
    """The routing keeps every line of play 40 m or more from every other."""
    for one, other in combinations(course.holes.values(), 2):
        assert one.line.distance(other.line) > 40, (one.number, other.number)


def test_no_bunker_lies_on_a_green_or_in_a_penalty_area(course: Course) -> None:
    """Areas of the course that cannot overlap do not."""
    others = course.of(Kind.PUTTING_GREEN, Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)
    for bunker in course.of(Kind.BUNKER):
        assert all(bunker.geometry.disjoint(other.geometry) for other in others), bunker.ident


def test_everything_a_ruling_can_need_is_on_the_map(course: Course) -> None:
    """There is one of each kind of marked ground at least."""
    marks = {Kind.STAKE, Kind.MARKING}  # they mark edges, and are no ground themselves
    unsettled = {
        Kind.WATER,
        Kind.WETLAND,
        Kind.BARRIER,
    }  # what a course that is marked leaves to nobody's guess
    no_relief = {Kind.INTEGRAL_OBJECT}  # played as it lies
    assert all(course.of(kind) for kind in Kind if kind not in marks | unsettled | no_relief)


def test_a_dropping_zone_serves_a_penalty_area(course: Course) -> None:
    """Each dropping zone names the penalty area it serves."""
    refs = {one.ref for one in course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)}

    assert all(set(zone.serves) <= refs and zone.serves for zone in course.of(Kind.DROPPING_ZONE))


def test_the_course_lies_in_the_open_north_sea(course: Course) -> None:
    """It is between 54.9 and 55.1 north, 3.9 and 4.1 east, far from any land."""
    assert 54.9 < course.plane.latitude < 55.1
    assert 3.9 < course.plane.longitude < 4.1


def test_the_map_is_what_the_script_draws() -> None:
    """Running the script again gives the committed file, feature by feature."""
    kept = json.loads(COURSE.read_text(encoding="utf-8"))
    drawn = draw()

    assert [one["properties"] for one in kept["features"]] == [one["properties"] for one in drawn["features"]]
    assert len(kept["features"]) > 300


def test_the_greens_are_what_the_script_shapes(course: Course) -> None:
    """Running the script again gives the committed elevations; at its hole every green falls less than one in six."""
    assert GREENS.read_text(encoding="utf-8").splitlines() == list(rows(course))
    slopes = GreenSlopes(course, read_elevations(course, [GREENS]), slope_limits())
    assert set(slopes.surfaces) == set(course.holes)
    for number, ground in slopes.surfaces.items():
        found = ground.at(course.hole(number).location)
        assert found is not None, number
        assert found.percent < 17, number
