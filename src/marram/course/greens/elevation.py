"""Reading elevations of the greens from open formats: CSV, GeoJSON, or an Esri ASCII grid (docs/course-map.md)."""

import json
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np
import shapely
from numpy.typing import NDArray
from pyproj import CRS, Transformer
from pyproj.exceptions import CRSError
from shapely.errors import GEOSException
from shapely.geometry import LineString, MultiPoint

from marram.course.greens.elevation_grid import grid_places, read_grid
from marram.course.model import Course
from marram.course.reading.files import bytes_of, csv_rows, text_of
from marram.errors import InputError, told
from marram.said import all_of, said

WGS84 = "EPSG:4326"
MARGIN = 5.0
"""Elevations up to this far off a green are kept with it, metres (own choice)."""

LOWEST, HIGHEST = -500.0, 9_000.0
"""Metres: dry land lies between about -430 (the shore of the Dead Sea) and 8,849 (Everest); no green lies beyond."""

MOST_RISE = 30.0
"""Metres: elevations of one green further apart than this are of different datums, or not of this green (own choice)."""

STEP = 1.0
"""A contour line is read at places no further apart than this, metres (own choice)."""

LONGEST = 100_000.0
"""Metres: a contour line longer than this is not one of a course (own choice)."""

EASTINGS = ("longitude", "lon", "x", "easting")
NORTHINGS = ("latitude", "lat", "y", "northing")
HEIGHTS = ("elevation", "ele", "z", "height")


@dataclass(frozen=True, slots=True)
class Elevations:
    """Places with their elevation.

    Attributes:
        places: x east, y north and z up, in metres of the course's plane, shape (n, 3).
        lines: for each place the number of the contour line it is read from, 0 for a single place.
    """

    places: NDArray[np.float64]
    lines: NDArray[np.intp]

    def near(self, shape: Any) -> "Elevations":
        """Return those within the margin of a shape."""
        west, south, east, north = shape.buffer(MARGIN).bounds
        x, y = self.places[:, 0], self.places[:, 1]
        kept = (x >= west) & (x <= east) & (y >= south) & (y <= north)
        return Elevations(self.places[kept], self.lines[kept])


@dataclass(slots=True)
class _Read:
    """What a file held: rows of easting, northing and elevation, and the line each is of."""

    rows: list[tuple[float, float, float]] = field(default_factory=list)
    lines: list[int] = field(default_factory=list)
    faults: list[str] = field(default_factory=list)


def read_elevations(course: Course, paths: Sequence[Path], crs: str | None = None) -> Elevations:
    """Return the elevations in files, in the plane of a course.

    Args:
        course: the map; of a grid only what lies on or near its greens is kept.
        paths: the files; what they hold is put together.
        crs: the coordinate system of eastings and northings, such as ``EPSG:25832``; not needed for WGS 84
            degrees, nor where a ``.prj`` file lies beside a grid.

    Raises:
        InputError: a file cannot be read or holds no elevation on the course; every fault is listed.
    """
    found: list[Elevations] = []
    faults: list[str] = []
    for path in paths:
        try:
            found.append(_read_file(course, path, crs))
        except InputError as error:
            faults += error.faults
        except OSError as error:
            faults.append(
                said("{path} cannot be read: {why}. Check the path.", path=path, why=error.strerror)
            )
    if faults:
        raise InputError(*faults)
    together = Elevations(
        np.concatenate([one.places for one in found]) if found else np.empty((0, 3)),
        np.concatenate(
            [np.where(one.lines > 0, one.lines + 1_000_000 * number, 0) for number, one in enumerate(found)]
        )
        if found
        else np.empty(0, dtype=np.intp),
    )
    _check_agreement(course, together, paths)
    return together


def _check_agreement(course: Course, found: Elevations, paths: Sequence[Path]) -> None:
    """Refuse elevations that cannot all be of the green they lie on.

    Raises:
        InputError: on some green they lie further apart than any green rises; each such green is named.
    """
    files = all_of(paths)
    faults = []
    for number, hole in course.holes.items():
        heights = found.near(hole.green.geometry).places[:, 2] if hole.green is not None else np.empty(0)
        if len(heights) and (rise := float(np.ptp(heights))) > MOST_RISE:
            faults.append(
                said(
                    "{files}: the elevations on green {number} lie {rise:,.0f} m apart, from {lowest:g} to "
                    "{highest:g} m; give files of one height datum, and of these greens.",
                    files=files,
                    number=number,
                    rise=rise,
                    lowest=heights.min(),
                    highest=heights.max(),
                )
            )
    if faults:
        raise InputError(*faults)


def _read_file(course: Course, path: Path, crs: str | None) -> Elevations:
    text = text_of(str(path), bytes_of(path))
    start = text.lstrip()[:6].lower()
    if start.startswith("{"):
        return _of_geojson(course, path, text)
    if start.startswith("ncols"):
        grid = read_grid(path, text)
        system = crs or _prj_beside(path) or (WGS84 if grid.in_degrees else None)
        return _placed(course, path, grid_places(course, grid, _from(path, system), MARGIN), WGS84)
    return _of_csv(course, path, text, crs)


