"""How somebody tells it: facts about who won a hole or a match (Rule 3.2a)."""

TOLD: dict[str, str] = {
    "hole_had_begun.yes": "At least one of them had made a stroke to begin the hole.",
    "hole_had_begun.no": "None of them had made a stroke to begin the hole.",
    "match_may_end_tied.yes": "By the Terms of the Competition the match ends in a tie rather than being extended.",
    "match_may_end_tied.no": "By the Terms of the Competition a tied match is extended.",
    "match_state.agreed_tied": "The players agreed to count the hole as halved.",
    "match_state.fewer_strokes": "One player finished the hole in fewer strokes (net in a handicap match).",
    "match_state.hole_penalty": "One player has got the general penalty on the hole.",
    "match_state.leads_by_more": "One player leads by more holes than remain.",
    "match_state.level_at_end": "The match is level after its last hole.",
    "match_state.opponent_out": "One player has conceded the match or is disqualified.",
    "match_state.same_strokes": "Both finished the hole in the same number of strokes (net in a handicap match).",
}
