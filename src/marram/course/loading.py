"""Opening a course map: read, assemble, check; refuse with every error at once."""

from pathlib import Path

from marram.course.assembly import assemble
from marram.course.fault import Fault, Severity
from marram.course.geojson import read_geojson
from marram.course.model import Course
from marram.course.source import Source
from marram.errors import BadCourse


def load(path: str | Path, which: str | None = None) -> Course:
    """Return the course map in a GeoJSON or OpenStreetMap file.

    Warnings do not keep a map from being used; :func:`check` lists them.

    Args:
        path: the file; ``.geojson`` or ``.json`` for GeoJSON, ``.osm`` or ``.xml`` for OpenStreetMap XML.
        which: the name or identifier of the course, needed where the file holds several.

    Raises:
        BadCourse: the map has errors; ``faults`` lists them all.
    """
    course, faults = examine(path, which)
    errors = [str(fault) for fault in faults if fault.severity is Severity.ERROR]
    if errors or course is None:
        raise BadCourse(*errors)
    return course


def check(path: str | Path, which: str | None = None) -> list[Fault]:
    """Return everything wrong with the map in a file, errors first; nothing is raised.

    Args:
        path: the file, as for :func:`load`.
        which: the name or identifier of the course, needed where the file holds several.
    """
    return examine(path, which)[1]


def examine(path: str | Path, which: str | None = None) -> tuple[Course | None, list[Fault]]:
    """Return the map in a file as far as it can be built, with every fault, errors first."""
    course, faults = assemble(_read(Path(path)), which)
    order = list(Severity)
    return course, sorted(faults, key=lambda fault: order.index(fault.severity))


def _read(path: Path) -> Source:
    source = Source()
    try:
        with path.open("rb"):
            pass
    except OSError as error:
        source.refuse("unreadable", f"{path} cannot be read: {error.strerror}", "Check the path.")
        return source
    return read_geojson(path)
