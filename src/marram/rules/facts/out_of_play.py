"""Facts about the player's own ball played when it was out of play."""

from enum import Enum

from marram.rules.engine.fact import choice


class OutOfPlay(Enum):
    """Why the player's own ball was out of play."""

    OUT_OF_BOUNDS = "out_of_bounds"
    LOST = "lost"
    PROVISIONAL_HAD_BECOME = "provisional_had_become"
    ANOTHER_PUT_IN_PLAY = "another_put_in_play"


ball_out_of_play = choice(
    "ball_out_of_play",
    "Why was the ball that was played out of play?",
    {
        OutOfPlay.OUT_OF_BOUNDS: "it lay out of bounds",
        OutOfPlay.LOST: "it was found after the three minutes, or not identified in reasonable time",
        OutOfPlay.PROVISIONAL_HAD_BECOME: "the provisional ball had become the ball in play",
        OutOfPlay.ANOTHER_PUT_IN_PLAY: "another ball had been put in play, in taking relief",
    },
    help="Establish what had happened before that stroke. A ball partly in bounds is in bounds.",
    source="6.3c(1), Definitions: wrong ball",
)
