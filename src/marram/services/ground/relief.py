"""Draw the relief options of a case: the places and the condition it holds → each option drawn, or what it still needs."""

import logging
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import shapely
from shapely import Point

from marram.course.lies.doubts import drawn_to
from marram.course.lies.tolerance import TOUCH
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Feature
from marram.errors import BadPlace, MarramError, told
from marram.relief import Answer, Drawn, NeedsPlace, Place, Situation
from marram.relief.areas.construction import distance
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.place.dropping_zones import zones_serving
from marram.relief.place.ground import ground_of
from marram.relief.place.place_facts import XY
from marram.rules.facts.relief import InTheWay, in_the_way
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.services.cases.places import place_words
from marram.services.cases.rulings import Ruled
from marram.services.ground.conditions_together import Together, left_at_once, relief_in_turn
from marram.services.ground.interference import (
    STAND,
    WALL,
    in_line_of_sight,
    interfering,
    near_conditions,
    stroke_of,
)
from marram.services.ground.lies import to_plane
from marram.words.ground import ground_words
from marram.words.messages import listed
from marram.words.spoken import spoken
from marram.words.texts import text

NEAR = 6.0
"""Metres: how near the ball a condition must be to be offered (a choice of ours)."""

SNAP = 25.0
"""Metres: how far a tapped crossing point is moved onto the edge it stands for (a choice of ours)."""

WORTH_SAYING = 0.5
"""Metres: a move farther than this is said (a choice of ours)."""

SEEN = 0.02
"""Metres: a place moved farther than this is shown where it went (a choice of ours: half a ball)."""

TEE_MARKERS = {"left_marker", "right_marker"}
EDGES = frozenset({"entry", "boundary"})
"""Places that by their meaning lie on an edge, and are moved onto it."""
FROM_CROSSING = frozenset({Reference.CROSSING_POINT, Reference.LINE_THROUGH_CROSSING_POINT})
FROM_BALL = frozenset({Reference.BALL, Reference.LINE_THROUGH_BALL})
FROM_CONDITION = frozenset(
    {ReliefKind.FREE, ReliefKind.MAXIMUM_AVAILABLE, ReliefKind.COMPLETE_RELIEF_OUTSIDE}
)


@dataclass(frozen=True)
class OptionDrawn:
    """What became of drawing one option.

    Attributes:
        option: the option.
        answer: what the relief layer answered; ``None`` where a place did not fit.
        fault: why it could not be drawn, in words.
        notes: what was moved or chosen on the way, in words.
        choices: mapped conditions that relief may be taken from, to choose another.
        moved: where places were taken to be that were shown beside the edge they stand for, by role, in metres of the course.
    """

    option: ReliefOption
    answer: Answer | None = None
    fault: str = ""
    notes: tuple[str, ...] = ()
    choices: tuple[Feature, ...] = ()
    moved: Mapping[str, XY] = field(default_factory=dict)

    @property
    def areas(self) -> tuple[ReliefArea, ...]:
        """The relief areas drawn; none where it was not."""
        return self.answer.areas if isinstance(self.answer, Drawn) else ()


def draw_options(
    course: Course, ruled: Ruled, options: Sequence[ReliefOption], written: Mapping[str, str] | None = None
) -> list[OptionDrawn]:
    """Return the options drawn, as far as the map and the places shown allow.

    A place that does not fit is told with its option; the others are drawn all the same, and no fault of a
    drawing keeps the ruling away.

    Args:
        course: the map.
        ruled: the case, with the hole being played and the place of the ball.
        options: the options to draw.
        written: places as the official wrote them, by role, for messages.
    """
    drawn = []
    for option in options:
        try:
            drawn.append(_draw(course, ruled, option, written or {}))
        except MarramError as error:
            drawn.append(
                OptionDrawn(option, fault=text("rulings.option.not_drawn", fault=spoken(told(error))))
            )
        except Exception:
            logging.getLogger(__name__).exception("Option %s could not be drawn.", option.kind)
            drawn.append(OptionDrawn(option, fault=text("rulings.option.failed")))
    return drawn


