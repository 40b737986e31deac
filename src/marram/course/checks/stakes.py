"""Stakes and the edges they define: which stakes stand on which edge, in which order, and what lies between.

A stake is mapped at the point that defines the edge: for the boundary the course-side point at ground level,
for a penalty area the outside point at ground level (Definitions of out of bounds and penalty area).
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry import LinearRing, LineString, Point
from shapely.geometry.base import BaseGeometry
from shapely.ops import substring

from marram.course.model import Course, Feature, Kind
from marram.course.reading.shapes import polygons

EDGES = {
    "white": (Kind.BOUNDARY, Kind.OUT_OF_BOUNDS),
    "red": (Kind.RED_PENALTY_AREA,),
    "yellow": (Kind.YELLOW_PENALTY_AREA,),
}
"""What stakes of each colour mark (Definitions of out of bounds and penalty area)."""

REACH = 10.0
"""A stake further than this from every edge of its colour stands on none, metres (own choice)."""

ALONG = 0.5
"""A marking drawn this near an edge runs along it, metres (own choice)."""


@dataclass(frozen=True, slots=True)
class Stake:
    """One stake.

    Attributes:
        ident: for messages.
        place: the point that defines the edge, in local metres.
        colour: as mapped, or an empty string.
    """

    ident: str
    place: Point
    colour: str


@dataclass(frozen=True, slots=True)
class Post:
    """A stake on an edge, or the place where another marking begins or ends.

    Attributes:
        place: where it stands.
        at: how far along the edge, metres.
        stake: the stake; ``None`` where another marking begins or ends.
    """

    place: Point
    at: float
    stake: Stake | None = None


@dataclass(frozen=True, slots=True)
class Stretch:
    """What lies between two posts that follow each other on an edge.

    Attributes:
        start: one post.
        end: the next.
        edge: the edge between them, as mapped.
    """

    start: Post
    end: Post
    edge: LineString

    @property
    def string(self) -> LineString:
        """The straight line between the posts."""
        return LineString([self.start.place, self.end.place])


@dataclass(frozen=True, slots=True)
class StakedEdge:
    """One closed edge with its stakes.

    Attributes:
        feature: the area it is the edge of.
        ring: the edge.
        stakes: its stakes in order along the edge.
        markings: what else marks parts of it.
    """

    feature: Feature
    ring: LinearRing
    stakes: tuple[Stake, ...]
    markings: tuple[BaseGeometry, ...] = ()

    def stretches(self) -> Iterator[Stretch]:
        """Yield what lies between neighbouring posts, leaving out what something else than stakes marks."""
        posts = self.posts()
        for start, end in zip(posts, [*posts[1:], *posts[:1]], strict=True):
            edge = self._between(start.at, end.at)
            middle = edge.interpolate(0.5, normalized=True)
            if not any(marking.distance(middle) <= ALONG for marking in self.markings):
                yield Stretch(start, end, edge)

    def posts(self) -> list[Post]:
        """Return the stakes, and where other markings begin and end, in order along the edge."""
        found = [Post(one.place, self.ring.project(one.place), one) for one in self.stakes]
        for marking in self.markings:
            ends = shapely.get_parts(shapely.boundary(marking))
            found += [Post(end, self.ring.project(end)) for end in ends if self.ring.distance(end) <= ALONG]
        return sorted(found, key=lambda post: post.at)

    def _between(self, start: float, end: float) -> LineString:
        line = LineString(self.ring.coords)
        if end > start:
            return LineString(shapely.get_coordinates(substring(line, start, end)))
        parts = [substring(line, start, line.length), substring(line, 0.0, end)]
        places = [place for part in parts for place in part.coords]
        return LineString(list(dict.fromkeys(places)) if len(set(places)) > 1 else [places[0], places[0]])


def stakes_of(course: Course) -> list[Stake]:
    """Return every stake that is mapped as one; a line of stakes has one at each of its positions."""
    found: list[Stake] = []
    for feature in course.of(Kind.STAKE):
        places = list(dict.fromkeys(map(tuple, shapely.get_coordinates(feature.geometry).tolist())))
        colour = feature.tags.get("colour", "")
        for number, place in enumerate(places, 1):
            ident = feature.ident if len(places) == 1 else f"{feature.ident} #{number}"
            found.append(Stake(ident, Point(place), colour))
    return found


def staked_edges(course: Course, stakes: Sequence[Stake]) -> tuple[list[StakedEdge], list[Stake]]:
    """Return the edges that stakes stand on, and the stakes that stand on none.

    A stake belongs to the nearest edge that its colour marks. Where ``marked_by=stakes`` and no stake is
    mapped, each corner of the edge as drawn is one.

    Args:
        course: the map.
        stakes: its stakes.
    """
    markings = tuple(one.geometry for one in course.of(Kind.MARKING))
    edges: list[StakedEdge] = []
    homeless: list[Stake] = []
    for colour, kinds in EDGES.items():
        own = [edge for feature in course.of(*kinds) for edge in _edges(feature, markings)]
        standing: dict[int, list[Stake]] = {}
        for stake in stakes:
            if stake.colour != colour:
                continue
            near = min(range(len(own)), key=lambda i: own[i].ring.distance(stake.place), default=None)
            if near is None or own[near].ring.distance(stake.place) > REACH:
                homeless.append(stake)
            else:
                standing.setdefault(near, []).append(stake)
        for index, edge in enumerate(own):
            if index in standing:
                ring = edge.ring
                ordered = sorted(standing[index], key=lambda one: ring.project(one.place))
                edges.append(replace(edge, stakes=tuple(ordered)))
            elif defined_by(edge.feature) == {"stakes"}:
                edges.append(replace(edge, stakes=tuple(_corners(edge, colour))))
    return edges, homeless


def defined_by(feature: Feature) -> set[str]:
    """Return what marks the edge of a feature, as its ``marked_by`` says."""
    return {part.strip() for part in feature.tags.get("marked_by", "").split(";") if part.strip()}


def _edges(feature: Feature, markings: Sequence[BaseGeometry]) -> Iterator[StakedEdge]:
    for polygon in polygons(feature.geometry):
        for ring in (polygon.exterior, *polygon.interiors):
            along = tuple(
                one for one in markings if ring.distance(one.interpolate(0.5, normalized=True)) <= ALONG
            )
            yield StakedEdge(feature, ring, (), along)


def _corners(edge: StakedEdge, colour: str) -> list[Stake]:
    corners = np.asarray(edge.ring.coords)[:-1, :2]
    return [
        Stake(f"corner {number} of {edge.feature.ident}", Point(place), colour)
        for number, place in enumerate(corners.tolist(), 1)
    ]
