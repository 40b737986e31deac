"""What the map shows without saying what it is for the Rules: walls, fences and gates, and wetlands.

Nothing is guessed. Something artificial is an immovable obstruction, from which relief is free, a boundary object or an
integral object, from which it is not (Definitions of obstruction, boundary object and integral object): the Committee says
which. In a wetland, water that stands is a body of water and so a penalty area, marked or not, but ground that is only
wet is neither that nor temporary water (Definitions of penalty area and temporary water). So both are asked about, once
for the map: an answer is a tag of the feature.
"""

from collections.abc import Iterator

from marram.course.lies.extents import Extent, extents
from marram.course.lies.united import UnitedArea, unite
from marram.course.lies.water import beyond_penalty_areas
from marram.course.model import Course, Feature, Kind
from marram.said import Said, said

NAMES = {
    "fence": said("fence"),
    "gate": said("gate"),
    "kerb": said("kerb"),
    "wall": said("wall"),
    "retaining_wall": said("retaining wall"),
    "stile": said("stile"),
    "bollard": said("bollard"),
}
"""The words for the values of ``barrier`` that courses have most."""


def unsettled(course: Course) -> tuple[UnitedArea, ...]:
    """Return the walls, fences and wetlands whose status nobody has told, as they are joined on the ground."""
    if unsettled not in course.kept:
        course.kept[unsettled] = (
            *unite(extents(course.of(Kind.BARRIER))),
            *unite(tuple(_wetlands(course))),
        )
    found: tuple[UnitedArea, ...] = course.kept[unsettled]
    return found


def _wetlands(course: Course) -> Iterator[Extent]:
    """Yield the ground of wetlands that lies in no penalty area, marked or not."""
    every = [one for one in course.of(Kind.WETLAND) if one.tags.get("penalty_area") != "no"]
    yield from beyond_penalty_areas(course, extents(every))


def barrier_name(feature: Feature) -> Said:
    """Return the word for a wall, fence or the like."""
    return NAMES.get(feature.tags.get("barrier", ""), said("barrier"))


def what_barrier(feature: Feature) -> Said:
    """Return the question about a wall or fence, as a statement of what is not known."""
    return said(
        "the map does not say what this {barrier} is for the Rules: an immovable obstruction (free relief), a boundary "
        "object or an integral object (none)",
        barrier=barrier_name(feature),
    )


def what_wetland() -> Said:
    """Return the question about a wetland, as a statement of what is not known."""
    return said(
        "the map does not say what this wetland is for the Rules: where water stands it is a penalty area, marked or not; "
        "ground that is only wet is none"
    )