def _draw(course: Course, ruled: Ruled, option: ReliefOption, written: Mapping[str, str]) -> OptionDrawn:
    """Draw one option.

    A ball out of bounds has no spot on the course: what is measured from the ball is then measured from where
    it last crossed the boundary (Model Local Rule E-5), which has to be shown first.
    """
    lie, shown = ruled.lie, ruled.asked.places
    assert lie.hole is not None
    assert lie.place is not None
    places = {role: to_plane(course, at) for role, at in shown.at.items()}
    as_shown = dict(places)
    notes: list[str] = []
    if lie.place.area is None and "boundary" in places:
        ground = ground_of(course, lie.hole.number)
        edges = [area for area, _ in (*ground.boundary, *ground.out_of_bounds)]
        places["boundary"] = _onto_edge(edges, "boundary", places["boundary"], written, notes)
    if lie.place.area is None and option.reference in FROM_BALL:
        if "boundary" not in places:
            return OptionDrawn(option, NeedsPlace(option, (Place.BOUNDARY_POINT,)))
        places["ball"] = places["boundary"]
    if "entry" in places and option.reference in FROM_CROSSING:
        areas = [feature for feature, _ in ground_of(course, lie.hole.number).penalty_areas]
        around = [one for one in areas if one.geometry.distance(Point(places["ball"])) <= BALL_RADIUS]
        places["entry"] = _onto_edge(around or areas, "entry", places["entry"], written, notes)
    moved = {role: at for role, at in places.items() if role in EDGES and distance(at, as_shown[role]) > SEEN}
    notes += [
        text("rulings.note.from_phone", place=place_words(role), metres=metres)
        for role, metres in shown.accuracy.items()
        if role in places and metres > WORTH_SAYING
    ]
    condition, choices = condition_of(course, ruled) if option.kind in FROM_CONDITION else (None, ())
    if (
        option.kind in FROM_CONDITION
        and ruled.asked.condition
        and (condition is None or not _is_piece(course, ruled, condition))
    ):
        notes.append(
            text("rulings.note.no_such_condition", condition=repr(ruled.asked.condition), metres=NEAR)
        )
    if condition:
        notes.append(text("rulings.note.relief_from", condition=condition_words(condition)))
        if rough := drawn_to(condition):
            notes.append(text("rulings.note.edge_from_phone", metres=rough))
    at_once = left_at_once(course, ruled, condition)
    zones = zones_serving(course, lie.hole.number, places["ball"], condition)
    situation = Situation(
        course,
        lie.hole.number,
        played_on=ruled.asked.conditions.on,
        player=ruled.asked.conditions.player(),
        ball=places["ball"],
        boundary_point=places.get("boundary"),
        entry=places.get("entry"),
        previous=places.get("previous"),
        last_outside=places.get("outside"),
        estimated=places.get("estimated"),
        provisional=places.get("provisional"),
        tee_markers=(places["left_marker"], places["right_marker"]) if places.keys() >= TEE_MARKERS else None,
        condition=at_once,
        zone=zones[0] if len(zones) == 1 else None,
        stroke=stroke_of(ruled.asked.what, ruled.asked.conditions, ruled.asked.tall),
    )
    found = relief_in_turn(course, ruled, situation, option, at_once)
    return OptionDrawn(
        option, found.answer, notes=(*notes, *_in_turn_words(found)), choices=choices, moved=moved
    )


def _in_turn_words(found: Together) -> list[str]:
    """Say which conditions are left together, and which are left in their turn."""
    then = "rulings.note.leads_back" if found.blocked else "rulings.note.then_interferes"
    taken = [condition_words(one) for one in found.taken]
    return [
        *([text("rulings.note.taken_together", conditions=listed(taken, "and"))] if taken else []),
        *(text(then, condition=condition_words(one)) for one in found.then),
    ]


def condition_of(course: Course, ruled: Ruled) -> tuple[Feature | None, tuple[Feature, ...]]:
    """Return the mapped condition that relief is taken from, and those to choose from where there are several.

    It is the one chosen, else the one the ball lies in, else the only one that interferes with stance or swing,
    else the only one near; of a stand, tent or board also the only one in the line of sight.
    """
    asked = ruled.asked
    assert ruled.lie.hole is not None
    hole = ruled.lie.hole.number
    ball = to_plane(course, asked.places.at["ball"])
    # Only where the official says that it is an obstruction is a wall of no told status one.
    obstruction = ruled.known.get(in_the_way.name) == InTheWay.IMMOVABLE_OBSTRUCTION.value
    sought = (asked.what, WALL) if obstruction else (asked.what,)
    near = tuple(one for what in sought for one in near_conditions(course, hole, ball, what, NEAR))
    if asked.what == STAND:
        seen = in_line_of_sight(course, hole, ball, asked.conditions)
        near = (*near, *(one for one in seen if one not in near))
    chosen = [one for one in near if _is_piece(course, ruled, one)]
    touched = [one for what in sought for one in near_conditions(course, hole, ball, what, TOUCH)]
    met = [
        one.feature
        for what in sought
        for one in interfering(course, hole, ball, what, conditions=asked.conditions, tall=asked.tall)
    ]
    for some in (chosen, touched, met, near):
        if len(some) == 1:
            return some[0], tuple(one for one in near if one is not some[0])
    return None, near


def _is_piece(course: Course, ruled: Ruled, condition: Feature) -> bool:
    """Whether the condition that was named is the one found, or a piece of it."""
    assert ruled.lie.hole is not None
    pieces = ground_of(course, ruled.lie.hole.number).lies.joined_with(condition)
    return any(piece.ident == ruled.asked.condition for piece in pieces)


def condition_words(feature: Feature) -> str:
    """Return what a condition is called."""
    kind = ground_words(feature.kind, "underfoot")
    return text("rulings.condition_named", name=feature.name, kind=kind) if feature.name else kind


def _onto_edge(
    features: Iterable[Feature | UnitedArea], role: str, at: XY, written: Mapping[str, str], notes: list[str]
) -> XY:
    """Return a crossing point moved onto the nearest edge: by its meaning it lies on one. A move is said.

    Raises:
        BadPlace: no edge is near it.
    """
    nearest = [shapely.shortest_line(one.geometry.boundary, Point(at)) for one in features]
    edges = [(float(line.coords[0][0]), float(line.coords[0][1])) for line in nearest if line is not None]
    edge = min(edges, key=lambda one: distance(one, at), default=None)
    away = None if edge is None else distance(edge, at)
    if edge is None or away is None:
        raise BadPlace(text(f"rulings.place.no_edge.{role}", given=written.get(role, role)))
    if away > SNAP:
        raise BadPlace(
            text(
                "rulings.place.far_from_edge",
                given=written.get(role, role),
                place=place_words(role),
                away=away,
                metres=SNAP,
            )
        )
    if away > WORTH_SAYING:
        notes.append(text("rulings.note.moved_onto_edge", metres=away))
    return edge
