"""Facts about the flagstick (Rule 13.2)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class FlagstickState(Enum):
    """Where the flagstick was when the ball hit it or its attendant."""

    LEFT_IN_HOLE = "left_in_hole"
    ATTENDED_OR_REMOVED = "attended_or_removed"


class FlagstickMover(Enum):
    """Who moved or removed the flagstick in the hole."""

    OWN_SIDE = "own_side"
    OTHER_PLAYER = "other_player"
    OUTSIDER = "outsider"


flagstick_state = choice(
    "flagstick_state",
    "What had the player decided about the flagstick before the stroke?",
    {
        FlagstickState.LEFT_IN_HOLE: "it was left in the hole, nobody attending",
        FlagstickState.ATTENDED_OR_REMOVED: "it was attended, or had been removed",
    },
    help="The caddie, or anybody the player asked or saw, standing right next to the hole is attending.",
    source="13.2a, 13.2b",
)
flagstick_leant_on_purpose = yes_no(
    "flagstick_leant_on_purpose",
    "Had the player deliberately put the flagstick in a position other than centred, to gain an advantage?",
    help="Leaving it as the group before left it is allowed; so is centring it.",
    source="13.2a(1)",
)
hit_by_design = yes_no(
    "hit_by_design",
    "Did the attendant stop the ball on purpose, or was the flagstick left where it might stop the ball?",
    help="Also: not drawing the flagstick, or not getting out of the way, on purpose.",
    source="13.2b(2)",
)
who_meant_the_hit = choice(
    "who_meant_the_hit",
    "Who stopped the ball, or left the flagstick there, on purpose?",
    {
        FlagstickMover.OWN_SIDE: "the player, the partner or a caddie of theirs",
        FlagstickMover.OTHER_PLAYER: "the opponent or another player, or a caddie of theirs",
        FlagstickMover.OUTSIDER: "a person who is no player or caddie",
    },
    help="Only players are penalised, for themselves and their caddies.",
    source="13.2b(2), 11.2b",
)
flagstick_mover = choice(
    "flagstick_mover",
    "Who moved or removed the flagstick that had been left in the hole?",
    {
        FlagstickMover.OWN_SIDE: "the player, the partner or a caddie of theirs",
        FlagstickMover.OTHER_PLAYER: "the opponent or another player, or a caddie of theirs",
        FlagstickMover.OUTSIDER: "a person who is no player or caddie",
    },
    help="A caddie's act counts as the player's.",
    source="13.2a(3), 13.2a(4)",
)
attendance_authorised = yes_no(
    "attendance_authorised",
    "Did the player know of it and play anyway, or had the player asked for the flagstick to be attended?",
    help="A player who sees somebody at the hole and plays without objecting has authorised attendance.",
    source="13.2b(1)",
)
flagstick_moved_to_affect = yes_no(
    "flagstick_moved_to_affect",
    "Was it moved to affect where the ball in motion might come to rest?",
    help="Not so if they reasonably believed the ball would not reach it, or did not know of the stroke.",
    source="13.2a(3), 13.2a(4)",
)
part_in_hole = yes_no(
    "part_in_hole",
    "Is any part of the ball resting against the flagstick below the surface of the green, inside the hole?",
    help="Look from the side at the level of the putting green.",
    source="13.2c",
)
moved_with_flagstick = yes_no(
    "moved_with_flagstick",
    "Was the flagstick then removed and did the ball move (into the hole or away)?",
    help="Ask who saw where the ball had been.",
    source="13.2c",
)
