"""Words for Rule 17."""

PROVISIONS: dict[str, str] = {
    "17.1a": "A ball is in a penalty area when any part of it lies in, touches or is above the area.",
    "17.1b": "A ball in a penalty area may be played as it lies, under the Rules for the general area, or relief taken outside for one stroke.",
    "17.1c": "Relief for a ball not found needs knowledge or virtual certainty that it is in the penalty area; once another ball is in play, the original must not be played.",
    "17.1d": "Relief from a penalty area costs one stroke: stroke and distance, back on the line or, from a red one, lateral relief.",
    "17.1d(1)": "Play a ball from where the previous stroke was made.",
    "17.1d(2)": "Drop outside the penalty area on the line from the hole through where the ball last crossed its edge, as far back as wished.",
    "17.1d(3)": "From a red penalty area, drop outside it within two club-lengths of where the ball last crossed its edge.",
    "17.1e(1)": "A ball in a no play zone of a penalty area must be played from outside the area, with penalty relief.",
    "17.1e(2)": "When a no play zone is in the way of stance or swing, penalty relief, or free relief inside the penalty area if there is any, must be taken.",
    "17.2": "A ball played from a penalty area that is still in one, lost, out of bounds or unplayable has extra options.",
    "17.2a": "If it lies in a penalty area again: the usual options, or play from where the last stroke outside one was made, each for one stroke.",
    "17.2a(2)": "For one stroke, play from where the last stroke from outside a penalty area was made.",
    "17.2b": "If it is lost, out of bounds or unplayable outside: stroke and distance for one stroke; or, for two in all and without dropping inside first, relief outside the penalty area or a ball from where the last stroke outside one was made.",
    "17.3": "A ball in a penalty area has no relief from conditions, as embedded, or as unplayable.",
    "Clarification 17.1d(3)/2": "A careful estimate of the crossing point is accepted even if it was wrong; but a mistake that becomes known before the dropped ball is played has to be put right.",
    "Clarification 17.1a/1": "When a penalty area and a condition beside it are equally likely, penalty area relief is the only relief.",
    "Clarification 17.1a/2": "When a penalty area and a condition beside it are equally likely, penalty area relief is the only relief.",
}

NOTES: dict[str, str] = {
    "penalty_area_like_general_area": "As the ball lies: grounding the club, practice swings and removing loose impediments are allowed; improving the conditions is not.",
    "further_relief_after_dropping_inside": "A player who drops in the penalty area and then would rather not play that ball may still take relief outside, for one stroke more.",
    "measured_where_it_went_in": "The options for two strokes on the line or to the side are measured from where the ball last crossed the edge on its way into the penalty area that it was then played from.",
    "measure_from_true_crossing_point": "Lift the ball and take relief again, measured from where the ball really crossed; every option of this Rule is open.",
    "two_strokes_in_all": "The ball dropped inside cost one stroke; relief outside costs one more, two in all. It is measured from where the ball first played from there last crossed the edge.",
    "lift_ball_dropped_by_mistake": "Pick up the ball that was dropped, without penalty, and play the original; it was found in time, and relief here was not allowed.",
}
