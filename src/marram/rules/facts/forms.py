"""Facts about other forms of play and partners (Rules 21 to 23)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class Maximum(Enum):
    """How the Committee set the maximum for a hole."""

    FIXED = "fixed"
    MULTIPLE_OF_PAR = "multiple_of_par"
    NET_DOUBLE_BOGEY = "net_double_bogey"


class Uncorrected(Enum):
    """A mistake that was not corrected in time."""

    HOLING_OUT = "holing_out"
    TEEING_AREA = "teeing_area"
    WRONG_BALL = "wrong_ball"
    WRONG_PLACE = "wrong_place"
    WRONG_ORDER = "wrong_order"


class Cancelled(Enum):
    """In Three-Ball, in which matches the stroke was cancelled."""

    NEITHER = "neither"
    ONE = "one"
    BOTH = "both"


class Completed(Enum):
    """How many partners completed the hole."""

    BOTH = "both"
    ONE = "one"
    NEITHER = "neither"


class LastInPlay(Enum):
    """In a match without a ball holed, whose player was last to pick up or go out of the hole."""

    THIS_SIDE = "this_side"
    OTHER_SIDE = "other_side"
    NOT_KNOWN = "not_known"


class OtherSide(Enum):
    """How a hole of a match ended for the other side."""

    COMPLETED = "completed"
    CONCEDED_OR_LOST = "conceded_or_lost"
    NO_BALL_EITHER = "no_ball_either"


class SideBreach(Enum):
    """Which breach one partner of a Four-Ball side made."""

    CLUBS = "clubs"
    WRONG_BALL = "wrong_ball"
    ONE_STROKE = "one_stroke"
    GENERAL = "general"


class WhomElse(Enum):
    """Whom else the breach of one partner concerned."""

    HELPED_PARTNER = "helped_partner"
    HURT_OPPONENT = "hurt_opponent"
    NEITHER = "neither"


class SideCard(Enum):
    """What is wrong with a Four-Ball scorecard."""

    NOT_IDENTIFIED = "not_identified"
    OTHER_NOT_IDENTIFIED = "other_not_identified"
    SCORE_THAT_COUNTS_TOO_LOW = "score_that_counts_too_low"
    SCORE_THAT_COUNTS_TOO_HIGH = "score_that_counts_too_high"
    OTHER_SCORE_WRONG = "other_score_wrong"
    BOTH_SCORES_ENTERED = "both_scores_entered"
    ONE_PARTNER_CERTIFIED = "one_partner_certified"


class Arrived(Enum):
    """When an absent partner came."""

    BETWEEN_HOLES = "between_holes"
    DURING_HOLE = "during_hole"
    NOT_AT_ALL = "not_at_all"


strokes_over_target = number(
    "strokes_over_target",
    "By how many strokes was the hole over the fixed target score (under it: a negative number)?",
    help="Strokes made and penalty strokes, less handicap strokes, minus the target (par unless set otherwise).",
    source="21.1b(1)",
    unit="strokes",
    decided_by=DecidedBy.COMMITTEE,
    minimum=-10,
)
holed_out = yes_no(
    "holed_out",
    "Did the player hole out under the Rules?",
    help="Picking up, or a mistake not corrected in time, is not holing out.",
    source="21.1b(1), 21.2b(1), 21.3b(1)",
)
maximum_set_as = choice(
    "maximum_set_as",
    "How has the Committee set the maximum for a hole?",
    {
        Maximum.FIXED: "a fixed number of strokes",
        Maximum.MULTIPLE_OF_PAR: "a multiple of par",
        Maximum.NET_DOUBLE_BOGEY: "net double bogey",
    },
    help="See the Terms of the Competition.",
    source="21.2a",
    decided_by=DecidedBy.COMMITTEE,
)
maximum_reached = yes_no(
    "maximum_reached",
    "Was the score for the hole, with penalty strokes, the maximum or more?",
    help="Count strokes and penalty strokes.",
    source="21.2b(1)",
)
uncorrected_mistake = choice(
    "uncorrected_mistake",
    "Which mistake was not corrected in time?",
    {
        Uncorrected.HOLING_OUT: "the hole was not holed out",
        Uncorrected.TEEING_AREA: "the hole was begun from outside the teeing area",
        Uncorrected.WRONG_BALL: "a wrong ball was played",
        Uncorrected.WRONG_PLACE: "a ball was played from a wrong place, a serious breach",
        Uncorrected.WRONG_ORDER: "in Foursomes a stroke was made in the wrong order",
    },
    help="In time: before beginning another hole; on the last hole, before returning the scorecard.",
    source="3.3c, 6.1b(2), 6.3c, 14.7b, 22.3",
    decided_by=DecidedBy.COMMITTEE,
)
could_still_score = yes_no(
    "could_still_score",
    "Could the player still have scored on the hole, with the ball in motion or with a later stroke?",
    help="Score: earn a point, stay below the maximum, or tie the hole. A ball plainly missing the hole cannot.",
    source="21.1d, 21.2d, 21.3d",
)
cancelled_in = choice(
    "cancelled_in",
    "In which of the two matches was the stroke out of turn cancelled?",
    {
        Cancelled.NEITHER: "in neither",
        Cancelled.ONE: "in one of them",
        Cancelled.BOTH: "in both",
    },
    help="Only the opponent who should have played may cancel, promptly.",
    source="21.4b",
)
partners_completed = choice(
    "partners_completed",
    "How many of the partners holed out or otherwise completed the hole under the Rules?",
    {
        Completed.BOTH: "both",
        Completed.ONE: "one",
        Completed.NEITHER: "neither",
    },
    help="Ask both; a wrong ball not corrected does not complete the hole.",
    source="23.2a",
)
other_side_on_hole = choice(
    "other_side_on_hole",
    "How did the hole end for the other side?",
    {
        OtherSide.COMPLETED: "a player of that side completed it",
        OtherSide.CONCEDED_OR_LOST: "that side had already conceded or otherwise lost it",
        OtherSide.NO_BALL_EITHER: "no player of that side completed it either",
    },
    help="A ball holed after a wrong ball not corrected does not complete the hole.",
    source="23.2a",
)
last_in_play = choice(
    "last_in_play",
    "Neither side holed a ball: whose player was last to pick up or to be out of the hole?",
    {
        LastInPlay.THIS_SIDE: "a player of this side",
        LastInPlay.OTHER_SIDE: "a player of the other side",
        LastInPlay.NOT_KNOWN: "it cannot be established",
    },
    help="Ask all four players for the order.",
    source="Clarification 23.2a/1",
    decided_by=DecidedBy.COMMITTEE,
)
side_breach = choice(
    "side_breach",
    "What penalty did the one partner get?",
    {
        SideBreach.CLUBS: "for too many, shared, added or replaced clubs (Rule 4.1b)",
        SideBreach.WRONG_BALL: "the general penalty for a wrong ball (Rule 6.3c)",
        SideBreach.ONE_STROKE: "one penalty stroke for another breach",
        SideBreach.GENERAL: "the general penalty for another breach",
    },
    help="First rule on the breach itself, then here on whom it falls.",
    source="23.9a",
)
whom_else = choice(
    "whom_else",
    "Did the breach help the partner's play, or hurt an opponent's?",
    {
        WhomElse.HELPED_PARTNER: "it helped the partner's play",
        WhomElse.HURT_OPPONENT: "it hurt an opponent's play",
        WhomElse.NEITHER: "neither",
    },
    help="For instance sand brushed from a line of play that the partner shares.",
    source="23.9a(2)",
)
side_card = choice(
    "side_card",
    "What is wrong with the side's scorecard?",
    {
        SideCard.NOT_IDENTIFIED: "on a hole no score shows which partner made it",
        SideCard.OTHER_NOT_IDENTIFIED: "on a hole one partner's score stands and shows whose it is; the other's is missing or does not",
        SideCard.SCORE_THAT_COUNTS_TOO_LOW: "the score that counts for the side on a hole is too low",
        SideCard.SCORE_THAT_COUNTS_TOO_HIGH: "the score that counts for the side on a hole is too high",
        SideCard.OTHER_SCORE_WRONG: "only a score that does not count for the side is wrong",
        SideCard.BOTH_SCORES_ENTERED: "the scores of both partners stand on it",
        SideCard.ONE_PARTNER_CERTIFIED: "only one of the partners has certified it",
    },
    help="Look which partner's score counts on each hole.",
    source="23.2b",
    decided_by=DecidedBy.COMMITTEE,
)
arrived = choice(
    "arrived",
    "When did the absent partner arrive?",
    {
        Arrived.BETWEEN_HOLES: "between two holes",
        Arrived.DURING_HOLE: "after the hole had begun",
        Arrived.NOT_AT_ALL: "not at all: one partner played alone",
    },
    help="Match: once any player in the match has begun it. Stroke play: once the partner has.",
    source="23.4",
)
played_the_hole = yes_no(
    "played_the_hole",
    "Did that partner make a stroke on the hole?",
    help="Advice and help are allowed.",
    source="23.4",
)
both_partners_present = yes_no(
    "both_partners_present",
    "At the starting time, was the first to play ready, and the partner there or near the landing place?",
    help="The partner may wait on the hole near where the tee shot is expected to come to rest.",
    source="22.4",
)
play_helped_partner = yes_no(
    "play_helped_partner",
    "Could playing on after the concession help the partner, for instance by showing the line?",
    help="Did the partner still have to play, from a similar line?",
    source="23.6 Exception",
)
stood_to_learn_line = yes_no(
    "stood_to_learn_line",
    "Did the player stand on or near the line behind the partner's ball to learn something for the next stroke?",
    help="While the partner made the stroke, for instance to watch the roll of the putt.",
    source="22.6, 23.8",
)
