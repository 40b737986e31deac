"""The relief options of a ruling as the screen shows them: words, drawing, or what is still needed."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from markupsafe import Markup
from shapely import LineString, Point, Polygon, simplify
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Feature
from marram.desk.rulings.consultation import Consultation
from marram.desk.rulings.recently import recently
from marram.desk.shell.map_drawing import in_degrees_all
from marram.relief import svg
from marram.relief.areas.construction import ArcMark, LineMark, Mark, PointMark, ShapeMark
from marram.relief.areas.relief_area import ReliefArea
from marram.relief.geometry.arcs import arc_points
from marram.relief.geometry.outline import XY
from marram.relief.geometry.tolerance import TOLERANCE
from marram.relief.pictures.lettering import WIDTH
from marram.relief.pictures.measuring import how_to_measure
from marram.relief.pictures.picture_words import assumed_words, mark_words, measures_told
from marram.relief.pictures.view import view_of
from marram.relief.pictures.wanted import limit_labels, point_labels, size_labels, to_hole_words
from marram.relief.pictures.where_not import not_nearer_arcs, where_not
from marram.relief.place.answer import NeedsPlace, NoRelief, Place
from marram.relief.place.place_words import MISSING, PICKED, missing_words, no_relief_words
from marram.rules.ruling import Ruling
from marram.services.cases.places import place_words
from marram.services.ground.relief import TEE_MARKERS, OptionDrawn, draw_options
from marram.words.relief_options import OptionWords
from marram.words.texts import text
from marram.words.told_apart import options_words

LETTERS = "ABCDEFGHIJ"
TEE_GUESSED = "relief.mapped_tee_shown"
"""What the relief layer says where it drew the mapped tee because it knows no tee-markers."""


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
        how_to_measure: from which point, with which club, how far, straight across what.
        features: what to draw, as GeoJSON features.
        frame: what of the map to show for it, as (south, west) and (north, east) in degrees.
        to_hole: from where and to where the hole is, in degrees, and how far in words.
        moved: where places shown beside their edge are taken to be, by role, in degrees.
        areas: what is drawn.
        figure: a drawing with its measures, as SVG, where it was asked for; works without JavaScript and on paper.
    """

    letter: str
    words: OptionWords
    drawn: bool = False
    picks: tuple[str, ...] = ()
    conditions: tuple[Feature, ...] = ()
    needs_handedness: bool = False
    messages: tuple[str, ...] = ()
    measures: tuple[str, ...] = ()
    how_to_measure: tuple[str, ...] = ()
    features: list[dict[str, Any]] = field(default_factory=list)
    frame: tuple[tuple[float, float], tuple[float, float]] | None = None
    to_hole: dict[str, Any] | None = None
    moved: Mapping[str, tuple[float, float]] = field(default_factory=dict)
    areas: Sequence[ReliefArea] = field(default=(), repr=False)
    figure: Markup = field(default_factory=Markup)

    @property
    def pick_words(self) -> list[tuple[str, str]]:
        """The places still to be shown, with their words."""
        return [(role, place_words(role)) for role in self.picks]

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
            "how_to_measure": list(self.how_to_measure),
            "features": self.features,
            "frame": self.frame,
            "to_hole": self.to_hole,
        }


def relief_views(course: Course, found: Consultation) -> tuple[OptionView, ...]:
    """Return the options of a ruling, drawn where the map can draw them."""
    if not isinstance(found.result, Ruling) or not found.result.relief:
        return ()
    words = options_words(found.result.relief)
    plain = tuple(OptionView(letter, one) for letter, one in zip(LETTERS, words, strict=False))
    if found.hole is None or found.place is None:
        return plain
    return recently(course, found.case, lambda: _views(course, found, plain), "relief views")


def figures_of(course: Course, found: Consultation) -> dict[str, str]:
    """Return the drawings of the options of a ruling as SVG, by their letters, where the map can draw them."""
    return {
        view.letter: svg(view.areas, course, prefix=f"option-{view.letter}")
        for view in relief_views(course, found)
        if view.areas
    }


def _views(course: Course, found: Consultation, plain: Sequence[OptionView]) -> tuple[OptionView, ...]:
    """Return the options of a ruling for a ball that was shown on the map."""
    assert isinstance(found.result, Ruling)
    to_show = tuple(sorted(TEE_MARKERS - found.case.places.keys()))
    drawn = draw_options(course, found, found.result.relief[: len(plain)])
    return tuple(_view(course, view, one, to_show) for view, one in zip(plain, drawn, strict=True))


