"""Asking the relief layer for one option of a case, with the places and conditions that the case holds."""

from collections.abc import Iterable
from dataclasses import dataclass

from shapely import Point
from shapely.ops import nearest_points

from marram.course.lies.doubts import drawn_to
from marram.course.lies.united import UnitedArea
from marram.course.model import Course, Feature, Kind
from marram.desk.rulings.address_places import place_words
from marram.desk.rulings.consultation import Consultation
from marram.desk.shell.place import to_plane
from marram.relief import Answer, Situation, relief_areas
from marram.relief.constructions.construction import distance
from marram.relief.geometry.tolerance import BALL_RADIUS
from marram.relief.place.dropping_zones import zones_serving
from marram.relief.place.ground import ground_of
from marram.relief.place.place_facts import XY
from marram.rules.relief_option import Reference, ReliefKind, ReliefOption
from marram.words.ground import ground_words
from marram.words.texts import text

CONDITIONS = (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER, Kind.PATH, Kind.OBSTRUCTION)
"""The abnormal course conditions that a map holds (animal holes are too small and too short-lived for one)."""

NEAR = 6.0
"""Metres: how near the ball a condition must be to be offered (a choice of ours)."""

SNAP = 25.0
"""Metres: how far a tapped crossing point is moved onto the edge it stands for (a choice of ours)."""

WORTH_SAYING = 0.5
"""Metres: a move farther than this is said (a choice of ours)."""

TEE_MARKERS = {"left_marker", "right_marker"}
FROM_CROSSING = frozenset({Reference.CROSSING_POINT, Reference.LINE_THROUGH_CROSSING_POINT})
FROM_BALL = frozenset({Reference.BALL, Reference.LINE_THROUGH_BALL, Reference.TWO_POINTS})
FROM_CONDITION = frozenset({ReliefKind.FREE, ReliefKind.MAXIMUM_AVAILABLE})


@dataclass(frozen=True)
class Asked:
    """What the relief layer answered.

    Attributes:
        answer: its answer; a word is the role of a place that is needed before it can be asked at all.
        notes: what was moved or chosen on the way, in words.
        choices: mapped conditions that relief may be taken from, to choose another.
    """

    answer: Answer | str
    notes: tuple[str, ...] = ()
    choices: tuple[Feature, ...] = ()


def ask_relief(course: Course, found: Consultation, option: ReliefOption) -> Asked:
    """Return what the relief layer answers for one option.

    A ball out of bounds has no spot on the course: what is measured from the ball is then measured from where
    it last crossed the boundary (Model Local Rule E-5), which has to be shown first.

    Raises:
        MarramError: a place does not fit the course.
    """
    assert found.hole is not None
    assert found.place is not None
    places = {role: to_plane(course, at) for role, at in found.case.places.items()}
    notes: list[str] = []
    if found.place.area is None and option.reference in FROM_BALL:
        if "boundary" not in places:
            return Asked("boundary")
        edges = course.of(Kind.BOUNDARY, Kind.OUT_OF_BOUNDS)
        places["ball"], said = _onto_edge(edges, places["boundary"])
        notes += said
    if "entry" in places and option.reference in FROM_CROSSING:
        areas = [feature for feature, _ in ground_of(course, found.hole.number).penalty_areas]
        around = [one for one in areas if one.geometry.distance(Point(places["ball"])) <= BALL_RADIUS]
        places["entry"], said = _onto_edge(around or areas, places["entry"])
        notes += said
    notes += [
        text("rulings.note.from_phone", place=place_words(role), metres=metres)
        for role, metres in found.case.accuracy.items()
        if role in places and metres > WORTH_SAYING
    ]
    condition, choices = _condition(course, found) if option.kind in FROM_CONDITION else (None, ())
    if condition:
        notes.append(text("rulings.note.relief_from", condition=condition_words(condition)))
        if rough := drawn_to(condition):
            notes.append(text("rulings.note.edge_from_phone", metres=rough))
    zones = zones_serving(course, found.hole.number, places["ball"], condition)
    situation = Situation(
        course,
        found.hole.number,
        played_on=found.case.conditions.on,
        player=found.case.conditions.player(),
        ball=places["ball"],
        entry=places.get("entry"),
        previous=places.get("previous"),
        condition=condition,
        zone=zones[0] if len(zones) == 1 else None,
        provisional=places.get("provisional"),
        tee_markers=(places["left_marker"], places["right_marker"]) if places.keys() >= TEE_MARKERS else None,
        last_outside=places.get("outside"),
        estimated=places.get("estimated"),
    )
    answers = relief_areas(situation, (option,))
    return Asked(answers[0], tuple(notes), choices)


def condition_words(feature: Feature) -> str:
    """Return what a condition is called."""
    kind = ground_words(feature.kind, "underfoot")
    return text("rulings.condition_named", name=feature.name, kind=kind) if feature.name else kind


def _onto_edge(features: Iterable[Feature | UnitedArea], at: XY) -> tuple[XY, list[str]]:
    """Return a tapped crossing point moved onto the nearest edge (by its meaning it lies on one), and say so."""
    near = [nearest_points(one.geometry.boundary, Point(at))[0] for one in features]
    edges = [(float(one.x), float(one.y)) for one in near if one.distance(Point(at)) <= SNAP]
    if not edges:
        return at, []
    edge = min(edges, key=lambda one: distance(one, at))
    away = distance(edge, at)
    return edge, [text("rulings.note.moved_onto_edge", metres=away)] if away > WORTH_SAYING else []


def _condition(course: Course, found: Consultation) -> tuple[Feature | None, tuple[Feature, ...]]:
    """Return the mapped condition that relief is taken from, and those to choose from where there are several.

    It is the one chosen, else the one the ball lies in, else the only one near.
    """
    kinds = (Kind.NO_PLAY_ZONE,) if found.case.what == "no_play_zone" else CONDITIONS
    ball = Point(to_plane(course, found.case.places["ball"]))
    near = [one for one in course.of(*kinds) if one.geometry.distance(ball) <= NEAR]
    near.sort(key=lambda one: one.geometry.distance(ball))
    chosen = [one for one in near if one.ident == found.case.condition]
    touched = [one for one in near if one.geometry.distance(ball) <= BALL_RADIUS]
    for some in (chosen, touched, near):
        if len(some) == 1:
            return some[0], tuple(one for one in near if one is not some[0])
    return None, tuple(near)
