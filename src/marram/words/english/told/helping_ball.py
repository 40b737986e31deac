"""How somebody tells it: facts about a ball or ball-marker helping or interfering with play (Rule 15.3)."""

TOLD: dict[str, str] = {
    "stroke_with_helping_ball.yes": "The stroke was made with the helping ball in place.",
    "stroke_with_helping_ball.no": "The stroke had not been made with the helping ball in place.",
    "helping_ball": "Of the helping ball: {answer}.",
    "interfering_ball": "Of the interfering ball: {answer}.",
    "marker_in_the_way": "Of the ball-marker: {answer}.",
}
