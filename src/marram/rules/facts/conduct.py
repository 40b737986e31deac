"""Facts about playing by the Rules: conduct, ignoring a Rule, who acted (Rule 1)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class CodePenalty(Enum):
    """What the Committee's Code of Conduct provides for the act."""

    NOT_COVERED = "not_covered"
    WARNING = "warning"
    ONE_STROKE = "one_stroke"
    GENERAL = "general"
    DISQUALIFICATION = "disqualification"


class ConductFinding(Enum):
    """What the Committee has found about an act under Rule 1.2a."""

    NOT_DECIDED = "not_decided"
    NO_DISQUALIFICATION = "no_disqualification"
    DISQUALIFIED = "disqualified"


class WhoIgnored(Enum):
    """How a Rule or penalty came to be ignored."""

    PLAYER_ALONE = "player_alone"
    BY_AGREEMENT = "by_agreement"
    OPPONENTS_BREACH = "opponents_breach"


class AgreementAtStart(Enum):
    """Whether an agreement to ignore a Rule still stood when somebody started."""

    NO = "no"
    YES = "yes"
    CALLED_OFF = "called_off"


class ActOfOther(Enum):
    """What the other person did."""

    MOVED_BALL = "moved_ball"
    IMPROVED_CONDITIONS = "improved_conditions"
    OTHER = "other"


class HowInvolved(Enum):
    """What the player had to do with another person's act."""

    REQUESTED = "requested"
    SAW_AND_LET_HAPPEN = "saw_and_let_happen"
    NEITHER = "neither"


code_penalty = choice(
    "code_penalty",
    "What does a Code of Conduct in force provide for this act, at this repetition?",
    {
        CodePenalty.NOT_COVERED: "no Code of Conduct, or it does not cover this act",
        CodePenalty.WARNING: "a warning or a sanction off the course",
        CodePenalty.ONE_STROKE: "one penalty stroke",
        CodePenalty.GENERAL: "the general penalty",
        CodePenalty.DISQUALIFICATION: "disqualification",
    },
    help="It counts only if adopted as a Local Rule; read its steps, and whether it covers caddies.",
    source="1.2b",
    decided_by=DecidedBy.COMMITTEE,
)
conduct_finding = choice(
    "conduct_finding",
    "What has the Committee found about the act?",
    {
        ConductFinding.NOT_DECIDED: "nothing yet: show what to weigh",
        ConductFinding.NO_DISQUALIFICATION: "no serious misconduct, or none that it disqualifies for",
        ConductFinding.DISQUALIFIED: "serious misconduct, and it disqualifies the player",
    },
    help="Only the Committee decides, with every circumstance before it; without a Code of Conduct there is nothing in between.",
    source="1.2a",
    decided_by=DecidedBy.COMMITTEE,
)
knew_it_applied = yes_no(
    "knew_it_applied",
    "Did the player, or all who agreed, know that the Rule or penalty applied?",
    help="Not knowing the Rule is no breach of 1.3b(1); the penalty of the Rule itself remains.",
    source="1.3b(1)",
    decided_by=DecidedBy.COMMITTEE,
)
who_ignored = choice(
    "who_ignored",
    "Who ignored it, and was it agreed?",
    {
        WhoIgnored.PLAYER_ALONE: "the player alone",
        WhoIgnored.BY_AGREEMENT: "two or more players agreed",
        WhoIgnored.OPPONENTS_BREACH: "a player let another's breach go, without any agreement",
    },
    help="An agreement counts even if nothing was done under it yet.",
    source="1.3b(1)",
    decided_by=DecidedBy.COMMITTEE,
)
someone_had_started = choice(
    "someone_had_started",
    "Had any of those players started the round with the agreement still standing?",
    {
        AgreementAtStart.YES: "yes",
        AgreementAtStart.CALLED_OFF: "yes, but the player asked about had called it off before and told the others",
        AgreementAtStart.NO: "no",
    },
    help="Before the start an agreement may still be called off; who held to it is disqualified all the same.",
    source="1.3b(1)",
    decided_by=DecidedBy.COMMITTEE,
)
how_involved = choice(
    "how_involved",
    "What had the player to do with the other person's act?",
    {
        HowInvolved.REQUESTED: "it was done at the player's request or with the player's authority",
        HowInvolved.SAW_AND_LET_HAPPEN: "the player saw it coming, knew it was a breach, and did not try to stop it",
        HowInvolved.NEITHER: "neither",
    },
    help="Here only persons other than the player, caddie and partner are meant.",
    source="1.3c(1)",
)
act_of_other = choice(
    "act_of_other",
    "What did that person do?",
    {
        ActOfOther.MOVED_BALL: "lifted, touched or moved the player's ball at rest",
        ActOfOther.IMPROVED_CONDITIONS: "improved the lie, stance, swing, line of play or relief area of the player",
        ActOfOther.OTHER: "something else",
    },
    help="Somebody who holds back or bends a branch improves the conditions.",
    source="1.3c(1)",
)
reasonable_judgement = yes_no(
    "reasonable_judgement",
    "Did the player do all that could be reasonably expected to make an accurate estimate?",
    help="A prompt, careful judgement with what was at hand; not the best that is possible.",
    source="1.3b(2)",
)
played_before_known_wrong = yes_no(
    "played_before_known_wrong",
    "Had the stroke been made before the estimate turned out wrong?",
    help="Before the stroke the player must put it right once it is known.",
    source="1.3b(2)",
)
