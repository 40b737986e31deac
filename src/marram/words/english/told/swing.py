"""How somebody tells it: facts about a swing: whether it was a stroke (Definition of stroke)."""

TOLD: dict[str, str] = {
    "what_swing": "What happened in the swing: {answer}.",
}
