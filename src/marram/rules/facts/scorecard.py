"""Facts about the scorecard and about not holing out (Rule 3.3)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class HoleScore(Enum):
    """How a returned hole score differs from the actual one."""

    HIGHER = "higher"
    LOWER = "lower"
    NONE = "none"


class WhyTooLow(Enum):
    """Why the returned score was too low."""

    PENALTY_NOT_KNOWN = "penalty_not_known"
    PENALTY_DOUBTFUL = "penalty_doubtful"
    PENALTY_IS_DISQUALIFICATION = "penalty_is_disqualification"
    OTHER = "other"


class CardFault(Enum):
    """What is wrong with the scorecard, apart from hole scores."""

    PLAYER_DID_NOT_CERTIFY = "player_did_not_certify"
    MARKER_DID_NOT_CERTIFY = "marker_did_not_certify"
    NOT_RETURNED_PROMPTLY = "not_returned_promptly"
    CHANGED_WITHOUT_AGREEMENT = "changed_without_agreement"
    CHANGED_AFTER_RETURN = "changed_after_return"
    TOTAL_WRONG = "total_wrong"
    MARKER_KNEW_SCORE_WRONG = "marker_knew_score_wrong"
    FORM_ONLY = "form_only"


class HandicapShown(Enum):
    """What handicap the returned scorecard shows."""

    RIGHT = "right"
    NONE = "none"
    TOO_HIGH = "too_high"
    TOO_LOW = "too_low"


returned_score = choice(
    "returned_score",
    "How does the returned score for the hole differ from the actual one?",
    {
        HoleScore.HIGHER: "higher than the actual score",
        HoleScore.LOWER: "lower than the actual score",
        HoleScore.NONE: "no score was returned for the hole",
    },
    help="Gross scores; the card counts as returned when the player has left the place of return.",
    source="3.3b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
why_too_low = choice(
    "why_too_low",
    "Why was the returned score too low?",
    {
        WhyTooLow.PENALTY_NOT_KNOWN: "only penalty strokes were missing that the player did not know of",
        WhyTooLow.PENALTY_DOUBTFUL: "the player had been told of a possible penalty, or doubted, and did not ask",
        WhyTooLow.PENALTY_IS_DISQUALIFICATION: "a penalty of disqualification was left out that the player did not know of",
        WhyTooLow.OTHER: "any other reason, such as a forgotten stroke",
    },
    help="Ask what the player knew before returning the scorecard.",
    source="3.3b(3) Exception",
    decided_by=DecidedBy.COMMITTEE,
)
hole_result_affected = yes_no(
    "hole_result_affected",
    "Does the too low score change the points, the capped score or the result of the hole?",
    help="Stableford: the points. Maximum Score: below the maximum. Par/Bogey: won, tied or lost.",
    source="21.1b(2), 21.2b(2), 21.3b(2)",
    decided_by=DecidedBy.COMMITTEE,
)
competition_closed = yes_no(
    "competition_closed",
    "Had the competition closed?",
    help="It closes as the Terms of the Competition say, else when the result is final.",
    source="20.2e",
    decided_by=DecidedBy.COMMITTEE,
)
card_fault = choice(
    "card_fault",
    "What is wrong with the returned scorecard?",
    {
        CardFault.PLAYER_DID_NOT_CERTIFY: "the player did not certify the hole scores",
        CardFault.MARKER_DID_NOT_CERTIFY: "the marker did not certify the hole scores",
        CardFault.NOT_RETURNED_PROMPTLY: "it was not returned promptly",
        CardFault.CHANGED_WITHOUT_AGREEMENT: "the player changed a hole score without marker or Committee",
        CardFault.CHANGED_AFTER_RETURN: "the player changed it after returning it",
        CardFault.TOTAL_WRONG: "the total, the points or the net score are wrong",
        CardFault.MARKER_KNEW_SCORE_WRONG: "the marker knowingly certified a wrong hole score",
        CardFault.FORM_ONLY: "only its form: initials, signed in each other's place, an alteration not initialled",
    },
    help="In Foursomes and Four-Ball one of the partners certifies for the side.",
    source="3.3b",
    decided_by=DecidedBy.COMMITTEE,
)
marker_at_fault = yes_no(
    "marker_at_fault",
    "Does the Committee find that the marker's failure caused it, beyond the player's control?",
    help="For instance when the marker left with the card or refused without reason.",
    source="3.3b(2) Exception",
    decided_by=DecidedBy.COMMITTEE,
)
handicap_shown = choice(
    "handicap_shown",
    "What handicap does the returned scorecard show?",
    {
        HandicapShown.RIGHT: "the right one",
        HandicapShown.NONE: "none (in Foursomes: not that of each partner)",
        HandicapShown.TOO_HIGH: "one that is too high",
        HandicapShown.TOO_LOW: "one that is too low",
    },
    help="Compare with the handicap that applies under the Terms of the Competition.",
    source="3.3b(4)",
    decided_by=DecidedBy.COMMITTEE,
)
card_strokes_affected = yes_no(
    "card_strokes_affected",
    "Does the too high handicap give more handicap strokes than the right one?",
    help="Work out the strokes from both.",
    source="3.3b(4)",
    decided_by=DecidedBy.COMMITTEE,
)
