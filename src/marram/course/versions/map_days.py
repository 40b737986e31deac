"""Which map is in force on which day: the versions of a course map, read.

The map in force on a day is that of the newest version whose first day is not after it. A version may hold
several maps: its own, and those prepared for later days with its changes carried over.
"""

import json
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from hashlib import sha256
from pathlib import Path
from tempfile import TemporaryDirectory

from marram.course.fault import Fault, Severity
from marram.course.loading import LINES_OF_PLAY, examine
from marram.course.model import Course
from marram.course.versions.course_file import CourseFile
from marram.course.versions.folder import default_folder
from marram.course.versions.held import Held
from marram.course.versions.map_edits import Document
from marram.course.versions.shelf import Shelf
from marram.course.versions.version_files import FIRST, Version, VersionFiles
from marram.errors import BadCourse, BadPlace, InputError
from marram.said import Said, said

_MOST_BUILT = 12
"""How many maps are held ready at a time (own choice; one takes some megabytes)."""

_MOST_SHARED = 4
"""How many are held for whoever opens the same one next, as a desk does right after its map was saved (own choice)."""


@dataclass(frozen=True, slots=True)
class MapInForce:
    """The map in force on a day.

    Attributes:
        version: the version it belongs to.
        since: the first day on which it is this map.
    """

    version: Version
    since: date


class MapDays:
    """The maps of one course by day.

    Args:
        course_file: the map as GeoJSON; it is never written. ``None`` where the versions hold all there is.
        place: the folder that versions are kept in, or another place for them; ``None`` for a folder of the user's
            own data.
    """

    def __init__(self, course_file: Path | None, place: Path | Shelf | None = None) -> None:
        self.course_file = None if course_file is None else Path(course_file)
        if place is None:
            if self.course_file is None:
                raise InputError(said("Say where the versions of the map are kept, or which file it is."))
            place = default_folder(self.course_file)
        self.place = place
        self._files = VersionFiles(self.place)
        self._file = None if self.course_file is None else CourseFile(self.course_file)
        self._held: Document | None = None
        self._built: Held[tuple[int, date], tuple[Course, list[Fault]]] = Held(_MOST_BUILT)

    def versions(self) -> list[Version]:
        """Return every version, the first first.

        Raises:
            InputError: a file of the folder is damaged, foreign or missing; it is named, and left as it is.
        """
        return [FIRST, *self._files.versions()[1:]]

    def latest(self) -> Version:
        """Return the newest version."""
        return self.versions()[-1]

    def map_on(self, day: date, upto: int | None = None) -> MapInForce:
        """Return which map is in force on a day of play, as the versions up to a number have it."""
        version = [one for one in self.versions()[:upto] if one.in_force_from <= day][-1]
        return MapInForce(version, version.since(day))

    def version_on(self, day: date) -> Version:
        """Return the version in force on a day of play: the newest whose first day is not after it."""
        return self.map_on(day).version

    def prepared(self, day: date, upto: int | None = None) -> list[MapInForce]:
        """Return the maps prepared for days after ``day``, the next first."""
        known = self.versions()[:upto]
        days = {one.in_force_from for one in known} | {one.since for each in known for one in each.later}
        maps = [self.map_on(later, upto) for later in sorted(days) if later > day]
        return [
            one for one, before in zip(maps, [self.map_on(day, upto), *maps], strict=False) if one != before
        ]

    def document(self, number: int, on: date | None = None) -> Document:
        """Return the GeoJSON of a version, on its first day or on a later one.

        Raises:
            BadPlace: there is no such version.
            InputError: its file, or the course file, cannot be read.
        """
        version = self._numbered(number)
        if number == 1 and not self._files.has(1):
            if self._file is None:
                raise InputError(
                    said("The map has no version yet, and there is no file to make the first of.")
                )
            if self._held is None:
                self._held = self._file.document()
            return self._held
        return self._files.document(version, version.since(on or version.in_force_from))

    def document_on(self, day: date, upto: int | None = None) -> Document:
        """Return the GeoJSON of the map in force on a day, as the versions up to a number have it."""
        return self.document(self.map_on(day, upto).version.number, day)

    def course(self, number: int, on: date | None = None) -> Course:
        """Return the course map of a version, on its first day or on a later one, ready for use.

        Raises:
            BadCourse: it has errors; all are listed.
        """
        return self._examined(number, on)[0]

    def new_faults(self, number: int) -> list[Said]:
        """Return what the checks find since a version that they did not find before, in words."""
        version = self._numbered(number)
        if number == 1:
            return []
        found: list[Said] = []
        for since in (version.in_force_from, *(one.since for one in version.later)):
            before = self.map_on(since, number - 1)
            known = {str(fault) for fault in self._examined(before.version.number, since)[1]}
            found += [one.sentence for one in self._examined(number, since)[1] if str(one) not in known]
        return list(dict.fromkeys(found))

    def _numbered(self, number: int) -> Version:
        known = self.versions()
        if not 1 <= number <= len(known):
            raise BadPlace(
                said("The map has no version {number}; it has 1 to {count}.", number=number, count=len(known))
            )
        return known[number - 1]

    def _examined(self, number: int, on: date | None) -> tuple[Course, list[Fault]]:
        version = self._numbered(number)
        key = (number, version.since(on or version.in_force_from))
        found = self._built.get(key)
        if found is None:
            found = checked(self.document(number, key[1]), lines_needed=lambda: False)
            self._built.hold(key, found, len(found[0].features))
        return found


def checked(
    document: Document, *, lines_needed: Callable[[], bool] = lambda: True
) -> tuple[Course, list[Fault]]:
    """Return the course of a map's GeoJSON, and what the checks find.

    Args:
        document: the map.
        lines_needed: tells whether a map without a single line of play is refused, for without one the flagstick is asked
            for; it is called only for such a map.

    Raises:
        BadCourse: it has errors; all are listed.
    """
    course, faults = _looked_through(document)
    errors = [fault for fault in faults if fault.severity is Severity.ERROR]
    lines = [fault for fault in errors if fault.check in LINES_OF_PLAY]
    if lines and course is not None and not course.holes and not lines_needed():
        errors = [fault for fault in errors if fault not in lines]
    if errors or course is None:
        raise BadCourse(*(fault.sentence for fault in errors))
    return course, list(faults)


_shared: Held[str, tuple[Course | None, tuple[Fault, ...]]] = Held(_MOST_SHARED)


def _looked_through(document: Document) -> tuple[Course | None, tuple[Fault, ...]]:
    """Return a map and what the checks find: alike whoever keeps it, so that the same map is not looked through twice."""
    geojson = json.dumps(document).encode()
    key = sha256(geojson).hexdigest()
    found = _shared.get(key)
    if found is None:
        with TemporaryDirectory() as folder:
            path = Path(folder) / "map.geojson"
            path.write_bytes(geojson)
            course, faults = examine(path)
        found = _shared.hold(key, (course, tuple(faults)), len(document["features"]))
    return found
