"""From tagged geometry in metres to features; what cannot be one is a fault, nothing is repaired."""

import re
from collections.abc import Mapping, Sequence

import shapely
from shapely import STRtree
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Point, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.fault import FaultList
from marram.course.model import THINGS, Feature, Kind
from marram.course.progress import ASSEMBLING, Progress, no_progress, telling
from marram.course.reading.source import SourceFeature
from marram.course.scheme import AREA_KINDS, is_area, meaning
from marram.said import said

PENALTY_AREAS = frozenset({Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA})
HARMLESS = frozenset({Kind.ROUGH, Kind.TREES, Kind.WETLAND})
"""Kinds that decide no area of the course: a broken one is left out with a warning."""

_HOLE_NUMBERS = re.compile(r"[1-9]\d?(\s*;\s*[1-9]\d?)*")
_METRES = re.compile(r"(\d{1,3}(?:\.\d{1,6})?)\s*m?")
_HOW_FAR_OFF = re.compile(r"(\d{1,4}(?:\.\d{1,20})?)\s*m?")  # a phone writes every digit it has
WIDEST, WIDEST_WATER = 50.0, 500.0
"""Metres: no path, ditch or strip of ground drawn as a line is taken to be wider, and no waterway (own choice)."""

ROUGHEST = 1000.0
"""Metres: an edge that may be drawn farther off than this is not on the map at all (own choice)."""

THICKEST_WALL = 3.0
"""Metres: something with ``barrier`` that is drawn as a thicker area is the ground it encloses, not itself (own choice)."""

AROUND_EVACUATION_POINT = 3.0
"""Metres: the ground around an evacuation point that is mapped as a point alone (own choice)."""

_PLACE = re.compile(r"(.*?)\s*\[\s*(\S+)\s+(\S+?)\s*\]")


def hole_numbers(text: str) -> tuple[int, ...]:
    """Return the hole numbers in a tag such as ``7`` or ``2;16``, or none when it is anything else."""
    return tuple(int(number) for number in text.split(";")) if _HOLE_NUMBERS.fullmatch(text.strip()) else ()


def width_of(tags: dict[str, str] | Feature) -> float | None:
    """Return the width of a line in metres from its ``width`` tag, or ``None`` when not mapped or beyond all measure."""
    known = tags.tags if isinstance(tags, Feature) else tags
    found = _METRES.fullmatch(known.get("width", "").strip())
    return float(found[1]) if found and 0 < float(found[1]) <= _widest(known) else None


def _widest(tags: Mapping[str, str]) -> float:
    return WIDEST_WATER if "waterway" in tags else WIDEST


def accuracy_of(tags: Mapping[str, str]) -> float | None:
    """Return how far off an edge may be drawn, in metres, from its ``accuracy`` tag, or ``None`` when it says nothing."""
    found = _HOW_FAR_OFF.fullmatch(tags.get("accuracy", "").strip())
    return float(found[1]) if found and float(found[1]) <= ROUGHEST else None


def strip(line: BaseGeometry, half: float) -> BaseGeometry:
    """Return the strip along a line, of half a width in metres to either side.

    Flat ends and mitred bends keep its edges exactly half the width from the line.
    """
    return shapely.buffer(line, half, cap_style="flat", join_style="mitre")


def to_features(
    sources: Sequence[SourceFeature], faults: FaultList, progress: Progress = no_progress
) -> list[Feature]:
    """Return the features that sources laid out in metres hold, except holes, pins and outlines."""
    return [
        feature
        for source in telling(sources, progress, ASSEMBLING)
        if isinstance(kind := meaning(source.tags), Kind)
        and (feature := to_feature(source, kind, faults)) is not None
    ]


def to_feature(source: SourceFeature, kind: Kind, faults: FaultList) -> Feature | None:
    """Return one feature, or ``None`` when it is refused; the list then says why."""
    if kind in {Kind.PATH, Kind.WATER} and isinstance(source.geometry, Point):
        return None  # a crossing or a spring: a point beside the way it lies on
    geometry = source.geometry
    tags = dict(source.tags)
    _check_values(source, geometry, faults)
    if kind is Kind.BOUNDARY or is_area(tags):
        geometry = _closed(geometry)
    elif kind in THINGS and "barrier" in tags:
        geometry = _around(geometry)
    if invalid(geometry, source.ident, faults, harmless=kind in HARMLESS):
        return None
    width = width_of(tags)
    middle: BaseGeometry | None = None
    if isinstance(geometry, LineString | MultiLineString):
        if kind in PENALTY_AREAS and "waterway" in tags and width is None:
            faults.warn(
                "penalty_area_line",
                said(
                    "this penalty area is drawn as a line without a width: nobody can tell which balls are in it"
                ),
                said("Draw its edge as an area, or add its width in metres (width=3)."),
                feature=source.ident,
                at=geometry,
            )
            kind = Kind.WATER
        elif width is not None and kind in {Kind.PATH, Kind.WATER, *THINGS, *PENALTY_AREAS}:
            middle, geometry = geometry, strip(geometry, width / 2)
        elif kind in AREA_KINDS and kind is not Kind.BOUNDARY:
            _refuse_line(source, kind, geometry, faults)
            return None
    elif isinstance(geometry, Point) and kind is Kind.EVACUATION_POINT:
        geometry = shapely.buffer(geometry, AROUND_EVACUATION_POINT)
    elif isinstance(geometry, Point) and kind in AREA_KINDS:
        _refuse_point(source, kind, geometry, faults)
        return None
    return Feature(
        kind,
        source.ident,
        geometry,
        ref=tags.get("ref", ""),
        name=tags.get("name", ""),
        holes=hole_numbers(tags.get("holes", "")),
        tags=tags,
        serves=tuple(part.strip() for part in tags.get("serves", "").split(";") if part.strip()),
        middle=middle,
    )


