"""Facts about Local Rules that change the course: boundaries, penalty areas, greens (areas A, B, D)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no
from marram.rules.facts.green import WrongGreenInterference


class CourseStake(Enum):
    """What a white stake inside the course is there for."""

    INTERNAL_BOUNDARY = "internal_boundary"
    SHOWS_LINE_OR_FENCE = "shows_line_or_fence"


class BoundaryFeature(Enum):
    """What the boundary runs along."""

    FENCE = "fence"
    WALL_OR_ROAD = "wall_or_road"


class BoundaryEdge(Enum):
    """Which edge of a wall or road the Committee has made the boundary edge."""

    COURSE_SIDE = "course_side"
    FAR_SIDE = "far_side"
    NOT_NAMED = "not_named"


class Watercourse(Enum):
    """How the Local Rule treats a ditch or other open watercourse."""

    GENERAL_AREA = "general_area"
    OBSTRUCTION = "obstruction"
    NOT_NAMED = "not_named"


class PenaltyAreaProvisional(Enum):
    """What became of the original ball after a ball was played provisionally under Local Rule B-3."""

    FOUND_INSIDE = "found_inside"
    FOUND_OUTSIDE = "found_outside"
    NOT_FOUND = "not_found"


class ExcludedGreen(Enum):
    """How the Local Rule treats a practice green or a temporary green not in use."""

    NOT_NAMED = "not_named"
    PLAYED_AS_IT_LIES = "played_as_it_lies"
    UNDER_REPAIR = "under_repair"


boundary_for_this_hole = yes_no(
    "boundary_for_this_hole",
    "Is the hole being played one for which the Local Rule sets this boundary?",
    help="Read the Local Rule: it names the holes. For all other holes the boundary does not exist.",
    source="A-3, A-4",
    decided_by=DecidedBy.COMMITTEE,
)
boundary_for_tee_stroke = yes_no(
    "boundary_for_tee_stroke",
    "Does the Local Rule set this boundary for strokes from the tee of this hole, and is this such a stroke?",
    help="A stroke that must be made from the teeing area; for any later stroke the boundary does not exist.",
    source="A-4.2",
    decided_by=DecidedBy.COMMITTEE,
)
road_named = yes_no(
    "road_named",
    "Does the Local Rule name this road for the hole being played?",
    help="It may leave out holes on which players have to play across the road.",
    source="A-3",
    decided_by=DecidedBy.COMMITTEE,
)
boundary_feature = choice(
    "boundary_feature",
    "What does the boundary run along there?",
    {
        BoundaryFeature.FENCE: "a fence",
        BoundaryFeature.WALL_OR_ROAD: "a wall, a road or another such object",
    },
    help="No part of the ball lies on the course side of it, none beyond its far side.",
    source="Definitions: out of bounds",
)
edge_by_notice = choice(
    "edge_by_notice",
    "Which edge of it is the boundary by the Local Rule?",
    {
        BoundaryEdge.COURSE_SIDE: "the course-side edge",
        BoundaryEdge.FAR_SIDE: "the far side: a ball is out only when it is beyond it",
        BoundaryEdge.NOT_NAMED: "the Local Rule does not name this one",
    },
    help="Read the notice: it names the walls and roads it means.",
    source="A-2",
    decided_by=DecidedBy.COMMITTEE,
)
fence_named = yes_no(
    "fence_named",
    "Does the Local Rule say that a ball is out only when it is beyond this fence?",
    help="Otherwise the line between the course-side points of its posts at ground level is the edge.",
    source="A-3",
    decided_by=DecidedBy.COMMITTEE,
)
course_stake = choice(
    "course_stake",
    "What is the white stake there for?",
    {
        CourseStake.INTERNAL_BOUNDARY: "it marks a boundary inside the course that holds for some holes only",
        CourseStake.SHOWS_LINE_OR_FENCE: "it only shows from afar a boundary that a line or fence defines (often black-topped)",
    },
    help="Read the Committee's notice on how the boundary is defined.",
    source="A-4, A-5",
    decided_by=DecidedBy.COMMITTEE,
)
crossed_where_opposite_allowed = yes_no(
    "crossed_where_opposite_allowed",
    "Did the ball last cross the edge where the Local Rule allows relief on the opposite side?",
    help="Read which penalty areas, holes or stretches of the edge the Local Rule names.",
    source="B-2",
    decided_by=DecidedBy.MAP,
)
penalty_area_provisional = choice(
    "penalty_area_provisional",
    "What became of the original ball within the three minutes of search?",
    {
        PenaltyAreaProvisional.FOUND_INSIDE: "found and identified in the penalty area",
        PenaltyAreaProvisional.FOUND_OUTSIDE: "found and identified on the course outside the penalty area",
        PenaltyAreaProvisional.NOT_FOUND: "neither, or it is out of bounds, or virtually certain to be in the penalty area",
    },
    help="The Local Rule holds only for the penalty areas it names.",
    source="B-3",
)
watercourse_by_notice = choice(
    "watercourse_by_notice",
    "How does the Local Rule treat this ditch or watercourse?",
    {
        Watercourse.GENERAL_AREA: "it is part of the general area",
        Watercourse.OBSTRUCTION: "it is an immovable obstruction in the general area",
        Watercourse.NOT_NAMED: "the Local Rule does not name it",
    },
    help="Meant for one that usually holds no water, such as a drainage ditch lined with concrete.",
    source="B-4",
    decided_by=DecidedBy.COMMITTEE,
)
fringe_interference = choice(
    "fringe_interference",
    "How does the fringe that the Local Rule adds to the wrong green interfere?",
    {
        WrongGreenInterference.BALL_ON_IT: "the ball touches it",
        WrongGreenInterference.STANCE_ONLY: "only the intended stance is on it",
        WrongGreenInterference.SWING: "the intended swing is affected by it",
        WrongGreenInterference.NONE: "in none of these ways",
    },
    help="The Local Rule says how far from the edge of the wrong green it reaches.",
    source="D-4.2",
    decided_by=DecidedBy.MAP,
)
fringe_stance_counts = yes_no(
    "fringe_stance_counts",
    "Does interference with the stance count under the Local Rule as adopted?",
    help="The Committee may have added that interference with the stance alone is none.",
    source="D-4.2",
    decided_by=DecidedBy.COMMITTEE,
)
excluded_green = choice(
    "excluded_green",
    "Does the Local Rule take this green out of the wrong greens?",
    {
        ExcludedGreen.PLAYED_AS_IT_LIES: "yes: it is no wrong green, and the ball is played as it lies",
        ExcludedGreen.UNDER_REPAIR: "yes: it is no wrong green, but ground under repair that relief may be taken from",
        ExcludedGreen.NOT_NAMED: "no, it does not name this green",
    },
    help="A practice green, or a temporary green that is not in use.",
    source="D-5",
    decided_by=DecidedBy.COMMITTEE,
)
