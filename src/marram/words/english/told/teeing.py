"""How somebody tells it: facts about starting a hole and playing from the teeing area (Rules 6.1 and 6.2)."""

TOLD: dict[str, str] = {
    "about_to_play_from_tee.yes": "It was a tee-marker of the teeing area that {player} was about to play from.",
    "about_to_play_from_tee.no": "{player} moved a tee-marker, of a teeing area that {player} was not about to play from.",
    "ball_in_teeing_area.yes": "The ball in play lay in the teeing area of the hole.",
    "ball_in_teeing_area.no": "The ball in play did not lie in the teeing area.",
    "part_of_ball_in_teeing_area.yes": "Part of the ball touched the teeing area or was above it.",
    "part_of_ball_in_teeing_area.no": "No part of the ball touched the teeing area or was above it.",
    "tee_ball_struck.yes": "{player} made a stroke at the ball as it was falling or after it had fallen.",
    "tee_ball_struck.no": "{player} had not made a stroke at it.",
    "tee_stroke_cancelled.yes": "The opponent cancelled the stroke promptly.",
    "tee_stroke_cancelled.no": "The opponent did not cancel the stroke.",
    "teed_wrongly_again.yes": "It was the second, separate breach of this kind in the round.",
    "teed_wrongly_again.no": "It was the first breach of this kind in the round.",
    "tee_improvement.ground_or_grass": "It was grass growing in the teeing area.",
    "tee_improvement.other_things": "It was a branch rooted outside the teeing area.",
    "tee_marker.not_improved": "Moving it improved nothing.",
    "tee_marker.improved_restored": "Moving it improved the conditions, but it was put back before the stroke.",
    "tee_marker.improved_not_restored": "Moving it improved the conditions, and it was not put back before the stroke.",
    "tee_marker.missing": "{player} moved nothing: one of the tee-markers, or both, had gone missing.",
    "teed_on": "The ball was played from {answer}.",
}
