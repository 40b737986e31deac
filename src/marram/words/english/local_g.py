"""Words for Model Local Rules of area G: equipment."""

PROVISIONS: dict[str, str] = {
    "G-1": "By this Local Rule a driver head must be on the List of Conforming Driver Heads, unless made before 1999; a stroke with another disqualifies, carrying it does not.",
    "G-2": "By this Local Rule clubs must meet the groove and punch mark specifications of 2010; a stroke with another disqualifies, carrying it does not.",
    "G-3": "By this Local Rule the ball must be on the List of Conforming Golf Balls; a stroke at another disqualifies.",
    "G-4": "By this Local Rule one brand and model of ball is played throughout the round: the general penalty for each hole with another, disqualification if it is not put right by the next teeing area.",
    "G-5": "Where this Local Rule is in force, electronic devices must not be used to measure distance.",
    "G-6": "By this Local Rule player and caddie do not ride except as the Committee allows, or because of stroke and distance: the general penalty for each hole, between two holes on the next.",
    "G-7": "By this Local Rule certain shoes must not be worn in making a stroke; the penalty is that of Rule 4.3.",
    "G-8": "By this Local Rule nothing may be listened to or watched on a personal audio or video device; the penalty is that of Rule 4.3.",
    "G-9": "By this Local Rule only a broken or significantly damaged club is replaced, and not after abuse; since 2025 by one that does its job, since 2026 also by one put together from parts carried on the course.",
    "G-10": "By this Local Rule no club but a putter may be longer than 46 inches; a stroke with a longer one disqualifies, carrying it does not.",
    "G-11": "By this Local Rule only yardage books and maps approved for the competition are used, and notes on greens hold only what player or caddie saw or felt; the penalty is that of Rule 4.3.",
}

NOTES: dict[str, str] = {
    "use_ball_on_list": "Play a ball that is on the list.",
    "put_own_model_into_play": "Put a ball of the model used so far into play on the same spot.",
    "finish_hole_with_either_model": "Finish the hole with the ball played, or put a ball of the right model on its spot.",
    "own_model_from_next_tee": "Play the right model from the next teeing area on.",
    "one_penalty_for_each_hole": "Apply the penalty once for every hole on which it happened.",
}
