"""How somebody tells it: facts about the marker in stroke play (Rule 3.3b)."""

TOLD: dict[str, str] = {
    "marker_change_approved.yes": "The Committee approves the change of marker.",
    "marker_change_approved.no": "The Committee does not approve the change of marker.",
    "who_kept_score": "The score on the holes without the marker was kept by {answer}.",
}
