"""How somebody tells it: facts about a swing: whether it was a stroke (Definition of stroke)."""

TOLD: dict[str, str] = {
    "what_swing.branch_struck": "Not the ball but a branch was struck, to bring down the ball lodged higher up in it, and the ball fell.",
    "what_swing": "What happened in the swing: {answer}.",
}
