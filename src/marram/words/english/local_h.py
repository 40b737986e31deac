"""Words for the Model Local Rules of area H: caddies."""

PROVISIONS: dict[str, str] = {
    "H-2": "By this Local Rule each team may name one or two persons, known to the Committee, whom its players may ask for advice.",
    "H-4": "By this Local Rule an advice giver counts as a member of the side: the side answers for what this person does.",
    "H-5": "By this Local Rule members of a team who play in the same group may advise each other.",
    "H-1.1": "By this Local Rule caddies are forbidden: the general penalty for each hole on which the player has one.",
    "H-1.2": "By this Local Rule certain persons may not be caddies: the general penalty for each hole on which such a caddie helps.",
    "H-1.3": "By this Local Rule every player must have a caddie: the general penalty for each hole played without.",
}

NOTES: dict[str, str] = {}
