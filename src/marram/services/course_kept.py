"""The course that records keep: its map by day, and its hole locations."""

from collections.abc import Callable
from datetime import date, datetime

from marram.course.model import Course
from marram.course.versions.hole_days import HoleDays
from marram.course.versions.map_versions import MapVersions
from marram.errors import InputError
from marram.records.database import Records
from marram.records.maps import HoleShelf, MapShelf
from marram.records.starting_sheet import courses
from marram.said import said


def course_kept(
    records: Records, course: str | None = None
) -> tuple[Callable[[date | None], Course], HoleDays]:
    """Return what gives the map that records keep in force on a day, and the hole locations they keep.

    Args:
        records: where.
        course: the name of the course; ``None`` for the only one.

    Raises:
        InputError: there is no such course, or several.
    """
    known = [one for one in courses(records) if course is None or one.name == course]
    if len(known) != 1:
        names = ", ".join(one.name for one in courses(records)) or "–"
        raise InputError(
            said(
                "{name} holds no such course, or several: {names}. Name one by --course.",
                name=records.name,
                names=names,
            )
        )
    maps = MapVersions(None, MapShelf(records, known[0].id))

    def map_on(day: date | None) -> Course:
        here = maps.map_on(day or datetime.now().astimezone().date())
        return maps.course(here.version.number, here.since)

    return map_on, HoleDays(HoleShelf(records, known[0].id))
