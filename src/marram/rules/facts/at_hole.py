"""Facts about a ball in or at the hole (Definition of holed)."""

from enum import Enum

from marram.rules.engine.fact import choice


class InHole(Enum):
    """How the ball is, or was, in the hole."""

    ALL_BELOW = "all_below"
    PARTLY_ABOVE = "partly_above"
    AGAINST_FLAGSTICK = "against_flagstick"
    CAME_OUT = "came_out"
    TAKEN_OUT_MOVING = "taken_out_moving"


ball_in_hole = choice(
    "ball_in_hole",
    "How is, or was, the ball in the hole?",
    {
        InHole.ALL_BELOW: "at rest in the hole, all of it below the surface, even if stuck in the side",
        InHole.PARTLY_ABOVE: "at rest, part of it above the surface, for instance embedded in the side",
        InHole.AGAINST_FLAGSTICK: "resting against the flagstick that was left in the hole",
        InHole.CAME_OUT: "it went in, but bounced or rolled out again",
        InHole.TAKEN_OUT_MOVING: "in the hole, still moving about, when the player took it out",
    },
    help="Look from the side at the level of the putting green.",
    source="Definitions: holed",
)
