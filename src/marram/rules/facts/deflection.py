"""Facts about a ball in motion that hits something, is stopped, or is helped (Rule 11)."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class PuttHit(Enum):
    """What a ball played from the putting green hit."""

    PLAYER = "player"
    CLUB_USED = "club_used"
    OTHER_PERSON = "other_person"
    FLAGSTICK_OR_ATTENDANT = "flagstick_or_attendant"
    BALL_AT_REST = "ball_at_rest"
    BALL_IN_MOTION = "ball_in_motion"
    BALL_MARKER = "ball_marker"
    OTHER_MOVABLE_OBSTRUCTION = "other_movable_obstruction"
    ANIMAL = "animal"
    INSECT = "insect"
    ANYTHING_ELSE = "anything_else"


class RestsOn(Enum):
    """Where a ball deflected by accident came to rest."""

    ON_COURSE = "on_course"
    ON_COURSE_BALL_MOVED = "on_course_ball_moved"
    """On the course, and a ball at rest was moved by it."""
    ON_PERSON_OR_MOVING_THING = "on_person_or_moving_thing"
    AGAINST_ONE_THAT_MOVED = "against_one_that_moved"


class Deflector(Enum):
    """Who deliberately deflected or stopped the ball."""

    OWN_SIDE = "own_side"
    OTHER_PLAYER = "other_player"
    OUTSIDER = "outsider"
    LIFTED_FROM_WATER = "lifted_from_water"
    BALL_OR_MARKER_LEFT = "ball_or_marker_left"
    """Nobody: the ball ran into another ball at rest, or a ball-marker, that had been left there."""


class WhyStopped(Enum):
    """Why a ball past hope was stopped in a match (Rule 11.2a Exception)."""

    NEEDED_TO_TIE = "needed_to_tie"
    STROKE_CONCEDED = "stroke_conceded"
    HOLE_OR_MATCH_CONCEDED = "hole_or_match_conceded"
    NEITHER = "neither"


class WouldHaveStopped(Enum):
    """Where the ball would have come to rest."""

    ON_COURSE = "on_course"
    PENALTY_AREA = "penalty_area"
    PUTTING_GREEN = "putting_green"
    OUT_OF_BOUNDS = "out_of_bounds"


class MovedInPath(Enum):
    """What was moved, lifted or altered while a ball was in motion."""

    LOOSE_IMPEDIMENT = "loose_impediment"
    MOVABLE_OBSTRUCTION = "movable_obstruction"
    PHYSICAL_CONDITION = "physical_condition"
    REMOVED_FLAGSTICK = "removed_flagstick"
    BALL_ON_GREEN = "ball_on_green"
    BALL_OFF_GREEN = "ball_off_green"
    BALL_MARKER = "ball_marker"
    EQUIPMENT = "equipment"


rests_on = choice(
    "rests_on",
    "Where did the deflected ball come to rest?",
    {
        RestsOn.ON_COURSE: "on the course, or on or against a thing that stayed where it was",
        RestsOn.ON_COURSE_BALL_MOVED: "on the course, after it had moved another ball at rest",
        RestsOn.ON_PERSON_OR_MOVING_THING: "on a person, an animal or a moving outside influence",
        RestsOn.AGAINST_ONE_THAT_MOVED: "against a person or thing that then moved, and the ball with it",
    },
    help="On: in a pocket, a hood, an animal's mouth. On a bag or rake lying still: relief is under Rule 15.2a.",
    source="11.1b(1), Clarification 11.1b/2",
)
on_green_when_at_rest = yes_no(
    "on_green_when_at_rest",
    "Was that person, animal or thing on the putting green then?",
    help="Look at the spot right under where the ball first came to rest.",
    source="11.1b(1)",
    decided_by=DecidedBy.MAP,
)
hit_on_green_certain = yes_no(
    "hit_on_green_certain",
    "Is it known or virtually certain (about 95 %) that the ball hit it on the putting green?",
    help="Off the green, on the fringe for example, the ball is played as it lies.",
    source="11.1b(2)",
)
putt_hit = choice(
    "putt_hit",
    "What did the ball played from the putting green hit by accident?",
    {
        PuttHit.PLAYER: "the player",
        PuttHit.CLUB_USED: "the club used for the stroke",
        PuttHit.OTHER_PERSON: "another person, the player's caddie included",
        PuttHit.FLAGSTICK_OR_ATTENDANT: "the flagstick, or the person attending it or what that person held",
        PuttHit.BALL_AT_REST: "a ball at rest",
        PuttHit.BALL_IN_MOTION: "another ball in motion",
        PuttHit.BALL_MARKER: "a ball-marker",
        PuttHit.OTHER_MOVABLE_OBSTRUCTION: "another movable obstruction or piece of equipment",
        PuttHit.ANIMAL: "an animal that is not an insect or the like",
        PuttHit.INSECT: "an insect, worm or the like",
        PuttHit.ANYTHING_ELSE: "anything else",
    },
    help="Clarify it with everybody who saw it; a rake, a hole-liner, a bag are movable obstructions.",
    source="11.1b(2)",
)
both_on_green = yes_no(
    "both_on_green",
    "Did both balls lie on the putting green before the stroke?",
    help="A ball touching the green lies on it.",
    source="11.1a",
)
deflector = choice(
    "deflector",
    "Who deliberately deflected or stopped the ball in motion?",
    {
        Deflector.OWN_SIDE: "the player, the partner or a caddie of theirs",
        Deflector.OTHER_PLAYER: "the opponent or another player, or a caddie of theirs",
        Deflector.OUTSIDER: "a person who is no player or caddie",
        Deflector.LIFTED_FROM_WATER: "the player, lifting the ball as it moved in water, to take relief",
        Deflector.BALL_OR_MARKER_LEFT: "nobody: it ran into a ball at rest or a ball-marker left there",
    },
    help="Leaving a person or thing in the way on purpose counts, also if its use was noticed later. Just dropped: see 14.3d.",
    source="11.2a, 11.2b, Clarification 11.2a/1",
)
could_be_holed = yes_no(
    "could_be_holed",
    "Was there still a reasonable chance that the ball could be holed?",
    help="A ball past the hole and rolling on, or plainly short, has none.",
    source="11.2a Exception",
)
why_stopped = choice(
    "why_stopped",
    "What did stopping the ball mean for the hole?",
    {
        WhyStopped.NEEDED_TO_TIE: "the ball had to be holed to tie the hole",
        WhyStopped.STROKE_CONCEDED: "the opponent conceded the next stroke with it",
        WhyStopped.HOLE_OR_MATCH_CONCEDED: "the opponent conceded the hole or the match with it",
        WhyStopped.NEITHER: "none of these: the player still had a putt left that mattered",
    },
    help="Count the strokes of both sides, and ask the opponent what was said or meant.",
    source="11.2a Exception, 3.2a(1), 3.2b(1)",
)
needed_for_points = yes_no(
    "needed_for_points",
    "Did the ball have to be holed to score a point, tie the hole or stay below the maximum score?",
    help="Work out what the player's score would have been.",
    source="21.1d, 21.2d, 21.3d",
)
played_from_green = yes_no(
    "played_from_green",
    "Was the stroke made from the putting green?",
    help="A ball touching the green lies on it.",
    source="11.2c",
    decided_by=DecidedBy.MAP,
)
would_have_stopped = choice(
    "would_have_stopped",
    "Where would the ball have come to rest if nobody had deflected or stopped it?",
    {
        WouldHaveStopped.ON_COURSE: "on the course, neither on the putting green nor in a penalty area",
        WouldHaveStopped.PENALTY_AREA: "in a penalty area",
        WouldHaveStopped.PUTTING_GREEN: "on the putting green",
        WouldHaveStopped.OUT_OF_BOUNDS: "out of bounds",
    },
    help="Estimate it from speed, slope and what lay in the way.",
    source="11.2c(1)",
)
meant_to_affect_ball = yes_no(
    "meant_to_affect_ball",
    "Was it done deliberately, to affect where a ball in motion might come to rest?",
    help="Whether the ball was affected in the end does not matter.",
    source="11.3",
)
moved_in_path = choice(
    "moved_in_path",
    "What was lifted, moved or altered while the ball was in motion?",
    {
        MovedInPath.LOOSE_IMPEDIMENT: "a loose impediment",
        MovedInPath.MOVABLE_OBSTRUCTION: "a movable obstruction",
        MovedInPath.PHYSICAL_CONDITION: "a physical condition (divot, raised turf, sand)",
        MovedInPath.REMOVED_FLAGSTICK: "a flagstick already removed",
        MovedInPath.BALL_ON_GREEN: "a ball at rest on the putting green",
        MovedInPath.BALL_OFF_GREEN: "a ball at rest elsewhere",
        MovedInPath.BALL_MARKER: "a ball-marker",
        MovedInPath.EQUIPMENT: "a player's equipment",
    },
    help="For a flagstick in the hole see Rule 13.2.",
    source="11.3",
)
