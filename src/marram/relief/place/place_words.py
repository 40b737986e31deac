"""Words about what the map still needs to draw relief, and why it found none.

They speak of the map only; what the Rules say comes from :mod:`marram.words`, and what a drawing shows from
:mod:`marram.relief.pictures.picture_words`.
"""

from marram.relief.place.situation import Place, Why

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

MISSING = {
    Place.TEE_MARKERS: "The tee-markers are not on the map: play from anywhere inside the teeing area.",
    Place.FAIRWAY: "The map has no fairway for this hole: find the fairway point on the ground.",
    Place.DROPPING_ZONE: "Which dropping zone is not known to the map: the Committee's notice names it.",
    Place.CONDITION: "Say which condition relief is taken from.",
    Place.OPPOSITE_EDGE: "The map does not draw this: find the point across the penalty area that is as far from the hole.",
    Place.HANDEDNESS: "Say whether the player swings right-handed or left-handed.",
}

NO_RELIEF = {
    Why.NO_NEAREST_POINT: "Here the map finds no point of complete relief that is not nearer the hole. Check on the ground.",
    Why.NO_ROOM: "Here the map finds no place that fulfils all limits. Check on the ground.",
    Why.NO_FAIRWAY_POINT: "No fairway of this hole lies as far from the hole as the ball. Check on the ground.",
    Why.COMPLETE_RELIEF_AVAILABLE: "The map finds complete relief in the bunker, so this option does not arise. Check on the ground.",
    Why.NO_INTERFERENCE: "For the stance and swing assumed, the map finds no interference. Check on the ground.",
}
