"""How somebody tells it: facts about the player's own ball played when it was out of play."""

TOLD: dict[str, str] = {
    "ball_out_of_play": "The ball that was played was out of play: {answer}.",
}
