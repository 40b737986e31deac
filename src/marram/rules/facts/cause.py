"""Facts about what moved a ball or ball-marker at rest, and how certain that is."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class Cause(Enum):
    """The causes the Rules recognise for a ball at rest to move (Rule 9.2b)."""

    PLAYER = "player"
    OPPONENT = "opponent"
    OUTSIDE_INFLUENCE = "outside_influence"
    ONE_OF_THESE = "one_of_these"
    """Certainly one of the three above, but it cannot be told which."""
    NATURAL_FORCES = "natural_forces"


class Doing(Enum):
    """What the person who moved the ball was doing (Rules 7.4 and 9.4b Exception 4)."""

    SEARCHING = "searching"
    MARKING_LIFTING_REPLACING = "marking_lifting_replacing"
    REMOVING_MOVABLE_OBSTRUCTION = "removing_movable_obstruction"
    RESTORING_CONDITIONS = "restoring_conditions"
    TAKING_RELIEF = "taking_relief"
    MEASURING = "measuring"
    REMOVING_LOOSE_IMPEDIMENT = "removing_loose_impediment"
    MOVING_AWAY_FROM_BALL = "moving_away_from_ball"
    """The ball in motion had come to rest against the person or their equipment (Clarification 11.1b/2)."""
    SOMETHING_ELSE = "something_else"


APPLYING_A_RULE = (
    Doing.MARKING_LIFTING_REPLACING,
    Doing.RESTORING_CONDITIONS,
    Doing.TAKING_RELIEF,
    Doing.MEASURING,
)
"""What Rule 9.4b Exception 4 protects, besides removing a movable obstruction."""

movement_certain = yes_no(
    "movement_certain",
    "Is it known or virtually certain (about 95 %) that the ball left its spot?",
    help="The move must be enough to be seen by the naked eye; nobody need have seen it happen.",
    source="9.2a",
)
came_back_to_its_spot = yes_no(
    "came_back_to_its_spot",
    "Did the ball only rock and come back to rest on its original spot?",
    help="Moving up, down or sideways to any other spot is movement; rocking on the spot is not.",
    source="Definitions: moved",
)
what_moved_ball = choice(
    "what_moved_ball",
    "What is known or virtually certain (about 95 %) to have moved the ball?",
    {
        Cause.PLAYER: "the player, caddie or partner, or their equipment",
        Cause.OPPONENT: "the opponent or the opponent's caddie or equipment (match play)",
        Cause.OUTSIDE_INFLUENCE: "an outside influence: another player in stroke play, a spectator, an animal, another ball",
        Cause.ONE_OF_THESE: "certainly one of these, but it cannot be told which",
        Cause.NATURAL_FORCES: "natural forces, or nothing else is that certain",
    },
    help="Weigh all information available with reasonable effort and without unreasonable delay.",
    source="9.2b",
)
cause_known = yes_no(
    "cause_known",
    "Is it known or virtually certain (about 95 %) that the player or caddie moved the ball?",
    help="Weigh what was done near the ball, how soon it moved, the lie, slope, wind. A partner counts as the player.",
    source="9.2b(2)",
)
opponent_cause_known = yes_no(
    "opponent_cause_known",
    "Is it known or virtually certain (about 95 %) that the opponent or their caddie did it?",
    help="Weigh all information available with reasonable effort and without unreasonable delay.",
    source="9.2b(2)",
)


class OutsideCause(Enum):
    """Whether an outside influence is known or virtually certain to have moved the ball, and whether an animal."""

    NO = "no"
    YES = "yes"
    AN_ANIMAL = "an_animal"


outside_cause_known = choice(
    "outside_cause_known",
    "Is it known or virtually certain (about 95 %) that an outside influence lifted or moved the ball?",
    {
        OutsideCause.YES: "yes: another person (in stroke play also another player), an object, another ball",
        OutsideCause.AN_ANIMAL: "yes: an animal",
        OutsideCause.NO: "no",
    },
    help="Weigh all information available with reasonable effort and without unreasonable delay.",
    source="9.6",
)
movement_accidental = yes_no(
    "movement_accidental",
    "Was the movement an accident?",
    help="Carelessness without intent is an accident; so is probing grass or shaking a tree to find a ball not yet found.",
    source="9.4b",
)
while_searching = yes_no(
    "while_searching",
    "Did it happen while trying to find or identify the ball?",
    help="It must have begun, and the ball not yet be identified. A search broken off to let others pass has not ended.",
    source="7.4",
)
moved_while = choice(
    "moved_while",
    "What was the person who moved it doing at that moment?",
    {
        Doing.SEARCHING: "trying to find or identify the ball",
        Doing.MARKING_LIFTING_REPLACING: "marking its spot, lifting or replacing it, when allowed",
        Doing.REMOVING_MOVABLE_OBSTRUCTION: "removing a movable obstruction",
        Doing.RESTORING_CONDITIONS: "restoring worsened conditions, when allowed",
        Doing.TAKING_RELIEF: "taking relief under a Rule, or finding out whether or where relief is allowed",
        Doing.MEASURING: "measuring under a Rule",
        Doing.REMOVING_LOOSE_IMPEDIMENT: "removing a loose impediment",
        Doing.MOVING_AWAY_FROM_BALL: "stepping or pulling away: the ball had rolled to rest against them or their equipment",
        Doing.SOMETHING_ELSE: "something else: a practice swing, taking a stance, grounding the club, walking",
    },
    help="Walking up to do one of these counts as something else, unless it is part of the act.",
    source="9.4b Exception 4",
)
actions_reasonable = yes_no(
    "actions_reasonable",
    "Were the actions reasonable for that purpose?",
    help="Ask whether a careful player would have done it that way; more than the purpose needed is not reasonable.",
    source="8.1b, 9.4b Exception 4",
)
stroke_was_made = yes_no(
    "stroke_was_made",
    "Did the player go on and make the stroke?",
    help="A swing that is stopped in time, or deliberately misses the ball, is no stroke.",
    source="9.1b",
)


class Mover(Enum):
    """Who moved a ball, where that is certain."""

    PLAYER = "player"
    OPPONENT = "opponent"
    SOMEBODY_ELSE = "somebody_else"


who_moved_ball = choice(
    "who_moved_ball",
    "Who moved the ball?",
    {
        Mover.PLAYER: "the player, caddie or partner",
        Mover.OPPONENT: "the opponent or the opponent's caddie (match play)",
        Mover.SOMEBODY_ELSE: "somebody else, or another outside influence",
    },
    help="In stroke play every other player is somebody else.",
    source="9.2b(1)",
)
who_moved_marker = choice(
    "who_moved_marker",
    "Who lifted or moved the ball-marker?",
    {
        Mover.PLAYER: "the player, caddie or partner",
        Mover.OPPONENT: "the opponent or the opponent's caddie (match play)",
        Mover.SOMEBODY_ELSE: "somebody or something else, or natural forces",
    },
    help="It must be known or virtually certain (about 95 %) for the player or the opponent to be the cause.",
    source="9.7b",
)
marker_move_allowed = yes_no(
    "marker_move_allowed",
    "Did a Rule, or the player's own request, allow lifting or moving the ball-marker?",
    help="For example moved aside because it interferes (15.3c), or lifted when conceding the next stroke.",
    source="9.7b Exception",
    decided_by=DecidedBy.REFEREE,
)