def _view(course: Course, view: OptionView, drawn: OptionDrawn, to_show: tuple[str, ...]) -> OptionView:
    """Return an option with what became of drawing it; ``to_show`` are the tee-markers not shown yet."""
    answer = drawn.answer
    if drawn.fault:
        return replace(view, messages=(drawn.fault,))
    if isinstance(answer, NoRelief):
        return replace(view, messages=(no_relief_words(answer.why), *drawn.notes), conditions=drawn.choices)
    if isinstance(answer, NeedsPlace):
        return replace(
            view,
            picks=(
                *(PICKED[need] for need in answer.needs if need in PICKED),
                *(to_show if Place.TEE_MARKERS in answer.needs else ()),
            ),
            conditions=drawn.choices,
            needs_handedness=Place.HANDEDNESS in answer.needs,
            messages=(*(missing_words(need) for need in answer.needs if need in MISSING), *drawn.notes),
        )
    return _drawn(course, view, drawn, to_show)


def _drawn(course: Course, view: OptionView, drawn: OptionDrawn, to_show: tuple[str, ...]) -> OptionView:
    measures: list[str] = []
    assumed: list[str] = []
    for area in drawn.areas:
        measures += measures_told(area)
        assumed += area.remarks
    return replace(
        view,
        drawn=True,
        picks=to_show if TEE_GUESSED in assumed else (),
        conditions=drawn.choices,
        messages=(*drawn.notes, *map(assumed_words, dict.fromkeys(assumed))),
        measures=tuple(dict.fromkeys(measures)),
        how_to_measure=tuple(
            dict.fromkeys(step for area in drawn.areas for step in how_to_measure(area, course))
        ),
        features=_drawn_on_map(course, view.letter, _marks(drawn.areas)),
        frame=_frame(course, drawn.areas),
        to_hole=_to_hole(course, drawn.areas[0]),
        moved={role: _degrees(course, at) for role, at in drawn.moved.items()},
        areas=drawn.areas,
    )


def _frame(course: Course, areas: Sequence[ReliefArea]) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return what of the map to show for an option: the frame of its drawing."""
    view = view_of(areas, WIDTH)
    return (
        _degrees(course, (view.left, view.bottom)),
        _degrees(course, (view.left + view.size, view.bottom + view.size)),
    )


def _to_hole(course: Course, area: ReliefArea) -> dict[str, Any]:
    return {
        "from": _degrees(course, area.reference),
        "to": _degrees(course, area.hole),
        "words": to_hole_words(area),
    }


def _drawn_on_map(
    course: Course, letter: str, marks: Sequence[tuple[str, BaseGeometry, str]]
) -> list[dict[str, Any]]:
    """Return what is drawn on the map of an option as GeoJSON features: the role of each, its shape and its words."""
    shown = [one for one in marks if not one[1].is_empty]
    placed = in_degrees_all(course, simplify([shape for _, shape, _ in shown], TOLERANCE).tolist())
    return [
        {
            "type": "Feature",
            "properties": {"letter": letter, "role": role, "words": words},
            "geometry": geometry,
        }
        for (role, _, words), geometry in zip(shown, placed, strict=True)
    ]


def _degrees(course: Course, at: XY) -> tuple[float, float]:
    longitude, latitude = course.plane.to_degrees(*at)
    return round(latitude, 8), round(longitude, 8)


def _marks(areas: Sequence[ReliefArea]) -> list[tuple[str, BaseGeometry, str]]:
    """Return what an option brought out shows: the role, shape and words of each, what lies above the others last."""
    marks = [mark for area in areas for mark in _marks_of(area)]
    wanted = (
        *point_labels(areas),
        *size_labels(areas),
        *limit_labels(areas),
    )  # the limit at both ends of its arc
    return [*marks, *(("label", Point(at), words) for words, at in wanted)]


def _marks_of(area: ReliefArea) -> Iterator[tuple[str, BaseGeometry, str]]:
    yield "where_not", where_not(area), text("relief.mark.where_not")
    yield "spot" if area.is_spot else "area", area.picture, ""
    for arc in not_nearer_arcs(area):
        if arc not in area.construction:
            yield arc.role.value, _arc(arc), mark_words(arc.role)
    for mark in area.construction:
        yield mark.role.value, _shape(mark), mark_words(mark.role, area)


def _shape(mark: Mark) -> BaseGeometry:
    if isinstance(mark, PointMark):
        return Point(mark.at)
    if isinstance(mark, LineMark):
        return LineString([mark.start, mark.end])
    return Polygon(mark.points, mark.holes) if isinstance(mark, ShapeMark) else _arc(mark)


def _arc(mark: ArcMark) -> LineString:
    return LineString(arc_points(mark.centre, mark.radius, mark.start, mark.end, TOLERANCE))
