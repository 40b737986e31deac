"""Checks of the stakes: is the string line from each stake to the next one that a referee can stretch?

Where stakes define an edge, it is the straight line from stake to stake, and a player must be able to tell on
which side of it a ball lies (Committee Procedures, section 2A). How far apart they may stand is published
guidance of golf associations, not a Rule: a clear line of sight from each to the next, and at most 25 yards
where balls may come (Arizona Golf Association, *Marking the Course*); others suggest 15 to 20 yards (Carolinas
Golf Association, *Course Marking and Set-Up*).
"""

import math
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import STRtree
from shapely.geometry import LineString, Point

from marram.course.checks.stakes import EDGES, Stake, StakedEdge, Stretch, defined_by, staked_edges, stakes_of
from marram.course.fault import FaultList
from marram.course.feature_index import index_of
from marram.course.lies.tolerance import BALL_RADIUS
from marram.course.model import Course, Kind
from marram.course.progress import CHECKING, STEP, Progress, no_progress, part_of, telling
from marram.said import Said, one_of, said

FURTHEST = 25 * 0.9144
"""Most metres between neighbouring stakes: 25 yards (Arizona Golf Association)."""

BALL = 2 * BALL_RADIUS
"""A string that runs further from the mapped edge than this decides another way for some ball, metres."""

CORNER = 20.0
"""An edge that turns by more than this many degrees has a corner (own choice)."""

TRUNK = 0.3
"""A tree mapped as a point stands in the string's way within this distance, metres (own choice)."""

CLEARLY_NEARER = 0.8
"""A stake not on the line is taken for the next where it is nearer by this factor (own choice)."""

LISTED, STANDING = 0.15, 0.35
"""Which part of the check is done once the stakes are listed, and once each has its edge (as measured, about)."""

SAME_WAY = math.cos(math.radians(100))
"""Two stakes are seen the same way when no more than this angle is between them (own choice)."""


def check_stakes(course: Course, faults: FaultList, progress: Progress = no_progress) -> None:
    """Note stakes that leave the string line in doubt, each with its place; ``progress`` is told how far the check is."""
    stakes = stakes_of(course)
    progress(CHECKING, LISTED)
    edges, homeless = staked_edges(course, stakes)
    progress(CHECKING, STANDING)
    for stake in stakes:
        _colour(stake, faults)
    for stake in homeless:
        faults.warn(
            "stake_of_no_edge",
            said("this {colour} stake stands by no edge that {colour} stakes mark", colour=stake.colour),
            said("Draw the edge it belongs to, or correct its colour or place."),
            feature=stake.ident,
            at=stake.place,
        )
    by_colour = {colour: _Stakes([one for one in stakes if one.colour == colour]) for colour in EDGES}
    walked = part_of(progress, STANDING, 1.0)
    for edge, part in zip(edges, _parts(edges, walked), strict=True):
        # Beside a painted line or a fence, stakes only point it out.
        if defined_by(edge.feature) <= {"stakes"}:
            _edge(course, edge, by_colour[edge.stakes[0].colour], faults, part)


def _parts(edges: Sequence[StakedEdge], progress: Progress) -> Iterator[Progress]:
    """Yield for each edge its part of the progress, as its posts are of all; tell after every so many of them."""
    whole = sum(len(edge.posts) for edge in edges)
    done = told = 0
    for edge in edges:
        if done - told >= STEP:
            progress(CHECKING, done / whole)
            told = done
        before, done = done, done + len(edge.posts)
        yield part_of(progress, before / whole, done / whole)


