"""Facts about the ball as equipment and about other equipment (Rules 4.2 and 4.3)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class BallFault(Enum):
    """What was wrong with the ball played."""

    NOT_CONFORMING = "not_conforming"
    ALTERED = "altered"
    NOTHING = "nothing"


class LiftingFault(Enum):
    """What was wrong with lifting the ball to look at it."""

    NONE = "none"
    NO_REASON = "no_reason"
    NOT_MARKED = "not_marked"
    CLEANED = "cleaned"
    NO_REASON_AND_CLEANED = "no_reason_and_cleaned"
    NOT_MARKED_AND_MORE = "not_marked_and_more"


class BallDamage(Enum):
    """What could be seen of the ball's damage."""

    CUT_OR_CRACKED_ON_HOLE = "cut_or_cracked_on_hole"
    CUT_OR_CRACKED_BEFORE = "cut_or_cracked_before"
    SURFACE_ONLY = "surface_only"


class BallSetDown(Enum):
    """Which ball was set down, and whether it has been played."""

    ORIGINAL = "original"
    ANOTHER_NOT_PLAYED = "another_not_played"
    ANOTHER_PLAYED = "another_played"


class Equipment(Enum):
    """How equipment was used."""

    DISTANCE_OR_DIRECTION = "distance_or_direction"
    COMPASS = "compass"
    ELEVATION_OR_RECOMMENDATION = "elevation_or_recommendation"
    WEATHER_REPORT = "weather_report"
    WIND_MEASURED = "wind_measured"
    GRASS_TOSSED = "grass_tossed"
    EARLIER_INFORMATION = "earlier_information"
    ROUND_ANALYSED = "round_analysed"
    GREEN_MAP = "green_map"
    AUDIO_UNRELATED = "audio_unrelated"
    AUDIO_OR_VIDEO_HELP = "audio_or_video_help"
    PLAIN_GLOVE_OR_TOWEL = "plain_glove_or_towel"
    GRIP_AID = "grip_aid"
    STRETCHING = "stretching"
    SWING_AID = "swing_aid"
    MEDICAL = "medical"
    MEDICAL_TAPE = "medical_tape"
    ABNORMAL_STROKE = "abnormal_stroke"


