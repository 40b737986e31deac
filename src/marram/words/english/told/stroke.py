"""How somebody tells it: facts about making a stroke: how the ball was struck, held, and stood to (Rule 10.1)."""

TOLD: dict[str, str] = {
    "foot_on_line.yes": "There was a foot on each side of the line of play, or a foot on it or on its extension behind the ball.",
    "foot_on_line.no": "No foot was on or across the line of play.",
    "hands_work_apart.yes": "The hands were apart and worked independently, the upper one as a steady pivot.",
    "hands_work_apart.no": "The hands worked together.",
    "stance_to_spare_other_line.yes": "That stance was taken by accident, or to keep off another player's line of play.",
    "stance_to_spare_other_line.no": "That stance was not taken by accident, nor to keep off another player's line.",
    "contact": "The ball was {answer}.",
    "contact.hit_again_on_purpose": "{player} hit the ball again on purpose while it was moving.",
    "contact.fair": "The ball was struck with the back of the clubhead.",
    "how_ball_was_moving.otherwise": "The ball was rolling over the ground before the backswing began.",
    "how_ball_was_moving.falling_off_tee": "The ball was falling off the tee.",
    "how_ball_was_moving.in_water": "The ball was moving in temporary water or in the water of a penalty area.",
    "how_ball_was_moving.started_in_backswing": "The ball began to move only after the backswing or stroke had begun.",
    "how_ball_was_moving.wobbling": "The ball was only wobbling, and stayed on its spot or returned to it.",
    "held_against_body.nothing": "Nothing was held against the body during the stroke.",
    "held_against_body.merely_touched": "The club or a hand touched body or clothing during the stroke, without being held there.",
    "held_against_body.hand_or_forearm": "The club or a gripping hand was held against a hand or forearm during the stroke.",
    "held_against_body.club_or_hand_on_body": "The club or a gripping hand was held against the body, not a hand or forearm, during the stroke.",
    "held_against_body.forearm_on_body": "A forearm was held against the body during the stroke.",
}
