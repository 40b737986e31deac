"""Facts about the putting green: repairs, testing, wrong greens, a ball at the hole (Rules 13.1 and 13.3)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class GreenDamage(Enum):
    """What the mark on the putting green comes from."""

    PERSON_OR_OUTSIDE_INFLUENCE = "person_or_outside_influence"
    NORMAL_MAINTENANCE = "normal_maintenance"
    NATURAL_FORCES = "natural_forces"
    NATURAL_IMPERFECTION = "natural_imperfection"
    WEAR_OF_HOLE = "wear_of_hole"


class GreenTest(Enum):
    """What was done to the surface."""

    RUBBED = "rubbed"
    ROLLED_BALL = "rolled_ball"
    OTHERWISE = "otherwise"


class TestedGreen(Enum):
    """Which green, and when."""

    JUST_COMPLETED = "just_completed"
    PRACTICE_GREEN = "practice_green"
    ANY_OTHER = "any_other"
    OUTSIDE_ROUND = "outside_round"


class WrongGreenInterference(Enum):
    """How a wrong green interferes."""

    BALL_ON_IT = "ball_on_it"
    STANCE_ONLY = "stance_only"
    SWING = "swing"
    NONE = "none"


class Overhang(Enum):
    """What became of the ball overhanging the hole."""

    FELL_IN = "fell_in"
    FELL_IN_AFTER_REPLACING = "fell_in_after_replacing"
    STAYED = "stayed"
    LIFTED_OR_MOVED = "lifted_or_moved"


class OverhangMover(Enum):
    """Who lifted or moved the ball overhanging the hole before the waiting time was over."""

    OWN_SIDE = "own_side"
    OTHER_PLAYER_ON_PURPOSE = "other_player_on_purpose"
    OTHER_PLAYER_BY_ACCIDENT = "other_player_by_accident"
    OUTSIDE_INFLUENCE = "outside_influence"


mark_on_green = choice(
    "mark_on_green",
    "What does the mark on the putting green come from?",
    {
        GreenDamage.PERSON_OR_OUTSIDE_INFLUENCE: "a person, animal, ball, shoe, club, flagstick, machine, old plug, embedded thing or hail",
        GreenDamage.NORMAL_MAINTENANCE: "normal upkeep, such as aeration holes or cutting grooves",
        GreenDamage.NATURAL_FORCES: "watering, rain or other natural forces",
        GreenDamage.NATURAL_IMPERFECTION: "weeds, bare, diseased or uneven growth",
        GreenDamage.WEAR_OF_HOLE: "natural wear of the hole (an edge torn by flagstick, foot or ball is the first answer)",
    },
    help="Who caused it does not matter; the player's own spike marks count. A mark partly off the green: see 8.1b/7.",
    source="13.1c(2), Clarification 8.1b/7",
)
repair_within_limits = yes_no(
    "repair_within_limits",
    "Did the repair only restore the green, with hand, foot, a normal tool, tee, club or the like?",
    help="Building a path to the hole, or using a tool that is not normal equipment, goes too far.",
    source="13.1c(2)",
)
green_improved = yes_no(
    "green_improved",
    "Did it improve the conditions affecting the stroke?",
    help="Look at the line of play in the first place.",
    source="8.1a",
)
repair_delayed_play = yes_no(
    "repair_delayed_play",
    "Did the repairing delay play unreasonably?",
    help="A repair is made promptly; tapping down dozens of marks delays play.",
    source="13.1c(2), 5.6a",
)
green_test = choice(
    "green_test",
    "What was done on the surface of the green?",
    {
        GreenTest.RUBBED: "the surface was rubbed",
        GreenTest.ROLLED_BALL: "a ball was rolled",
        GreenTest.OTHERWISE: "something else",
    },
    help="Looking, walking and practising the swing are something else.",
    source="13.1e",
)
meant_to_test = yes_no(
    "meant_to_test",
    "Was it done deliberately to test the green?",
    help="Cleaning a ball on the grass, or pushing a conceded ball back, is not a test.",
    source="13.1e",
)
tested_green = choice(
    "tested_green",
    "Which green was it, and when?",
    {
        TestedGreen.JUST_COMPLETED: "the green of the hole just completed, between two holes",
        TestedGreen.PRACTICE_GREEN: "a practice green, between two holes",
        TestedGreen.ANY_OTHER: "any other green during the round, or during the play of a hole",
        TestedGreen.OUTSIDE_ROUND: "any green before the round, or between rounds of the competition",
    },
    help="Between two holes: the hole is completed and the next not yet begun.",
    source="13.1e Exception",
)
wrong_green_interference = choice(
    "wrong_green_interference",
    "How does the wrong green interfere?",
    {
        WrongGreenInterference.BALL_ON_IT: "the ball touches it",
        WrongGreenInterference.STANCE_ONLY: "only the intended stance is on it",
        WrongGreenInterference.SWING: "the intended swing is affected by it",
        WrongGreenInterference.NONE: "in none of these ways, such as on the line of play only",
    },
    help="A wrong green is any green other than that of the hole being played; practice greens count.",
    source="13.1f(1)",
    decided_by=DecidedBy.MAP,
)
played_despite_wrong_green = yes_no(
    "played_despite_wrong_green",
    "Has the ball been played with that interference, without taking relief?",
    help="From the wrong green, or standing or swinging over it.",
    source="13.1f(2), 14.7a",
)
overhang = choice(
    "overhang",
    "What became of the ball overhanging the hole?",
    {
        Overhang.FELL_IN: "it fell in before anybody touched it",
        Overhang.FELL_IN_AFTER_REPLACING: "it had been lifted and replaced on the lip, and then fell in",
        Overhang.STAYED: "it stayed there",
        Overhang.LIFTED_OR_MOVED: "it was lifted or moved before the waiting time was over",
    },
    help="The ball overhangs if any part of it is over the lip.",
    source="13.3",
)
seconds_at_hole = number(
    "seconds_at_hole",
    "How many seconds after the player reached the hole did the ball fall?",
    help="Count from when the player reached the hole, or should have reached it in a reasonable time.",
    source="13.3a",
    unit="seconds",
)
overhang_mover = choice(
    "overhang_mover",
    "Who lifted or moved the ball before the waiting time was over?",
    {
        OverhangMover.OWN_SIDE: "the player, the partner or a caddie of theirs",
        OverhangMover.OTHER_PLAYER_ON_PURPOSE: "the opponent or another player, deliberately",
        OverhangMover.OTHER_PLAYER_BY_ACCIDENT: "the opponent or another player, by accident",
        OverhangMover.OUTSIDE_INFLUENCE: "an outside influence",
    },
    help="A caddie's act counts as the player's.",
    source="13.3b",
)
own_side_lift_allowed = yes_no(
    "own_side_lift_allowed",
    "Was it moved by accident, or marked before it was lifted?",
    help="On the putting green a ball may be lifted at any time, but its spot must be marked first.",
    source="13.1b, 13.1d(1), 14.1a",
)
