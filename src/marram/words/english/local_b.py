"""Words for the Model Local Rules of area B: penalty areas."""

PROVISIONS: dict[str, str] = {
    "B-2": "By this Local Rule, for one penalty stroke, a ball in a red penalty area may also be dropped on its opposite side, by the point of the edge there that is as far from the hole as where the ball last crossed it.",
    "B-3": "By this Local Rule a ball may be played provisionally under any option of Rule 17.1d when it is not known whether the original is in the penalty area named; the original found inside may then be played, or given up for the provisional ball.",
}

NOTES: dict[str, str] = {
    "one_of_the_two_balls": "Choose: play the original as it lies and pick up the other ball, whose strokes then do not count; or go on with the other ball, and the original is out of play.",
    "no_other_penalty_area_relief": "No other relief under Rule 17.1 is left for the original ball.",
}
