"""How somebody tells it: facts about an unplayable ball."""

TOLD: dict[str, str] = {
    "spot_of_ball_known.yes": "The spot of the ball was known.",
    "spot_of_ball_known.no": "The spot of the ball was not known.",
}
