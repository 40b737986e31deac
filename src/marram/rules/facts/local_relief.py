"""Facts about Local Rules on relief by placing, dropping zones, power lines and back on the line (area E)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class PreferredLie(Enum):
    """How far the player has come with preferring the lie."""

    LIES = "lies"
    LIFTED = "lifted"
    PLACED = "placed"
    LIFTED_AGAIN = "lifted_again"
    PUT_BACK = "put_back"


ball_in_preferred_area = yes_no(
    "ball_in_preferred_area",
    "Does the ball lie where the Local Rule allows the lie to be preferred?",
    help="Usually the general area cut to fairway height or less; the notice may name certain holes or fairways.",
    source="E-3",
    decided_by=DecidedBy.MAP,
)
preferred_lie = choice(
    "preferred_lie",
    "How far has the player come with preferring the lie?",
    {
        PreferredLie.LIES: "the ball lies where it came to rest",
        PreferredLie.LIFTED: "the ball has been lifted, and none placed yet",
        PreferredLie.PUT_BACK: "the ball has been lifted and put back on its spot",
        PreferredLie.PLACED: "a ball has been placed on another spot",
        PreferredLie.LIFTED_AGAIN: "a ball was placed, and then lifted once more to be placed elsewhere",
    },
    help="A ball is placed when it is set on a spot and let go; from then on it is in play.",
    source="E-3",
)
placed_within_limits = yes_no(
    "placed_within_limits",
    "Was the ball placed in the relief area of the Local Rule?",
    help="Within the length the notice gives from the original spot, not nearer the hole, in the general area.",
    source="E-3",
    decided_by=DecidedBy.MAP,
)
ball_in_cleaning_area = yes_no(
    "ball_in_cleaning_area",
    "Did the ball lie where the Local Rule allows cleaning?",
    help="The notice names the area: for example one hole, or all ground cut to fairway height or less.",
    source="E-2",
    decided_by=DecidedBy.MAP,
)
ball_in_aeration_hole = yes_no(
    "ball_in_aeration_hole",
    "Does the ball lie in, or touch, an aeration hole?",
    help="A hole only under the stance or, on the green, on the line of play, is no interference.",
    source="E-4",
    decided_by=DecidedBy.MAP,
)
line_hit_for_certain = yes_no(
    "line_hit_for_certain",
    "Is it known or virtually certain (about 95 %) that the ball hit the power line?",
    help="Its towers, supporting wires and poles count where the notice says so. Ask all who watched.",
    source="E-11",
)
played_on_after_line = yes_no(
    "played_on_after_line",
    "Did the player go on without replaying that stroke?",
    help="The next stroke was made at the ball where it came to rest, or at one dropped under another Rule.",
    source="E-11",
)
dropping_zone_provided = yes_no(
    "dropping_zone_provided",
    "Has the Committee provided a dropping zone for this situation?",
    help="Read the Local Rule: it names the penalty area or condition, and where the dropping zone is.",
    source="E-1",
    decided_by=DecidedBy.MAP,
)
rest_near_where_it_first_touched = yes_no(
    "rest_near_where_it_first_touched",
    "Did it come to rest within one club-length of where it first touched the ground?",
    help="It must have been dropped in the relief area. Measure from the mark it made.",
    source="E-12",
    decided_by=DecidedBy.MAP,
)
relief_was_back_on_the_line = yes_no(
    "relief_was_back_on_the_line",
    "Was the relief back on the line (of a penalty area, an unplayable ball, or out of a bunker)?",
    help="Not lateral relief, free relief, or a ball played again from where the previous stroke was made.",
    source="E-12",
)
