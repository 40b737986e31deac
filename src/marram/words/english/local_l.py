"""Words for Model Local Rules of area L: scoring."""

PROVISIONS: dict[str, str] = {
    "L-1": "Where this Local Rule is in force, hole scores not certified by player or marker cost the general penalty on the last hole instead of disqualification.",
    "L-2": "Where this Local Rule is in force, since 2023, the player answers for the handicap on the scorecard: none, or one too high that matters, disqualifies from the net competition.",
}

NOTES: dict[str, str] = {}
