"""Words for the Model Local Rules of area H: caddies."""

PROVISIONS: dict[str, str] = {
    "H-1.1": "By this Local Rule caddies are forbidden: the general penalty for each hole on which the player has one.",
    "H-1.2": "By this Local Rule certain persons may not be caddies: the general penalty for each hole on which such a caddie helps.",
    "H-1.3": "By this Local Rule every player must have a caddie: the general penalty for each hole played without.",
}

NOTES: dict[str, str] = {}
