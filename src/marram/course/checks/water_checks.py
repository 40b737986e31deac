"""Checks of water: what is not marked, and a coast that puts the course into the sea."""

import shapely

from marram.course.fault import FaultList
from marram.course.lies.coast import is_coastline
from marram.course.lies.extents import Extent, assumed_width
from marram.course.lies.water import colour_of, unmarked_water
from marram.course.model import Course
from marram.course.scheme import is_about_golf
from marram.said import said


def check_water(course: Course, faults: FaultList) -> None:
    """Look at every water that no marking covers."""
    waters = [water for water in unmarked_water(course) if not is_about_golf(water.feature.tags)]
    for water in waters:
        if is_coastline(water.feature) and _holds_the_course(water, course):
            _backwards(water, faults)
        else:
            _unmarked(water, faults)


def _holds_the_course(water: Extent, course: Course) -> bool:
    """Whether more than half of the holes are cut in a water."""
    holes = [hole.location for hole in course.holes.values()]
    return 2 * int(shapely.contains(water.shape, holes).sum()) > len(holes) if holes else False


def _backwards(sea: Extent, faults: FaultList) -> None:
    faults.warn(
        "coast_backwards",
        said("the sea beside this coastline holds most of the holes: it is drawn the wrong way round"),
        said("Turn it round: the land lies on the left of a coastline, the water on its right."),
        feature=sea.feature.ident,
        at=sea.feature.geometry,
    )


def _unmarked(water: Extent, faults: FaultList) -> None:
    width = assumed_width(water.feature)
    extent = (
        ""
        if width is None
        else said(", taken as {width:g} m wide because its width is not mapped", width=width)
    )
    faults.warn(
        "water_without_status",
        said(
            "this water is not marked as a penalty area: it counts as a {ground} (Definition of penalty area){extent}, "
            "whose edge the map does not know",
            ground=colour_of(water.feature),
            extent=extent,
        ),
        said(
            "Draw its edge as golf=lateral_water_hazard (red) or golf=water_hazard (yellow); or, where it is none, write "
            "penalty_area=no, and why in its note."
        ),
        feature=water.feature.ident,
        at=water.feature.geometry if is_coastline(water.feature) else water.shape,
    )
