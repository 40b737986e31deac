"""What is known about one situation on the ground."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property
from math import isfinite

from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Feature
from marram.errors import BadPlace, DateNotCovered
from marram.relief.geometry.outline import XY, Outline
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.interference.shape import Footprint
from marram.relief.interference.tallness import stands_up
from marram.relief.interference.usual_footprint import USUAL_STROKE_CLUB, facing, footprint
from marram.relief.place.ground import EDGE_REACH, Ground, feature_at, ground_of, nearest_edge
from marram.relief.place.player import Player
from marram.rules.editions import EDITION_2019
from marram.rules.facts.ball import Area
from marram.said import said

_LARGEST = 100_000.0
"""Metres: a place farther from the middle of a course than this is not in local metres."""

_PLACES = (
    "ball",
    "boundary_point",
    "entry",
    "previous",
    "opposite",
    "last_outside",
    "estimated",
    "provisional",
    "dropped_at",
)


@dataclass(frozen=True)
class Stroke:
    """The stroke that relief is judged by: what lie, stance and swing take up.

    Attributes:
        direction: of play, radians anticlockwise from east; ``None``: straight at the hole, and said.
        club: metres, the length of the club that would be used.
        tall: whether the condition stands up, so that the whole swing matters; ``None``: as the map's tags tell,
            and said.
        stance_counts: whether the stance counts as interference (a Local Rule may say that it does not).
        footprint: lie, stance and swing as measured; ``None``: a usual one is made of the rest, and said.
        whole_swing: the same with the whole swing, for conditions that stand up; ``None``: ``footprint`` is for all.
    """

    direction: float | None = None
    club: float = USUAL_STROKE_CLUB
    tall: bool | None = None
    stance_counts: bool = True
    footprint: Footprint | None = None
    whole_swing: Footprint | None = None


Condition = Feature | Outline
"""What relief is taken from: a feature of the map, or an outline measured on the ground, in local metres."""


@dataclass(frozen=True)
class Situation:
    """Everything given about one situation; all places are ``(x east, y north)`` in local metres of the course.

    A place that is not known stays ``None``: an option that needs it says so.

    Attributes:
        course: the course.
        hole_number: the hole being played.
        played_on: the day of play.
        player: the player.
        ball: the spot of the original ball (estimated if need be).
        boundary_point: where a ball out of bounds last crossed the edge of the course.
        entry: where the ball last crossed the edge of the penalty area.
        previous: where the previous stroke was made.
        opposite: the point on the opposite edge of the penalty area as far from the hole (Model Local Rule B-2).
        last_outside: where the last stroke from outside a penalty area was made.
        estimated: where a ball deliberately deflected or stopped would have come to rest.
        provisional: where the provisional ball lies.
        dropped_at: back on the line: the spot the dropped ball first touched; for 2019 the point chosen, or
            where none was chosen the spot first touched, from which it follows.
        tee_markers: where the two tee-markers stand (the outside front of each).
        condition: what relief is taken from; several where relief is taken from all of them at once.
        zone: the dropping zone to use.
        stroke: the stroke that relief is judged by.
        line_of_sight: whether the line of sight counts (Model Local Rule F-23).
        assumed: what was taken for granted, as message keys.

    Raises:
        BadPlace: a place, the hole, a condition or the dropping zone does not fit the course; every fault is listed.
        DateNotCovered: the day of play lies before 2019, when relief areas came into the Rules.
    """

    course: Course
    hole_number: int
    played_on: date
    player: Player
    ball: XY | None = None
    boundary_point: XY | None = None
    entry: XY | None = None
    previous: XY | None = None
    opposite: XY | None = None
    last_outside: XY | None = None
    estimated: XY | None = None
    provisional: XY | None = None
    dropped_at: XY | None = None
    tee_markers: tuple[XY, XY] | None = None
    condition: Condition | Sequence[Condition] | None = None
    zone: Condition | None = None
    stroke: Stroke = field(default_factory=Stroke)
    line_of_sight: bool = False
    assumed: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.played_on < EDITION_2019:
            raise DateNotCovered(
                said(
                    "{played_on} lies before {EDITION_2019}: relief areas came with the Rules of that day, "
                    "and former relief is not drawn.",
                    played_on=self.played_on,
                    EDITION_2019=EDITION_2019,
                )
            )
        faults = [
            said(
                "The place {name} {place} is not in local metres of this course: give (x east, y north).",
                name=name,
                place=place,
            )
            for name, place in self._places()
            if len(place) != 2 or not all(isfinite(one) and abs(one) < _LARGEST for one in place)
        ]
        if faults:
            raise BadPlace(*faults)
        _ = self.ground, self.conditions, self.dropping_zone  # what does not fit is refused here

    def _places(self) -> Iterator[tuple[str, XY]]:
        for name in _PLACES:
            place = getattr(self, name)
            if place is not None:
                yield name, place
        for marker in self.tee_markers or ():
            yield "tee_markers", marker

    @cached_property
    def ground(self) -> Ground:
        """The ground of the hole being played."""
        return ground_of(self.course, self.hole_number)

    @cached_property
    def conditions(self) -> tuple[Outline, ...]:
        """The outlines of what relief is taken from."""
        return tuple(self._outline(one) for one in self.every_condition)

    @property
    def every_condition(self) -> Sequence[Condition]:
        """What relief is taken from, each by itself."""
        if self.condition is None:
            return ()
        return [self.condition] if isinstance(self.condition, Condition) else self.condition

    @cached_property
    def _standing(self) -> tuple[bool | None, ...]:
        """Whether each condition stands up: as said, else by the map; of an outline measured on the ground ``False``."""
        if self.stroke.tall is not None:
            return (self.stroke.tall,) * len(self.conditions)
        return tuple(stands_up(one) if isinstance(one, Feature) else False for one in self.every_condition)

    @cached_property
    def footprints(self) -> tuple[tuple[Footprint, tuple[Outline, ...]], ...]:
        """What must be clear of which conditions: the whole swing of those that stand up; none before it is known."""
        low, whole = self.stroke.footprint, self.stroke.whole_swing
        if low is None:
            return ()
        pairs = list(zip(self.conditions, self._standing, strict=True))
        groups = (
            (low, tuple(one for one, stands in pairs if not (stands and whole))),
            (whole or low, tuple(one for one, stands in pairs if stands and whole)),
        )
        return tuple((made, conditions) for made, conditions in groups if conditions)

    @cached_property
    def dropping_zone(self) -> Outline | None:
        """The outline of the dropping zone to use."""
        return None if self.zone is None else self._outline(self.zone)

    @property
    def footprint(self) -> Footprint | None:
        """Lie, stance and swing about the ball, facing the direction of play, once they are known."""
        return self.stroke.footprint

    @property
    def line_of_play(self) -> bool:
        """Whether the line of play counts as interference: only for a ball on the putting green (Rule 16.1a(1))."""
        return self.ball_area is Area.PUTTING_GREEN

    @property
    def hole(self) -> XY:
        """Where the hole is cut."""
        return self.ground.location

    def _outline(self, one: Condition) -> Outline:
        outline = self.ground.outline(one) if isinstance(one, Feature) else one
        if outline.geometry.geom_type not in {"Polygon", "MultiPolygon"}:
            name = one.ident if isinstance(one, Feature) else said("the condition")
            raise BadPlace(
                said(
                    "{name} is mapped as a {geom_type}, which has no area. Draw its outline, or "
                    "give a line its width.",
                    name=name,
                    geom_type=outline.geometry.geom_type,
                )
            )
        _ = outline.edges  # a shape that is no valid area is refused here, not where it is first used
        return outline

    def with_usual_footprint(self) -> "Situation":
        """Return the situation with a usual lie, stance and swing, where none is given and one can be made."""
        right_handed, ball, stroke = self.player.right_handed, self.ball, self.stroke
        if stroke.footprint is not None or right_handed is None or ball is None or not self.conditions:
            return self
        assumed = (*self.assumed, "relief.usual_stance_and_swing")
        direction = stroke.direction
        if direction is None:
            direction = facing(ball, self.hole)
            assumed = (*assumed, "relief.play_straight_at_hole")
        if stroke.tall is None and any(self._standing):
            assumed = (*assumed, "relief.stands_up")
        if None in self._standing:
            assumed = (*assumed, "relief.height_not_known")
        low, *whole = (
            footprint(
                right_handed=right_handed,
                direction=direction,
                club=stroke.club,
                tall=tall,
                stance=stroke.stance_counts,
            )
            for tall in ((False, True) if any(self._standing) else (False,))
        )
        made = replace(stroke, footprint=low, whole_swing=whole[0] if whole else None)
        return replace(self, stroke=made, assumed=assumed)

    def penalty_area(self) -> tuple[UnitedArea, Outline] | None:
        """Return the penalty area the ball is in: at the crossing point, else at the ball."""
        if self.entry is not None:
            near = self.crossed(self.entry)
            return near[1] if near else None
        return feature_at(self.ground.penalty_areas, self.ball, BALL_RADIUS) if self.ball else None

    def crossed(self, entry: XY) -> tuple[float, tuple[UnitedArea, Outline]] | None:
        """Return the penalty area whose edge was crossed, and how far away that edge is.

        Where a red and a yellow one share an edge, it is the one the ball lies in.
        """
        areas = self.ground.penalty_areas
        lies_in = feature_at(areas, self.ball, BALL_RADIUS) if self.ball else None
        if lies_in is not None:
            away = abs(lies_in[1].depth(*entry))
            if away <= EDGE_REACH:
                return away, lies_in
        return nearest_edge(areas, entry)

    @cached_property
    def bunker(self) -> tuple[UnitedArea, Outline] | None:
        """The bunker the ball is in."""
        return feature_at(self.ground.bunkers, self.ball, BALL_RADIUS) if self.ball else None

    @cached_property
    def ball_area(self) -> Area | None:
        """The area of the course the ball is in (Rule 2.2c); ``None`` out of bounds or unknown."""
        return self.ground.area_at(self.ball, BALL_RADIUS) if self.ball else None

    def on_edge(self) -> "Situation":
        """Return the situation with the crossing point on the edge of the penalty area.

        Raises:
            BadPlace: if no penalty area has an edge near the crossing point given.
        """
        if self.entry is None:
            return self
        near = self.crossed(self.entry)
        if near is None or near[0] > EDGE_REACH:
            raise BadPlace(
                said(
                    "The crossing point is not on the edge of a penalty area, nor within {edge_reach:g} m of one. "
                    "Mark where the ball last crossed the edge.",
                    edge_reach=EDGE_REACH,
                )
            )
        away, (_, outline) = near
        moved = outline.nearest_on_edge(*self.entry)
        told = self.assumed if away < 0.01 else (*self.assumed, "relief.crossing_point_moved_onto_edge")
        return replace(self, entry=moved, assumed=told)
