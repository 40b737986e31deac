"""The marking sheet: every fault once, by hole, the weightiest first."""

from shapely.geometry import LineString

from marram.course import check, load
from marram.course.checks.marking import marking_sheet
from marram.course.fault import Fault, Severity
from tests.course.drawing import drawn, nine_holes, square, write


def test_faults_go_to_the_hole_they_lie_on(tmp_path) -> None:
    """A ditch beside hole 5 and a second green of hole 2 go to their holes; a bunker far off to the course."""
    ditch = drawn(LineString([(60, 305), (90, 305)]), "ditch", waterway="ditch")
    green = drawn(square(100, 120, 8), "spare", golf="green", ref="2")
    path = write(tmp_path / "map.geojson", [*nine_holes(), ditch, green])
    sheets = marking_sheet(load(path), check(path))
    assert [(sheet.hole, [fault.check for fault in sheet.tasks]) for sheet in sheets] == [
        (2, ["two_greens"]),
        (5, ["water_without_status"]),
    ]


def test_every_fault_is_on_one_sheet(tmp_path) -> None:
    """No fault is lost or doubled, the course comes first, and errors stand before warnings and notes."""
    path = write(tmp_path / "map.geojson", nine_holes())
    course = load(path)
    longitude, latitude = course.plane.to_degrees(course.hole(3).location.x, course.hole(3).location.y)
    far = course.plane.to_degrees(3000, 3000)
    faults = [
        Fault(Severity.NOTE, "a", "a", "a.", hole=3),
        Fault(Severity.ERROR, "b", "b", "b.", longitude=longitude, latitude=latitude),
        Fault(Severity.WARNING, "c", "c", "c.", longitude=far[0], latitude=far[1]),
        Fault(Severity.WARNING, "d", "d", "d."),
        Fault(Severity.WARNING, "e", "e", "e.", hole=14),
    ]
    sheets = marking_sheet(course, faults)
    assert [(sheet.hole, [fault.check for fault in sheet.tasks]) for sheet in sheets] == [
        (None, ["c", "d", "e"]),
        (3, ["b", "a"]),
    ]
