"""Facts about players with disabilities (Rule 25)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class BlindHelp(Enum):
    """What help a player who is blind received or what happened."""

    AIM_STANCE_ADVICE = "aim_stance_advice"
    OBJECT_REMOVED = "object_removed"
    OBJECT_LEFT = "object_left"
    AIDE_BEHIND = "aide_behind"
    SAND_TOUCHED = "sand_touched"
    LIFTED_ON_GREEN = "lifted_on_green"
    DROPPED_BY_OTHER = "dropped_by_other"
    SECOND_AIDE = "second_aide"
    AIDE_CARRIED_CLUBS = "aide_carried_clubs"
    HELD_DURING_STROKE = "held_during_stroke"


class AmputeeAct(Enum):
    """What a player who is an amputee did."""

    PROSTHESIS = "prosthesis"
    ANCHORED = "anchored"
    DROPPED_BY_OTHER = "dropped_by_other"
    REPLACED_WITH_EQUIPMENT = "replaced_with_equipment"


class DeviceAct(Enum):
    """What a player with an assistive mobility device did."""

    DEVICE_ITSELF = "device_itself"
    HELP_WITH_POSITION = "help_with_position"
    HELD_DURING_STROKE = "held_during_stroke"
    STANCE_WITH_DEVICE = "stance_with_device"
    STANCE_BUILT = "stance_built"
    ANCHORED = "anchored"
    DEVICE_ON_LINE = "device_on_line"
    SAND_TESTED = "sand_tested"
    SAND_TOUCHED = "sand_touched"
    BALL_MOVED_BY_DEVICE = "ball_moved_by_device"
    LIFTED_ON_GREEN = "lifted_on_green"
    DROPPED_BY_OTHER = "dropped_by_other"
    REPLACED_WITH_EQUIPMENT = "replaced_with_equipment"
    SECOND_AIDE = "second_aide"
    AIDE_CARRIED_CLUBS = "aide_carried_clubs"


class WheeledRelief(Enum):
    """Which relief a player with a wheeled mobility device takes."""

    LATERAL_RED_PENALTY_AREA = "lateral_red_penalty_area"
    LATERAL_UNPLAYABLE = "lateral_unplayable"
    OUT_OF_BUNKER = "out_of_bunker"


class AideAct(Enum):
    """What happened around a player with an intellectual disability."""

    ADVICE_AND_HELP = "advice_and_help"
    SUPERVISOR_HELPED = "supervisor_helped"
    LIFTED_ON_GREEN = "lifted_on_green"
    SECOND_AIDE = "second_aide"
    AIDE_CARRIED_CLUBS = "aide_carried_clubs"
    OBJECT_SET_DOWN = "object_set_down"


modifications_adopted = yes_no(
    "modifications_adopted",
    "Had the Committee adopted the modified Rules for players with disabilities?",
    help="Until 2022 they applied only where adopted as a Local Rule.",
    source="25.1",
    decided_by=DecidedBy.COMMITTEE,
)
player_eligible = yes_no(
    "player_eligible",
    "Is the player eligible in this category of disability?",
    help="By a recognised pass, or as the Committee decides (Committee Procedures, Section 5D).",
    source="25.1",
    decided_by=DecidedBy.COMMITTEE,
)
blind_help = choice(
    "blind_help",
    "What happened with the player who is blind?",
    {
        BlindHelp.AIM_STANCE_ADVICE: "an aide helped with stance or aim, or gave advice",
        BlindHelp.OBJECT_REMOVED: "an object was set down to help with aim or stance, and removed before the stroke",
        BlindHelp.OBJECT_LEFT: "an object was set down to help with aim or stance, and left there for the stroke",
        BlindHelp.AIDE_BEHIND: "aide or caddie stood on or near the line behind the ball during the stroke",
        BlindHelp.SAND_TOUCHED: "the club touched sand in a bunker in front of or behind the ball or in the backswing",
        BlindHelp.LIFTED_ON_GREEN: "the aide lifted the ball on the putting green without being asked",
        BlindHelp.DROPPED_BY_OTHER: "another person with a general authorization dropped or replaced the ball",
        BlindHelp.SECOND_AIDE: "the player had more than one aide at a time",
        BlindHelp.AIDE_CARRIED_CLUBS: "beside a caddie, the aide carried or handled the clubs",
        BlindHelp.HELD_DURING_STROKE: "somebody held or steadied the player while the stroke was made",
    },
    help="An aide may be the caddie as well, or there may be one of each.",
    source="25.2",
)
behind_helped_during_stroke = yes_no(
    "behind_helped_during_stroke",
    "Did the person behind help the player in making the stroke itself?",
    help="Standing there is allowed so long as there is no help during the stroke.",
    source="25.2d",
)
sand_tested_or_improved = yes_no(
    "sand_tested_or_improved",
    "Did it test the sand deliberately or improve the conditions affecting the stroke?",
    help="Grounding the club is allowed for this player, but neither testing nor improving.",
    source="25.2f",
)
amputee_act = choice(
    "amputee_act",
    "What did the player who is an amputee do?",
    {
        AmputeeAct.PROSTHESIS: "used an artificial arm or leg",
        AmputeeAct.ANCHORED: "made a stroke while anchoring the club",
        AmputeeAct.DROPPED_BY_OTHER: "let another person with a general authorization drop or replace the ball",
        AmputeeAct.REPLACED_WITH_EQUIPMENT: "replaced the ball by rolling it with a club",
    },
    help="Both missing and incomplete limbs count.",
    source="25.3",
)
device_accepted = yes_no(
    "device_accepted",
    "Is there a medical reason, and does the Committee find no unfair advantage?",
    help="The player should ask the Committee beforehand.",
    source="25.3a, 25.4f",
    decided_by=DecidedBy.COMMITTEE,
)
cannot_swing_without_anchoring = yes_no(
    "cannot_swing_without_anchoring",
    "Is the player unable to hold and swing most clubs without anchoring?",
    help="Because of the limb or the mobility device.",
    source="25.3b, 25.4h",
    decided_by=DecidedBy.COMMITTEE,
)
device_act = choice(
    "device_act",
    "What happened with the assistive mobility device?",
    {
        DeviceAct.DEVICE_ITSELF: "it is asked whether the player may use this device at all",
        DeviceAct.HELD_DURING_STROKE: "somebody held or steadied the player or the device while the stroke was made",
        DeviceAct.HELP_WITH_POSITION: "someone helped to position the player or the device before the stroke",
        DeviceAct.STANCE_WITH_DEVICE: "the device was placed firmly, digging in only reasonably",
        DeviceAct.STANCE_BUILT: "ground was built up so that the device would not slip",
        DeviceAct.ANCHORED: "the club was anchored in making a stroke",
        DeviceAct.DEVICE_ON_LINE: "the device stood on purpose across or on the line of play behind the ball",
        DeviceAct.SAND_TESTED: "bunker sand was tested on purpose with the device",
        DeviceAct.SAND_TOUCHED: "the device touched bunker sand for another purpose",
        DeviceAct.BALL_MOVED_BY_DEVICE: "the device moved the ball at rest",
        DeviceAct.LIFTED_ON_GREEN: "the aide lifted the ball on the putting green without being asked",
        DeviceAct.DROPPED_BY_OTHER: "another person with a general authorization dropped or replaced the ball",
        DeviceAct.REPLACED_WITH_EQUIPMENT: "the ball was replaced with a club or another piece of equipment",
        DeviceAct.SECOND_AIDE: "the player had more than one aide at a time",
        DeviceAct.AIDE_CARRIED_CLUBS: "beside a caddie, the aide carried or handled the clubs",
    },
    help="Canes, crutches, wheelchairs and other wheeled devices.",
    source="25.4",
)
wheeled_relief = choice(
    "wheeled_relief",
    "Which relief does the player with a wheeled mobility device want?",
    {
        WheeledRelief.LATERAL_RED_PENALTY_AREA: "lateral relief from a red penalty area",
        WheeledRelief.LATERAL_UNPLAYABLE: "lateral relief for an unplayable ball outside bunkers",
        WheeledRelief.OUT_OF_BUNKER: "back on the line out of a bunker, unplayable ball",
    },
    help="Only wheelchairs and other wheeled devices.",
    source="25.4m, 25.4n",
)
aide_act = choice(
    "aide_act",
    "What happened with the player with an intellectual disability?",
    {
        AideAct.ADVICE_AND_HELP: "an aide gave advice or help",
        AideAct.SUPERVISOR_HELPED: "a supervisor (who watches over several players) helped",
        AideAct.LIFTED_ON_GREEN: "the aide lifted the ball on the putting green without being asked",
        AideAct.SECOND_AIDE: "the player had more than one aide at a time",
        AideAct.AIDE_CARRIED_CLUBS: "beside a caddie, the aide carried or handled the clubs",
        AideAct.OBJECT_SET_DOWN: "the aide set an object down to help with aim, stance or swing",
    },
    help="The Committee says who has an aide and what a supervisor may do.",
    source="25.5",
)
supervisor_gave_advice = yes_no(
    "supervisor_gave_advice",
    "Did the supervisor give advice, at the player's request?",
    help="A supervisor is nobody's aide, counts as an outside influence, and may not be asked for advice.",
    source="25.5a",
)
handled_clubs_as_courtesy = yes_no(
    "handled_clubs_as_courtesy",
    "Was it only holding a club to help with stance or alignment, or another courtesy?",
    help="That much is allowed; carrying clubs makes the aide a second caddie.",
    source="25.2e, 25.4j, 25.5c",
)
drop_effort_reasonable = yes_no(
    "drop_effort_reasonable",
    "Does the player reasonably judge that it was from knee height, or was every reasonable effort made?",
    help="Take the player's physical limitations into account; the Committee should accept both.",
    source="25.6b",
    decided_by=DecidedBy.COMMITTEE,
)
