"""How somebody tells it: the conditions of the competition: date of play, form of play, Local Rules in force."""

TOLD: dict[str, str] = {
    "sides.individual": "Everybody plays alone, without a partner.",
    "sides.foursomes": "They play Foursomes: two partners share one ball.",
    "sides.four_ball": "They play Four-Ball: two partners, each with a ball.",
    "sides.three_ball": "They play Three-Ball: a match with each of two opponents at once.",
    "sides.best_of_four": "They play with up to four partners on a side, each with a ball.",
}
