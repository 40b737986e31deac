"""Words about drawing relief: what the map still needs, what it assumed, what its marks are.

They speak of the drawing only; what the Rules say comes from :mod:`marram.words`.
"""

from marram.relief.construction import Role
from marram.relief.situation import Place, Why

PICKED = {
    Place.BALL: "ball",
    Place.CROSSING_POINT: "entry",
    Place.PREVIOUS_SPOT: "previous",
    Place.PROVISIONAL_BALL: "provisional",
}
"""What a missing place is called in an address."""

MISSING = {
    Place.TEE_MARKERS: "The tee-markers are not on the map: play from anywhere inside the teeing area.",
    Place.FAIRWAY: "The map has no fairway for this hole: find the fairway point on the ground.",
    Place.DROPPING_ZONE: "Which dropping zone is not known to the map: the Committee's notice names it.",
    Place.CONDITION: "Say which condition relief is taken from.",
    Place.HANDEDNESS: "Say whether the player swings right-handed or left-handed.",
}

NO_RELIEF = {
    Why.NO_NEAREST_POINT: "Here the map finds no point of complete relief that is not nearer the hole. Check on the ground.",
    Why.NO_ROOM: "Here the map finds no place that fulfils all limits. Check on the ground.",
    Why.NO_FAIRWAY_POINT: "No fairway of this hole lies as far from the hole as the ball. Check on the ground.",
    Why.NO_INTERFERENCE: "For the stance and swing assumed, the map finds no interference. Check on the ground.",
}

ASSUMED = {
    "relief.crossing_point_moved_onto_edge": "The crossing point was moved onto the edge of the penalty area.",
    "relief.mapped_tee_shown": "The whole tee on the map is shown; the teeing area is the part that today's tee-markers define.",
    "relief.maximum_compared_by_area": "Interference was compared by how much of stance and swing it takes.",
    "relief.play_straight_at_hole": "Drawn for a stroke straight at the hole.",
    "relief.teeing_area_used_as_fairway": "The teeing area was used as fairway, as no fairway lies that far from the hole.",
    "relief.usual_stance_and_swing": "Drawn for a usual stance and swing; the player's own decide.",
}
"""What a drawing took for granted, by key."""

ROLE_WORDS = {
    Role.HOLE: "hole",
    Role.BALL: "ball",
    Role.REFERENCE: "reference point",
    Role.CROSSING_POINT: "crossing point",
    Role.PREVIOUS_SPOT: "previous spot",
    Role.FAIRWAY_POINT: "fairway point",
    Role.FIRST_TOUCHED: "where the ball first touches",
    Role.EXAMPLE_SPOT: "example spot",
    Role.CLUB_LENGTHS: "edge of the club-lengths",
    Role.TEEING_AREA: "teeing area",
    Role.DROPPING_ZONE: "middle of the dropping zone",
}
