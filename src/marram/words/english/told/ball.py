"""How somebody tells it: facts about the ball: where it lies, what became of it."""

TOLD: dict[str, str] = {
    "area_of_ball": "The ball lay in {answer}.",
    "area_of_ball.putting_green": "The ball lay on the putting green of the hole being played.",
}
