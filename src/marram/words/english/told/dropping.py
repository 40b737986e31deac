"""How somebody tells it: facts about dropping a ball in a relief area (Rule 14.3)."""

TOLD: dict[str, str] = {
    "ball_in_relief_area.yes": "The ball lay in the relief area, not nearer the hole and with complete relief.",
    "ball_in_relief_area.no": "The ball did not lie in the relief area.",
    "could_rest_in_relief_area.yes": "When it was stopped, it might still have come to rest in the relief area.",
    "could_rest_in_relief_area.no": "When it was stopped, it had no reasonable chance of coming to rest in the relief area.",
    "deflection_of_drop.by_accident": "After it hit the ground, somebody or somebody's equipment deflected the dropped ball by accident.",
    "deflection_of_drop.deliberate_by_player": "After it hit the ground, {player} or caddie deliberately stopped the dropped ball.",
    "deflection_of_drop.deliberate_by_other_player": "After it hit the ground, another player or that player's caddie deliberately stopped the dropped ball.",
    "deflection_of_drop.deliberate_by_other_person": "After it hit the ground, somebody who is no player or caddie deliberately stopped the dropped ball.",
    "deflection_of_drop.nothing": "Nobody deflected or stopped the dropped ball.",
    "drop_number": "It was {answer} drop in the right way.",
    "drops_before.stayed": "Before this further drop, one had been made in the right way that came to rest in the relief area.",
    "drops_before.one_outside": "Before this further drop, one had been made in the right way, and it came to rest outside.",
    "drops_before.two_outside": "Before this further drop, two had been made in the right way, and both came to rest outside.",
    "measured_with": "The relief area was measured with {answer}.",
    "measured_with.by_eye": "The relief area was not measured with any club; it was estimated.",
    "stays_where_first_touched.yes": "Placed where the second drop first touched the ground, the ball stays.",
    "stays_where_first_touched.no": "Placed where the second drop first touched the ground, the ball does not stay, at two attempts.",
    "stays_where_first_touched.moved_later": "Placed where the second drop first touched the ground, the ball stayed, and later wind, water or gravity moved it.",
    "way_of_dropping": "The ball was {answer}.",
    "measured_with.putter": "The relief area was measured with a putter, longer than the player's longest other club.",
}
