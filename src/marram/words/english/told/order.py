"""How somebody tells it: facts about the order of play and about completing a hole (Rules 6.4 and 6.5)."""

TOLD: dict[str, str] = {
    "agreed_for_advantage.yes": "Two or more players had agreed to play out of turn so as to give one of them an advantage.",
    "agreed_for_advantage.no": "Nobody had agreed to play out of turn for an advantage.",
    "agreed_out_of_turn.yes": "To save time the opponent had invited {player} to play first, or had agreed to it.",
    "agreed_out_of_turn.no": "The opponent had neither invited {player} to play first nor agreed to it.",
    "decided_to_wait.yes": "{player} waited before deciding to play a provisional ball.",
    "decided_to_wait.no": "{player} did not wait before deciding to play a provisional ball.",
    "honour_depends_on_ruling.yes": "The honour hangs on a ruling that the Committee has not given yet.",
    "honour_depends_on_ruling.no": "The honour hangs on no ruling that is open.",
    "knew_hole_completed.yes": "{player} knew that the hole was completed.",
    "knew_hole_completed.no": "{player} did not know that the hole was completed.",
    "must_take_stroke_and_distance.yes": "{player} knew that stroke and distance had to be taken.",
    "must_take_stroke_and_distance.no": "{player} did not know that stroke and distance had to be taken.",
    "how_hole_ended.holed": "{player} had holed out.",
    "how_hole_ended.conceded": "{player}'s next stroke had been conceded.",
    "how_hole_ended.result_decided": "The result of the hole was decided.",
    "how_hole_ended.nothing": "{player} had not holed out, nothing was conceded, and the result was open.",
    "moment_of_turn": "The moment: {answer}.",
    "opponent_on_cancelling.cancelled": "The opponent cancelled the stroke promptly.",
    "opponent_on_cancelling.let_stand": "The opponent did not cancel the stroke in time.",
    "opponent_on_cancelling.undecided": "The opponent has said nothing yet, and neither player has made another stroke.",
}
