"""Words for the Model Local Rules of area J: bad weather."""

PROVISIONS: dict[str, str] = {
    "J-2": "By this Local Rule a player whose ball is on the putting green may have temporary water swept off the line by the persons named, across the line and past the hole, instead of taking relief.",
}

NOTES: dict[str, str] = {
    "or_relief_from_temporary_water": "Relief from temporary water (Rule 16.1d) may be taken instead.",
}
