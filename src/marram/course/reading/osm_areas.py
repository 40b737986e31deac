"""Areas of OpenStreetMap relations: rings joined from ways; rings that touch or lie in one another, where roles agree.

OpenStreetMap's wiki (page "Relation:multipolygon"): inner rings may touch each other, an outer ring may lie in an inner
one, rings may touch in a node, and a member without a role is read as it lies. What is shared by two rings is no edge.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

import shapely
from shapely import MultiLineString
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.reading.source import Position

Member = tuple[str, Sequence[str]]
"""The role of a way in a relation, and its nodes."""

INNER, OUTER = "inner", "outer"


@dataclass(frozen=True, slots=True)
class Joined:
    """What the ways of a relation make.

    Attributes:
        area: the area, perhaps not valid; ``None`` where there is no ring or one does not close.
        open_at: where a part of its edge ends and no other begins, in degrees.
        ignored: a place of each inner ring that lies in no outer one, in degrees: it cuts nothing out.
    """

    area: BaseGeometry | None
    open_at: Position | None = None
    ignored: tuple[Position, ...] = ()


def joined(members: Sequence[Member], places: Mapping[str, Position]) -> Joined:
    """Join the ways of a relation by their shared nodes into rings, and put inner rings into their outer ones."""
    rings: dict[bool, list[Polygon]] = {}
    for inner in (True, False):
        closed, loose = rings_of([*nodes] for role, nodes in members if (role == INNER) is inner)
        if loose:
            return Joined(None, open_at=places[loose[0]])
        rings[inner] = [Polygon([places[node] for node in ring]) for ring in closed]
    areas, used = [], set()
    for outer in rings[False]:
        within = [number for number, inner in enumerate(rings[True]) if _meet(outer, inner)]
        used |= {*within}
        areas.append(Polygon(outer.exterior, [rings[True][number].exterior for number in within]))
    lonely = [inner for number, inner in enumerate(rings[True]) if areas and number not in used]
    ignored = tuple((x, y) for x, y in (inner.exterior.coords[0] for inner in lonely))
    if not areas:
        return Joined(None)
    found = areas[0] if len(areas) == 1 else MultiPolygon(areas)
    return Joined(found if found.is_valid else area_of(members, places) or found, ignored=ignored)


def _meet(outer: Polygon, inner: Polygon) -> bool:
    """Whether an inner ring has ground in an outer one: all of it, or a part, which is then no valid area."""
    inside = outer.covers(inner.representative_point())
    return bool(inside or shapely.relate_pattern(outer, inner, "T********"))


def rings_of(chains: Iterable[list[str]]) -> tuple[list[list[str]], list[str]]:
    """Return the closed rings that chains of nodes make, and an end of a chain that closes with none."""
    rings: list[list[str]] = []
    rest = [list(chain) for chain in chains if len(chain) > 1]
    while rest:
        ring = rest.pop()
        while ring[0] != ring[-1]:
            following = next((chain for chain in rest if ring[-1] in {chain[0], chain[-1]}), None)
            if following is None:
                return rings, [ring[-1]]
            rest.remove(following)
            ring += following[1:] if following[0] == ring[-1] else following[-2::-1]
        if len(set(ring)) > 2:
            rings.append(ring)
    return rings, []


def area_of(members: Iterable[Member], places: Mapping[str, Position]) -> BaseGeometry | None:
    """Return the area between the edges of a relation; ``None`` where edges cross, are open, or contradict their roles.

    Args:
        members: its ways; one that is closed counts once, however often it is a member.
        places: where the nodes are.
    """
    ways = _once(members)
    counted = Counter(edge for _, nodes in ways for edge in _edges(nodes))
    edges = [edge for edge, times in counted.items() if times % 2]
    if any(times % 2 for times in Counter(node for edge in edges for node in edge).values()):
        return None
    drawn = _drawn(edges, places)
    if not drawn.is_simple:
        return None
    area = shapely.build_area(drawn)
    holes = shapely.difference(_within(drawn), area)
    by_role = {
        role: _within(
            _drawn({edge for known, nodes in ways if known != role for edge in _edges(nodes)}, places)
        )
        for role in (INNER, OUTER)
    }
    fits = _all_in(area, by_role[INNER]) and _all_in(holes, by_role[OUTER])
    return area if fits and not area.is_empty else None


def _once(members: Iterable[Member]) -> list[Member]:
    found: dict[frozenset[frozenset[str]] | int, Member] = {}
    for number, (role, nodes) in enumerate(members):
        closed = len(nodes) > 1 and nodes[0] == nodes[-1]
        found.setdefault(frozenset(_edges(nodes)) if closed else number, (role, nodes))
    return list(found.values())


def _edges(nodes: Sequence[str]) -> list[frozenset[str]]:
    return [frozenset(ends) for ends in pairwise(nodes) if ends[0] != ends[1]]


def _drawn(edges: Iterable[frozenset[str]], places: Mapping[str, Position]) -> MultiLineString:
    return MultiLineString([[places[node] for node in edge] for edge in edges])


def _within(drawn: MultiLineString) -> BaseGeometry:
    """Return all ground that edges enclose."""
    return shapely.union_all(shapely.get_parts(shapely.polygonize([drawn])))


def _all_in(pieces: BaseGeometry, ground: BaseGeometry) -> bool:
    """Whether every piece lies within some ground: edges of its role are around it."""
    parts = [one for one in shapely.get_parts(pieces) if not one.is_empty]
    return all(ground.covers(one.representative_point()) for one in parts)
