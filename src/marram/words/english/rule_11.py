"""Words for Rule 11."""

PROVISIONS: dict[str, str] = {
    "11.1a": "When a ball in motion hits a person, an animal, equipment or anything else by accident, nobody gets a penalty.",
    "11.1a Exception": "In stroke play a ball played from the putting green that hits a ball at rest there costs the general penalty, if both lay on the green before the stroke.",
    "11.1b": "A ball accidentally deflected or stopped is played as it lies, with two exceptions.",
    "11.1b Exception 1": "A ball played from off the green that comes to rest on a person, an animal or a moving outside influence is not played from there; relief is taken right under it.",
    "11.1b Exception 2": "A stroke from the green does not count, and is replayed, when the ball is known or virtually certain to have hit a person, animal or movable obstruction on the green; ball-markers, balls at rest, the flagstick and its attendant are left out.",
    "11.1b(1)": "A ball played from off the green is played as it lies, but not if it comes to rest on a person, an animal or a moving outside influence: then relief is taken right under it.",
    "11.1b(2)": "A ball played from the green is played as it lies, but the stroke is replayed when the ball is known or virtually certain to have hit, on the green, another person, a movable obstruction or an animal; the player, the club used, ball-markers, balls at rest, the flagstick and its attendant, and insects are left out.",
    "Clarification 11.1b/2": "A ball that came to rest against a person or thing and moves when that moves is replaced; nobody gets a penalty for it.",
    "D-7": "This Local Rule of the 2019 book leaves out the player, the club used for the stroke, and insects from what makes a stroke from the green be replayed.",
    "11.2a Exception": "In match play nobody is penalised for stopping a ball that had no reasonable chance to be holed, if that was a concession or only holing it would have tied the hole.",
    "11.2b": "A player who deliberately deflects or stops any ball in motion, or whose caddie does, gets the general penalty.",
    "11.2c": "A ball deliberately deflected or stopped is not played as it lies, whoever did it.",
    "11.2c(1)": "After a stroke from off the green, relief is taken from the estimated spot where the ball would have come to rest.",
    "11.2c(1) Exception": "If that spot is in a penalty area, the player may take penalty area relief at once instead.",
    "11.2c(2)": "A stroke from the putting green does not count and is replayed from the same spot.",
    "11.3": "While a ball is in motion, nothing may be altered, and no loose impediment or movable obstruction removed, to affect where it comes to rest, whether or not that works.",
    "11.3 Exception": "A flagstick already removed, a ball at rest on the green, and players' equipment may be lifted or moved; balls elsewhere and ball-markers may not.",
}

NOTES: dict[str, str] = {
    "place_right_under": "Place the ball on the spot right under where it first came to rest, as when replacing a ball; estimate the spot.",
    "relief_before_stroke": "Take the relief described before playing",
    "replace_where_it_rested": "Replace the ball on the spot where it had come to rest",
    "unless_stopped_on_purpose": "If the attendant stopped it on purpose, or the flagstick was left there on purpose, look up: the ball hit the flagstick.",
    "other_ball_is_replaced": "The ball that was hit is replaced on its original spot.",
    "replay_the_putt": "Play again from where the stroke was made, with the original ball or another",
    "stopped_ball_decides_hole": "The hole is decided; nobody needs to putt again.",
    "zero_points": "The player gets no point for the hole.",
    "maximum_score_for_hole": "The player gets the maximum score for the hole.",
    "hole_lost_to_par": "The player loses the hole to par or bogey.",
    "place_on_estimated_spot": "Place the ball on the estimated spot where it would have come to rest on the green.",
    "or_penalty_area_relief_at_once": "Or take penalty area relief at once (Rule 17.1d), from where the ball would last have crossed the edge.",
    "lifted_ball_see_its_own_rules": "If a ball at rest was lifted, Rules 9 and 14.1 tell whether that was allowed.",
    "penalty_to_whoever_did_it": "The penalty is for the player who did it, or whose caddie did; the ball in motion is played as it lies.",
}
