"""Facts about relief: what interferes, with what, and where relief is to be found."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class Interference(Enum):
    """What an abnormal course condition interferes with (Rule 16.1a)."""

    BALL = "ball"
    BALL_ABOVE_GROUND = "ball_above_ground"
    STANCE_OR_SWING = "stance_or_swing"
    LINE_OF_PLAY = "line_of_play"
    NONE = "none"
    OUT_OF_BOUNDS_ONLY = "out_of_bounds_only"


class InTheWay(Enum):
    """What it is that interferes: one of the abnormal course conditions, or what is taken for one."""

    ANIMAL_HOLE = "animal_hole"
    GROUND_UNDER_REPAIR = "ground_under_repair"
    IMMOVABLE_OBSTRUCTION = "immovable_obstruction"
    TEMPORARY_WATER = "temporary_water"
    TWO_CONDITIONS = "two_conditions"
    ANIMAL_TRACK = "animal_track"
    UNMARKED_GROUND = "unmarked_ground"
    WATER_OF_PENALTY_AREA = "water_of_penalty_area"
    MOVABLE_OBSTRUCTION = "movable_obstruction"
    BOUNDARY_OR_INTEGRAL_OBJECT = "boundary_or_integral_object"
    NATURAL_OBJECT = "natural_object"


ABNORMAL_COURSE_CONDITIONS = (
    InTheWay.ANIMAL_HOLE,
    InTheWay.GROUND_UNDER_REPAIR,
    InTheWay.IMMOVABLE_OBSTRUCTION,
    InTheWay.TEMPORARY_WATER,
    InTheWay.TWO_CONDITIONS,
)
"""The four that Rule 16.1 gives relief from (Definitions: abnormal course condition)."""


class ZoneInterference(Enum):
    """What a no play zone interferes with."""

    BALL_INSIDE = "ball_inside"
    STANCE_OR_SWING = "stance_or_swing"
    NONE = "none"


class Animal(Enum):
    """What animal, or other danger, is near the ball."""

    DANGEROUS = "dangerous"
    HARMLESS = "harmless"
    NOT_AN_ANIMAL = "not_an_animal"


class ConditionFound(Enum):
    """What lifting the ball to look at its lie showed (Rule 16.4)."""

    NONE = "none"
    EMBEDDED = "embedded"
    ABNORMAL_COURSE_CONDITION = "abnormal_course_condition"
    MOVABLE_OBSTRUCTION = "movable_obstruction"


class LineRelief(Enum):
    """The Rule under which back-on-the-line relief is taken."""

    CONDITION_IN_BUNKER = "condition_in_bunker"
    PENALTY_AREA = "penalty_area"
    UNPLAYABLE = "unplayable"
    UNPLAYABLE_IN_BUNKER = "unplayable_in_bunker"
    UNPLAYABLE_OUTSIDE_BUNKER = "unplayable_outside_bunker"


interference = choice(
    "interference",
    "What does the abnormal course condition interfere with?",
    {
        Interference.BALL: "the ball: it touches, or lies in or on, the condition",
        Interference.BALL_ABOVE_GROUND: "the ball, off the ground: in a plant rooted in ground under repair, or on a structure",
        Interference.STANCE_OR_SWING: "the area of intended stance or swing",
        Interference.LINE_OF_PLAY: "only the line of play",
        Interference.NONE: "none of these (it only distracts, or is near)",
        Interference.OUT_OF_BOUNDS_ONLY: "only a part of it that lies out of bounds",
    },
    help="Animal hole, ground under repair, immovable obstruction, temporary water. Look at the stroke the player would make.",
    source="16.1a(1)",
    decided_by=DecidedBy.MAP,
)

in_the_way = choice(
    "in_the_way",
    "What is it that interferes?",
    {
        InTheWay.ANIMAL_HOLE: "a hole dug by an animal, what was dug out, the worn track into it, or ground pushed up by the digging",
        InTheWay.GROUND_UNDER_REPAIR: "ground marked or declared under repair, a hole made in upkeep, or material piled to be removed",
        InTheWay.IMMOVABLE_OBSTRUCTION: "an artificial object that cannot easily be moved: path, building, sprinkler head, post",
        InTheWay.TEMPORARY_WATER: "water on the surface, seen before or after taking the stance; also an overflow of a pond",
        InTheWay.TWO_CONDITIONS: "two of these at once, each of which interferes: such as water on a path, or a hole beside one",
        InTheWay.ANIMAL_TRACK: "only a footprint or hoofprint, or damage by an animal that dug no hole",
        InTheWay.UNMARKED_GROUND: "bare, soft, rutted or damaged ground that is not marked or declared; dew or frost",
        InTheWay.WATER_OF_PENALTY_AREA: "the pond or stream itself, where its stakes or lines leave a part of it out",
        InTheWay.MOVABLE_OBSTRUCTION: "an artificial object that can easily be moved",
        InTheWay.BOUNDARY_OR_INTEGRAL_OBJECT: "a boundary fence, wall or stake, or an object declared part of the challenge",
        InTheWay.NATURAL_OBJECT: "something natural: a tree, a root, a stone, loose impediments",
    },
    help="Snow and natural ice: the player chooses whether they are temporary water. Ask the Committee what is marked.",
    source="Definitions: abnormal course condition",
    decided_by=DecidedBy.MAP,
)

stroke_unreasonable_anyway = yes_no(
    "stroke_unreasonable_anyway",
    "Would playing the ball as it lies be clearly unreasonable because of something that gives no free relief?",
    help="For example in a bush where no stroke can be made. Think the condition away, and any other that gives relief.",
    source="16.1a(3)",
    usual=False,
)

only_by_unreasonable_choice = yes_no(
    "only_by_unreasonable_choice",
    "Is there interference only because of a clearly unreasonable club, stance, swing or direction?",
    help="Ask what stroke would reasonably be made if what interferes were not there.",
    source="13.1f Exception, 16.1a(3)",
    usual=False,
)

nearest_point_exists = yes_no(
    "nearest_point_exists",
    "Is there a nearest point of complete relief in the area of the course required?",
    help="In the bunker; on the green or in the general area. Not nearer the hole, with no interference left.",
    source="16.1c, 16.1d",
    decided_by=DecidedBy.MAP,
    usual=True,
)

animal_near_ball = choice(
    "animal_near_ball",
    "What near the ball could hurt the player who plays it as it lies?",
    {
        Animal.DANGEROUS: "an animal that could do serious harm (snakes, stinging bees, alligators, fire ants, bears)",
        Animal.HARMLESS: "an animal that could not",
        Animal.NOT_AN_ANIMAL: "something else, such as a cactus or poisonous plants",
    },
    help="In doubt keep everybody away and treat the animal as dangerous.",
    source="16.2a",
)

point_in_penalty_area_exists = yes_no(
    "point_in_penalty_area_exists",
    "Is there a nearest point of complete relief inside the penalty area?",
    help="Not nearer the hole, and free of the danger or the no play zone.",
    source="16.2b(2), 17.1e(2)",
    decided_by=DecidedBy.MAP,
    usual=True,
)

in_own_pitch_mark = yes_no(
    "in_own_pitch_mark",
    "Is it reasonable to conclude that the ball lies in the pitch-mark made by its own last stroke?",
    help="Not pushed in by a foot, not driven straight into the ground, not dropped in taking relief.",
    source="16.3a(2)",
)

below_ground_level = yes_no(
    "below_ground_level",
    "Is part of the ball below the level of the ground?",
    help="It need not touch the soil; grass or loose impediments may lie between.",
    source="16.3a(2)",
)

in_sand_not_fairway = yes_no(
    "in_sand_not_fairway",
    "Is it embedded in sand, in a part of the general area not cut to fairway height or less?",
    help="For example a sandy waste area.",
    source="16.3a(1)",
    decided_by=DecidedBy.MAP,
)

spot_behind_in_general_area = yes_no(
    "spot_behind_in_general_area",
    "Is the spot right behind the embedded ball in the general area?",
    help="At the foot of a bunker face it may be in the bunker.",
    source="16.3b",
    decided_by=DecidedBy.MAP,
)

general_area_within_club_length = yes_no(
    "general_area_within_club_length",
    "Is there general area within one club-length of that spot, not nearer the hole?",
    help="Measure with the longest club, other than a putter.",
    source="Clarification 16.3b/1",
    decided_by=DecidedBy.MAP,
)

believed_relief_allowed = yes_no(
    "believed_relief_allowed",
    "Did the player reasonably believe free relief might be allowed, and need to lift the ball to tell?",
    help="Relief under Rule 15.2, 16.1 or 16.3. Ask what the player saw before lifting.",
    source="16.4",
)

condition_found = choice(
    "condition_found",
    "What did lifting the ball show?",
    {
        ConditionFound.NONE: "no condition that free relief is allowed from",
        ConditionFound.EMBEDDED: "the ball is embedded in the general area, and relief is allowed",
        ConditionFound.ABNORMAL_COURSE_CONDITION: "it lies in or on an abnormal course condition, and relief is allowed",
        ConditionFound.MOVABLE_OBSTRUCTION: "it lies in or on a movable obstruction",
    },
    help="Relief must be allowed by the Rule in question, exceptions included.",
    source="16.4",
)

relief_taken_after_lifting = yes_no(
    "relief_taken_after_lifting",
    "Does the player take the relief?",
    help="The player may also put the ball back and play it.",
    source="16.4",
)

marked_and_not_cleaned = yes_no(
    "marked_and_not_cleaned",
    "Was the spot marked before lifting, and the ball not cleaned?",
    help="On the putting green cleaning is allowed; there only the marking counts.",
    source="16.4",
)

no_play_zone_interference = choice(
    "no_play_zone_interference",
    "What does the no play zone interfere with?",
    {
        ZoneInterference.BALL_INSIDE: "the ball lies in the zone",
        ZoneInterference.STANCE_OR_SWING: "the area of intended stance or swing; the ball lies outside the zone",
        ZoneInterference.NONE: "neither",
    },
    help="The Committee defines the zone, in a penalty area or an abnormal course condition, and marks it.",
    source="2.4",
    decided_by=DecidedBy.MAP,
)

played_despite_zone = yes_no(
    "played_despite_zone",
    "Was the ball played from there all the same?",
    help="Ask the player and the marker.",
    source="16.1f, 17.1e",
)

line_relief = choice(
    "line_relief",
    "Under which Rule was back-on-the-line relief taken?",
    {
        LineRelief.CONDITION_IN_BUNKER: "a condition in a bunker: relief outside it (16.1c(2))",
        LineRelief.PENALTY_AREA: "a penalty area (17.1d(2))",
        LineRelief.UNPLAYABLE: "unplayable ball, not in a bunker (19.2b)",
        LineRelief.UNPLAYABLE_IN_BUNKER: "unplayable ball in a bunker, dropped in the bunker (19.3a)",
        LineRelief.UNPLAYABLE_OUTSIDE_BUNKER: "unplayable ball in a bunker, dropped outside it (19.3b)",
    },
    help="Ask the player which option was taken.",
    source="14.3b(3)",
)

rest_within_club_length = yes_no(
    "rest_within_club_length",
    "Did it come to rest within one club-length of where it first touched the line (until 2022: of the reference point chosen on it)?",
    help="Measure with the longest club other than a putter, from that point in any direction.",
    source="14.3c",
    decided_by=DecidedBy.MAP,
)

rest_nearer_than_chosen_point = yes_no(
    "rest_nearer_than_chosen_point",
    "Is it nearer the hole than the reference point that was chosen on the line?",
    help="With no point chosen: the point on the line as far from the hole as where it first touched the ground.",
    source="14.3c",
    decided_by=DecidedBy.MAP,
)

rest_nearer_than_start_of_line = yes_no(
    "rest_nearer_than_start_of_line",
    "Is it nearer the hole than the original spot (or where the ball last crossed the edge)?",
    help="Compare distances to the hole.",
    source="14.3c",
    decided_by=DecidedBy.MAP,
)

rest_in_area_first_touched = yes_no(
    "rest_in_area_first_touched",
    "Did it come to rest in the area of the course that it first touched?",
    help="And neither in the bunker nor the penalty area that relief was taken from.",
    source="14.3c",
    decided_by=DecidedBy.MAP,
)
