"""From a source to a course map: choose the course, lay the plane, make features and holes."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

import shapely
from shapely.geometry import Point

from marram.course.fault import Fault, FaultList, Severity
from marram.course.model import Course, Feature, Kind
from marram.course.plane import LocalPlane
from marram.course.progress import Progress, no_progress, part_of
from marram.course.reading.antimeridian import counted_on, from_greenwich
from marram.course.reading.holes import holes_of
from marram.course.reading.lines_of_play import lines_of_play
from marram.course.reading.selection import choose_outline, misplaced, of_course
from marram.course.reading.shapes import closed_boundary, hole_numbers, to_feature, to_features
from marram.course.reading.source import Source, SourceFeature
from marram.course.scheme import Role, is_about_golf, meaning
from marram.said import said

AS_WRITTEN = ("positions", "longitude_latitude")
"""The tag, of any feature, of a map that somebody has looked at: its positions are in that order."""

CHOSEN, MADE = 0.3, 0.6
"""Which part of the work is done once what belongs to the course is chosen, and once features are made of it (as
measured, about)."""


def assemble(
    source: Source, which: str | None = None, progress: Progress = no_progress
) -> tuple[Course | None, list[Fault]]:
    """Return the course map that a source holds, with every fault found on the way.

    Args:
        source: what was read from the file.
        which: the name or identifier of the course, needed where the file holds several.
        progress: told how far the work is; what it raises ends it.

    Returns:
        The course, or ``None`` when there is nothing to build one from; and the faults.
    """
    if not source.readable:
        return None, list(source.faults)
    every = counted_on(source.features)
    outline, undecided = choose_outline(every, which)
    if undecided:
        return None, [*source.faults, *undecided]
    chosen = of_course(every, outline, part_of(progress, 0.0, CHOSEN))
    if not any(is_about_golf(feature.tags) for feature in chosen):
        if any(fault.check == "incomplete" and fault.severity is Severity.ERROR for fault in source.faults):
            return None, list(source.faults)  # golf is tagged, but not whole in the file
        nothing = Fault(
            Severity.ERROR,
            "no_golf",
            said("nothing in the file is tagged as part of the golf course"),
            said(
                "Draw the holes, greens, bunkers and penalty areas with golf=* tags; see docs/course-map.md."
            ),
        )
        return None, [*source.faults, nothing]
    lost = misplaced(chosen)
    if lost:
        return None, [*source.faults, *lost]
    faults = FaultList(_plane(chosen))
    laid = _in_metres(chosen, faults.plane)
    _same_identifiers(laid, faults)
    features = _boundary(
        laid[0] if outline else None, to_features(laid, faults, part_of(progress, CHOSEN, MADE)), faults
    )
    lines = lines_of_play(laid, features, faults)
    holes, features = holes_of(lines, features, _pins(laid), faults, part_of(progress, MADE, 1.0))
    course = Course(
        name=outline.tags.get("name", "") if outline else "",
        plane=faults.plane,
        holes=holes,
        features=tuple(features),
        credit=source.credit,
        covered=None if source.bounds is None else faults.plane.inward(source.bounds),
        as_written=any(AS_WRITTEN in feature.tags.items() for feature in chosen),
    )
    return course, [*source.faults, *faults.found]


def _plane(features: Sequence[SourceFeature]) -> LocalPlane:
    west, south, east, north = shapely.total_bounds([f.geometry for f in features if is_about_golf(f.tags)])
    return LocalPlane(round(from_greenwich(float(west + east) / 2), 4), round(float(south + north) / 2, 4))


def _same_identifiers(features: Sequence[SourceFeature], faults: FaultList) -> None:
    """Tell of identifiers that several features have: whoever reads of one in a message cannot tell which is meant."""
    times = Counter(feature.ident for feature in features)
    seen: set[str] = set()
    for feature in features:
        if times[feature.ident] > 1 and feature.ident not in seen:
            seen.add(feature.ident)
            faults.warn(
                "repeated_id",
                said("{count} features have this identifier", count=times[feature.ident]),
                said("Give each an 'id' of its own, or remove what is there twice."),
                feature=feature.ident,
                at=feature.geometry,
            )


def _in_metres(features: Sequence[SourceFeature], plane: LocalPlane) -> list[SourceFeature]:
    geometries = plane.inward_all([feature.geometry for feature in features])
    return [
        replace(feature, geometry=geometry) for feature, geometry in zip(features, geometries, strict=True)
    ]


def _boundary(outline: SourceFeature | None, features: Sequence[Feature], faults: FaultList) -> list[Feature]:
    """Put the boundary first: as mapped with ``marram=boundary``, else the outline of the course."""
    lines = [f for f in features if f.kind is Kind.BOUNDARY and f.geometry.geom_type.endswith("LineString")]
    its = set(map(id, lines))
    rest = [feature for feature in features if id(feature) not in its]
    drawn = closed_boundary(lines, faults)
    if lines or any(feature.kind is Kind.BOUNDARY for feature in rest):
        return [*_marked(drawn, lines), *rest]
    made = to_feature(outline, Kind.BOUNDARY, faults) if outline else None
    if made is not None:
        return (
            [*closed_boundary([made], faults), *rest] if "Line" in made.geometry.geom_type else [made, *rest]
        )
    faults.warn(
        "no_boundary",
        said("the map has no boundary: out of bounds cannot be told"),
        said(
            "Draw the boundary with marram=boundary, or the outline of the course with leisure=golf_course."
        ),
    )
    return rest


def _marked(drawn: Sequence[Feature], lines: Sequence[Feature]) -> list[Feature]:
    """Return joined boundaries; where its lines are marked in different ways, each says which part is marked how."""
    ways = {line.tags.get("marked_by", "") for line in lines}
    if len(ways) < 2:
        return list(drawn)
    tags = {key: value for key, value in lines[0].tags.items() if key != "marked_by"}
    if "stakes" in ways:
        tags["marked_by"] = "stakes"
    parts = [
        replace(line, kind=Kind.MARKING) for line in lines if line.tags.get("marked_by", "stakes") != "stakes"
    ]
    return [*(replace(boundary, tags=tags) for boundary in drawn), *parts]


def _pins(features: Sequence[SourceFeature]) -> list[tuple[Point, int | None]]:
    pins: list[tuple[Point, int | None]] = []
    for feature in features:
        place = feature.geometry
        if meaning(feature.tags) is Role.PIN and isinstance(place, Point):
            numbers = hole_numbers(feature.tags.get("ref", ""))
            pins.append((place, numbers[0] if len(numbers) == 1 else None))
    return pins


def boundary_is_outline(course: Course) -> bool:
    """Whether the boundary is only the outline of the property, not a boundary the Committee has mapped."""
    return any(f.tags.get("marram") != "boundary" for f in course.of(Kind.BOUNDARY))
