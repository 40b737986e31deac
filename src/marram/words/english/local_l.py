"""Words for Model Local Rules of area L: scoring."""

PROVISIONS: dict[str, str] = {
    "L-1": "Where this Local Rule is in force, hole scores not certified by player or marker cost the general penalty on the last hole instead of disqualification.",
}

NOTES: dict[str, str] = {}
