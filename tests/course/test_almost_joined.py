"""Areas that almost meet are told, because they are read as two."""

import pytest
from shapely.geometry import box

from marram.course.checks.almost_joined import ALMOST, check_almost_joined
from marram.course.fault import FaultList
from marram.course.lies.tolerance import SEAM
from marram.course.model import Kind
from tests.course.drawing import course, feature


def told(gap, first=Kind.RED_PENALTY_AREA, second=Kind.RED_PENALTY_AREA):
    """What is found of two areas with a gap between them."""
    shapes = (feature(first, box(0, 0, 10, 5), "a"), feature(second, box(10 + gap, 0, 20, 5), "b"))
    where = course(*shapes)
    faults = FaultList(where.plane)
    check_almost_joined(where, faults)
    return [(one.check, one.feature) for one in faults.found]


@pytest.mark.parametrize("kind", [Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA, Kind.BUNKER])
def test_a_gap_that_is_no_seam_and_no_bank_is_told(kind):
    """Wider than what is closed up, and too narrow to be meant: once for the pair, at the first."""
    assert told(0.1, kind, kind) == [("almost_joined", "a")]


@pytest.mark.parametrize("gap", [-0.5, 0.0, SEAM / 2, ALMOST + 0.1])
def test_what_is_joined_or_well_apart_is_left_alone(gap):
    """Overlapping, touching or within the seam they are one; farther apart they are two, and meant to be."""
    assert told(gap) == []


def test_two_colours_are_two_areas_however_near():
    """A red beside a yellow penalty area is never one with it."""
    assert told(0.1, Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA) == []
