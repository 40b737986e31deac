"""How somebody tells it: facts about the scorecard and about not holing out (Rule 3.3)."""

TOLD: dict[str, str] = {
    "card_strokes_affected.yes": "The higher handicap gives more handicap strokes than the right one.",
    "card_strokes_affected.no": "The higher handicap gives no more handicap strokes than the right one.",
    "competition_closed.yes": "The competition had closed.",
    "competition_closed.no": "The competition had not closed yet.",
    "hole_result_affected.yes": "The lower score changes the points, the capped score or the result of the hole.",
    "hole_result_affected.no": "The lower score changes neither the points nor the result of the hole.",
    "marker_at_fault.yes": "The Committee finds that the marker's failure caused it, beyond {player}'s control.",
    "marker_at_fault.no": "The Committee does not find that the marker alone was at fault.",
    "card_fault": "What is wrong with the scorecard: {answer}.",
    "handicap_shown": "The handicap on the returned scorecard: {answer}.",
    "returned_score.higher": "The returned score is higher than the actual one.",
    "returned_score.lower": "The returned score is lower than the actual one.",
    "returned_score.none": "No score was returned for the hole.",
    "why_too_low": "Why the returned score was too low: {answer}.",
}
