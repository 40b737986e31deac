"""What the map on the screen is to show on one page, handed over as JSON inside the page."""

from collections.abc import Sequence
from typing import Any

from marram.course.model import Course, Hole
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.relief_view import OptionView
from marram.desk.shell.map_drawing import in_degrees, rounded
from marram.services.places import place_words


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
) -> dict[str, Any]:
    """Return what the map is to show.

    Args:
        course: the course.
        case: the case, for the places marked.
        hole: the hole to show; ``None`` shows the whole course.
        pick: the role of the place that a tap sets (``ball``, ``entry``, …), or ``None``.
        pick_url: the address a tap leads to; ``{at}`` stands for the place.
        options: the relief options to draw.
    """
    picks = {
        role: {"url": case.pick_url("/case", role), "words": place_words(role)}
        for role in dict.fromkeys((*again(case, options), *(pick for view in options for pick in view.picks)))
    }
    if pick:
        picks[pick] = {"url": pick_url, "words": place_words(pick)}
    frame = hole.line.buffer(25) if hole else None
    return {
        "hole": hole.number if hole else None,
        "frame": rounded(in_degrees(course, frame.envelope)["coordinates"]) if frame else None,
        "marks": [
            {
                "role": role,
                "at": list(at),
                "words": place_words(role),
                "accuracy": case.accuracy.get(role),
            }
            for role, at in case.places.items()
        ],
        "pick": pick,
        "overview": hole is None,
        "picks": picks,
        "options": [view.drawing() for view in options],
    }
