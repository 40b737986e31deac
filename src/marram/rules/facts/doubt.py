"""Facts about rulings: requests, two balls, wrong rulings (Rule 20)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class IssueFrom(Enum):
    """Where in the match the question arose."""

    THIS_HOLE = "this_hole"
    EARLIER_HOLE = "earlier_hole"


class BallResult(Enum):
    """What the Committee finds about the procedure used for one of two balls."""

    ALLOWED = "allowed"
    NOT_ALLOWED = "not_allowed"
    SERIOUS_BREACH = "serious_breach"


class RulingFault(Enum):
    """What kind of mistake the referee or Committee made."""

    WRONG_RULING = "wrong_ruling"
    INSTRUCTION_MISUNDERSTOOD = "instruction_misunderstood"
    ADMINISTRATIVE = "administrative"


class LateBreach(Enum):
    """What came to light after the result was final."""

    MISCONDUCT_OR_AGREEMENT = "misconduct_or_agreement"
    SCORE_TOO_LOW = "score_too_low"
    KNOWN_DISQUALIFICATION = "known_disqualification"
    HANDICAP_TOO_HIGH = "handicap_too_high"
    OTHER = "other"


result_final = yes_no(
    "result_final",
    "Is the result of the match final?",
    help="It is when reported in the way the Committee has laid down.",
    source="3.2a(5)",
    decided_by=DecidedBy.COMMITTEE,
)
issue_from = choice(
    "issue_from",
    "About which hole does the player ask?",
    {
        IssueFrom.THIS_HOLE: "the hole being played or just completed",
        IssueFrom.EARLIER_HOLE: "an earlier hole",
    },
    help="A question about a hole must normally be raised before anyone begins another one.",
    source="20.1b(2)",
)
asked_in_time = yes_no(
    "asked_in_time",
    "Once aware of the facts, did the player ask before anyone began another hole?",
    help="Aware during or after the last hole: before the result is final. The opponent must have been told.",
    source="20.1b(2)",
)
opponent_misinformed = yes_no(
    "opponent_misinformed",
    "Had the opponent given a wrong number of strokes, or not told of a penalty?",
    help="Rule 3.2d(1) or 3.2d(2).",
    source="20.1b(2)",
)
facts_came_to_light_later = yes_no(
    "facts_came_to_light_later",
    "Did the facts only come to the player's notice later (after the hole, or the match, had ended)?",
    help="What counts is when the facts were known, not when the player learnt the Rule.",
    source="20.1b(2), 20.1b(3)",
)
opponent_knew_breach = yes_no(
    "opponent_knew_breach",
    "Did the opponent know of that breach before the result was final?",
    help="Weigh the evidence.",
    source="20.1b(3)",
    decided_by=DecidedBy.COMMITTEE,
)
opponent_objected = yes_no(
    "opponent_objected",
    "Did the opponent object and ask for a ruling in time?",
    help="Before either player began another hole.",
    source="20.1b(4), Clarification 20.1b(4)/1",
)
decided_before_stroke = yes_no(
    "decided_before_stroke",
    "Did the player decide to play two balls before making a stroke in the doubtful situation?",
    help="The doubt must come first, then the decision, then the strokes.",
    source="20.1c(3)",
)
chosen_ball = choice(
    "chosen_ball",
    "Take the ball named to count before a stroke at either (none named: the one played first). Was what was done with it allowed?",
    {
        BallResult.ALLOWED: "allowed",
        BallResult.NOT_ALLOWED: "not allowed, but no serious breach",
        BallResult.SERIOUS_BREACH: "played from a wrong place with a serious breach",
    },
    help="Find out which ball the player named, and how each was played.",
    source="20.1c(4)",
    decided_by=DecidedBy.COMMITTEE,
)
other_ball = choice(
    "other_ball",
    "Was what was done with the other of the two balls allowed?",
    {
        BallResult.ALLOWED: "allowed",
        BallResult.NOT_ALLOWED: "not allowed, but no serious breach",
        BallResult.SERIOUS_BREACH: "played from a wrong place with a serious breach",
    },
    help="Find out how it was played.",
    source="20.1c(4)",
    decided_by=DecidedBy.COMMITTEE,
)
counting_ball_holed = yes_no(
    "counting_ball_holed",
    "Is the ball whose score counts the one that was holed out?",
    help="The chosen ball, if its procedure was allowed; else the other, if its was; else the chosen, unless in serious breach.",
    source="20.1c(3), 3.3c",
    decided_by=DecidedBy.COMMITTEE,
)
referee_assigned = yes_no(
    "referee_assigned",
    "Is a referee assigned to the match, and did the referee learn of the matter in time?",
    help="A referee for a whole area of the course, who was not called, is not assigned to the match.",
    source="20.1b(1)",
)
visible_to_naked_eye = yes_no(
    "visible_to_naked_eye",
    "Could the facts that the video shows have been seen with the naked eye?",
    help="By anybody standing there, without slow motion or enlargement, whether or not anybody looked.",
    source="20.2c",
    decided_by=DecidedBy.COMMITTEE,
)
player_aware_of_facts = yes_no(
    "player_aware_of_facts",
    "Was the player aware of those facts anyway?",
    help="For example felt the club touch the sand. What counts is the facts, not whether the Rule was known.",
    source="20.2c",
    decided_by=DecidedBy.COMMITTEE,
)
agreed_in_good_faith = yes_no(
    "agreed_in_good_faith",
    "Did the players decide it in good faith, ignoring no Rule or penalty they knew applied?",
    help="A mistake is allowed; waiving is not.",
    source="20.1b(1)",
)
referee_refers = yes_no(
    "referee_refers",
    "Does the referee agree to have a second opinion?",
    help="The referee may also ask for one unasked.",
    source="20.2a",
)
ruling_fault = choice(
    "ruling_fault",
    "What kind of mistake did the referee or the Committee make?",
    {
        RulingFault.WRONG_RULING: "a player was told a wrong ruling, or a penalty was given or left out wrongly",
        RulingFault.INSTRUCTION_MISUNDERSTOOD: "the player reasonably misunderstood an instruction and breached a Rule",
        RulingFault.ADMINISTRATIVE: "no ruling: a mistake in running the competition (adding up, a tie, a handicap, the draw)",
    },
    help="A wrong ruling is an attempt to apply the Rules; the rest is administration.",
    source="20.2d",
    decided_by=DecidedBy.COMMITTEE,
)
ruling_can_be_corrected = yes_no(
    "ruling_can_be_corrected",
    "Can the ruling still be corrected under the Rules?",
    help="Stroke play: before the competition closes. Match: see Committee Procedures, Section 6C.",
    source="20.2d(1)",
    decided_by=DecidedBy.COMMITTEE,
)
late_breach = choice(
    "late_breach",
    "What came to light after the result was final or the competition closed?",
    {
        LateBreach.MISCONDUCT_OR_AGREEMENT: "serious misconduct, or knowingly ignoring a Rule or penalty",
        LateBreach.SCORE_TOO_LOW: "a returned hole score too low, for more than penalties not known of",
        LateBreach.KNOWN_DISQUALIFICATION: "a breach with disqualification that the player knew of before closing",
        LateBreach.HANDICAP_TOO_HIGH: "a handicap on the card known to be too high, affecting the strokes received",
        LateBreach.OTHER: "any other breach or penalty",
    },
    help="Establish what the player knew, and when.",
    source="20.2e",
    decided_by=DecidedBy.COMMITTEE,
)
