"""Edges of the course: boundaries with gaps, areas across them, ground out of bounds that holds everything."""

import shapely
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.fault import Fault
from marram.course.mending.proposal import Choice, Proposal, offer
from marram.course.mending.setting import Setting, drawn, lines_in
from marram.course.model import Kind
from marram.course.reading.shapes import polygons
from marram.course.scheme import Role, meaning
from marram.said import said

WIDEST_GAP = 100.0
"""A wider gap of a boundary is not proposed to be closed by a straight line, metres (own choice)."""


def close_boundary(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to lead the lines of a boundary on to each other, where the gaps between them are narrow."""
    lines = [(one.ident, line) for one in setting.things(Kind.BOUNDARY) for line in lines_in(one.shape)]
    if fault.feature not in setting.features or not lines:
        return None
    merged = shapely.line_merge(shapely.union_all([line for _, line in lines]))
    open_ends = [
        Point(at)
        for part in shapely.get_parts(merged)
        if isinstance(part, LineString) and not part.is_ring
        for at in (part.coords[0], part.coords[-1])
    ]
    added, gaps = [], []
    while len(open_ends) > 1:
        # The two ends nearest to each other belong together, but those of one line only when no others are left.
        _, i, j = min(
            (a.distance(b), i, j) for i, a in enumerate(open_ends) for j, b in enumerate(open_ends) if i < j
        )
        if j == i + 1 and i % 2 == 0 and len(open_ends) > 2:
            pairs = [
                (a.distance(b), i, j)
                for i, a in enumerate(open_ends)
                for j, b in enumerate(open_ends)
                if i < j and not (j == i + 1 and i % 2 == 0)
            ]
            _, i, j = min(pairs)
        first, second = open_ends[i], open_ends[j]
        gaps.append(first.distance(second))
        added.append(LineString([first, second]))
        open_ends = [one for at, one in enumerate(open_ends) if at not in (i, j)]
    if not added or max(gaps) > WIDEST_GAP:
        return None
    tags = setting.tags(lines[0][0])
    edits = []
    for number, line in enumerate(added, 1):
        ident = f"drawn/boundary-gap-{number}"
        while ident in setting.features:
            ident += "+"
        edits.append(setting.add(ident, _exact(setting, line), **tags))
    adds = tuple(said("a straight line of {gap:.1f} m", gap=gap) for gap in gaps)
    also = [one for one in setting.faults if one.check == fault.check and one != fault]
    choice = Choice(said("Close the gaps with straight lines"), tuple(edits), adds)
    why = said("The lines of the boundary must meet for anybody to tell what lies inside.")
    return offer("close_boundary", fault, why, [choice], also=also)


def _exact(setting: Setting, line: LineString) -> LineString:
    """Return a line in degrees whose ends are the very positions the boundary was drawn with."""
    known = [
        at
        for one in setting.source.features
        if meaning(one.tags) is Kind.BOUNDARY
        for part in lines_in(one.geometry)
        for at in map(Point, part.coords)
    ]
    ends = [Point(setting.plane.to_degrees(x, y)) for x, y in line.coords]
    return LineString([min(known, key=end.distance) for end in ends])


def fit_boundary(setting: Setting, fault: Fault) -> Proposal | None:
    """Ask of an area that crosses the boundary: is it cut there, or does the boundary run round it?"""
    course = setting.course
    area = setting.shape(fault.feature) if fault.feature in setting.features else None
    if course is None or area is None or "Polygon" not in area.geom_type or not area.is_valid:
        return None
    boundaries = [
        (one.ident, shape)
        for one in course.of(Kind.BOUNDARY)
        if one.ident in setting.features
        and (shape := setting.shape(one.ident)) is not None
        and "Polygon" in shape.geom_type
        and shape.is_valid
    ]
    if not boundaries:
        return None
    ground = shapely.union_all([shape for _, shape in boundaries])
    inside = drawn(shapely.intersection(area, ground))
    choices = []
    parts = [one for one in polygons(inside) if not one.is_empty]
    if parts:  # what lies wholly beyond has nothing left to be cut to
        made = parts[0] if len(parts) == 1 else shapely.multipolygons(parts)
        if made.is_valid:
            choices.append(
                Choice(
                    said("Cut it at the boundary"),
                    (setting.redraw(fault.feature, made),),
                    (said("what lies beyond is out of bounds"),),
                )
            )
    ident, nearest = min(boundaries, key=lambda found: found[1].distance(area))
    wider = drawn(shapely.union(nearest, area.buffer(1e-7)))
    if wider.is_valid and "Polygon" in wider.geom_type:
        choices.append(
            Choice(
                said("Lead the boundary round it"),
                (setting.redraw(ident, wider),),
                (said("the boundary is marked on the ground: check it there"),),
            )
        )
    choices.append(Choice(said("Take it off the map"), setting.remove(fault.feature)))
    why = said("Ground outside the boundary is out of bounds; one of the two edges is drawn wrongly.")
    return offer("fit_boundary", fault, why, choices)


def turn_coast(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to turn a coastline round, with all its pieces that meet end to end, so that the course lies on the land."""
    lines = {ident: shape for ident, shape in _coast(setting).items() if shape.geom_type == "LineString"}
    if fault.feature not in lines:
        return None
    merged = shapely.get_parts(shapely.line_merge(shapely.multilinestrings(list(lines.values()))))
    own = next(one for one in merged if shapely.covers(one, lines[fault.feature]))
    pieces = [ident for ident, shape in lines.items() if shapely.covers(own, shape)]
    edits = tuple(setting.redraw(ident, lines[ident].reverse()) for ident in pieces)
    why = said(
        "The land lies on the left of a coastline, the water on its right; as it is drawn, the holes are cut in the sea."
    )
    return offer("turn_coast", fault, why, [Choice(said("Turn the coastline round"), edits)])


def _coast(setting: Setting) -> dict[str, BaseGeometry]:
    shapes = (
        (ident, setting.shape(ident))
        for ident, one in setting.read.items()
        if one.tags.get("natural") == "coastline"
    )
    return {ident: shape for ident, shape in shapes if shape is not None}


def mark_boundary(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to read ground out of bounds that holds every hole as the boundary the course lies in."""
    if fault.feature not in setting.features:
        return None
    choice = Choice(
        said("It is the boundary: the course lies inside"), (setting.retag(fault.feature, marram="boundary"),)
    )
    why = said(
        "Every hole lies in it, so that no ball could be played; what is meant is the edge around the course."
    )
    return offer("mark_boundary", fault, why, [choice])


def outline_is_boundary(setting: Setting, fault: Fault) -> Proposal | None:
    """Propose to take the outline of the course as the boundary, where the Committee says it is."""
    if any(one.check == "area_outside" for one in setting.faults):
        return None  # those first: a boundary that they cross would make errors of them
    outlines = [one for one in setting.source.features if meaning(one.tags) is Role.COURSE]
    if (
        len(outlines) != 1
        or not outlines[0].geometry.is_valid
        or "Polygon" not in outlines[0].geometry.geom_type
    ):
        return None
    ident = f"{outlines[0].ident}/boundary"
    if ident in setting.features:
        return None
    edit = setting.add(ident, outlines[0].geometry, marram="boundary")
    choice = Choice(
        said("The boundary runs along the outline"),
        (edit,),
        (said("check on the ground that it is marked there"),),
    )
    why = said("The outline is that of the property; the Committee decides whether it is the boundary too.")
    return offer("outline_is_boundary", fault, why, [choice])
