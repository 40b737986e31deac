"""Facts about Local Rules on abnormal course conditions and obstructions (area F)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, number, yes_no


class LocalInterference(Enum):
    """What a condition named by a Local Rule interferes with, the stance kept apart."""

    BALL = "ball"
    SWING = "swing"
    STANCE_ONLY = "stance_only"
    NONE = "none"


class StandInterference(Enum):
    """What a temporary immovable obstruction interferes with."""

    PHYSICAL = "physical"
    LINE_OF_SIGHT = "line_of_sight"
    BOTH = "both"
    NONE = "none"


local_interference = choice(
    "local_interference",
    "What does the condition interfere with?",
    {
        LocalInterference.BALL: "the ball: it touches, or lies in or on, the condition",
        LocalInterference.SWING: "the area of intended swing",
        LocalInterference.STANCE_ONLY: "the area of intended stance only",
        LocalInterference.NONE: "none of these",
    },
    help="Look at the stroke the player would make were the condition not there.",
    source="16.1a(1)",
    decided_by=DecidedBy.MAP,
)
cut_to_fairway_height = yes_no(
    "cut_to_fairway_height",
    "Is the ball in a part of the general area cut to fairway height or less?",
    help="Aprons and paths through the rough count if they are cut that short.",
    source="F-2.1, F-5, F-8, F-9",
    decided_by=DecidedBy.MAP,
)
condition_at_fairway_height = yes_no(
    "condition_at_fairway_height",
    "Is the interfering part of it in ground cut to fairway height or less too?",
    help="Or where else the notice allows it, for example within so many club-lengths of the fairway.",
    source="F-5, F-9",
    decided_by=DecidedBy.MAP,
)
stance_left_out = yes_no(
    "stance_left_out",
    "Does the Local Rule as adopted leave out interference with the stance only?",
    help="The Committee may have added that sentence; read the notice.",
    source="F-8, F-9, F-10, F-13, F-21",
    decided_by=DecidedBy.COMMITTEE,
)
condition_named_without_stance = yes_no(
    "condition_named_without_stance",
    "Does the Local Rule deny relief for the stance from this condition?",
    help="The notice names the conditions meant, for example animal holes only.",
    source="F-6",
    decided_by=DecidedBy.COMMITTEE,
)
only_stance_interference = yes_no(
    "only_stance_interference",
    "Does the condition interfere with the area of intended stance only, not with the swing?",
    help="Look at the stroke the player would make.",
    source="F-6, F-13, F-21",
    decided_by=DecidedBy.MAP,
)
bunker_taken_out_of_play = yes_no(
    "bunker_taken_out_of_play",
    "Is this bunker one that the Committee has named or marked as ground under repair?",
    help="Only the bunkers named or marked are meant, never all flooded ones.",
    source="F-16",
    decided_by=DecidedBy.COMMITTEE,
)
way_artificially_surfaced = yes_no(
    "way_artificially_surfaced",
    "Has the road or path an artificial surface (asphalt, concrete, laid gravel)?",
    help="A worn track of earth or grass has not.",
    source="F-17",
)
object_named_immovable = yes_no(
    "object_named_immovable",
    "Does the Local Rule name this kind of object as an immovable obstruction?",
    help="For example stakes, signs or distance markers.",
    source="F-18",
    decided_by=DecidedBy.COMMITTEE,
)
obstruction_on_line = yes_no(
    "obstruction_on_line",
    "Is the immovable obstruction on the line of play?",
    help="The line the ball would take, with a reasonable distance on either side.",
    source="F-5",
    decided_by=DecidedBy.MAP,
)
obstruction_from_green = number(
    "obstruction_from_green",
    "How far is the obstruction from the putting green?",
    help="From its nearest part to the edge of the green; 0 when it is on the green.",
    source="F-5",
    unit="club-lengths",
    whole=False,
    decided_by=DecidedBy.MAP,
)
obstruction_from_ball = number(
    "obstruction_from_ball",
    "How far is the obstruction from the ball?",
    help="From its nearest part to the ball.",
    source="F-5",
    unit="club-lengths",
    whole=False,
    decided_by=DecidedBy.MAP,
)
only_for_short_grass = yes_no(
    "only_for_short_grass",
    "Is the Local Rule adopted only for ball and obstruction in ground cut to fairway height or less?",
    help="Read the notice: the published text offers that narrower form.",
    source="F-5",
    decided_by=DecidedBy.COMMITTEE,
)
line_of_play_unreasonable = yes_no(
    "line_of_play_unreasonable",
    "Is the line of play clearly unreasonable?",
    help="Such as one chosen only to bring the obstruction into it.",
    source="F-5",
)
stand_within_reach = yes_no(
    "stand_within_reach",
    "Could the ball reasonably be struck far enough towards the hole to reach it?",
    help="From where it lies, with the stroke the player could be expected to make.",
    source="F-23",
)
stand_interference = choice(
    "stand_interference",
    "What does the temporary immovable obstruction interfere with?",
    {
        StandInterference.PHYSICAL: "the ball, or the area of intended stance or swing, only",
        StandInterference.LINE_OF_SIGHT: "only the line of sight: it is on the straight line from ball to hole",
        StandInterference.BOTH: "the ball, stance or swing, and the line of sight",
        StandInterference.NONE: "none of these",
    },
    help="It is also in the line of sight within one club-length, on the arc as far from the hole as the ball.",
    source="F-23",
    decided_by=DecidedBy.MAP,
)
