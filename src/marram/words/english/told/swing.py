"""How somebody tells it: facts about a swing: whether it was a stroke (Definition of stroke)."""

TOLD: dict[str, str] = {
    "what_swing.branch_struck": "Not the ball but a branch was struck, to bring down the ball lodged higher up in it, and the ball fell.",
    "what_swing.struck_at": "{player} meant to strike the ball, and hit it or missed it.",
    "what_swing.club_stopped_by_something": "The swing was meant for the ball, but a branch or the like turned or stopped the clubhead.",
    "what_swing.could_not_stop": "{player} gave the stroke up in the downswing, but hit the ball all the same.",
    "what_swing.stopped_or_steered_clear": "{player} gave the stroke up in the downswing, by stopping the club or by missing on purpose.",
    "what_swing.preparing": "A practice swing, or a movement in getting ready, hit the ball by accident.",
    "what_swing.head_off_and_went_on": "The clubhead came off in the downswing, and {player} swung on with the shaft.",
    "what_swing.head_off_and_stopped": "The clubhead came off in the downswing, and {player} stopped short of the ball.",
    "what_swing.head_off_in_backswing": "The clubhead came off in the backswing; the shaft was swung and missed the ball.",
}
