"""Points measured on the ground, read from GPX or CSV, put on the map with their accuracy."""

import math
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from xml.parsers import expat

from marram.course.reading.files import bytes_of, csv_rows, is_xml, text_of
from marram.errors import BadPlace, InputError
from marram.said import all_of, joined, said
from marram.visible import short, visible

UERE = 5.0
"""User equivalent range error of a plain GNSS receiver, metres (own choice); times HDOP it gives a rough accuracy."""

MOST_ACCURACY = 10_000.0
"""A place known no better than this is no place on a course, metres (own choice)."""

COLUMNS = ("longitude", "latitude")
"""Columns that a CSV file must have; ``name`` and ``accuracy`` (metres) may follow."""


@dataclass(frozen=True, slots=True)
class SurveyPoint:
    """One measured point.

    Attributes:
        name: what was measured, or an empty string.
        longitude: degrees east.
        latitude: degrees north.
        accuracy: how far off the point may be, metres, or ``None`` when the file does not say.
        time: when it was measured, or ``None``.
    """

    name: str
    longitude: float
    latitude: float
    accuracy: float | None = None
    time: datetime | None = None


def read_points(path: str | Path, *, accuracy: float | None = None) -> list[SurveyPoint]:
    """Return the points of a GPX file (waypoints, routes, tracks) or of a CSV file.

    GPX has no element for accuracy; where a point has ``hdop``, its accuracy is taken as HDOP times
    :data:`UERE`, which is only a rough guide.

    Args:
        path: the file; GPX is told from CSV by what it begins with.
        accuracy: used for points of which the file does not say how accurate they are, metres.

    Raises:
        BadPlace: the file cannot be read as points or holds none; ``faults`` names every line that is wrong.
    """
    file = Path(path)
    try:
        data = bytes_of(file)
        points = (
            _gpx(file.name, data)
            if is_xml(data)
            else _csv(file.name, text_of(file.name, data, "neither GPX nor UTF-8 text"))
        )
    except BadPlace:
        raise
    except InputError as error:
        raise BadPlace(*error.faults) from None
    if not points:
        raise BadPlace(said("{file} holds no point. Export the points that were measured.", file=file.name))
    return [
        point
        if point.accuracy is not None or accuracy is None
        else SurveyPoint(point.name, point.longitude, point.latitude, accuracy, point.time)
        for point in points
    ]


def _csv(name: str, text: str) -> list[SurveyPoint]:
    rows = csv_rows(name, text)
    head = [cell.strip() for cell in next(rows, (1, []))[1]]
    missing = [column for column in COLUMNS if column not in head]
    if missing:
        raise BadPlace(
            said(
                "{name} has no column {missing}; its first line names the columns: "
                "longitude,latitude,name,accuracy.",
                name=name,
                missing=all_of(missing),
            )
        )
    twice = [column for column in (*COLUMNS, "name", "accuracy") if head.count(column) > 1]
    if twice:
        raise BadPlace(
            said(
                "{name}: its first line names {columns} twice. Leave one column of each.",
                name=name,
                columns=all_of(twice),
            )
        )
    at = {column: head.index(column) for column in (*COLUMNS, "name", "accuracy") if column in head}
    points, faults = [], []
    for line, row in rows:
        cells = {column: row[index].strip() if index < len(row) else "" for column, index in at.items()}
        try:
            points.append(
                SurveyPoint(
                    name=visible(cells.get("name", "")),
                    longitude=_degrees(cells["longitude"], 180),
                    latitude=_degrees(cells["latitude"], 90),
                    accuracy=_metres(cells["accuracy"]) if cells.get("accuracy") else None,
                )
            )
        except ValueError as error:
            faults.append(said("{name}, line {line}: {why}", name=name, line=line, why=error.args[0]))
    if faults:
        raise BadPlace(*faults)
    return points


def _degrees(text: str | None, most: float) -> float:
    value = _number(text)
    if not abs(value) <= most:
        raise ValueError(
            said("{value:g} is not between -{most:g} and {most:g} degrees.", value=value, most=most)
        )
    return value


def _metres(text: str | None) -> float:
    value = _number(text)
    if not 0 <= value <= MOST_ACCURACY:
        raise ValueError(
            said(
                "an accuracy of {value:g} m is none; give metres, 0 to {most_accuracy:g}.",
                value=value,
                most_accuracy=MOST_ACCURACY,
            )
        )
    return value


def _time(text: str) -> datetime:
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise ValueError(
            said("{text!r} is no time such as 2026-05-01T09:30:00Z.", text=short(text))
        ) from None


def _number(text: str | None) -> float:
    if not text:
        raise ValueError(said("a number is missing."))
    try:
        value = float(text)
    except ValueError:
        raise ValueError(said("{text!r} is not a number.", text=short(text))) from None
    if not math.isfinite(value) or "_" in text:  # Python reads 3_0 as thirty
        raise ValueError(said("{text!r} is not a number.", text=short(text)))
    return value


class _NotAllowed(Exception):
    """The file declares a document type."""


class _Gpx:
    """Collects the points of a GPX file while it is parsed."""

    def __init__(self) -> None:
        self.points: list[SurveyPoint] = []
        self.faults: list[str] = []
        self.root = ""
        self._place: dict[str, str] | None = None
        self._fields: dict[str, str] = {}
        self._text: list[str] = []

    def start(self, name: str, attributes: dict[str, str]) -> None:
        self.root = self.root or name
        self._text = []
        if name in {"wpt", "rtept", "trkpt"}:
            self._place, self._fields = attributes, {}

    def text(self, text: str) -> None:
        self._text.append(text)

    def end(self, name: str) -> None:
        if self._place is None:
            return
        if name not in {"wpt", "rtept", "trkpt"}:
            self._fields.setdefault(name, "".join(self._text).strip())
            return
        try:
            self.points.append(self._point(self._place, self._fields))
        except ValueError as error:
            number = len(self.points) + len(self.faults) + 1
            self.faults.append(said("point {number}: {why}", number=number, why=error.args[0]))
        self._place = None

    @staticmethod
    def _point(place: dict[str, str], fields: dict[str, str]) -> SurveyPoint:
        return SurveyPoint(
            name=visible(fields.get("name", "")),
            longitude=_degrees(place.get("lon"), 180),
            latitude=_degrees(place.get("lat"), 90),
            accuracy=_metres(fields["hdop"]) * UERE if "hdop" in fields else None,
            time=_time(fields["time"]) if "time" in fields else None,
        )


def _refuse_document_type(*_: object) -> None:
    raise _NotAllowed


def _gpx(name: str, data: bytes) -> list[SurveyPoint]:
    gpx = _Gpx()
    parser = expat.ParserCreate()
    parser.StartElementHandler = gpx.start
    parser.EndElementHandler = gpx.end
    parser.CharacterDataHandler = gpx.text
    parser.StartDoctypeDeclHandler = _refuse_document_type
    try:
        parser.Parse(data, True)
    except expat.ExpatError as error:
        raise BadPlace(
            said("{name} is not well-formed XML: {error}. Export the points again.", name=name, error=error)
        ) from None
    except _NotAllowed:
        raise BadPlace(
            said(
                "{name} declares a document type; no GPX file needs one. Export the points again.", name=name
            )
        ) from None
    if gpx.root != "gpx":
        raise BadPlace(
            said(
                "{name} begins with <{root}>, not <gpx>. Export the points as GPX or CSV.",
                name=name,
                root=short(gpx.root),
            )
        )
    if gpx.faults:
        raise BadPlace(*(joined(", ", name, fault) for fault in gpx.faults))
    return gpx.points
