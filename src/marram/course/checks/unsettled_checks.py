"""Checks of what the map shows without saying what it is for the Rules: walls, fences and the like, and wetlands."""

from marram.course.fault import FaultList
from marram.course.lies.unsettled import unsettled, what_barrier, what_wetland
from marram.course.model import Course, Kind
from marram.said import said


def check_unsettled(course: Course, faults: FaultList) -> None:
    """Ask about every wall, fence and wetland whose status nobody has told, each once, however it is drawn."""
    for area in unsettled(course):
        first = area.pieces[0].feature
        if area.kind is Kind.BARRIER:
            check = "barrier_without_status"
            what = what_barrier(first)
            remedy = said(
                "Write marram=obstruction; or marram=marking and marked_by={value} (boundary object); or "
                "marram=integral_object.",
                value=first.tags.get("barrier", ""),
            )
        else:
            check = "wetland_without_status"
            what = what_wetland()
            remedy = said(
                "Draw the edge of the penalty area as golf=lateral_water_hazard (red) or golf=water_hazard (yellow); "
                "where the ground is only wet, write penalty_area=no."
            )
        faults.warn(check, what, remedy, feature=first.ident, at=area.geometry)
