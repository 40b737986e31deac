"""Words for the Model Local Rules of area E: special relief procedures."""

PROVISIONS: dict[str, str] = {
    "E-5": "Where adopted: for a ball lost or out of bounds, instead of going back, drop for two strokes between where it was lost and the fairway; not for a ball in a penalty area, nor for the original once a provisional ball was played.",
}

NOTES: dict[str, str] = {
    "alternative_not_adopted": "The alternative of dropping for two strokes (E-5) may not be used: the Committee has not adopted it.",
    "alternative_not_for_penalty_area": "The alternative of E-5 may not be used: the ball is virtually certain to be in a penalty area.",
    "alternative_not_after_provisional": "The alternative of E-5 may not be used for the original ball: a provisional ball was played, and is at hand.",
    "alternative_points": "Estimate where the ball came to rest or left the course, and find the nearest fairway point not nearer the hole. Drop in the general area between the lines from the hole through both points, with two club-lengths outside each line, not nearer the hole than where the ball was lost.",
    "alternative_original_out_of_play": "The ball dropped under the Local Rule is in play; do not play the original even if it is found within three minutes.",
}
