"""The relief options of a ruling as the screen shows them: words, drawing, or what is still needed."""

import logging
from dataclasses import dataclass, field, replace
from typing import Any

from markupsafe import Markup
from shapely import LineString, Point, Polygon
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature, Kind
from marram.desk.case_address import PLACE_WORDS
from marram.desk.consultation import Consultation
from marram.desk.map_drawing import in_degrees
from marram.desk.place import XY, to_plane
from marram.desk.relief_words import MISSING, NO_RELIEF, PICKED
from marram.errors import MarramError
from marram.relief import relief_areas, svg
from marram.relief.arcs import arc_points
from marram.relief.area import ReliefArea
from marram.relief.construction import ArcMark, LineMark, PointMark, ShapeMark, distance
from marram.relief.ground import ground_of
from marram.relief.picture_words import assumed_words, mark_words, measure_words
from marram.relief.situation import Answer, Drawn, NeedsPlace, NoRelief, Place
from marram.relief.tolerance import ARC_ERROR
from marram.rules.ruling import Ruling
from marram.words.options import OptionWords, option_words

LETTERS = "ABCDEFGHIJ"
CONDITIONS = (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER, Kind.PATH, Kind.OBSTRUCTION, Kind.NO_PLAY_ZONE)
NEAR = 6.0
"""Metres: how near the ball a condition must be to be offered (a choice of ours)."""


@dataclass(frozen=True)
class OptionView:
    """One relief option as the screen shows it.

    Attributes:
        letter: its letter, on the card and on the map.
        words: the option in words.
        drawn: whether it is on the map.
        picks: roles of the places still to be shown on the map.
        conditions: the mapped conditions to choose from.
        needs_handedness: whether the player's handedness is still needed.
        messages: what the map could not do, and what was assumed.
        measures: distances to check on the ground.
        features: what to draw, as GeoJSON features.
        figure: a drawing with its measures, as SVG; works without JavaScript and on paper.
    """

    letter: str
    words: OptionWords
    drawn: bool = False
    picks: tuple[str, ...] = ()
    conditions: tuple[Feature, ...] = ()
    needs_handedness: bool = False
    messages: tuple[str, ...] = ()
    measures: tuple[str, ...] = ()
    features: list[dict[str, Any]] = field(default_factory=list)
    figure: Markup = field(default=Markup(), repr=False)

    @property
    def pick_words(self) -> list[tuple[str, str]]:
        """The places still to be shown, with their words."""
        return [(role, PLACE_WORDS[role]) for role in self.picks]

    def drawing(self) -> dict[str, Any]:
        """Return the option as data for the map and for programs."""
        return {
            "letter": self.letter,
            "kind": self.words.kind,
            "title": self.words.title,
            "drawn": self.drawn,
            "needs": [
                *self.picks,
                *(["condition"] if self.conditions else []),
                *(["handed"] if self.needs_handedness else []),
            ],
            "messages": list(self.messages),
            "measures": list(self.measures),
            "features": self.features,
        }


def relief_views(course: Course, found: Consultation) -> tuple[OptionView, ...]:
    """Return the options of a ruling, drawn where the map can draw them."""
    if not isinstance(found.result, Ruling) or not found.result.relief:
        return ()
    words = [option_words(option) for option in found.result.relief]
    plain = tuple(OptionView(letter, one) for letter, one in zip(LETTERS, words, strict=False))
    if found.hole is None or "ball" not in found.case.places:
        return plain
    views = []
    for view, option in zip(plain, found.result.relief, strict=False):
        try:
            answer, moved = _draw(course, found, option)
            views.append(_view(course, found, view, answer, moved))
        except MarramError as error:
            views.append(replace(view, messages=(f"Not drawn: {error}",)))
        except Exception:
            # The ruling stands without its picture: no fault of a drawing may keep it from the official.
            logging.getLogger(__name__).exception("Option %s could not be drawn.", option.kind)
            views.append(replace(view, messages=("The map could not draw this; measure on the ground.",)))
    return tuple(views)


def _draw(course: Course, found: Consultation, option: Any) -> tuple[Answer, str]:
    places = {role: to_plane(course, at) for role, at in found.case.places.items()}
    assert found.hole is not None
    moved = ""
    if "entry" in places:
        places["entry"], moved = _onto_edge(course, found.hole.number, places["entry"])
    answers = relief_areas(
        course,
        found.hole.number,
        places["ball"],
        (option,),
        played_on=found.case.conditions.on,
        player=found.case.conditions.player(),
        entry_xy=places.get("entry"),
        previous_xy=places.get("previous"),
        zone=_zone(course, found),
        provisional_xy=places.get("provisional"),
        condition=_condition(course, found),
    )
    return answers[0], moved


