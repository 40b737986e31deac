"""Words for Rules 6.1 and 6.2."""

PROVISIONS: dict[str, str] = {
    "6.1b": "Each hole is begun from inside its teeing area.",
    "6.1b(1)": "In match play a stroke from outside the teeing area has no penalty; it counts unless the opponent promptly cancels it.",
    "Clarification 6.1b(1)/1": "If a ball from outside that was not cancelled must be played again, the ball is dropped where it was played, not teed.",
    "Clarification 6.1/1": "Where tee-markers are missing the Committee is asked; if it cannot help soon, the player's careful estimate of the teeing area stands.",
    "6.1b(2)": "In stroke play a hole begun from outside the teeing area costs the general penalty and is begun again from inside, before another hole is begun; otherwise disqualification.",
    "6.2b(1)": "A ball is in the teeing area when any part of it touches or is above it; the player may stand outside.",
    "6.2b(2)": "A ball is played from the ground or from a conforming tee; a first breach gets the general penalty, a second disqualification.",
    "6.2b(3)": "In the teeing area ground, grass, weeds, sand, soil, dew and frost may be altered before the stroke.",
    "6.2b(4)": "For the player about to tee off the markers stand fixed: shifting one so that lie, stance, swing or line get better is a breach.",
    "Clarification 6.2b(4)/1": "Moving a tee-marker without improving anything carries no penalty; it should be put back.",
    "6.2b(5)": "A ball that falls off the tee, or is knocked off, before a stroke at it is teed again without penalty; a stroke made at it counts.",
    "6.2b(6)": "A ball in play that lies in the teeing area may be lifted or moved without penalty and played from anywhere in it, teed or not.",
}

NOTES: dict[str, str] = {
    "strokes_on_wrong_hole_do_not_count": "The strokes on the hole whose turn it was not do not count, nor do penalties from playing there: play the right hole from its teeing area.",
    "strokes_from_outside_do_not_count": "The stroke from outside, and all further strokes with that ball, do not count; neither do penalties from playing it.",
    "drop_not_tee_outside": "The last stroke was made from outside the teeing area: played again from there, the ball is dropped, not teed.",
    "lost_from_outside_drop_not_tee": "Should it be lost or out of bounds, the next ball is dropped, not teed, where this stroke was made.",
    "estimate_teeing_area": "Ask the Committee to put the markers back; if that takes too long, estimate the teeing area carefully and play: the estimate stands.",
    "may_stand_outside_teeing_area": "The ball was in the teeing area; feet and club may be outside it.",
    "play_from_inside_teeing_area": "Play a ball from inside the teeing area.",
    "tee_again_anywhere": "Tee the ball again anywhere in the teeing area.",
    "stroke_counted_may_tee_or_play_as_lies": "The stroke counts. Play the ball as it lies, or from anywhere in the teeing area, on a tee or from the ground.",
    "tee_marker_back_in_place": "Put the tee-marker back where it was.",
    "deliberate_moving_may_be_misconduct": "Moving it because it seems wrongly placed, or destroying it, can be serious misconduct.",
}
