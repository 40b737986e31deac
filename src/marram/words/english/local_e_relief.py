"""Words for the Model Local Rules of area E, all but E-5: relief procedures of a course."""

PROVISIONS: dict[str, str] = {
    "E-1": "Where adopted: a dropping zone is one more way to take relief; the ball is dropped in it and must come to rest in it.",
    "E-1.3": "Where adopted: the dropping zone is the only way to take relief from what the notice names, beside stroke and distance.",
    "E-2": "Where adopted: in the area named, a ball may be marked, lifted, cleaned and put back on its spot without penalty.",
    "E-3": "Where adopted: a ball in the area named may be placed once, without penalty, within the length given from its spot, not nearer the hole and in the general area.",
    "E-4": "Where adopted: a ball in or touching an aeration hole has free relief, in the general area by dropping and on the green by placing; stance and line of play do not count.",
    "E-9": "Where adopted: an area out of bounds that is named is a no play zone; a player whose ball is in bounds must take relief if the area, or what grows or stands in it, interferes with stance or swing.",
    "E-10": "Where adopted: the young trees marked are no play zones, and relief from them must be taken.",
    "E-11": "Where adopted: a stroke whose ball is known to have hit a power line does not count and must be played again without penalty.",
    "E-12": "Where adopted, since 2023: a ball in the general area at fairway height is placed on a mat, without penalty, and played from it, except with a putter. Until 2022: a ball dropped back on the line may be played from outside the relief area if it rests within one club-length of where it first touched the ground, but not nearer the hole than where the line starts.",
}

NOTES: dict[str, str] = {
    "how_to_use_dropping_zone": "In the dropping zone: drop a ball in it, and it must come to rest in it; a line that marks it belongs to it, and the player may stand outside while dropping.",
    "no_preferred_lie_here": "Do not lift the ball to prefer its lie.",
    "prefer_once": "Choose a spot within the length that the notice gives, set the ball on it by hand and let it go. This may be done once: then the ball is in play.",
    "lift_wrongly_placed_ball": "Lift the ball again and place it inside the relief area before playing; so far there is no penalty.",
    "aeration_hole_again": "If the ball comes to rest in another aeration hole, relief may be taken again.",
    "power_line_replay": "From the teeing area the ball may be teed; elsewhere it is dropped.",
    "replay_power_line_stroke": "Go back and play the stroke again",
    "power_line_no_wrong_place": "The ball then played counts, and it was not played from a wrong place.",
    "place_on_mat": "Put the mat down where the ball lies, lift the ball, place it or another one on the mat and play it from there; it may be cleaned. If a tee holds the mat, the ball must not lie on the tee.",
    "place_on_mat_once_more": "Place it on the mat a second time.",
    "move_mat_until_ball_stays": "Move the mat to the nearest spot, not nearer the hole, where the ball stays on it when placed.",
    "place_on_mat_without_penalty": "Place the ball on the mat again; there is no penalty.",
    "may_also_drop_again": "The player may play it from there, or drop a second time.",
}
