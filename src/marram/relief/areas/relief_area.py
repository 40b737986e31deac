"""A relief area: what limits it, whether a place is in it, and its picture."""

from dataclasses import dataclass, field, replace
from functools import cached_property
from math import atan2, cos, inf, sin
from typing import Protocol, Self

import shapely
from shapely.geometry.base import BaseGeometry

from marram.relief.areas.complete_relief import CompleteRelief
from marram.relief.areas.construction import Mark, Measure
from marram.relief.geometry.areal import areal
from marram.relief.geometry.limits import Bound, Bounding, WithinDistance
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import ARC_ERROR, BALL_RADIUS, TOLERANCE
from marram.rules.facts.ball import Area
from marram.rules.relief_option import Limit, ReliefKind, ReliefOption

HARDLY_ANY_ROOM = 0.05
"""Square metres: a smaller relief area is said to have hardly any room (a number of our own: about 22 cm
by 22 cm)."""

_PROBE = 0.02
"""Metres: how far from the reference point a place is tried first, to see whether an area has room."""


class AreaOf(Protocol):
    """Tells the area of the course a place lies in."""

    def __call__(self, place: XY, ball: float = 0.0) -> Area | None:
        """Return the area of the course a place, or a ball of this radius, lies in; ``None`` off it."""


@dataclass(frozen=True, slots=True)
class Failure:
    """A limit that a place is outside of, and by how many metres."""

    bound: Bound
    limit: Limit | None
    outside_by: float


@dataclass(frozen=True, slots=True)
class Verdict:
    """Whether a place is in a relief area.

    Attributes:
        inside: whether it is.
        failures: the limits it is outside of.
        margin: metres to the nearest limit, negative outside.
    """

    inside: bool
    failures: tuple[Failure, ...]
    margin: float


@dataclass(frozen=True)
class DropLine:
    """The line on which a ball must be dropped (back on the line since 2023).

    Attributes:
        hole: where the hole is.
        through: the point the line goes through; the ball is dropped on the far side of it from the hole.
        stretches: the parts of the line where a ball may be dropped, as distances behind ``through``.
        goes_on: whether the last stretch goes on beyond what is drawn: the map knows no boundary.
    """

    hole: XY
    through: XY
    stretches: tuple[tuple[float, float], ...]
    goes_on: bool = False

    @cached_property
    def direction(self) -> XY:
        """The direction away from the hole, of length 1."""
        x, y = self.through[0] - self.hole[0], self.through[1] - self.hole[1]
        length = (x * x + y * y) ** 0.5
        return x / length, y / length

    def at(self, behind: float) -> XY:
        """Return the place on the line so many metres behind the point."""
        return self.through[0] + behind * self.direction[0], self.through[1] + behind * self.direction[1]

    def inside_by(self, behind: float) -> float:
        """Return how far inside the stretch it is deepest in a place so far behind the point lies, negative outside."""
        last = len(self.stretches) - 1
        return max(
            (
                behind - start if self.goes_on and number == last else min(behind - start, end - behind)
                for number, (start, end) in enumerate(self.stretches)
            ),
            default=-inf,
        )

    def measured(self, place: XY) -> tuple[float, float]:
        """Return (metres behind the point along the line, metres off the line) of a place."""
        x, y = place[0] - self.through[0], place[1] - self.through[1]
        return x * self.direction[0] + y * self.direction[1], abs(
            x * self.direction[1] - y * self.direction[0]
        )


