"""How somebody tells it: facts about a ball or ball-marker helping or interfering with play (Rule 15.3)."""

TOLD: dict[str, str] = {
    "stroke_with_helping_ball.yes": "The stroke was made with the helping ball in place.",
    "stroke_with_helping_ball.no": "The stroke had not been made with the helping ball in place.",
    "helping_ball": "Of the helping ball: {answer}.",
    "interfering_ball.lifted_on_request": "{player} lifted it at the other player's request.",
    "interfering_ball.lifted_unasked": "{player} lifted it without being asked.",
    "interfering_ball.owner_plays_first": "{player} was asked to lift it, and wants to play first instead.",
    "interfering_ball.refused_to_lift": "{player} refused to lift it when required to, and the other player then played.",
    "marker_in_the_way": "Of the ball-marker: {answer}.",
}
