"""The words on a picture, in one place and through gettext."""

from gettext import gettext as _

from marram.course.model import Kind
from marram.relief.constructions.construction import Measure, Role
from marram.rules.relief_option import ReliefKind

_MARKS = {
    Role.HOLE: "hole",
    Role.BALL: "ball",
    Role.REFERENCE: "reference point",
    Role.CROSSING_POINT: "crossed the edge",
    Role.PREVIOUS_SPOT: "previous stroke",
    Role.FAIRWAY_POINT: "fairway point",
    Role.BOUNDARY_POINT: "crossed the boundary",
    Role.FIRST_TOUCHED: "first touched",
    Role.EXAMPLE_SPOT: "example spot",
    Role.LINE_TO_HOLE: "line to the hole",
    Role.DROP_LINE: "line to drop on",
    Role.REFERENCE_LINE: "line to choose a point on",
    Role.CLUB_LENGTHS: "club-lengths",
    Role.NOT_NEARER: "not nearer the hole",
    Role.CORRIDOR_EDGE: "outer edge",
    Role.SHIFT: "to the nearest point",
    Role.STANCE: "stance and swing",
    Role.CONDITION: "condition",
    Role.TEEING_AREA: "teeing area",
    Role.TEE_LINE: "line of the tee-markers",
    Role.DROPPING_ZONE: "dropping zone",
}

_KINDS = {
    ReliefKind.STROKE_AND_DISTANCE: "Stroke and distance",
    ReliefKind.BACK_ON_THE_LINE: "Back on the line",
    ReliefKind.LATERAL: "Lateral relief",
    ReliefKind.FREE: "Free relief",
    ReliefKind.MAXIMUM_AVAILABLE: "Maximum available relief",
    ReliefKind.EXTENDED: "Alternative to stroke and distance",
    ReliefKind.DROPPING_ZONE: "Dropping zone",
    ReliefKind.UNDER_WHERE_IT_CAME_TO_REST: "Under where the ball came to rest",
    ReliefKind.PROVISIONAL: "Provisional ball",
    ReliefKind.NEAREST_SPOT: "Nearest spot",
    ReliefKind.PREFERRED_LIE: "Preferred lie",
    ReliefKind.REPLAY: "Play the stroke again",
    ReliefKind.COMPLETE_RELIEF_OUTSIDE: "Complete relief outside",
}

_GROUND = {
    Kind.RED_PENALTY_AREA: "red penalty area",
    Kind.YELLOW_PENALTY_AREA: "yellow penalty area",
    Kind.BUNKER: "bunker",
    Kind.PUTTING_GREEN: "putting green",
    Kind.TEEING_AREA: "teeing ground",
    Kind.FAIRWAY: "fairway",
    Kind.PATH: "path",
    Kind.OBSTRUCTION: "obstruction",
    Kind.GROUND_UNDER_REPAIR: "ground under repair",
    Kind.TEMPORARY_WATER: "temporary water",
    Kind.NO_PLAY_ZONE: "no play zone",
    Kind.DROPPING_ZONE: "dropping zone",
    Kind.BOUNDARY: "boundary",
    Kind.OUT_OF_BOUNDS: "out of bounds",
}

ASSUMED = {
    "relief.crossing_point_moved_onto_edge": "The crossing point was moved onto the mapped edge.",
    "relief.example_spot": "An example: any spot on the line will do, however far back.",
    "relief.example_spot_in_bunker": "An example: any spot on the line in the bunker will do.",
    "relief.goes_on_beyond_the_drawing": "The map knows no boundary: the drawing ends where the map does, the Rules set no limit before the edge of the course.",
    "relief.boundary_point_moved_onto_edge": "The point where the ball crossed the boundary was moved onto the mapped edge.",
    "relief.mapped_tee_shown": "The mapped tee is shown; the teeing area is two club-lengths deep behind the tee-markers.",
    "relief.teeing_area_used_as_fairway": "No fairway lies so far from the hole; a teeing ground of the hole is used.",
    "relief.usual_stance_and_swing": "A usual stance and swing are drawn; the player's own decide.",
    "relief.play_straight_at_hole": "Play is taken to go straight at the hole.",
    "relief.size_of_preferred_lie": "The notice sets how far from the spot the ball may be placed; the picture shows more than that.",
    "relief.nearest_spot_that_stays": "The nearest spot in this direction where a ball stays; it may lie beyond the picture.",
    "relief.maximum_compared_by_area": "A proposal by area; how much lie, stance and swing are affected is judged on the ground.",
}
"""What was taken for granted, in words."""


def mark_words(role: Role) -> str:
    """Return the words for a mark."""
    return _(_MARKS[role])


def kind_words(kind: ReliefKind) -> str:
    """Return the words for a kind of relief."""
    return _(_KINDS[kind])


def ground_words(kind: Kind) -> str | None:
    """Return the words for a mapped area, or ``None`` for one that is not drawn."""
    return _(_GROUND[kind]) if kind in _GROUND else None


def assumed_words(key: str) -> str:
    """Return the words for something taken for granted."""
    return _(ASSUMED.get(key, key))


def size_words(club_lengths: float, club_length: float) -> str:
    """Return the size of a relief area in words."""
    return f"{club_lengths:g} \u00d7 {club_length:.2f} m = {club_lengths * club_length:.2f} m"


def measure_words(measure: Measure) -> str:
    """Return a distance in words, in metres and yards."""
    decimals = 2 if measure.metres < 10 else 1
    both = f"{measure.metres:.{decimals}f} m ({measure.yards:.{decimals}f} yd)"
    if measure.bearing is None:
        return _("club-lengths: {both}").format(both=both)
    return _("{start} to {end}: {both}, {bearing:.0f}°").format(
        start=mark_words(measure.start), end=mark_words(measure.end), both=both, bearing=measure.bearing
    )