class _Stakes:
    """Stakes of one colour, with an index of where they stand.

    Attributes:
        stakes: the stakes.
        places: where they stand, in local metres, shape (n, 2).
    """

    def __init__(self, stakes: Sequence[Stake]) -> None:
        self.stakes = stakes
        self.places = np.array([(one.place.x, one.place.y) for one in stakes]).reshape(-1, 2)
        self._known = set(map(id, stakes))
        self._tree = STRtree([one.place for one in stakes])

    def hold(self, stake: Stake) -> bool:
        """Whether a stake is one of these."""
        return id(stake) in self._known

    def and_also(self, stakes: Sequence[Stake], reach: float) -> "_Stakes":
        """Return other stakes, the corners of an edge that stand for some, and those of these within reach of them."""
        around = shapely.box(*shapely.total_bounds([one.place for one in stakes]))
        near = self._tree.query(around, predicate="dwithin", distance=reach)
        return _Stakes([*stakes, *(self.stakes[i] for i in sorted(near))])

    def near_each(
        self, places: NDArray[np.float64], distances: NDArray[np.float64]
    ) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        """Return pairs of a place, shape (n, 2), and a stake no further from it than the place's distance."""
        found = self._tree.query(shapely.points(places), predicate="dwithin", distance=distances)
        return found[0], found[1]


def _colour(stake: Stake, faults: FaultList) -> None:
    if stake.colour in EDGES:
        return
    told = (
        said("its colour is {colour!r}", colour=stake.colour)
        if stake.colour
        else said("its colour is not mapped")
    )
    faults.warn(
        "stake_colour",
        said("{told}: nobody can tell which edge this stake marks", told=told),
        said(
            "Add colour=<{edges}>; leave out stakes that mark no boundary and no penalty area.",
            edges=one_of(EDGES),
        ),
        feature=stake.ident,
        at=stake.place,
    )


def _edge(course: Course, edge: StakedEdge, stakes: "_Stakes", faults: FaultList, progress: Progress) -> None:
    for stake, off in zip(edge.stakes, edge.off, strict=True):
        _off_edge(edge, stake, off, faults)
    if len(edge.posts) < 2:
        faults.warn(
            "stake_alone",
            said("one stake alone marks no line of this {name}", name=edge.feature.kind),
            said("Map the others, or draw what marks the rest of the edge with marram=marking."),
            feature=edge.feature.ident,
            at=edge.stakes[0].place,
        )
        return
    stretches = list(edge.stretches())
    for stretch in telling(stretches, progress, CHECKING):
        if not _gap(edge, stretch, faults):
            _departure(edge, stretch, faults)
            _blocked(course, edge, stretch, faults)
    reach = max((one.string.length for one in stretches), default=0.0)
    everyone = stakes if stakes.hold(edge.stakes[0]) else stakes.and_also(edge.stakes, reach)
    _two_next(edge, stretches, everyone, faults)


def _off_edge(edge: StakedEdge, stake: Stake, off: float, faults: FaultList) -> None:
    if off > BALL:
        faults.warn(
            "stake_off_edge",
            said(
                "this stake stands {off:.2f} m {which_side} the mapped edge of {feature}",
                off=off,
                which_side=_which_side(edge, stake.place),
                feature=edge.feature.ident,
            ),
            said("Measure it again; then move the stake, or draw the edge where it stands."),
            feature=stake.ident,
            at=stake.place,
        )


def _gap(edge: StakedEdge, stretch: Stretch, faults: FaultList) -> bool:
    apart = stretch.string.length
    if apart <= FURTHEST:
        return False
    faults.warn(
        "stake_gap",
        said(
            "{between} are {apart:.1f} m apart, more than {furthest:.1f} m (25 yards): the string line of this "
            "{name} is hard to see",
            between=_between(stretch),
            apart=apart,
            furthest=FURTHEST,
            name=edge.feature.kind,
        ),
        said(
            "Place stakes between, each to be seen from the next, or draw what marks this part with marram=marking."
        ),
        feature=edge.feature.ident,
        at=stretch.edge.interpolate(0.5, normalized=True),
    )
    return True


def _departure(edge: StakedEdge, stretch: Stretch, faults: FaultList) -> None:
    """Compare the mapped edge with the string between the places of the posts on it.

    Distance from a straight line is a convex function, so its greatest value is at a corner of the edge.
    """
    if not stretch.has_corners:
        return
    corners = shapely.get_coordinates(stretch.edge)
    string = LineString([corners[0], corners[-1]])
    off = np.atleast_1d(shapely.distance(string, shapely.points(corners)))
    worst = int(off.argmax())
    if off[worst] <= BALL:
        return
    place = Point(corners[worst])
    side = _which_side(edge, string.interpolate(string.project(place)))
    is_corner = _turn(corners, worst) > CORNER
    faults.warn(
        "corner_without_stake" if is_corner else "string_off_edge",
        said(
            "{between} the string runs {off:.2f} m {side} the mapped edge of this {name}{corner}",
            between=_between(stretch),
            off=off[worst],
            side=side,
            name=edge.feature.kind,
            corner=said(": its corner has no stake") if is_corner else "",
        ),
        said("Place a stake here, or draw the edge from stake to stake."),
        feature=edge.feature.ident,
        at=place,
    )