@dataclass(frozen=True)
class ReliefArea:
    """A relief area on the ground.

    It is measured in a plane. Club-lengths may be measured straight across a ditch and through a tree or a
    fence, but not through ground that slopes up and down by nature (Definition of relief area): on a steep
    slope the tape, laid along the ground, decides and not the map.

    Attributes:
        option: the relief option it is drawn for.
        reference: the reference point; for two reference points the ball's.
        radius: metres of its club-lengths; 0 for a spot; ``None`` where it is not so measured.
        club_length: metres of the club-length used; 0 where it does not matter.
        limits: everything that limits it.
        construction: the marks to draw or tape it.
        measures: distances to check on the ground.
        start: a polygon that holds the whole area, from which the picture is cut.
        same_area: whether the ball must come to rest in the area of the course it first touched.
        hole: where the hole is cut.
        drop_line: the line a ball must be dropped on, if any.
        area_of: tells the area of the course a place, or a ball of a radius, lies in.
        assumed: what was taken for granted, as message keys; say so beside the picture.
        kept: what pictures worked out of it once, by what it is.
    """

    option: ReliefOption
    reference: XY
    radius: float | None
    club_length: float
    limits: tuple[Bounding, ...]
    construction: tuple[Mark, ...]
    measures: tuple[Measure, ...]
    hole: XY
    start: BaseGeometry | None = field(default=None, repr=False)
    same_area: bool = False
    drop_line: DropLine | None = None
    area_of: AreaOf | None = field(default=None, repr=False)
    assumed: tuple[str, ...] = ()
    kept: dict[str, BaseGeometry] = field(default_factory=dict, init=False, repr=False, compare=False)

    @property
    def kind(self) -> ReliefKind:
        """The kind of relief."""
        return self.option.kind

    @property
    def is_spot(self) -> bool:
        """Whether the ball is put on one spot, not dropped in an area."""
        return self.radius == 0

    def with_more(self, marks: tuple[Mark, ...], measures: tuple[Measure, ...]) -> Self:
        """Return the area with further marks and measures in its construction."""
        return replace(self, construction=self.construction + marks, measures=self.measures + measures)

    def contains(self, x: float, y: float) -> Verdict:
        """Return whether a point lies in the area, decided by distances to :data:`TOLERANCE`."""
        return self._verdict(x, y, 0.0)

    def contains_ball(self, x: float, y: float, ball: float = BALL_RADIUS) -> Verdict:
        """Return whether a ball resting there is in the area.

        It is when any part of it is within the club-lengths and in the area of the course, but not when
        any part of it is nearer the hole (Clarification Relief Area/1).
        """
        return self._verdict(x, y, ball)

    def _verdict(self, x: float, y: float, ball: float) -> Verdict:
        margins = [(one.margin(x, y, ball), one) for one in self.limits]
        failures = tuple(
            Failure(one.bound, one.limit, -margin) for margin, one in margins if margin < -TOLERANCE
        )
        return Verdict(not failures, failures, min((margin for margin, _ in margins), default=float("inf")))

    @cached_property
    def has_room(self) -> bool:
        """Whether any place fulfils all limits.

        A place a little farther from the hole than the reference point usually does, which saves the picture.
        """
        if self.is_spot:
            return True
        away = atan2(self.reference[1] - self.hole[1], self.reference[0] - self.hole[0])
        tried = (
            (self.reference[0] + _PROBE * cos(away + turn), self.reference[1] + _PROBE * sin(away + turn))
            for turn in (0.0, 1.0, -1.0)
        )
        if any(all(_allows(one, place) for one in self.limits) for place in tried):
            return True
        return not self.polygon.is_empty

    @cached_property
    def polygon(self) -> BaseGeometry:
        """The picture of the area: its arcs lie inside the true ones by at most :data:`ARC_ERROR`.

        It may be empty (no place fulfils all limits) or of several parts. Never use it to decide.
        """
        if self.is_spot:
            return shapely.Point(self.reference)
        picture = self.start

        rest = list(self.limits)
        if picture is None:
            size = next((one for one in rest if isinstance(one, WithinDistance)), None)
            if size is None:
                return shapely.Point(self.reference)
            rest.remove(size)
            picture = size.cut(
                shapely.box(
                    size.centre[0] - size.radius,
                    size.centre[1] - size.radius,
                    size.centre[0] + size.radius,
                    size.centre[1] + size.radius,
                )
            )
        for one in rest:
            if picture.is_empty:
                break
            picture = one.cut(picture)
        return areal(picture)

    @property
    def picture(self) -> BaseGeometry:
        """What to draw: the polygon, or the reference point where the area is no more than that."""
        return shapely.Point(self.reference) if self.polygon.is_empty else self.polygon

    @property
    def hardly_any_room(self) -> bool:
        """Whether the area is smaller than :data:`HARDLY_ANY_ROOM`, or so narrow that no ball lies wholly in it."""
        if self.is_spot:
            return False
        return self.area_m2 < HARDLY_ANY_ROOM or self.polygon.buffer(-BALL_RADIUS).is_empty

    @property
    def remarks(self) -> tuple[str, ...]:
        """What to say beside the picture, as message keys: what was taken for granted, and a lack of room."""
        return (*self.assumed, "relief.hardly_any_room") if self.hardly_any_room else self.assumed

    @cached_property
    def area_m2(self) -> float:
        """The size of the area in square metres, too small by at most its outline times :data:`ARC_ERROR`."""
        return float(self.polygon.area)

    @property
    def arc_error(self) -> float:
        """How far, in metres, a drawn arc may lie inside the true one."""
        return ARC_ERROR


def _allows(limit: Bounding, place: XY) -> bool:
    """Return whether a place is well inside a limit; how far interference goes is not asked, as that is dear."""
    if isinstance(limit, CompleteRelief):
        return not limit.interference.overlaps(place)
    return limit.margin(*place) > TOLERANCE
