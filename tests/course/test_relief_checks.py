"""Ground under repair without relief and dropping zones that cannot serve, on squares drawn in metres.

Sources: Rule 16.1a(2) (no relief from an abnormal course condition in a penalty area or out of bounds), 16.1c and
16.1d (relief in a bunker and on the putting green), Model Local Rule E-1 (dropping zones).
"""

import pytest
from shapely.geometry import Polygon, box

from marram.course.checks.relief_checks import check_relief
from marram.course.fault import FaultList
from marram.course.model import Kind
from tests.course.drawing import BOUNDARY, PLANE, course, feature, square

GREEN = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "green 1", holes=(1,))


def found(*features):
    faults = FaultList(PLANE)
    check_relief(course(BOUNDARY, GREEN, *features), faults)
    return [(one.check, one.what) for one in faults.found]


def repair(shape):
    return feature(Kind.GROUND_UNDER_REPAIR, shape, "repair")


def test_ground_under_repair_on_open_ground_gives_relief() -> None:
    """Nothing speaks against a square of it in the general area, nor half over a bunker or a green."""
    pit = feature(Kind.BUNKER, square(60, 30, 6), "pit")
    assert found(repair(square(60, 0, 5))) == []
    assert found(pit, repair(square(66, 30, 6))) == []
    assert found(repair(square(160, 0, 6))) == []


@pytest.mark.parametrize(
    ("other", "shape", "words"),
    [
        (
            feature(Kind.RED_PENALTY_AREA, square(60, 0, 8), "pond"),
            square(60, 0, 5),
            "in a penalty area, where Rule 16.1a(2)",
        ),
        (feature(Kind.OUT_OF_BOUNDS, square(60, 0, 8), "yard"), square(60, 0, 5), "lies out of bounds"),
        (feature(Kind.ROUGH, square(60, 0, 8), "rough"), square(60, 120, 5), "lies out of bounds"),
        (feature(Kind.BUNKER, square(60, 0, 4), "pit"), square(60, 0, 6), "covers all of bunker pit"),
        (
            feature(Kind.ROUGH, square(60, 0, 8), "rough"),
            square(150, 0, 11),
            "covers all of putting green green 1",
        ),
    ],
)
def test_ground_under_repair_from_which_there_is_no_relief(other, shape, words) -> None:
    """In a penalty area, out of bounds, over a whole bunker, over a whole green: said with the Rule."""
    ((check, what),) = found(other, repair(shape))
    assert check == "repair_without_relief"
    assert words in what


def test_ground_under_repair_shut_in_on_all_sides() -> None:
    """An island in a pond, wholly under repair, has no ground around it; with a strip of turf it has."""
    ring = Polygon(square(60, 0, 20).exterior, [square(60, 0, 5).exterior.coords])
    pond = feature(Kind.YELLOW_PENALTY_AREA, ring, "pond")
    ((check, what),) = found(pond, repair(square(60, 0, 5)))
    assert (check, "no ground of the general area" in what) == ("repair_without_relief", True)
    assert found(pond, repair(square(60, 0, 3))) == []


def test_a_dropping_zone_must_lie_where_the_next_stroke_can_be_made() -> None:
    """Partly in a penalty area and partly in ground under repair, it is told twice; on open ground not."""
    red = feature(Kind.RED_PENALTY_AREA, box(50, -5, 60, 5), "pond", ref="R1")
    zone = feature(Kind.DROPPING_ZONE, box(58, -4, 66, 4), "zone", serves=("R1",), holes=(1,))
    checks = found(red, zone, repair(box(64, -4, 70, 4)))
    assert sorted(what for check, what in checks if check == "dropping_zone_overlap") == [
        "16 m² of this dropping zone lie in ground under repair repair",
        "16 m² of this dropping zone lie in red penalty area pond",
    ]
    clear = feature(Kind.DROPPING_ZONE, box(30, -4, 38, 4), "zone", serves=("R1",), holes=(1,))
    assert found(red, clear) == []
