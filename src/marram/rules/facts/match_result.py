"""Facts about who won a hole or a match (Rule 3.2a)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class MatchState(Enum):
    """How a hole or a match stands."""

    FEWER_STROKES = "fewer_strokes"
    SAME_STROKES = "same_strokes"
    HOLE_PENALTY = "hole_penalty"
    AGREED_TIED = "agreed_tied"
    LEADS_BY_MORE = "leads_by_more"
    OPPONENT_OUT = "opponent_out"
    LEVEL_AT_END = "level_at_end"


match_state = choice(
    "match_state",
    "How do the hole or the match stand?",
    {
        MatchState.FEWER_STROKES: "one player finished the hole in fewer strokes (net in a handicap match)",
        MatchState.SAME_STROKES: "both finished the hole in the same number of strokes",
        MatchState.HOLE_PENALTY: "one player has got the general penalty, which is loss of hole",
        MatchState.AGREED_TIED: "the players agreed to call a hole, the next strokes or the match tied",
        MatchState.LEADS_BY_MORE: "one player leads by more holes than remain",
        MatchState.OPPONENT_OUT: "one player has conceded the match or is disqualified",
        MatchState.LEVEL_AT_END: "the match is level after its last hole",
    },
    help="Strokes made and penalty strokes; a hole or a stroke conceded is an incident of its own.",
    source="3.2a",
)
hole_had_begun = yes_no(
    "hole_had_begun",
    "Had at least one of them made a stroke to begin the hole?",
    help="Before that a hole must not be called tied; it may be conceded.",
    source="3.2a(2)",
)
match_may_end_tied = yes_no(
    "match_may_end_tied",
    "Do the Terms of the Competition say that the match ends in a tie rather than being extended?",
    help="Common in team matches.",
    source="3.2a(4)",
    decided_by=DecidedBy.COMMITTEE,
)
