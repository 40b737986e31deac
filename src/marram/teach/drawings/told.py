"""What the drawing of a situation shows, in words: for its labels, and for readers who do not see it."""

import shapely
from shapely import Point

from marram.relief.areas.construction import distance
from marram.relief.geometry.tolerance import YARD
from marram.rules.facts.ball import Area
from marram.services.ground.relief import condition_words
from marram.teach.drawings.grounds import WhyNone
from marram.teach.drawings.placing import Placed
from marram.words.ground import in_area
from marram.words.texts import text

_WORTH_SAYING = 0.1
"""Metres: a nearer edge is said to be touched."""


def why_none(why: WhyNone) -> str:
    """Return why a situation has no drawing."""
    return text(f"drawings.none.{why.value}")


def place_label(role: str) -> str:
    """Return the label of a place by its role."""
    return text(f"drawings.place.{role}")


def shown(one: Placed) -> tuple[str, ...]:
    """Return what the drawing shows, as sentences: where the ball lies, what is near, where the player stands."""
    place = one.ruled.lie.place
    assert place is not None
    to_hole = distance(one.ball, (one.hole.location.x, one.hole.location.y))
    said = [
        text(
            "drawings.ball" if one.seen else "drawings.ball_not_seen",
            where=in_area(place.area),
            metres=_metres(to_hole),
            yards=_metres(to_hole / YARD),
        )
    ]
    if one.condition is not None:
        away = float(shapely.distance(one.condition.geometry, Point(one.ball)))
        key = "drawings.condition_touched" if away < _WORTH_SAYING else "drawings.condition_away"
        said.append(text(key, condition=condition_words(one.condition), metres=f"{away:.1f}"))
    if one.set_down:
        said.append(text("drawings.set_down"))
    if player_shown(one):
        said.append(text("drawings.right_handed" if one.right_handed else "drawings.left_handed"))
    said += [
        text(f"drawings.told.{role}") for role in one.places if role in {"entry", "boundary", "provisional"}
    ]
    return tuple(said)


def player_shown(one: Placed) -> bool:
    """Whether the drawing shows where the player stands: where there is a ball to play that was seen, on the course."""
    place = one.ruled.lie.place
    return (
        one.seen and place is not None and place.area not in {None, Area.TEEING_AREA} and not one.at_the_hole
    )


def _metres(value: float) -> str:
    return f"{value:.1f}" if value < 10 else f"{value:.0f}"