def _check_values(source: SourceFeature, geometry: BaseGeometry, faults: FaultList) -> None:
    """Warn of numbers that cannot be read, so that they are not taken as absent in silence."""
    for tag, readable, example in (
        (
            "width",
            width_of(dict(source.tags)) is not None,
            said("width=2.5 in metres, and no more than {widest:g}", widest=_widest(source.tags)),
        ),
        ("holes", bool(hole_numbers(source.tags.get("holes", ""))), "holes=2;16"),
        (
            "accuracy",
            accuracy_of(source.tags) is not None,
            said("accuracy=6 in metres, and no more than {most:g}", most=ROUGHEST),
        ),
    ):
        if tag in source.tags and not readable:
            faults.warn(
                "not_a_number",
                said("its {tag} {value!r} cannot be read: it was left out", tag=tag, value=source.tags[tag]),
                said("Write {example}.", example=example),
                feature=source.ident,
                at=geometry,
            )


REASONS = {
    "Self-intersection": said("self-intersection"),
    "Ring Self-intersection": said("ring self-intersection"),
    "Hole lies outside shell": said("hole lies outside shell"),
    "Holes are nested": said("holes are nested"),
    "Interior is disconnected": said("interior is disconnected"),
    "Nested shells": said("nested shells"),
    "Duplicate Rings": said("duplicate rings"),
    "Too few points in geometry component": said("too few points in geometry component"),
}
"""What GEOS finds wrong with a shape (``isValidReason``), as it is told."""


def invalid(geometry: BaseGeometry, ident: str, faults: FaultList, *, harmless: bool = False) -> bool:
    """Whether the geometry is invalid (a bow-tie, a hole outside its area …); the list then says where."""
    if geometry.is_valid:
        return False
    reason = shapely.is_valid_reason(geometry)
    found = _PLACE.fullmatch(reason)
    words, place = (
        (found[1], Point(float(found[2]), float(found[3]))) if found else (reason, geometry.centroid)
    )
    report = faults.warn if harmless else faults.error
    report(
        "invalid_geometry",
        said("its shape is not valid ({words})", words=REASONS.get(words, words.lower()))
        + (said(": it was left out") if harmless else ""),
        said("Draw the edge so that it does not cross or touch itself."),
        feature=ident,
        at=place,
    )
    return True


def closed_boundary(lines: Sequence[Feature], faults: FaultList) -> list[Feature]:
    """Join boundary lines that meet end to end into areas; where they do not meet, the list says so."""
    if not lines:
        return []
    merged = shapely.line_merge(shapely.union_all([line.geometry for line in lines]))
    parts = [part for part in shapely.get_parts(merged) if isinstance(part, LineString)]
    closed = [part for part in parts if part.is_ring]
    ends = [Point(p) for part in parts if not part.is_ring for p in (part.coords[0], part.coords[-1])]
    tree = STRtree(ends)
    for end in ends[1::2]:
        # Where two lines end at one place they were joined already: three or more were not.
        _, gaps = tree.query_nearest(end, return_distance=True, exclusive=True)
        meet = len(tree.query(end, predicate="intersects")) > 1 or not len(gaps)
        faults.error(
            "boundary_gap",
            said("the boundary is not one closed line: more than two of its lines meet here")
            if meet
            else said(
                "the boundary is not closed: a line ends here, {gap:.1f} m from where the next begins",
                gap=gaps[0],
            ),
            said("Leave one way around the course.")
            if meet
            else said("Draw the missing part, ending at the same position."),
            feature=lines[0].ident,
            at=end,
        )
    return [Feature(Kind.BOUNDARY, lines[0].ident, Polygon(ring), tags=lines[0].tags) for ring in closed]


def _closed(geometry: BaseGeometry) -> BaseGeometry:
    """Return a closed line as the area it encloses; anything else as it is."""
    if isinstance(geometry, LineString) and geometry.is_closed and len(geometry.coords) > 3:
        return Polygon(geometry)
    return geometry


def _around(geometry: BaseGeometry) -> BaseGeometry:
    """Return what stands around ground that a wall or fence encloses, where the ground was drawn; else as it is."""
    areal = isinstance(geometry, Polygon | MultiPolygon) and geometry.is_valid
    return (
        shapely.boundary(geometry)
        if areal and not shapely.buffer(geometry, -THICKEST_WALL / 2).is_empty
        else geometry
    )


def _refuse_line(
    source: SourceFeature, kind: Kind, line: LineString | MultiLineString, faults: FaultList
) -> None:
    ends = shapely.get_parts(shapely.boundary(line))
    apart = said(" ({distance:.1f} m apart)", distance=ends[0].distance(ends[-1])) if len(ends) == 2 else ""
    report = faults.warn if kind in HARMLESS else faults.error
    report(
        "open_ring",
        said(
            "this {kind} is an open line{apart}: nobody can tell which balls are in it",
            kind=kind,
            apart=apart,
        ),
        said("Draw the missing part of its edge and end at the first position."),
        feature=source.ident,
        at=ends[-1] if len(ends) else line,
    )


def _refuse_point(source: SourceFeature, kind: Kind, point: Point, faults: FaultList) -> None:
    report = faults.warn if kind in {Kind.TEEING_AREA, *HARMLESS} else faults.error
    report(
        "point_for_area",
        said("this {kind} is only a point, which says nothing of its extent; it was left out", kind=kind),
        said("Draw its edge as an area."),
        feature=source.ident,
        at=point,
    )


def polygons(geometry: BaseGeometry) -> list[Polygon]:
    """Return the polygons of a geometry."""
    if isinstance(geometry, Polygon):
        return [geometry]
    return list(geometry.geoms) if isinstance(geometry, MultiPolygon) else []
