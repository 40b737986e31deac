"""Facts about loose impediments and movable obstructions (Rules 15.1 and 15.2)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class RemovedThing(Enum):
    """What kind of natural thing was removed."""

    LOOSE_IMPEDIMENT = "loose_impediment"
    SAND_OR_LOOSE_SOIL = "sand_or_loose_soil"
    NOT_LOOSE = "not_loose"


class BallWhenRemoved(Enum):
    """The state of the ball when the thing was removed."""

    AT_REST = "at_rest"
    TO_BE_REPLACED = "to_be_replaced"
    TO_BE_DROPPED_OR_PLACED = "to_be_dropped_or_placed"
    IN_MOTION = "in_motion"


class ArtificialThing(Enum):
    """What kind of artificial thing was removed."""

    MOVABLE_OBSTRUCTION = "movable_obstruction"
    EXEMPT_FROM_MOTION_RULE = "exempt_from_motion_rule"
    TEE_MARKER = "tee_marker"
    NO_MOVABLE_OBSTRUCTION = "no_movable_obstruction"


removed_thing = choice(
    "removed_thing",
    "What was removed?",
    {
        RemovedThing.LOOSE_IMPEDIMENT: "a loose impediment: a stone, leaf, branch, dung, insect or the like, not attached",
        RemovedThing.SAND_OR_LOOSE_SOIL: "sand or loose soil",
        RemovedThing.NOT_LOOSE: "something growing, attached, embedded or sticking to the ball, or dew, frost or water",
    },
    help="Snow and natural ice may be treated as a loose impediment or as temporary water, as the player prefers.",
    source="15.1, Definitions: loose impediment",
)
removed_on_green = yes_no(
    "removed_on_green",
    "Was it removed from the putting green?",
    help="The putting green of the hole being played; its fringe does not belong to it.",
    source="13.1c(1)",
    decided_by=DecidedBy.MAP,
)
removal_improved_conditions = yes_no(
    "removal_improved_conditions",
    "Did the removal improve the lie, stance, swing, line of play or relief area (and was it not put back in time)?",
    help="A potential advantage for the next stroke is enough.",
    source="8.1a",
)
ball_when_removed = choice(
    "ball_when_removed",
    "Where was the player's ball when it was removed?",
    {
        BallWhenRemoved.AT_REST: "at rest on the course",
        BallWhenRemoved.TO_BE_REPLACED: "lifted or moved, and to be replaced on its spot",
        BallWhenRemoved.TO_BE_DROPPED_OR_PLACED: "lifted, and a ball is to be dropped or placed in taking relief",
        BallWhenRemoved.IN_MOTION: "a ball was in motion",
    },
    help="For a ball in motion it does not matter whose ball it was.",
    source="15.1a",
)
likely_to_move_ball = yes_no(
    "likely_to_move_ball",
    "Was it deliberately removed, and would its removal have been likely to move the ball when it lay there?",
    help="Not if it came to lie there only later, or came away in marking, lifting, replacing or moving the ball.",
    source="15.1a Exception 1",
)
removal_moved_ball = yes_no(
    "removal_moved_ball",
    "Is it known or virtually certain that removing it moved the player's ball?",
    help="The ball must have left its spot and come to rest elsewhere; rocking back is not moving.",
    source="15.1b, 15.2a, Definitions: moved",
)
applying_other_rule = yes_no(
    "applying_other_rule",
    "Was the loose impediment moved by a reasonable act in applying another Rule?",
    help="Marking, lifting, replacing, measuring, taking relief, removing a movable obstruction, restoring conditions.",
    source="9.4b Exception 4",
)
artificial_thing = choice(
    "artificial_thing",
    "What was removed?",
    {
        ArtificialThing.MOVABLE_OBSTRUCTION: "a movable obstruction: a rake, bottle, hose, stake, another hole's tee-marker or the like",
        ArtificialThing.EXEMPT_FROM_MOTION_RULE: "a removed flagstick, or a player's equipment (no ball or ball-marker)",
        ArtificialThing.TEE_MARKER: "a tee-marker of the teeing area the player was about to play from",
        ArtificialThing.NO_MOVABLE_OBSTRUCTION: "a boundary object, an integral object or an immovable obstruction",
    },
    help="Movable: with reasonable effort and without damage. The Committee may define an object either way.",
    source="15.2, Definitions: movable obstruction",
)
motion_during_removal = yes_no(
    "motion_during_removal",
    "Was a ball in motion when it was removed?",
    help="Any player's ball.",
    source="15.2a(1) Exception 2",
)
obstruction_removal_moved_ball = yes_no(
    "obstruction_removal_moved_ball",
    "Did the player's ball at rest move while the obstruction was being removed?",
    help="There is no penalty either way.",
    source="15.2a(1)",
)
found_in_obstruction = yes_no(
    "found_in_obstruction",
    "Has the ball been found, in or on the movable obstruction?",
    help="Seen and identified as the player's ball.",
    source="15.2a, 15.2b",
)
known_in_obstruction = yes_no(
    "known_in_obstruction",
    "Is it known or virtually certain that the unfound ball came to rest in or on it?",
    help="About 95 % certain, on all evidence reasonably available.",
    source="15.2b",
)
obstruction_on_green = yes_no(
    "obstruction_on_green",
    "Is the point directly under the ball on the putting green?",
    help="Estimate the point straight down from where the ball lay in or on the obstruction.",
    source="15.2a(3)",
    decided_by=DecidedBy.MAP,
)
