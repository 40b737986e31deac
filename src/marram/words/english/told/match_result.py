"""How somebody tells it: facts about who won a hole or a match (Rule 3.2a)."""

TOLD: dict[str, str] = {
    "hole_had_begun.yes": "At least one of them had made a stroke to begin the hole.",
    "hole_had_begun.no": "None of them had made a stroke to begin the hole.",
    "match_may_end_tied.yes": "By the Terms of the Competition the match ends in a tie rather than being extended.",
    "match_may_end_tied.no": "By the Terms of the Competition a tied match is extended.",
    "match_state": "How things stand: {answer}.",
    "match_state.agreed_tied": "The players agreed that the hole counted as halved.",
}