def _onto_edge(course: Course, hole: int, at: XY) -> tuple[XY, str]:
    """Return a crossing point moved onto the nearest edge (by its meaning it lies on one), and say so."""
    edges = [outline.nearest_on_edge(*at) for _, outline in ground_of(course, hole).penalty_areas]
    if not edges:
        return at, ""
    found = min(edges, key=lambda edge: distance(edge, at))
    away = distance(found, at)
    return found, f"The crossing point was moved {away:.1f} m onto the nearest edge." if away > 0.5 else ""


def conditions_near(course: Course, at: XY) -> tuple[Feature, ...]:
    """Return the mapped conditions near a place, nearest first."""
    ball = Point(at)
    near = [one for one in course.of(*CONDITIONS) if one.geometry.distance(ball) <= NEAR]
    return tuple(sorted(near, key=lambda one: one.geometry.distance(ball)))


def _condition(course: Course, found: Consultation) -> Feature | None:
    near = conditions_near(course, to_plane(course, found.case.places["ball"]))
    chosen = [one for one in near if one.ident == found.case.condition]
    return chosen[0] if chosen else near[0] if len(near) == 1 else None


def _zone(course: Course, found: Consultation) -> Feature | None:
    """Return the dropping zone that serves the penalty area the ball is in, if the map has just one."""
    ball = Point(to_plane(course, found.case.places["ball"]))
    areas = course.of(Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA)
    names = {name for one in areas if one.geometry.intersects(ball) for name in (one.ref, one.ident) if name}
    zones = [one for one in course.of(Kind.DROPPING_ZONE) if names & set(one.serves)]
    return zones[0] if len(zones) == 1 else None


def _view(course: Course, found: Consultation, view: OptionView, answer: Answer, moved: str) -> OptionView:
    notes = (moved,) if moved else ()
    if isinstance(answer, NoRelief):
        return replace(view, messages=(NO_RELIEF[answer.why], *notes))
    if isinstance(answer, NeedsPlace):
        picks = tuple(PICKED[need] for need in answer.needs if need in PICKED)
        messages = tuple(MISSING[need] for need in answer.needs if need in MISSING)
        near = (
            conditions_near(course, to_plane(course, found.case.places["ball"]))
            if Place.CONDITION in answer.needs
            else ()
        )
        return replace(
            view,
            picks=picks,
            conditions=near,
            needs_handedness=Place.HANDEDNESS in answer.needs,
            messages=(*messages, *notes),
        )
    return _drawn(course, view, answer, notes)


def _drawn(course: Course, view: OptionView, answer: Drawn, notes: tuple[str, ...]) -> OptionView:
    features: list[dict[str, Any]] = []
    measures: list[str] = []
    assumed: list[str] = []
    for area in answer.areas:
        features += _features(course, view.letter, area)
        measures += [measure_words(one) for one in area.measures]
        assumed += [assumed_words(key) for key in area.assumed]
    return replace(
        view,
        drawn=True,
        messages=(*dict.fromkeys(assumed), *notes),
        measures=tuple(dict.fromkeys(measures)),
        features=features,
        figure=Markup(svg(answer.areas, course, prefix=f"option-{view.letter}")),  # noqa: S704 - our own drawing, which escapes names
    )


def _features(course: Course, letter: str, area: ReliefArea) -> list[dict[str, Any]]:
    drawn = []

    def add(role: str, shape: BaseGeometry, words: str = "") -> None:
        if not shape.is_empty:
            properties = {"letter": letter, "role": role, "words": words}
            drawn.append({"type": "Feature", "properties": properties, "geometry": in_degrees(course, shape)})

    add("spot" if area.is_spot else "area", area.polygon)
    for mark in area.construction:
        words = mark_words(mark.role)
        if isinstance(mark, PointMark):
            add(mark.role.value, Point(mark.at), words)
        elif isinstance(mark, LineMark):
            add(mark.role.value, LineString([mark.start, mark.end]), words)
        elif isinstance(mark, ShapeMark):
            add(mark.role.value, Polygon(mark.points), words)
        elif isinstance(mark, ArcMark):
            points = arc_points(mark.centre, mark.radius, mark.start, mark.end, ARC_ERROR)
            add(mark.role.value, LineString(points), words)
    return drawn
