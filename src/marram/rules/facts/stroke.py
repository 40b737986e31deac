"""Facts about making a stroke: how the ball was struck, held, and stood to (Rule 10.1)."""

from enum import Enum

from marram.rules.engine.fact import choice, yes_no


class Contact(Enum):
    """How the club and the ball met."""

    FAIR = "fair"
    PUSHED_SCRAPED_SCOOPED = "pushed_scraped_scooped"
    NOT_WITH_CLUBHEAD = "not_with_clubhead"
    HIT_AGAIN_BY_ACCIDENT = "hit_again_by_accident"
    HIT_AGAIN_ON_PURPOSE = "hit_again_on_purpose"


class ClubHold(Enum):
    """What was held against the player's body during the stroke."""

    NOTHING = "nothing"
    MERELY_TOUCHED = "merely_touched"
    HAND_OR_FOREARM = "hand_or_forearm"
    CLUB_OR_HAND_ON_BODY = "club_or_hand_on_body"
    FOREARM_ON_BODY = "forearm_on_body"


class MovingBall(Enum):
    """How the ball was moving when the stroke was made."""

    WOBBLING = "wobbling"
    STARTED_IN_BACKSWING = "started_in_backswing"
    FALLING_OFF_TEE = "falling_off_tee"
    IN_WATER = "in_water"
    OTHERWISE = "otherwise"


contact = choice(
    "contact",
    "How did the club and the ball meet?",
    {
        Contact.FAIR: "struck fairly with any part of the clubhead",
        Contact.PUSHED_SCRAPED_SCOOPED: "pushed, scraped or scooped",
        Contact.NOT_WITH_CLUBHEAD: "struck with the shaft or the grip end",
        Contact.HIT_AGAIN_BY_ACCIDENT: "hit more than once in one swing, by accident",
        Contact.HIT_AGAIN_ON_PURPOSE: "hit again on purpose while it was moving",
    },
    help="Toe, heel and back of the clubhead count; grass or a fence may come between. Look for lasting contact.",
    source="10.1a",
)
held_against_body = choice(
    "held_against_body",
    "What was held against the player's body while the stroke was made?",
    {
        ClubHold.NOTHING: "nothing",
        ClubHold.MERELY_TOUCHED: "something touched body or clothing without being held there",
        ClubHold.HAND_OR_FOREARM: "the club or a gripping hand, against a hand or forearm",
        ClubHold.CLUB_OR_HAND_ON_BODY: "the club or a gripping hand, against another part of the body",
        ClubHold.FOREARM_ON_BODY: "a forearm",
    },
    help="Clothing pressed to the body by club or hand counts as the body; the wrist belongs to the forearm.",
    source="10.1b",
)
hands_work_apart = yes_no(
    "hands_work_apart",
    "Were the hands apart and working independently, the upper one as a steady pivot?",
    help="Both are needed for an anchor point: a forearm held to the body, and hands that swing apart.",
    source="Clarification 10.1b/1",
)
foot_on_line = yes_no(
    "foot_on_line",
    "Was there a foot on each side of the line of play, or a foot touching it or its extension behind the ball?",
    help="Only the line itself counts here, not a reasonable distance on either side.",
    source="10.1c",
)
stance_to_spare_other_line = yes_no(
    "stance_to_spare_other_line",
    "Was that stance taken by accident, or to keep off another player's line of play?",
    help="Ask the player why they stood so.",
    source="10.1c",
)
how_ball_was_moving = choice(
    "how_ball_was_moving",
    "How was the ball moving when the stroke was made?",
    {
        MovingBall.WOBBLING: "wobbling, but staying on or returning to its spot",
        MovingBall.STARTED_IN_BACKSWING: "it began to move only after the backswing or stroke had begun",
        MovingBall.FALLING_OFF_TEE: "falling off the tee",
        MovingBall.IN_WATER: "in temporary water, or in water in a penalty area",
        MovingBall.OTHERWISE: "in another way",
    },
    help="Ask when the movement began and what the ball lay on.",
    source="10.1d",
)
