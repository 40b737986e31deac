"""Facts about partners: turns in Foursomes, and what partners do for each other in Four-Ball (Rules 22 and 23)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class TurnAfter(Enum):
    """After what the turn in Foursomes is asked for."""

    START_OF_HOLE = "start_of_hole"
    STROKE = "stroke"
    PENALTY_STROKES = "penalty_strokes"
    STROKE_AND_DISTANCE = "stroke_and_distance"
    STROKE_NOT_COUNTED = "stroke_not_counted"
    PROVISIONAL_BALL = "provisional_ball"
    MISSED_ON_PURPOSE = "missed_on_purpose"


class ActForPartner(Enum):
    """What a partner's act would have cost, had the player done it."""

    ALLOWED = "allowed"
    ONE_STROKE = "one_stroke"
    GENERAL = "general"


class SideOnHole(Enum):
    """How far a Four-Ball side is with a hole."""

    BOTH_DONE = "both_done"
    ONE_DONE_OTHER_STOPPED = "one_done_other_stopped"
    ONE_STILL_PLAYING = "one_still_playing"


class TurnOf(Enum):
    """Of which side a player had the turn."""

    OWN_SIDE = "own_side"
    OTHER_SIDE = "other_side"


class OutFor(Enum):
    """For what a partner of a Four-Ball side would be disqualified."""

    HOLE_NOT_COMPLETED = "hole_not_completed"
    SCORECARD = "scorecard"
    ANOTHER_RULE = "another_rule"


turn_after = choice(
    "turn_after",
    "What has just happened?",
    {
        TurnAfter.START_OF_HOLE: "the side is about to begin a hole",
        TurnAfter.STROKE: "one partner made a stroke, and the ball is in play",
        TurnAfter.PENALTY_STROKES: "penalty strokes were added, with or without relief",
        TurnAfter.STROKE_AND_DISTANCE: "the side plays again from where the last stroke was made",
        TurnAfter.STROKE_NOT_COUNTED: "a stroke in the right order was cancelled, or does not count, and is played again",
        TurnAfter.PROVISIONAL_BALL: "the side wants to play a provisional ball",
        TurnAfter.MISSED_ON_PURPOSE: "a partner swung past the ball on purpose",
    },
    help="A cancelled stroke: for instance one out of turn in a match, or a putt that must be replayed.",
    source="22.3",
)
first_to_tee_off_was_right = yes_no(
    "first_to_tee_off_was_right",
    "Was it the turn of the partner who teed off first?",
    help="One partner tees off on the odd-numbered holes, the other on the even-numbered ones.",
    source="22.3",
)
act_for_partner = choice(
    "act_for_partner",
    "If the player had done this, would it have been a breach?",
    {
        ActForPartner.ONE_STROKE: "yes, one costing one penalty stroke",
        ActForPartner.GENERAL: "yes, one costing the general penalty",
        ActForPartner.ALLOWED: "no: the player was allowed to do it",
    },
    help="Rule on the act first as if the player had done it; marking and lifting, for instance, is allowed.",
    source="23.5",
)
side_on_hole = choice(
    "side_on_hole",
    "How far is the side with the hole?",
    {
        SideOnHole.BOTH_DONE: "both partners holed out, or in a match had their next strokes conceded",
        SideOnHole.ONE_DONE_OTHER_STOPPED: "one did; the other will not play on, or has no score that can count",
        SideOnHole.ONE_STILL_PLAYING: "a partner whose score can count has still to play",
    },
    help="Ask the partner who has not holed out whether to play on.",
    source="23.3",
)
match_hole_decided = yes_no(
    "match_hole_decided",
    "Is the hole conceded, or its result decided already?",
    help="Decided: for instance, the other side's score is lower than this side could still make.",
    source="23.3",
)
out_for = choice(
    "out_for",
    "For what would the partner be disqualified?",
    {
        OutFor.HOLE_NOT_COMPLETED: "one hole: a mistake not corrected, such as a wrong ball",
        OutFor.SCORECARD: "the side's scorecard: a score that counts, its certification or return",
        OutFor.ANOTHER_RULE: "a breach of another Rule",
    },
    help="Rule on the breach itself first. Nobody is out who just did not hole out while the partner did (Rule 23.2a).",
    source="23.2, 23.9b",
    decided_by=DecidedBy.COMMITTEE,
)
partner_also_disqualified = yes_no(
    "partner_also_disqualified",
    "Is the partner disqualified under the same Rule as well?",
    help="For instance both late by more than five minutes. The partner may otherwise play for the side.",
    source="23.9b",
    decided_by=DecidedBy.COMMITTEE,
)
score_counts_for_side = yes_no(
    "score_counts_for_side",
    "Is it this partner's score that counts for the side on that hole?",
    help="The lower of the two; the partner's correct score may make it the other's.",
    source="23.2b(2)",
    decided_by=DecidedBy.COMMITTEE,
)
whose_turn_it_was = choice(
    "whose_turn_it_was",
    "Whose turn was it?",
    {
        TurnOf.OWN_SIDE: "the partner's",
        TurnOf.OTHER_SIDE: "that of a player of the other side",
    },
    help="Go by which ball of all was farthest from the hole, on the teeing area by the honour.",
    source="6.4, 23.6",
)
other_partner_completed = yes_no(
    "other_partner_completed",
    "Did the other partner complete that hole under the Rules?",
    help="Holed out with the right ball, every mistake corrected.",
    source="23.2a",
)
