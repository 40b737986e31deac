"""How somebody tells it: facts about a stroke-play play-off (Committee Procedures, Section 7A)."""

TOLD: dict[str, str] = {
    "not_completing_play_off": "It concerned {answer}.",
}
