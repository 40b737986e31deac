"""Words for Rule 18."""

PROVISIONS: dict[str, str] = {
    "18.1": "At any time a player may add one stroke and play a ball from where the previous stroke was made; once it is in play, the original must not be played.",
    "18.2a(1)": "A ball is lost when it is not found within three minutes of the start of the search; one found in time may still be identified within reasonable time.",
    "18.2a(2)": "A ball is out of bounds only when all of it lies outside the boundary edge; a player may stand out of bounds to play one that is not.",
    "18.2b": "A ball lost or out of bounds must be played again from where the previous stroke was made, for one stroke, unless a Rule gives relief because it is virtually certain what became of it.",
    "18.3a": "A provisional ball may be played when the original might be lost outside a penalty area or out of bounds; not when it could only be in a penalty area.",
    "18.3b": "A provisional ball must be announced as such before the stroke; otherwise the ball played is in play under stroke and distance.",
    "18.3c": "A provisional ball is played until it becomes the ball in play or must be abandoned.",
    "18.3c(1)": "A provisional ball may be played on from any spot not nearer the hole than where the original is estimated to be.",
    "18.3c(2)": "A provisional ball becomes the ball in play when the original is lost or out of bounds, or when it is played from nearer the hole than the original's estimated spot.",
    "18.3c(3)": "A provisional ball not yet in play is abandoned when the original is found on the course in time, or is found in or virtually certain to be in a penalty area.",
    "Clarification 18.1/1": "A ball in the teeing area is not in play until it is played, so that the original, found in time, may still be played.",
    "Clarification 18.1/2": "The stroke for lifting the ball without a right to is not avoided by then taking stroke and distance.",
    "Clarification 18.3b/1": "With nobody near enough to hear it, telling others as soon as possible counts as announcing a provisional ball.",
    "Clarification 18.3c(2)/3": "A holed provisional ball is in play once it is taken from the hole, unless the original was found on the course before.",
}

NOTES: dict[str, str] = {
    "original_out_of_play": "Once another ball is in play, do not play the original, even if it is found within three minutes: it would be a wrong ball.",
    "provisional_abandoned_if_played": "If a provisional ball was played and is not in play, pick it up; it must not be played on.",
    "provisional_lost_too": "The stroke listed is for the original ball; the options are for the provisional ball, which is lost or out of bounds too.",
    "may_stand_out_of_bounds": "The player may stand out of bounds to play it, but must not move boundary objects to improve the stroke.",
    "teed_ball_may_be_abandoned": "The original, if found within three minutes, may be played; the ball in the teeing area is then simply picked up.",
    "replace_or_play_again": "The stroke for lifting stays. The ball may instead be put back on its spot and played from there.",
    "outside_influence_or_stroke_and_distance": "Put a ball on the spot where the original lay, estimated if need be; or go on under stroke and distance instead.",
    "second_ball_is_provisional": "The ball is a provisional ball. It may also be played after going forward to search, as long as three minutes are not over.",
    "each_provisional_for_the_last": "A further provisional ball from the same spot stands in for the one before, not for the original.",
    "only_in_penalty_area_no_provisional": "Calling it provisional does not help: the original could only be in a penalty area.",
    "provisional_strokes_do_not_count": "All strokes with the provisional ball, and penalty strokes for playing it, do not count; pick it up.",
    "provisional_may_be_played_on": "Until the original is found, the provisional ball may be played again from as far from the hole as the original's estimated spot, or farther.",
    "holed_provisional_not_yet_in_play": "The holed ball counts once the player takes it from the hole or three minutes are over; found on the course before that, the original must be played.",
    "replace_provisional_if_it_counts": "Put it back before playing on, if the provisional ball is played on or becomes the ball in play.",
    "correct_wrong_ball_when_lost": "In stroke play: put the mistake right by playing under stroke and distance, or with the provisional ball",
    "correct_by_playing_original": "Put the mistake right by playing on with the original ball, or under a Rule that applies to it",
}
