"""How somebody tells it: facts that only the former Rules (until 2018) turned on, or that teaching asks to show what changed in 2019."""

TOLD: dict[str, str] = {
    "drop_height": "The ball was dropped from {answer}.",
    "likelihood_player_moved_ball": "On all the evidence, that {player} made the ball move is {answer}.",
}
