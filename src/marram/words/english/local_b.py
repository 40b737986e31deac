"""Words for the Model Local Rules of area B: penalty areas."""

PROVISIONS: dict[str, str] = {
    "Definitions: penalty area": "A sea, lake, pond, river, ditch or other open watercourse is a penalty area whether or not it is marked and holds water, unless the Committee defines it as part of the general area.",
    "B-2": "By this Local Rule, for one penalty stroke, a ball in a red penalty area may also be dropped on its opposite side, by the point of the edge there that is as far from the hole as where the ball last crossed it.",
    "B-3": "By this Local Rule a ball may be played provisionally under any option of Rule 17.1d when it is not known whether the original is in the penalty area named; the original found inside may then be played, or given up for the provisional ball.",
    "B-4": "By this Local Rule a ditch or other open watercourse is part of the general area, or an immovable obstruction in it, and no penalty area.",
}

NOTES: dict[str, str] = {
    "ditch_is_general_area": "It is general area: no relief for being in it. Water that stands in it after rain is temporary water (Rule 16.1).",
    "ditch_is_obstruction": "It is an immovable obstruction: relief is optional, with Rule 16.1 in all else.",
    "ditch_is_penalty_area": "Marked or not, dry or not, it is a penalty area; with no colour given, a red one.",
    "one_of_the_two_balls": "Choose: play the original as it lies and pick up the other ball, whose strokes then do not count; or go on with the other ball, and the original is out of play.",
    "no_other_penalty_area_relief": "No other relief under Rule 17.1 is left for the original ball.",
}
