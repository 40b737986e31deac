"""Words for Rule 21."""

PROVISIONS: dict[str, str] = {
    "21.1b(1)": "Stableford points: two for the fixed target score, one less or more for each stroke over or under it, none from two over or without holing out.",
    "21.1b(2)": "In Stableford the card needs the actual score only where points are earned; a too low score without effect on the points carries no penalty.",
    "21.1c": "In Stableford certain mistakes not corrected cost the points of the hole instead of disqualification. Until 2022 penalties for clubs, starting time and delay were deducted from the total.",
    "21.1d": "In Stableford a ball in motion that can no longer be holed for a point may be stopped without penalty; zero points follow.",
    "21.2b(1)": "In Maximum Score the score for a hole is capped at a maximum; it is the maximum without holing out.",
    "21.2b(2)": "In Maximum Score the card needs the actual score only below the maximum.",
    "21.2c": "In Maximum Score certain mistakes not corrected cost the maximum score instead of disqualification.",
    "21.2d": "In Maximum Score a ball in motion that can no longer be holed below the maximum may be stopped without penalty.",
    "21.3b(1)": "In Par/Bogey a hole is won below, tied at and lost above the fixed target score, or without holing out.",
    "21.3b(2)": "In Par/Bogey the card needs the actual score only where the hole is won or tied; a too low score without effect carries no penalty.",
    "21.3c": "In Par/Bogey certain mistakes not corrected cost the hole instead of disqualification. Until 2022 penalties for clubs, starting time and a second delay were deducted from the result.",
    "21.3d": "In Par/Bogey a ball in motion that can no longer be holed to tie may be stopped without penalty; the hole is lost.",
    "21.4b": "In Three-Ball a stroke out of turn may be cancelled in each match separately.",
    "21.4c": "In Three-Ball an opponent's penalty for moving the player's ball counts only in the match between those two.",
}

NOTES: dict[str, str] = {
    "stableford_points_1": "The player gets one point.",
    "stableford_points_2": "The player gets two points.",
    "stableford_points_3": "The player gets three points.",
    "stableford_points_4": "The player gets four points.",
    "stableford_points_5": "The player gets five points.",
    "stableford_points_6": "The player gets six points, and one more for each further stroke under.",
    "actual_score_counts": "The actual score counts and stands on the card.",
    "maximum_is_fixed": "The maximum is the number of strokes the Committee has fixed.",
    "maximum_is_multiple_of_par": "The maximum is par times the factor set, such as two times par.",
    "maximum_is_net_double_bogey": "The maximum is par plus two, plus the handicap strokes the player receives on the hole.",
    "pick_up_at_maximum": "To help the pace of play, pick up once the maximum is reached; the card shows no score, or one at or above the maximum.",
    "hole_counts_as_won": "The hole is won.",
    "hole_counts_as_tied": "The hole is tied.",
    "no_such_correction_in_match": "In match play this disqualification does not exist; rule on the mistake itself.",
    "one_ball_in_each_match": "Play out the hole with the original ball in one match and with another ball in the other.",
    "stroke_in_that_match_only": "The opponent's penalty stroke counts only in the match between the two, not in the match with the third player.",
    "deduct_four_points": "Deduct four points from the total of the round.",
    "deduct_two_holes": "Deduct two holes from the result of the round (holes won less holes lost).",
}