def _blocked(course: Course, edge: StakedEdge, stretch: Stretch, faults: FaultList) -> None:
    string, standing = stretch.string, index_of(course, Kind.OBSTRUCTION, Kind.TREES)
    for feature in standing.near(string, TRUNK) if standing.features else ():
        reach = TRUNK if isinstance(feature.geometry, Point) else 0.0
        if feature.geometry.distance(string) > reach:
            continue
        woods = feature.kind is Kind.TREES
        report = faults.note if woods else faults.warn
        report(
            "string_blocked",
            said(
                "{between} the string of this {name} meets {what} ({ident})",
                between=_between(stretch),
                name=edge.feature.kind,
                what=said("trees") if woods else said("an obstruction"),
                ident=feature.name or feature.ident,
            ),
            said("See whether one stake can be seen from the next; if not, place one where the view is cut."),
            feature=edge.feature.ident,
            at=string.intersection(feature.geometry.buffer(reach)),
        )


def _two_next(edge: StakedEdge, stretches: Sequence[Stretch], stakes: "_Stakes", faults: FaultList) -> None:
    """Look from each end: does another stake of the colour stand the same way, and clearly nearer than the next?"""
    looks = [
        (here, there)
        for one in stretches
        for here, there in ((one.start, one.end), (one.end, one.start))
        if here.stake is not None and there.stake is not None
    ]
    eyes = np.array([(here.place.x, here.place.y) for here, _ in looks]).reshape(-1, 2)
    way = np.array([(there.place.x, there.place.y) for _, there in looks]).reshape(-1, 2) - eyes
    apart = np.hypot(*way.T)
    look, other = stakes.near_each(eyes, CLEARLY_NEARER * apart)
    also = stakes.places[other] - eyes[look]
    away = np.hypot(*also.T)
    towards = (also * way[look]).sum(axis=1)
    mistaken = (away > 0) & (away < CLEARLY_NEARER * apart[look]) & (towards > SAME_WAY * apart[look] * away)
    strung = {frozenset((id(here.stake), id(there.stake))) for here, there in looks}
    told: set[int] = set()
    found = zip(look[mistaken].tolist(), away[mistaken].tolist(), other[mistaken].tolist(), strict=True)
    for number, metres, index in sorted(found):
        here, there = looks[number]
        stake = stakes.stakes[index]
        if number in told or frozenset((id(here.stake), id(stake))) in strung:
            continue
        told.add(number)
        assert here.stake is not None
        assert there.stake is not None
        faults.warn(
            "two_next_stakes",
            said(
                "from {stake} two stakes could be the next: {next}, {apart:.1f} m away, and "
                "{other}, {metres:.1f} m away",
                stake=here.stake.ident,
                next=there.stake.ident,
                apart=apart[number],
                other=stake.ident,
                metres=metres,
            ),
            said("Place stakes closer here, or paint the line."),
            feature=edge.feature.ident,
            at=here.place,
        )


def _turn(corners: np.ndarray[tuple[int, int], np.dtype[np.float64]], index: int) -> float:
    """Return by how many degrees a line turns at one of its inner corners."""
    before, after = corners[index] - corners[index - 1], corners[index + 1] - corners[index]
    cross = before[0] * after[1] - before[1] * after[0]
    return abs(math.degrees(math.atan2(cross, before @ after)))


def _which_side(edge: StakedEdge, place: Point) -> Said:
    return said("inside") if edge.line.holds(place) else said("outside")


def _between(stretch: Stretch) -> Said:
    ends = [
        said("the end of another marking") if post.stake is None else post.stake.ident
        for post in (stretch.start, stretch.end)
    ]
    return said("between {one} and {other}", one=ends[0], other=ends[1])
