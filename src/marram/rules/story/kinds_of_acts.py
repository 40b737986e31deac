"""Which incidents show what by their name alone: a drop before, a stroke, relief taken, what needs no ball."""

AFTER_A_DROP = frozenset(
    {
        "back_on_the_line_drop",
        "ball_dropped",
        "ball_placed_after_two_drops",
        "crossing_point_was_wrong",
        "dropped_ball_played",
        "dropped_in_penalty_area",
        "dropped_once_more",
        "dropped_with_disability",
        "found_after_penalty_area_relief",
        "mistake_in_relief_noticed",
        "original_found_after_substitution",
        "relief_ball_moved_by_nature",
    }
)
"""Incidents that can only happen once a ball was dropped or placed in taking relief."""

REPLACING = frozenset({"ball_put_back", "ball_to_be_replaced"})
"""Incidents that are the replacing itself: what they rule takes the place of what was still to be done."""

AT_THE_BOUNDARY = frozenset(
    {"ball_near_boundary", "beyond_internal_boundary", "beyond_public_road", "on_boundary_feature"}
)
"""Incidents in which a ball that was played is out of bounds, or turns out to be in bounds."""

AFTER_A_STROKE = AT_THE_BOUNDARY | frozenset(
    {
        "another_ball_played",
        "ball_after_provisional",
        "ball_found_in_time",
        "ball_hit_flagstick",
        "ball_in_hole",
        "ball_in_penalty_area",
        "ball_in_watercourse",
        "ball_not_found",
        "deflected_off_green",
        "deliberately_deflected",
        "hit_power_line",
        "hit_temporary_line",
        "hole_completed",
        "played_from_penalty_area",
        "provisional_ball",
        "provisional_ball_holed",
        "putt_hit_something",
    }
)
"""Incidents that happen to a ball that was played: told after relief was due, they show that play went on."""

WHERE_A_MOVED_BALL_MAY_END = AT_THE_BOUNDARY | frozenset(
    {"ball_in_penalty_area", "ball_in_watercourse", "ball_not_found"}
)
"""Of those, the ones that may be told of a ball that was moved and never put back."""

WRONG_PLACES = frozenset({"played_from_wrong_place", "second_ball_after_wrong_place"})
"""Incidents that are a stroke from a wrong place by themselves."""

FAILS_TO_REPLACE = frozenset({"moved_ball_not_replaced", "ball_put_back"})
"""Incidents that can be the stroke at a moved ball that was not replaced."""

TAKES_STROKE_AND_DISTANCE = frozenset(
    {
        "alternative_to_stroke_and_distance",
        "lifted_then_played_again",
        "play_again_from_previous_spot",
        "played_again_from_previous_spot",
    }
)
"""Incidents that are stroke and distance, or its alternative, being taken: where an act before requires it, once."""

RELIEF_TAKEN_ANEW = frozenset({"crossing_point_was_wrong"})
"""Incidents after which relief, taken by mistake, is taken once more."""

STROKE_AT_A_DROPPED_BALL_LOOKED_BACK_AT = frozenset(
    {"crossing_point_was_wrong", "estimate_wrong", "found_after_penalty_area_relief"}
)
"""Incidents that look back at the stroke at a dropped ball: told after it, they hold the same stroke."""

INSTEAD_OF_STROKE_AND_DISTANCE = frozenset({"dropped_where_lost", "found_after_penalty_area_relief"})
"""Incidents in which relief was taken where stroke and distance was due."""

ORIGINAL_FOUND = frozenset({"provisional_ball", "provisional_ball_holed", "provisional_ball_lifted"})
"""Incidents that ask what became of the original, beside a provisional ball."""

TELLS_OF_TWO_BALLS = frozenset({"one_of_two_balls_picked_up", "two_balls"})
"""Incidents in which a player in doubt had played: whatever was to be done with the ball was done with one of the two."""

OF_THE_PLAYER_NOT_THE_BALL = ("1.2", "4.3", "5.6a", "10.2", "10.3", "24.4")
"""Breaches that can as well happen between two holes, with no ball in play: the penalty is of the hole to come."""

AFTER_THE_STROKE = ("11.", "13.2", "13.3")
"""Breaches that come once the ball was struck: in its motion, or at the hole."""

NOT_SOLELY_FROM_A_BALL = ("1.2", "1.3", "4.1", "5.", "10.2", "10.3", "13.1e", "20.", "22.", "23.", "24.")
"""Provisions whose breach never comes solely from playing one ball."""
