"""Words for the Model Local Rules of area A: boundaries."""

PROVISIONS: dict[str, str] = {
    "Definitions: out of bounds": "The Committee defines the boundary edge. A fence has it at the course-side points of its posts at ground level; for a wall or road it says which edge counts.",
    "A-2": "By this Local Rule the boundary edge is the course-side edge of the walls or roads named, or a ball is out of bounds only when it is beyond them.",
    "A-3": "In the 2019 list: a ball that comes to rest beyond a road that is out of bounds is out of bounds too, even on the course. Since 2023: a ball is out of bounds only when it is beyond the fence named.",
    "A-4": "By this Local Rule a boundary inside the course holds for the holes it names: there its stakes are boundary objects; for all other holes the boundary does not exist and the stakes are obstructions.",
    "A-4.2": "By this Local Rule, since 2026, a boundary inside the course holds only for strokes that must be made from the teeing area of the hole named; at all other times it does not exist and its stakes are obstructions.",
    "A-5": "By this Local Rule stakes that only show a boundary defined by a line or a fence are obstructions, not boundary objects.",
}

NOTES: dict[str, str] = {
    "only_boundary_of_notice": "Only the Committee can set such a boundary; look at the notice to players.",
    "edge_not_defined": "The Committee should have said which edge of a wall or road is the boundary; ask what was meant and how it was treated before.",
    "edge_as_players_read_it": "Where nothing was said, weigh how a player would read the marking on the ground, and treat all players alike.",
    "stake_is_obstruction": "The stake is an obstruction: one that comes out easily may be taken out and is put back afterwards; otherwise the relief is that from an immovable obstruction.",
}
