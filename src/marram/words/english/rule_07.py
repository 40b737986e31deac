"""Words for Rule 7."""

PROVISIONS: dict[str, str] = {
    "7.4": "There is no penalty for moving the ball by accident while trying to find or identify it.",
}
