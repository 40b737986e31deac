"""How somebody tells it: facts about practice before, between and during rounds (Rules 5.2 and 5.5)."""

TOLD: dict[str, str] = {
    "day_of_play_over.yes": "{player} had completed the final round of that day.",
    "day_of_play_over.no": "{player} had not completed the final round of that day.",
    "match_stopped_until_another_day.yes": "The players had agreed to stop the match until another day.",
    "match_stopped_until_another_day.no": "The players had not agreed to stop the match until another day.",
    "practice_allowed_when_stopped.yes": "It was off the course, where the Committee allows it, or as allowed between two holes.",
    "practice_allowed_when_stopped.no": "It was on the course, where nothing allowed it.",
    "practice_breach_again.yes": "It was a further breach that day.",
    "practice_breach_again.no": "It was the first breach that day.",
    "practice_delayed_play.yes": "The practice unreasonably delayed play.",
    "practice_delayed_play.no": "The practice delayed nobody.",
    "practised_from_bunker.yes": "The practice stroke was made from a bunker.",
    "practised_from_bunker.no": "The practice stroke was not made from a bunker.",
    "putt_or_chip_nearby.yes": "It was a putt or chip on or near the green just completed, a practice green or the next tee.",
    "putt_or_chip_nearby.no": "It was neither a putt nor a chip near the green just completed, a practice green or the next tee.",
    "practised_before": "{player} {answer}.",
    "struck": "What it was: {answer}.",
    "when_practised": "It was {answer}.",
}
