"""How somebody tells it: facts about the scorecard and about not holing out (Rule 3.3)."""

TOLD: dict[str, str] = {
    "card_strokes_affected.yes": "The higher handicap gives more handicap strokes than the right one.",
    "card_strokes_affected.no": "The higher handicap gives no more handicap strokes than the right one.",
    "competition_closed.yes": "The competition had closed.",
    "competition_closed.no": "The competition had not closed yet.",
    "hole_result_affected.yes": "The lower score changes what the hole counts: the points, the capped score or the result of the hole.",
    "hole_result_affected.no": "The lower score changes nothing of what the hole counts: neither points, nor a capped score, nor the result of the hole.",
    "marker_at_fault.yes": "The Committee finds that the marker's failure caused it, beyond {player}'s control.",
    "marker_at_fault.no": "The Committee does not find that the marker alone was at fault.",
    "card_fault": "What is wrong with the scorecard: {answer}.",
    "handicap_shown.right": "The right handicap was shown.",
    "handicap_shown.none": "A handicap that had to be on it was missing.",
    "handicap_shown.too_high": "The handicap shown was too high.",
    "handicap_shown.too_low": "The handicap shown was too low.",
    "returned_score.higher": "The returned score is higher than the actual one.",
    "returned_score.lower": "The returned score is lower than the actual one.",
    "returned_score.none": "No score was returned for the hole.",
    "why_too_low.penalty_not_known": "Only penalty strokes were missing, which {player} did not know of.",
    "why_too_low.penalty_doubtful": "A penalty was missing: {player} had been told of it as possible, or was in doubt, and did not ask.",
    "why_too_low.penalty_is_disqualification": "What {player} had done is penalised with disqualification, and {player} did not know that.",
    "why_too_low.other": "No penalty was missing: a stroke had been forgotten, or the score was added or written down wrong.",
}
