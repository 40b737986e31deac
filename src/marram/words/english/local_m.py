"""Words for the Model Local Rules of area M: players with disabilities."""

PROVISIONS: dict[str, str] = {
    "M-1": "By this Local Rule, since 2023, a player with a wheeled mobility device may place a ball within six inches of where it lay, even nearer the hole, in the same area of the course.",
}

NOTES: dict[str, str] = {
    "six_inches_any_way": "Place the original or another ball within six inches (15 cm) of its spot, nearer the hole if wished; it may be placed again if the first place does not do.",
    "not_onto_the_fairway": "Do not place it on ground cut to fairway height or less unless it lay on such ground in the general area.",
}
