"""Words for Model Local Rules of area G: equipment."""

PROVISIONS: dict[str, str] = {
    "G-5": "Where this Local Rule is in force, electronic devices must not be used to measure distance.",
}

NOTES: dict[str, str] = {}