ball_fault = choice(
    "ball_fault",
    "What was wrong with the ball?",
    {
        BallFault.NOT_CONFORMING: "it does not conform to the Equipment Rules",
        BallFault.ALTERED: "its performance was deliberately altered (scuffed, heated, a substance put on)",
        BallFault.NOTHING: "nothing: it was borrowed, or is of another brand or colour",
    },
    help="Look it up in the list of conforming balls; a Local Rule may ask for a ball on the list.",
    source="4.2a",
    decided_by=DecidedBy.COMMITTEE,
)
stroke_at_ball_counted = yes_no(
    "stroke_at_ball_counted",
    "Was a stroke that counts made at it?",
    help="A provisional ball that never came into play, or a cancelled stroke, does not count.",
    source="4.2a",
)
lifting_fault = choice(
    "lifting_fault",
    "Was the ball lifted as it should be?",
    {
        LiftingFault.NONE: "yes: with good reason, marked first and not cleaned",
        LiftingFault.NO_REASON: "no: it was marked, but there was no reason to believe it cut or cracked on this hole",
        LiftingFault.NOT_MARKED: "no: its spot was not marked first, but there was good reason, and it was not cleaned",
        LiftingFault.CLEANED: "no: with good reason and marked, but it was cleaned",
        LiftingFault.NO_REASON_AND_CLEANED: "no: it was marked, but there was no reason, and it was cleaned as well",
        LiftingFault.NOT_MARKED_AND_MORE: "no: its spot was not marked first, and there was no reason or it was cleaned as well",
    },
    help="On the putting green a marked ball may always be lifted and cleaned.",
    source="4.2c(1)",
)
ball_damage = choice(
    "ball_damage",
    "What can be clearly seen?",
    {
        BallDamage.CUT_OR_CRACKED_ON_HOLE: "a cut or crack that happened on this hole",
        BallDamage.CUT_OR_CRACKED_BEFORE: "a cut or crack from an earlier hole",
        BallDamage.SURFACE_ONLY: "only scratches, scrapes or damaged paint",
    },
    help="Look at the ball yourself if you can.",
    source="4.2c(2)",
)
ball_set_down = choice(
    "ball_set_down",
    "Which ball was put down, and has it been played?",
    {
        BallSetDown.ORIGINAL: "the original ball",
        BallSetDown.ANOTHER_NOT_PLAYED: "another ball, not played yet",
        BallSetDown.ANOTHER_PLAYED: "another ball, and it has been played",
    },
    help="Ask before the stroke, if there is still time.",
    source="4.2c(2), 6.3b",
)
equipment_use = choice(
    "equipment_use",
    "How was the equipment used?",
    {
        Equipment.DISTANCE_OR_DIRECTION: "distance device, for distance or direction only",
        Equipment.COMPASS: "a compass, for direction only",
        Equipment.ELEVATION_OR_RECOMMENDATION: "to measure height differences, or to be given a line of play or a club",
        Equipment.WEATHER_REPORT: "to get weather information from a forecast, or to measure temperature",
        Equipment.WIND_MEASURED: "to learn about the wind: a wind meter, or powder, a handkerchief or a ribbon to see it",
        Equipment.GRASS_TOSSED: "no equipment: grass or another natural object tossed to see the wind",
        Equipment.EARLIER_INFORMATION: "to look up information gathered before the round, or to record for later",
        Equipment.ROUND_ANALYSED: "to process playing information of this round, or body readings, for help in it",
        Equipment.GREEN_MAP: "a map or picture of the putting green to read the line of play on it",
        Equipment.AUDIO_UNRELATED: "sound or video that has nothing to do with the competition",
        Equipment.AUDIO_OR_VIDEO_HELP: "music against distraction or for tempo, or video to help play in this round",
        Equipment.PLAIN_GLOVE_OR_TOWEL: "on grip or hands: plain glove, resin or drying powder, towel or handkerchief",
        Equipment.GRIP_AID: "a glove or aid that fixes the hands or grip pressure, or does not conform",
        Equipment.STRETCHING: "for stretching, not in making a stroke",
        Equipment.SWING_AID: "a training or alignment aid, or a weight for swings",
        Equipment.MEDICAL: "for a medical reason (not tape)",
        Equipment.MEDICAL_TAPE: "tape or a similar covering worn for a medical reason",
        Equipment.ABNORMAL_STROKE: "in an abnormal way in making a stroke, such as a towel pressed under the arm",
    },
    help="Carrying such equipment is no breach; using it may be. A glove with lines to place the hands counts as plain.",
    source="4.3a",
)
green_map_within_limits = yes_no(
    "green_map_within_limits",
    "Is the material within the limits of size and scale?",
    help="Paper up to pocket size (4¼ by 7 in, 10.8 by 17.8 cm), scale at most 3/8 in to 5 yd (1:480), not enlarged.",
    source="Clarification 4.3a/1",
    decided_by=DecidedBy.COMMITTEE,
)
medical_use_accepted = yes_no(
    "medical_use_accepted",
    "Does the Committee find a medical reason and no unfair advantage?",
    help="The player should ask the Committee as soon as possible.",
    source="4.3b",
    decided_by=DecidedBy.COMMITTEE,
)
tape_not_excessive = yes_no(
    "tape_not_excessive",
    "Is it no more than needed: not applied excessively, and no greater help than the injury calls for?",
    help="For instance a taped finger or wrist; not what stiffens a joint for the swing.",
    source="4.3b(2)",
    decided_by=DecidedBy.COMMITTEE,
)
equipment_breach_again = yes_no(
    "equipment_breach_again",
    "Is it a second, separate breach of this Rule in the round, even if of another kind?",
    help="2019: not by the same or related acts. Since 2023: after a stroke or after learning of the first breach.",
    source="4.3 (2019: related acts; 2023: 1.3c(4), intervening event)",
)
