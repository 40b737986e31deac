"""Facts about the course: which areas a ball touches, and what kind of thing is in the way."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class Thing(Enum):
    """The kinds of things and conditions that can be in the way (Rule 2.3)."""

    LOOSE_IMPEDIMENT = "loose_impediment"
    MOVABLE_OBSTRUCTION = "movable_obstruction"
    CONDITION = "condition"
    BOUNDARY_OBJECT = "boundary_object"
    INTEGRAL_OBJECT = "integral_object"
    GROWING = "growing"


touches_penalty_area = yes_no(
    "touches_penalty_area",
    "Is any part of the ball in a penalty area or above its edge (also in water of a pond or stream outside its stakes)?",
    help="Lines, and ground inside the outer points of the stakes, belong to it. Water of it outside misplaced stakes does too.",
    source="2.2c",
    decided_by=DecidedBy.MAP,
)
touches_bunker = yes_no(
    "touches_bunker",
    "Does any part of the ball touch sand inside the edge of a bunker?",
    help="Or ground where there should be sand. A lip, face or wall of soil or turf is not part of the bunker.",
    source="2.2c",
    decided_by=DecidedBy.MAP,
)
touches_green = yes_no(
    "touches_green",
    "Does any part of the ball touch the putting green of the hole being played?",
    help="Look from the side; overhanging the edge without touching is not enough.",
    source="2.2c",
    decided_by=DecidedBy.MAP,
)
thing_in_the_way = choice(
    "thing_in_the_way",
    "What is in the way?",
    {
        Thing.LOOSE_IMPEDIMENT: "a loose natural object (leaf, stone, twig, insect)",
        Thing.MOVABLE_OBSTRUCTION: "a movable artificial object (bottle, rake, rope)",
        Thing.CONDITION: "animal hole, ground under repair, immovable obstruction, temporary water",
        Thing.BOUNDARY_OBJECT: "an object that defines out of bounds (stake, fence, wall)",
        Thing.INTEGRAL_OBJECT: "an object the Committee has made integral, a part of the challenge of the course",
        Thing.GROWING: "something growing or attached (tree, bush, grass)",
    },
    help="Read the Committee's notice: it may define objects as integral, or areas as under repair.",
    source="2.3",
)
