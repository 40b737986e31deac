"""Opening a course map: read, assemble, check; refuse with every error at once."""

from pathlib import Path

from marram.course.checks.refusing import errors_of
from marram.course.fault import Fault, Severity
from marram.course.model import Course
from marram.course.progress import ASSEMBLING, CHECKING, READING, Progress, part_of, whoever_listens
from marram.course.reading.assembly import assemble
from marram.course.reading.files import CannotOpen, bytes_of, is_xml
from marram.course.reading.geojson import read_geojson
from marram.course.reading.source import Source, unreadable
from marram.errors import BadCourse

READ, ASSEMBLED = 0.3, 0.5
"""Which part of the work is done once a map is read, and of the rest once it is put together (as measured, about)."""


LINES_OF_PLAY = frozenset({"no_holes", "hole_without_number", "hole_not_a_line"})
"""Checks that find a map without lines of play, or without one that can be used."""


def load(
    path: str | Path,
    which: str | None = None,
    *,
    lines_needed: bool = True,
    progress: Progress = whoever_listens,
) -> Course:
    """Return the course map in a GeoJSON or OpenStreetMap file.

    Warnings do not keep a map from being used; :func:`check` lists them.

    Args:
        path: the file: GeoJSON or OpenStreetMap XML, told apart by what it begins with.
        which: the name or identifier of the course, needed where the file holds several.
        lines_needed: whether a map without lines of play is refused; who gives the place of the hole needs none.
        progress: told how far the work is; what it raises ends it.

    Raises:
        BadCourse: the map has errors; ``faults`` lists them all.
    """
    source = _read(Path(path), part_of(progress, 0.0, READ))
    rest = part_of(progress, READ, 1.0)
    rest(ASSEMBLING, 0.0)
    course, faults = assemble(source, which, part_of(rest, 0.0, ASSEMBLED))
    if course is not None:
        rest(CHECKING, ASSEMBLED)
        faults = [*faults, *errors_of(course)]
    rest(CHECKING, 1.0)
    passed: frozenset[str] = frozenset() if lines_needed else LINES_OF_PLAY
    errors = [
        fault.sentence for fault in faults if fault.severity is Severity.ERROR and fault.check not in passed
    ]
    if errors or course is None:
        raise BadCourse(*errors, mendable=bool(source.features))
    return course


def check(path: str | Path, which: str | None = None, *, progress: Progress = whoever_listens) -> list[Fault]:
    """Return everything wrong with the map in a file, errors first; nothing is raised.

    Args:
        path: the file, as for :func:`load`.
        which: the name or identifier of the course, needed where the file holds several.
        progress: told how far the work is; what it raises ends it.
    """
    return examine(path, which, progress)[1]


def examine(
    path: str | Path, which: str | None = None, progress: Progress = whoever_listens
) -> tuple[Course | None, list[Fault]]:
    """Return the map in a file as far as it can be built, with every fault, errors first."""
    source = _read(Path(path), part_of(progress, 0.0, READ))
    return examine_source(source, which, part_of(progress, READ, 1.0))


def examine_source(
    source: Source, which: str | None = None, progress: Progress = whoever_listens
) -> tuple[Course | None, list[Fault]]:
    """Return the map that a source holds as far as it can be built, with every fault, errors first."""
    from marram.course.checks.map_checks import check_course  # noqa: PLC0415 - opening a map needs but few of the checks

    progress(ASSEMBLING, 0.0)
    course, faults = assemble(source, which, part_of(progress, 0.0, ASSEMBLED))
    if course is not None:
        faults = [*faults, *check_course(course, part_of(progress, ASSEMBLED, 1.0))]
    progress(CHECKING, 1.0)
    order = list(Severity)
    return course, sorted(faults, key=lambda fault: order.index(fault.severity))


def _read(path: Path, progress: Progress) -> Source:
    progress(READING, 0.0)
    try:
        data = bytes_of(path)
    except CannotOpen as error:
        return unreadable(error)
    if is_xml(data):
        from marram.course.reading.osm_xml import read_osm_xml  # noqa: PLC0415 - only such a file needs it

        return read_osm_xml(path.name, data, progress)
    return read_geojson(path.name, data, progress)
