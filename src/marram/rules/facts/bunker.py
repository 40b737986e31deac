"""Facts about bunkers: is the ball in one, and what was done to the sand (Rule 12)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class BallOnInBunker(Enum):
    """What a ball inside the edge of a bunker touches or rests on."""

    SAND = "sand"
    BARE_GROUND = "bare_ground"
    THING_IN_SAND = "thing_in_sand"
    GROWING_OR_SOIL = "growing_or_soil"


class BallAndBunker(Enum):
    """How the player's ball stood to the bunker when the sand was touched."""

    LIES_IN_IT = "lies_in_it"
    PLAYED_OUT = "played_out"
    RELIEF_OUTSIDE = "relief_outside"
    LIES_ELSEWHERE = "lies_elsewhere"


class SandTouch(Enum):
    """How the sand was touched."""

    TESTING = "testing"
    CLUB_BY_BALL = "club_by_ball"
    PRACTICE_SWING = "practice_swing"
    BACKSWING = "backswing"
    REMOVING_OR_SEARCHING = "removing_or_searching"
    TAKING_STANCE = "taking_stance"
    SMOOTHING = "smoothing"
    ANY_OTHER_WAY = "any_other_way"


class RemovedThing(Enum):
    """What was removed."""

    LOOSE_IMPEDIMENT = "loose_impediment"
    MOVABLE_OBSTRUCTION = "movable_obstruction"


ball_in_bunker_on = choice(
    "ball_in_bunker_on",
    "What does the ball, inside the edge of the bunker, touch or rest on?",
    {
        BallOnInBunker.SAND: "any part of it touches sand on the ground",
        BallOnInBunker.BARE_GROUND: "ground where sand would normally be",
        BallOnInBunker.THING_IN_SAND: "a loose or artificial thing, or abnormal condition, that lies on sand or where sand would be",
        BallOnInBunker.GROWING_OR_SOIL: "only soil, grass or another growing thing, no sand",
    },
    help="Wall and lip are not part of the bunker; sand spilled over the edge is not either.",
    source="12.1",
)
ball_and_bunker = choice(
    "ball_and_bunker",
    "Where was the player's ball when the sand was touched?",
    {
        BallAndBunker.LIES_IN_IT: "it lay in it, or relief was being taken inside it",
        BallAndBunker.PLAYED_OUT: "it had been played out and lay (or was) outside",
        BallAndBunker.RELIEF_OUTSIDE: "the player had taken or meant to take relief outside",
        BallAndBunker.LIES_ELSEWHERE: "it lay somewhere else, such as on the grass or in another bunker",
    },
    help="Lifted before relief inside or outside was chosen, it still lies in it. So does a ball that comes back.",
    source="12.2b(3)",
)
sand_touch = choice(
    "sand_touch",
    "How was the sand touched?",
    {
        SandTouch.TESTING: "on purpose to learn what the sand is like, with hand, club, rake or anything",
        SandTouch.CLUB_BY_BALL: "with a club right in front of or right behind the ball",
        SandTouch.PRACTICE_SWING: "with the club in a practice swing",
        SandTouch.BACKSWING: "with the club in the backswing for the stroke",
        SandTouch.REMOVING_OR_SEARCHING: "while searching fairly or removing a loose thing, as far as reasonable",
        SandTouch.TAKING_STANCE: "with the feet, digging in a reasonable amount for the stance",
        SandTouch.SMOOTHING: "by raking or smoothing it to care for the course",
        SandTouch.ANY_OTHER_WAY: "in another way: clubs set down, leaning, measuring, digging deep, in anger",
    },
    help="Ask what the player was doing; a mound of sand from an animal hole is sand too.",
    source="12.2b",
)
sand_improved = yes_no(
    "sand_improved",
    "Did it improve the lie, the stance, the swing, the line of play or a relief area of the player's next stroke?",
    help="Improve means: the player could gain an advantage from it.",
    source="8.1a",
)
thing_removed_in_bunker = choice(
    "thing_removed_in_bunker",
    "What was removed from the bunker before the ball was played?",
    {
        RemovedThing.LOOSE_IMPEDIMENT: "a loose impediment (leaf, stone, twig)",
        RemovedThing.MOVABLE_OBSTRUCTION: "a movable obstruction (rake, bottle)",
    },
    help="Natural and loose, or artificial and movable.",
    source="12.2a",
)
removed_reasonably = yes_no(
    "removed_reasonably",
    "Was it removed in a reasonable way, moving no more sand than that took?",
    help="Lifting a cone straight up is reasonable; dragging it through a mound behind the ball is not.",
    source="Clarification 12.2a/1",
)
removal_improved = yes_no(
    "removal_improved",
    "Did moving that sand improve the conditions affecting the stroke?",
    help="Look at lie, stance, swing and line of play.",
    source="8.1a",
    decided_by=DecidedBy.REFEREE,
)
