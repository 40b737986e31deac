"""How somebody tells it: facts about a ball or ball-marker helping or interfering with play (Rule 15.3)."""

TOLD: dict[str, str] = {
    "stroke_with_helping_ball.yes": "The stroke was made with the helping ball in place.",
    "stroke_with_helping_ball.no": "The stroke had not been made with the helping ball in place.",
    "interfering_ball.lifted_on_request": "{player} lifted it at the other player's request.",
    "interfering_ball.lifted_unasked": "{player} lifted it without being asked.",
    "interfering_ball.owner_plays_first": "{player} was asked to lift it, and wants to play first instead.",
    "interfering_ball.refused_to_lift": "{player} refused to lift it when required to, and the other player then played.",
    "marker_in_the_way.moved_and_back": "{player} moved the ball-marker aside, measuring with the clubhead, and then moved it back.",
    "marker_in_the_way.not_moved_back": "{player} moved the ball-marker aside, and then played the ball from the new spot.",
    "marker_in_the_way.refused_to_move": "{player} refused to move the ball-marker when another player required that, and that player then played.",
    "marker_in_the_way.stroke_without_waiting": "{player} knew that a helping ball-marker was to be moved, and played without waiting.",
    "helping_ball.lifted": "The helping ball was marked and lifted, by its owner's wish or at another player's request.",
    "helping_ball.owner_plays_first": "The owner of the helping ball was asked to lift it, and wants to play first instead.",
    "helping_ball.left_by_agreement": "Players agreed to leave the helping ball there to help a player.",
    "helping_ball.left_without_agreement": "The helping ball was left there, nobody having asked or agreed.",
    "helping_ball.stroke_without_waiting": "{player} knew that the helping ball was to be lifted, and played without waiting.",
    "helping_ball.refused_to_lift": "{player}, the owner of the helping ball, refused to lift it when another player required that, and that player then played.",
}
