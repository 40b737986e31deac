"""Words about what the map still needs to draw relief, and why it found none.

They speak of the map only; what the Rules say comes from :mod:`marram.words`, and what a drawing shows from
:mod:`marram.relief.pictures.picture_words`.
"""

from marram.relief.place.answer import Place, Why
from marram.words.texts import text

PICKED = {
    Place.BALL: "ball",
    Place.CROSSING_POINT: "entry",
    Place.PREVIOUS_SPOT: "previous",
    Place.LAST_STROKE_OUTSIDE: "outside",
    Place.ESTIMATED_SPOT: "estimated",
    Place.PROVISIONAL_BALL: "provisional",
    Place.BOUNDARY_POINT: "boundary",
}
"""What a missing place is called in an address."""

MISSING = frozenset(
    {
        Place.TEE_MARKERS,
        Place.FAIRWAY,
        Place.DROPPING_ZONE,
        Place.CONDITION,
        Place.OPPOSITE_EDGE,
        Place.HANDEDNESS,
    }
)
"""What no tap on the map can give: words say what to do instead."""


def missing_words(place: Place) -> str:
    """Return what to do about something that is missing."""
    return text(f"relief.missing.{place.value}")


def no_relief_words(why: Why) -> str:
    """Return why no relief was found."""
    return text(f"relief.none.{why.value}")
