"""Facts about Local Rules on caddies, practice, water on greens, pace of play, mobility (areas H to M)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class CaddieFault(Enum):
    """How the player's having or not having a caddie went against a Local Rule."""

    HAD_CADDIE = "had_caddie"
    HAD_BARRED_CADDIE = "had_barred_caddie"
    HAD_NO_CADDIE = "had_no_caddie"


class BadTime(Enum):
    """Which bad time of the round it is."""

    FIRST = "first"
    SECOND = "second"
    THIRD = "third"
    FOURTH_OR_LATER = "fourth_or_later"


class PolicyPenalty(Enum):
    """What the pace of play policy in force gives for this breach."""

    WARNING = "warning"
    ONE_STROKE = "one_stroke"
    GENERAL = "general"
    DISQUALIFICATION = "disqualification"


caddie_fault = choice(
    "caddie_fault",
    "What is held against the player about a caddie?",
    {
        CaddieFault.HAD_CADDIE: "the player had a caddie where none is allowed",
        CaddieFault.HAD_BARRED_CADDIE: "the player had a caddie of a kind that is not allowed (such as a parent)",
        CaddieFault.HAD_NO_CADDIE: "the player had no caddie where one is required",
    },
    help="A caddie carries, transports or handles the clubs, or is named as caddie by the player.",
    source="H-1",
)
within_practice_limits = yes_no(
    "within_practice_limits",
    "Was it within what the Local Rule allows (when, where and how)?",
    help="The Local Rule may forbid or allow all practice on the course, or allow some of it.",
    source="I-1.1, I-1.2",
    decided_by=DecidedBy.COMMITTEE,
)
practised_at_last_green = yes_no(
    "practised_at_last_green",
    "Was it on or near the putting green of the hole just completed?",
    help="Practice greens and the next teeing area are not meant.",
    source="I-2",
)
swept_on_green = yes_no(
    "swept_on_green",
    "Did the ball lie on the putting green, or just off it where the Committee lets the green be swept too?",
    help="Since 2023 the Local Rule may also cover a ball just off the green.",
    source="J-2",
)
swept_as_allowed = yes_no(
    "swept_as_allowed",
    "Was it done by a person the Local Rule names, across the line and a fair distance past the hole?",
    help="At least one width of the roller beyond the hole.",
    source="J-2",
)
water_line_improved = yes_no(
    "water_line_improved",
    "Was it done by or for the player, and did it improve the line of play?",
    help="What the greenkeepers do of themselves is no act of the player.",
    source="8.1a",
)
over_policy_time = yes_no(
    "over_policy_time",
    "Did the group take longer than the time limit that the Local Rule sets?",
    help="For the round, for a number of holes or at a checkpoint: read the Local Rule.",
    source="K-1, K-3, K-4",
    decided_by=DecidedBy.COMMITTEE,
)
behind_group_in_front = yes_no(
    "behind_group_in_front",
    "Was it also behind the group in front by more than the Local Rule allows?",
    help="In K-1: by more than the starting interval. For a first group only the time may count: then answer yes.",
    source="K-1, K-3, K-4",
    decided_by=DecidedBy.COMMITTEE,
)
delay_excused = yes_no(
    "delay_excused",
    "Does the Committee find that the delay was beyond the group's (or this player's) control?",
    help="Such as a long ruling, or another player of the group who alone held it up.",
    source="K-3, K-4",
    decided_by=DecidedBy.COMMITTEE,
)
told_of_timing = yes_no(
    "told_of_timing",
    "Was the group out of position, and had the player been told of being timed?",
    help="Ask the referee who timed.",
    source="K-2",
)
within_policy_time = yes_no(
    "within_policy_time",
    "Was the stroke made within the time that the policy allows?",
    help="Often 40 seconds, with 10 more for the first to play a par 3, an approach, a chip or a putt.",
    source="K-2",
)
bad_time_number = choice(
    "bad_time_number",
    "Which bad time of this player in the round is it?",
    {
        BadTime.FIRST: "the first",
        BadTime.SECOND: "the second",
        BadTime.THIRD: "the third",
        BadTime.FOURTH_OR_LATER: "the fourth or a later one",
    },
    help="Count those of the whole round, also from before the group caught up.",
    source="K-2, K-3, K-5",
    decided_by=DecidedBy.COMMITTEE,
)
told_of_earlier_bad_time = yes_no(
    "told_of_earlier_bad_time",
    "Is it the first bad time of the round, or had the player been told of the one before?",
    help="A further bad time does not count before the player knows of the earlier one.",
    source="K-2",
)
policy_penalty = choice(
    "policy_penalty",
    "What does the Local Rule as adopted give for this breach?",
    {
        PolicyPenalty.WARNING: "a warning only",
        PolicyPenalty.ONE_STROKE: "one penalty stroke",
        PolicyPenalty.GENERAL: "the general penalty",
        PolicyPenalty.DISQUALIFICATION: "disqualification",
    },
    help="Count earlier breaches of the round first; the Committee chooses the scale.",
    source="5.6b(3), K-1, K-3, K-4",
    decided_by=DecidedBy.COMMITTEE,
)
uses_wheeled_device = yes_no(
    "uses_wheeled_device",
    "Does the player use a wheeled mobility device?",
    help="A wheelchair, scooter or the like, not a cart that everybody may use.",
    source="M-1",
)
