"""Stakes and the edges they define: which stakes stand on which edge, in which order, and what lies between.

A stake is mapped at the point that defines the edge: for the boundary the course-side point at ground level,
for a penalty area the outside point at ground level (Definitions of out of bounds and penalty area).
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import shapely
from shapely import STRtree
from shapely.geometry import LineString, Point
from shapely.geometry.base import BaseGeometry

from marram.course.checks.edge_lines import EdgeLine, EdgeLines
from marram.course.model import Course, Feature, Kind
from marram.course.reading.shapes import polygons
from marram.said import said

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


@dataclass(frozen=True, eq=False)
class Stretch:
    """What lies between two posts that follow each other on an edge.

    Attributes:
        start: one post.
        end: the next.
        line: the edge they are on.
    """

    start: Post
    end: Post
    line: EdgeLine

    @cached_property
    def edge(self) -> LineString:
        """The edge between them, as mapped."""
        return self.line.between(self.start.at, self.end.at)

    @cached_property
    def string(self) -> LineString:
        """The straight line between the posts."""
        return LineString([self.start.place, self.end.place])

    @property
    def has_corners(self) -> bool:
        """Whether the edge has a corner between them."""
        return self.end.at <= self.start.at or self.line.corners_between(self.start.at, self.end.at)


@dataclass(frozen=True, eq=False)
class StakedEdge:
    """One closed edge with its stakes.

    Attributes:
        feature: the area it is the edge of.
        line: the edge.
        posts: its stakes, and where other markings begin and end, in order along the edge.
        off: how far each of its stakes stands from the edge, metres, in the order of ``stakes``.
        markings: what else marks parts of it.
    """

    feature: Feature
    line: EdgeLine
    posts: tuple[Post, ...] = ()
    off: tuple[float, ...] = ()
    markings: tuple[BaseGeometry, ...] = ()

    @cached_property
    def stakes(self) -> tuple[Stake, ...]:
        """Its stakes in order along the edge."""
        return tuple(post.stake for post in self.posts if post.stake is not None)

    def stretches(self) -> Iterator[Stretch]:
        """Yield what lies between neighbouring posts, leaving out what something else than stakes marks."""
        marked = STRtree(self.markings)
        for start, end in zip(self.posts, [*self.posts[1:], *self.posts[:1]], strict=True):
            stretch = Stretch(start, end, self.line)
            if self.markings:
                middle = stretch.edge.interpolate(0.5, normalized=True)
                if len(marked.query(middle, predicate="dwithin", distance=ALONG)):
                    continue
            yield stretch


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
    edges: list[StakedEdge] = []
    homeless: list[Stake] = []
    for colour, kinds in EDGES.items():
        own = [edge for feature in course.of(*kinds) for edge in _edges(feature)]
        lines = EdgeLines([edge.line for edge in own])
        standing, lost = _standing(own, lines, [stake for stake in stakes if stake.colour == colour])
        homeless += lost
        along = _markings(course, own, lines)
        for number, edge in enumerate(own):
            found = standing.get(number)
            if found is None and defined_by(edge.feature) == {"stakes"}:
                found = _corners(edge, colour)
            if found is not None:
                edges.append(_staked(edge, found, along.get(number, [])))
    return edges, homeless


def _edges(feature: Feature) -> Iterator[StakedEdge]:
    for polygon in polygons(feature.geometry):
        for ring in (polygon.exterior, *polygon.interiors):
            yield StakedEdge(feature, EdgeLine(ring))


def _standing(
    own: Sequence[StakedEdge], lines: EdgeLines, stakes: Sequence[Stake]
) -> tuple[dict[int, list[tuple[Post, float]]], list[Stake]]:
    """Return the posts that stakes are on each edge, with how far off they stand, and the stakes on none."""
    if not own or not stakes:
        return {}, list(stakes)
    standing: dict[int, list[tuple[Post, float]]] = defaultdict(list)
    homeless: list[Stake] = []
    found = lines.nearest(np.array([(stake.place.x, stake.place.y) for stake in stakes]))
    for stake, edge, off, at in zip(stakes, *(one.tolist() for one in found), strict=True):
        if off > REACH:
            homeless.append(stake)
        else:
            standing[edge].append((Post(stake.place, at, stake), off))
    return standing, homeless


def _markings(course: Course, own: Sequence[StakedEdge], lines: EdgeLines) -> dict[int, list[BaseGeometry]]:
    """Return the markings whose middle lies along each edge."""
    markings = [one.geometry for one in course.of(Kind.MARKING)]
    along: dict[int, list[BaseGeometry]] = defaultdict(list)
    if own and markings:
        middles = shapely.get_coordinates([one.interpolate(0.5, normalized=True) for one in markings])
        for marking, edge in lines.within(middles, ALONG).tolist():
            along[edge].append(markings[marking])
    return along


def _staked(
    edge: StakedEdge, standing: Sequence[tuple[Post, float]], markings: Sequence[BaseGeometry]
) -> StakedEdge:
    """Return an edge with its posts in order: stakes, and where other markings begin and end."""
    posts = sorted(standing, key=lambda one: one[0].at)
    ends = [end for marking in markings for end in shapely.get_parts(shapely.boundary(marking))]
    others: list[Post] = []
    if ends:
        _, off, at = edge.line.lines.nearest(shapely.get_coordinates(ends))
        others = [Post(end, float(at[i])) for i, end in enumerate(ends) if off[i] <= ALONG]
    return replace(
        edge,
        posts=tuple(sorted([*(post for post, _ in posts), *others], key=lambda post: post.at)),
        off=tuple(off for _, off in posts),
        markings=tuple(markings),
    )


def defined_by(feature: Feature) -> set[str]:
    """Return what marks the edge of a feature, as its ``marked_by`` says."""
    return {part.strip() for part in feature.tags.get("marked_by", "").split(";") if part.strip()}


def _corners(edge: StakedEdge, colour: str) -> list[tuple[Post, float]]:
    """Return each corner of an edge as a stake that stands on it."""
    places = zip(edge.line.corners[:-1].tolist(), edge.line.along[:-1].tolist(), strict=True)
    return [
        (
            Post(
                Point(place),
                at,
                Stake(
                    said("corner {number} of {feature}", number=number, feature=edge.feature.ident),
                    Point(place),
                    colour,
                ),
            ),
            0.0,
        )
        for number, (place, at) in enumerate(places, 1)
    ]