def _of_csv(course: Course, path: Path, text: str, crs: str | None) -> Elevations:
    rows = csv_rows(str(path), text)
    head = [name.strip().casefold() for name in next(rows, (1, []))[1]]
    columns = [
        next((head.index(name) for name in names if name in head), None)
        for names in (EASTINGS, NORTHINGS, HEIGHTS)
    ]
    if None in columns:
        raise InputError(
            said(
                "{path}: the first line must name the columns longitude, latitude, elevation (or x, y, elevation); "
                "it is {head!r}.",
                path=path,
                head=",".join(head),
            )
        )
    read = _Read()
    for number, row in rows:
        try:
            x, y, z = (float(row[column]) for column in columns if column is not None)
        except (ValueError, IndexError):
            read.faults.append(
                said(
                    "{path}, line {number}: {row!r} is no place with an elevation.",
                    path=path,
                    number=number,
                    row=",".join(row),
                )
            )
            continue
        read.rows.append((x, y, z))
        read.lines.append(0)
    in_degrees = columns[0] is not None and head[columns[0]] in {"longitude", "lon"}
    return _finished(course, path, read, WGS84 if in_degrees else crs or _prj_beside(path))


def _of_geojson(course: Course, path: Path, text: str) -> Elevations:
    try:
        features: Any = json.loads(text)["features"]
        listed = list(features)
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        raise InputError(
            said("{path} is no GeoJSON FeatureCollection ({error}).", path=path, error=told(error))
        ) from None
    read = _Read()
    for number, feature in enumerate(listed):
        try:
            _feature(course, feature, number + 1, read)
        except (ValueError, KeyError, TypeError, AttributeError, IndexError, OverflowError, GEOSException):
            read.faults.append(
                said(
                    "{path}, feature {number}: give a Point or LineString with its elevation in metres, as third coordinate "
                    "or as ele=<metres>.",
                    path=path,
                    number=number,
                )
            )
    return _finished(course, path, read, WGS84)


def _feature(course: Course, feature: Any, number: int, read: _Read) -> None:
    tags = feature.get("properties") or {}
    height = next((float(tags[name]) for name in HEIGHTS if tags.get(name) is not None), None)
    geometry = feature["geometry"]
    kind, coordinates = geometry["type"], geometry["coordinates"]
    if kind in {"Point", "LineString"}:
        parts = [[coordinates]] if kind == "Point" else [coordinates]
    elif kind in {"MultiPoint", "MultiLineString"}:
        parts = [[one] for one in coordinates] if kind == "MultiPoint" else coordinates
    else:
        raise ValueError(kind)
    for part in parts:
        places = [(float(p[0]), float(p[1]), float(p[2]) if len(p) > 2 else _known(height)) for p in part]
        if not np.isfinite(places).all():
            raise ValueError(said("a coordinate is no number"))
        contour = height is not None and len(places) > 1
        if contour:
            laid = course.plane.inward(LineString(places))
            if not laid.length <= LONGEST:
                raise ValueError(said("no contour of a course is so long"))
            line = course.plane.outward(shapely.segmentize(laid, STEP))
            places = [(x, y, _known(height)) for x, y in shapely.get_coordinates(line).tolist()]
        read.rows += places
        read.lines += [number if contour else 0] * len(places)


def _known(value: float | None) -> float:
    if value is None:
        raise ValueError
    return value


def _finished(course: Course, path: Path, read: _Read, crs: str | None) -> Elevations:
    rows = np.array(read.rows, dtype=np.float64).reshape(-1, 3)
    if not read.faults and not np.isfinite(rows).all():
        read.faults.append(said("{path}: an elevation or a coordinate is not a finite number.", path=path))
    if read.faults:
        raise InputError(*read.faults)
    return _placed(course, path, (rows, np.array(read.lines, dtype=np.intp)), crs)


def _placed(
    course: Course, path: Path, read: tuple[NDArray[np.float64], NDArray[np.intp]], crs: str | None
) -> Elevations:
    """Return rows laid in the plane of the course; refuse those that lie on no green."""
    rows, lines = read
    beyond = (rows[:, 2] < LOWEST) | (rows[:, 2] > HIGHEST)
    if beyond.any():
        raise InputError(
            said(
                "{path}: an elevation of {elevation:g} m is none on land; give metres between {lowest:g} and "
                "{highest:,.0f}.",
                path=path,
                elevation=rows[beyond][0, 2],
                lowest=LOWEST,
                highest=HIGHEST,
            )
        )
    if crs != WGS84:
        rows = rows.copy()
        rows[:, 0], rows[:, 1] = _from(path, crs).transform(rows[:, 0], rows[:, 1])
    if len(rows) and (np.abs(rows[:, 0]).max() > 180 or np.abs(rows[:, 1]).max() > 90):
        raise InputError(
            said(
                "{path}: its places are no longitude and latitude in degrees. Name the coordinate system, such as EPSG:25832.",
                path=path,
            )
        )
    laid = course.plane.inward(MultiPoint(rows[:, :2]))
    places = np.column_stack([shapely.get_coordinates(laid), rows[:, 2]])
    found = Elevations(places, lines)
    greens = [hole.green.geometry for hole in course.holes.values() if hole.green is not None]
    if not any(len(found.near(green).places) >= 3 for green in greens):
        raise InputError(
            said(
                "{path}: fewer than three of its elevations lie on any green of the map.",
                path=path,
            )
        )
    return found


def _from(path: Path, crs: str | None) -> Transformer:
    """Return the way from a coordinate system to degrees."""
    if crs is None:
        raise InputError(
            said(
                "{path} gives eastings and northings without saying in which coordinate system. Name it, such as EPSG:25832.",
                path=path,
            )
        )
    try:
        return Transformer.from_crs(CRS.from_user_input(crs), WGS84, always_xy=True)
    except CRSError:
        raise InputError(
            said("{crs!r} is no coordinate system. Give one such as EPSG:25832.", crs=crs[:60])
        ) from None


def _prj_beside(path: Path) -> str | None:
    beside = path.with_suffix(".prj")
    return beside.read_text(encoding="utf-8", errors="replace") if beside.is_file() else None
