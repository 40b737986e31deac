"""What the map on the screen is to show on one page, handed over as JSON inside the page."""

from collections.abc import Sequence
from math import dist
from typing import Any

from shapely import Point, union_all
from shapely.geometry.base import BaseGeometry

from marram.course.model import Course, Hole
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.relief_view import OptionView
from marram.desk.shell.map_drawing import in_degrees, rounded
from marram.relief.place.edges_near import EdgeNear
from marram.services.cases.places import FLAG, Degrees, place_words
from marram.words.texts import text

BESIDE_LINE = 25.0
"""Metres shown beside a line of play (a choice of ours)."""
AROUND_FLAG = 200.0
"""Metres shown around a flagstick where the map has no line of play (a choice of ours)."""
SHOWN_TO = 1.0
"""Metres: a shorter move is told to the centimetre."""


def again(case: CaseAddress, options: Sequence[OptionView]) -> tuple[str, ...]:
    """Return the roles of places that can be shown anew beside relief options: all shown but the ball's."""
    return tuple(role for role in case.places if role != "ball") if options else ()


def map_state(
    course: Course,
    case: CaseAddress,
    *,
    hole: Hole | None = None,
    pick: str | None = None,
    pick_url: str = "",
    options: Sequence[OptionView] = (),
    edges: Sequence[EdgeNear] = (),
) -> dict[str, Any]:
    """Return what the map is to show.

    Args:
        course: the course.
        case: the case, for the places marked.
        hole: the hole to show; ``None`` shows the whole course.
        pick: the role of the place that a tap sets (``ball``, ``entry``, …), or ``None``.
        pick_url: the address a tap leads to; ``{at}`` stands for the place.
        options: the relief options to draw.
        edges: the edges near the ball, to be drawn with how far they are.
    """
    picks = {
        role: {"url": case.pick_url("/case", role), "words": place_words(role)}
        for role in dict.fromkeys((*again(case, options), *(pick for view in options for pick in view.picks)))
    }
    if pick:
        picks[pick] = {"url": pick_url, "words": place_words(pick)}
    moved = {role: at for view in options for role, at in view.moved.items()}
    frame = _frame(hole) if hole else None
    return {
        "hole": hole.number if hole else None,
        "frame": rounded(in_degrees(course, frame.envelope)["coordinates"]) if frame else None,
        "marks": [
            {
                "role": role,
                "at": list(moved.get(role, at)),
                "words": place_words(role),
                "accuracy": case.accuracy.get(role),
                "shown": list(at) if role in moved else None,
                "moved": _moved_words(course, at, moved[role]) if role in moved else None,
            }
            for role, at in _shown(case).items()
        ],
        "pick": pick,
        "overview": hole is None and pick != FLAG,
        "picks": picks,
        "options": [view.drawing() for view in options],
        "edges": [
            {"at": in_degrees(course, Point(one.at))["coordinates"][::-1], "words": one.sentence}
            for one in edges
        ],
    }


def _shown(case: CaseAddress) -> dict[str, Degrees]:
    """Return the places that are marked: those of the incident, and the flagstick where the case shows it."""
    return {**({FLAG: case.flag} if case.flag else {}), **case.places}


def _frame(hole: Hole) -> BaseGeometry:
    """Return the ground to show of a hole: along its line of play; without one what is around its flagstick and tees."""
    if hole.line.length:
        return hole.line.buffer(BESIDE_LINE)
    return union_all([hole.location.buffer(AROUND_FLAG), *(tee.geometry for tee in hole.tees)])


def _moved_words(course: Course, shown: tuple[float, float], taken: tuple[float, float]) -> str:
    """Return how far a place was moved onto its edge, in words."""
    away = dist(*(course.plane.to_metres(longitude, latitude) for latitude, longitude in (shown, taken)))
    return text("map_script.moved", metres=f"{away:.1f}" if away >= SHOWN_TO else f"{away:.2f}")
