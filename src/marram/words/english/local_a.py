"""Words for the Model Local Rules of area A: boundaries."""

PROVISIONS: dict[str, str] = {
    "A-4": "By this Local Rule a boundary inside the course holds for the holes it names: there its stakes are boundary objects; for all other holes the boundary does not exist and the stakes are obstructions.",
    "A-5": "By this Local Rule stakes that only show a boundary defined by a line or a fence are obstructions, not boundary objects.",
}

NOTES: dict[str, str] = {
    "stake_is_obstruction": "The stake is an obstruction: one that comes out easily may be taken out and is put back afterwards; otherwise the relief is that from an immovable obstruction.",
}
