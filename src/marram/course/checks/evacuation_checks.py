"""Checks of evacuation points: that the map says what waits there, and that people can stand there."""

from marram.course.evacuation import NO_WAY, offered
from marram.course.fault import FaultList
from marram.course.feature_index import index_of
from marram.course.model import Course, Kind
from marram.said import said


def check_evacuation(course: Course, faults: FaultList) -> None:
    """Note evacuation points of which nobody can tell what they are, or that lie where nobody can wait."""
    for point in course.of(Kind.EVACUATION_POINT):
        if offered(point) is None:
            told = point.tags.get("evacuation", "")
            faults.warn(
                "evacuation_point_unsaid",
                said("its evacuation={told} is not known", told=told)
                if told
                else said("this evacuation point does not say what waits there"),
                said(
                    "Add evacuation=building, evacuation=vehicle or evacuation=shelter; "
                    "a small or open shelter protects from no lightning."
                ),
                feature=point.ident,
                at=point.geometry,
            )
        for ground in index_of(course, *NO_WAY).near(point.geometry.centroid):
            faults.warn(
                "evacuation_point_in_the_way",
                said("this evacuation point lies in {kind} {ident}", kind=ground.kind, ident=ground.ident),
                said("Move it to where people can come and wait."),
                feature=point.ident,
                at=point.geometry,
            )
