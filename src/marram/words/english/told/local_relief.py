"""How somebody tells it: facts about Local Rules on relief by placing, dropping zones, power lines and back on the line (area E)."""

TOLD: dict[str, str] = {
    "ball_in_aeration_hole.yes": "The ball lay in, or touched, an aeration hole.",
    "ball_in_aeration_hole.no": "The ball neither lay in nor touched an aeration hole.",
    "ball_in_cleaning_area.yes": "The ball lay where the Local Rule allows cleaning.",
    "ball_in_cleaning_area.no": "The ball did not lie where the Local Rule allows cleaning.",
    "ball_in_preferred_area.yes": "The ball lay where the Local Rule allows the lie to be preferred.",
    "ball_in_preferred_area.no": "The ball did not lie where the Local Rule allows the lie to be preferred.",
    "dropping_zone_provided.yes": "The Committee had provided a dropping zone for this situation.",
    "dropping_zone_provided.no": "There was no dropping zone for this situation.",
    "line_hit_for_certain.yes": "It is virtually certain that the ball hit the power line.",
    "line_hit_for_certain.no": "It is not virtually certain that the ball hit the power line.",
    "placed_within_limits.yes": "The ball was placed in the relief area of the Local Rule.",
    "placed_within_limits.no": "The ball was placed outside the relief area of the Local Rule.",
    "played_on_after_line.yes": "{player} went on without replaying that stroke.",
    "played_on_after_line.no": "{player} had not gone on yet.",
    "relief_was_back_on_the_line.yes": "The relief was back on the line.",
    "relief_was_back_on_the_line.no": "The relief was not back on the line.",
    "rest_near_where_it_first_touched.yes": "It came to rest within one club-length of where it first touched the ground.",
    "rest_near_where_it_first_touched.no": "It came to rest more than one club-length from where it first touched the ground.",
    "preferred_lie": "{Answer}.",
}
