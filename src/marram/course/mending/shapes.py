"""Shapes that cannot be used: edges left open, collections, parts that are missing, positions that are none."""

from collections.abc import Sequence
from itertools import pairwise
from typing import Any

import shapely
from shapely.geometry import LineString, MultiLineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting, lines_in
from marram.course.mending.untangling import untangled
from marram.course.reading.geojson import INCOMPLETE
from marram.course.reading.geojson_geometry import Unreadable, geometry_of
from marram.course.reading.shapes import polygons
from marram.course.scheme import AREA_KINDS, is_area, meaning
from marram.course.versions.map_edits import Edit
from marram.said import Said, counted, said

_DEPTH = {"Point": 0, "MultiPoint": 1, "LineString": 1, "MultiLineString": 2, "Polygon": 2, "MultiPolygon": 3}


def leave_out(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to take off the map what cannot be read or drawn as it should be."""
    if fault.feature not in setting.features or _last_hole(setting, fault.feature):
        return None
    choice = Choice(
        said("Take it off the map"), setting.remove(fault.feature), (said("nothing of it stays on the map"),)
    )
    why = said("Nothing definite can be made of it: draw it anew in the editor, or do without it.")
    return offer("leave_out", fault, why, [choice])


def _last_hole(setting: Setting, ident: str) -> bool:
    """Whether nothing would be left to play without this line of play."""
    return setting.holes == {ident}


def close_ring(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to close an edge that was left open, by the straight line between its ends."""
    feature = setting.features.get(fault.feature)
    geometry = feature.get("geometry") if feature else None
    if not isinstance(geometry, dict):
        return None
    kind, coordinates = geometry.get("type"), geometry.get("coordinates")
    try:
        if kind == "Polygon":
            made, gap = _closed_parts(setting, [coordinates])
        elif kind == "MultiPolygon":
            made, gap = _closed_parts(setting, coordinates)
        else:
            made, gap = _around(setting, geometry_of(geometry))
    except (ValueError, TypeError, IndexError, Unreadable, shapely.errors.GEOSException):
        return None
    why = said("The edge begins and ends {gap:.1f} m apart; a straight line would close it.", gap=gap)
    if made.is_valid:
        edit = setting.redraw(fault.feature, made)
        return offer("close_ring", fault, why, [Choice(said("Close it with a straight line"), (edit,))])
    choices = untangled(setting, fault.feature, made, closed=True)
    return offer("close_ring", fault, said("{why} Closed like this it crosses itself.", why=why), choices)


def _closed_parts(setting: Setting, parts: Any) -> tuple[BaseGeometry, float]:
    areas, gap = [], 0.0
    for rings in parts:
        gap = max(gap, *(_gap(setting, ring[0], ring[-1]) for ring in rings))
        closed = [ring if ring[0] == ring[-1] else [*ring, ring[0]] for ring in rings]
        areas.append(Polygon(closed[0], closed[1:]))
    return (areas[0] if len(areas) == 1 else MultiPolygon(areas)), gap


def _around(setting: Setting, geometry: BaseGeometry) -> tuple[BaseGeometry, float]:
    """Return the area that lines run round when each is led to the nearest end of another, and the widest gap."""
    rest = [list(line.coords) for line in lines_in(shapely.line_merge(geometry))]
    ring, gap = rest.pop(0), 0.0
    while rest:
        at = ring[-1]
        near = min(rest, key=lambda one: min(_gap(setting, at, one[0]), _gap(setting, at, one[-1])))
        rest.remove(near)
        if _gap(setting, at, near[-1]) < _gap(setting, at, near[0]):
            near.reverse()
        gap = max(gap, _gap(setting, at, near[0]))
        ring += near
    return Polygon(ring), max(gap, _gap(setting, ring[0], ring[-1]))


def _gap(setting: Setting, one: Sequence[float], other: Sequence[float]) -> float:
    return setting.plane.inward(LineString([one[:2], other[:2]])).length


def take_known(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose what the file holds of something whose other parts it lacks, its edge closed by straight lines."""
    shape = setting.shape(fault.feature) if fault.feature in setting.features else None
    if shape is None:
        return None
    made = shape
    if is_area(setting.tags(fault.feature)):
        try:
            made, _ = _around(setting, shape)
        except ValueError:
            return None
        if not made.is_valid:
            return None
    feature = setting.redraw(fault.feature, made).feature or {}
    properties = {key: value for key, value in feature["properties"].items() if key != INCOMPLETE}
    edit = Edit("change", fault.feature, {**feature, "properties": properties})
    adds = (said("where parts are missing the edge is a straight line: look at it"),)
    choices = [
        Choice(said("Use what the file holds of it"), (edit,), adds),
        Choice(
            said("Take it off the map"),
            setting.remove(fault.feature),
            (said("nothing of it stays on the map"),),
        ),
    ]
    why = said("The file was cut; a larger export has the whole of it, and is the better way.")
    return offer("take_known", fault, why, choices)


def take_parts(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to draw a collection of geometries as its areas, or its lines where it has no area."""
    geometry = setting.features.get(fault.feature, {}).get("geometry")
    members = geometry.get("geometries") if isinstance(geometry, dict) else None
    if not isinstance(members, list):
        return None
    found: list[BaseGeometry] = []
    unreadable = 0
    for member in members:
        try:
            found.append(geometry_of(member))
        except Unreadable:
            unreadable += 1
    wanted = meaning(setting.tags(fault.feature))
    areas = [part for one in found for part in polygons(one)]
    lines = [part for one in found for part in lines_in(one)]
    points = [one for one in found if one.geom_type == "Point"]
    drawings: list[tuple[Said, int, BaseGeometry]] = []
    if areas:
        drawings.append(
            (
                counted("Draw it as its area", "Draw it as its {count} areas", len(areas)),
                len(areas),
                areas[0] if len(areas) == 1 else MultiPolygon(areas),
            )
        )
    if wanted not in AREA_KINDS and lines:
        drawings.append(
            (
                counted("Draw it as its line", "Draw it as its {count} lines", len(lines)),
                len(lines),
                shapely.line_merge(MultiLineString(lines)),
            )
        )
    if wanted not in AREA_KINDS and points:
        drawings.append((said("Draw it as its point"), 1, points[0]))
    choices: list[Choice] = []
    for words, count, made in drawings:
        if not made.is_valid:
            choices += untangled(setting, fault.feature, made)
            continue
        left = len(areas) + len(lines) + len(points) - count + unreadable
        adds = (said("{left} other parts of the collection are dropped", left=left),) if left > 0 else ()
        choices.append(Choice(words, (setting.redraw(fault.feature, made),), adds))
    return offer(
        "take_parts", fault, said("It is a collection of shapes, of which one kind is meant."), choices
    )


def read_positions(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to read positions written as text as numbers, and to drop those that are none."""
    geometry = setting.features.get(fault.feature, {}).get("geometry")
    if not isinstance(geometry, dict) or geometry.get("type") not in _DEPTH:
        return None
    lost: list[Any] = []
    coordinates = _cleaned(geometry.get("coordinates"), _DEPTH[geometry["type"]], lost)
    made = {"type": geometry["type"], "coordinates": coordinates}
    try:
        geometry_of(made)
    except (Unreadable, ValueError):
        return None
    adds = (
        (counted("{count} of its positions is dropped", "{count} of its positions are dropped", len(lost)),)
        if lost
        else ()
    )
    words = said("Drop the positions that are none") if lost else said("Read the positions as numbers")
    why = said("A position is two numbers, longitude and latitude; some here are not.")
    return offer("read_positions", fault, why, [Choice(words, (setting.redraw(fault.feature, made),), adds)])


def _cleaned(value: Any, depth: int, lost: list[Any]) -> Any:
    if depth:
        parts = [_cleaned(part, depth - 1, lost) for part in value] if isinstance(value, list) else []
        return [part for part in parts if part is not None]
    try:
        return (
            [float(str(number).replace(",", ".")) for number in value[:2]]
            if len(value) > 1
            else lost.append(value)
        )
    except (ValueError, TypeError):
        lost.append(value)
        return None


def drop_doubled(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to keep each of several positions at one place once."""
    geometry = setting.features.get(fault.feature, {}).get("geometry")
    made = without_doubled(geometry) if isinstance(geometry, dict) else None
    if made is None:
        return None
    choice = Choice(said("Keep each place once"), (setting.redraw(fault.feature, made),))
    return offer(
        "drop_doubled",
        fault,
        said("The shape stays the same; dragged, a doubled corner leaves a spike."),
        [choice],
    )


def without_doubled(geometry: dict[str, Any]) -> dict[str, Any] | None:
    """Return a geometry without positions that repeat the one before, or ``None`` where nothing would change."""
    depth = _DEPTH.get(str(geometry.get("type")), 0)
    if depth == 0 or geometry["type"] == "MultiPoint":
        return None
    coordinates = _once(geometry.get("coordinates"), depth)
    if coordinates == geometry.get("coordinates"):
        return None
    made = {"type": geometry["type"], "coordinates": coordinates}
    try:
        geometry_of(made)
    except (Unreadable, ValueError):
        return None
    return made


def _once(value: Any, depth: int) -> Any:
    if not isinstance(value, list) or not value:
        return value
    if depth > 1:
        return [_once(part, depth - 1) for part in value]
    kept = [value[0], *(after for before, after in pairwise(value) if before != after)]
    return kept if len(kept) > 1 else value
