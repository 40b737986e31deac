"""Facts about a ball that moved: what went before, where it came to rest, what was done next."""

from enum import Enum

from marram.rules.engine.fact import DecidedBy, choice, yes_no


class NewPlace(Enum):
    """Where a ball that moved came to rest, compared with where it had been."""

    SAME_AREA = "same_area"
    ANOTHER_AREA = "another_area"
    OUT_OF_BOUNDS = "out_of_bounds"
    IN_THE_HOLE = "in_the_hole"


class OpponentAct(Enum):
    """What the opponent did to the player's ball at rest (Rule 9.5)."""

    CONCEDED_STROKE = "conceded_stroke"
    CONCEDED_HOLE_OR_MATCH = "conceded_hole_or_match"
    AT_PLAYERS_REQUEST = "at_players_request"
    LIFTED_AS_OWN = "lifted_as_own"
    MOVED_BY_ACCIDENT = "moved_by_accident"
    LIFTED_OR_MOVED_ON_PURPOSE = "lifted_or_moved_on_purpose"
    TOUCHED_ON_PURPOSE = "touched_on_purpose"


class HandledAs(Enum):
    """What the player did to the ball on purpose (Rule 9.4b)."""

    LIFTED = "lifted"
    ONLY_TOUCHED = "only_touched"


class AfterLifting(Enum):
    """What follows a lifting that a Rule allows (Rules 9.4a and 9.4b)."""

    GOES_BACK = "goes_back"
    GOES_ELSEWHERE = "goes_elsewhere"
    WENT_ELSEWHERE = "went_elsewhere"
    RELIEF_GIVEN_UP = "relief_given_up"


lifted_and_replaced_on_green = yes_no(
    "lifted_and_replaced_on_green",
    "Had the ball on the green already been lifted and replaced on the spot it moved from?",
    help="Ask whether the player had marked, lifted and replaced it since it came to rest there.",
    source="13.1d(2)",
)
put_in_play_by_hand = yes_no(
    "put_in_play_by_hand",
    "Had the player put this ball in play by dropping, placing or replacing it, with no stroke since?",
    help="It must have come to rest before it moved; a dropped ball that never came to rest falls under Rule 14.3.",
    source="9.3 Exception 2",
)
new_place = choice(
    "new_place",
    "Where did the ball come to rest after it moved?",
    {
        NewPlace.SAME_AREA: "in the same area of the course",
        NewPlace.ANOTHER_AREA: "in another area of the course",
        NewPlace.OUT_OF_BOUNDS: "out of bounds",
        NewPlace.IN_THE_HOLE: "in the hole",
    },
    help="The five areas: teeing area, general area, penalty area, bunker, putting green. Fairway and rough are one area.",
    source="9.3",
    decided_by=DecidedBy.MAP,
)


class MovedBall(Enum):
    """Whether a ball that was moved can be got back, and whether the lie it had is as it was."""

    FOUND = "yes"
    LIE_ALTERED = "lie_altered"
    NOT_FOUND = "no"


moved_ball_found = choice(
    "moved_ball_found",
    "Is the ball found and easy to get back?",
    {
        MovedBall.FOUND: "yes",
        MovedBall.LIE_ALTERED: "yes, but the lie it had (not in sand) is altered: pressed down or trodden in",
        MovedBall.NOT_FOUND: "no",
    },
    help="With reasonable effort and in a few seconds; the ball need not have been found for Rule 9.6 to apply.",
    source="9.6, 14.2a, 14.2d",
)
found_after_moving = yes_no(
    "found_after_moving",
    "Has the ball been found in time, even if it cannot be got back?",
    help="Within three minutes of beginning to search; a ball seen and identified out of reach, as in water, is found.",
    source="9.6, 18.2a",
)
known_before_stroke = yes_no(
    "known_before_stroke",
    "Before the next stroke: was it known or virtually certain that the ball had been moved?",
    help="What the player knew, or could have known with reasonable effort, before playing from where it lay.",
    source="9.2a",
)
opponent_act = choice(
    "opponent_act",
    "What did the opponent or the opponent's caddie do to the ball?",
    {
        OpponentAct.CONCEDED_STROKE: "lifted or moved it when conceding the next stroke",
        OpponentAct.CONCEDED_HOLE_OR_MATCH: "lifted or moved it when conceding the hole or the match",
        OpponentAct.AT_PLAYERS_REQUEST: "lifted or moved it at the player's request",
        OpponentAct.LIFTED_AS_OWN: "lifted it, taking it for their own ball",
        OpponentAct.MOVED_BY_ACCIDENT: "moved it by accident",
        OpponentAct.LIFTED_OR_MOVED_ON_PURPOSE: "lifted or moved it on purpose in any other case",
        OpponentAct.TOUCHED_ON_PURPOSE: "touched it on purpose without moving it",
    },
    help="A stroke at it: see 6.3c. Lifted in a search, the player having claimed another ball: moved by accident, in searching.",
    source="9.5, Clarification 9.5b/1",
)
opponent_marked_spot = yes_no(
    "opponent_marked_spot",
    "Did the opponent mark the spot of the ball before lifting it?",
    help="With a ball-marker right behind or next to the ball, or a club held there.",
    source="9.5b Exception 2",
)
going_elsewhere = yes_no(
    "going_elsewhere",
    "Will the player take relief, or put the ball on a different spot, under a Rule?",
    help="Then the ball need not go back first; otherwise it is replaced on its original spot.",
    source="9.4a, 9.5a",
)
after_lifting = choice(
    "after_lifting",
    "What became of the lifted ball, or what will?",
    {
        AfterLifting.GOES_BACK: "it goes back on its spot",
        AfterLifting.GOES_ELSEWHERE: "relief will be taken, or it will be put on another spot, under that Rule",
        AfterLifting.WENT_ELSEWHERE: "that relief has been taken already, or it stands on that other spot",
        AfterLifting.RELIEF_GIVEN_UP: "lifted for free relief, which the player now does not want",
    },
    help="Where relief is taken, the ball need not go back first.",
    source="9.4a, Clarification 9.4b/4",
)
handled_as = choice(
    "handled_as",
    "What did the player or caddie do to the ball at rest?",
    {
        HandledAs.LIFTED: "lifted it, or moved it from its spot on purpose",
        HandledAs.ONLY_TOUCHED: "touched it on purpose, or turned it on its spot, so that it did not leave the spot",
    },
    help="Touching with a club or by holding something against the ball counts. A partner counts as the player.",
    source="9.4b",
)
handling_allowed = yes_no(
    "handling_allowed",
    "Did a Rule allow the player to lift, move or touch the ball there?",
    help="On the green (13.1b), to identify (7.3), damage (4.2c), interference (15.3), to look for relief (16.4) or take it. Touching: only once marked to be lifted.",
    source="9.4b Exception 1",
)


class TreePurpose(Enum):
    """Why a ball was shaken or knocked out of a tree or bush (Clarification 9.4a/1)."""

    FIND_OR_IDENTIFY = "find_or_identify"
    TAKE_RELIEF = "take_relief"
    OTHER = "other"


tree_purpose = choice(
    "tree_purpose",
    "Why was the ball dislodged from the tree?",
    {
        TreePurpose.FIND_OR_IDENTIFY: "to find or identify it",
        TreePurpose.TAKE_RELIEF: "to get it back and take relief under a Rule, such as unplayable ball relief",
        TreePurpose.OTHER: "by accident or for any other purpose",
    },
    help="Ask what the player intended before the tree was shaken or the ball knocked down.",
    source="Clarification 9.4a/1",
)
