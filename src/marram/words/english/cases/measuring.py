"""Relief areas and provisional balls: one case told of each fact."""

CASES: dict[str, str] = {
    "edge_by_notice.far_side": "By the Local Rule its far side is the boundary.",
    "club_length_measured/opening+measured_with.by_eye": "{player} took relief and only estimated how far the relief area reached.",
    "club_length_measured/measured_with.by_eye": "",
    "club_length_measured/opening+measured_with.putter": "{player} took relief and measured the relief area with a long putter, longer than any other club in the bag.",
    "club_length_measured/measured_with.putter": "",
    "club_length_measured/opening+measured_with.shorter_club": "{player} took relief and measured the relief area with a wedge, not with the driver, which is the longest club in the bag.",
    "club_length_measured/measured_with.shorter_club": "",
    "club_length_measured/opening+measured_with.longest_club": "{player} took relief and measured the relief area with the driver, the longest club in the bag other than a putter.",
    "club_length_measured/measured_with.longest_club": "",
    "club_length_measured/ball_in_relief_area.yes": "By the right measure, too, the ball lay in the relief area, not nearer the hole and with complete relief.",
    "club_length_measured/ball_in_relief_area.no": "By the right measure the ball lay outside the relief area.",
    "provisional_ball_lifted/provisional_lift_allowed.yes": "The original ball had not been found yet, and the provisional ball was lifted because it interfered with another player's play.",
    "provisional_ball_holed/lifted_from_hole_first.yes+original_ball.not_found_yet": "{player} has taken the provisional ball out of the hole.",
    "provisional_ball_holed/lifted_from_hole_first.yes+original_ball.certain_in_penalty_area": "Before that was known, {player} had taken the provisional ball out of the hole.",
    "provisional_ball_holed/lifted_from_hole_first.yes": "By then {player} had already taken the provisional ball out of the hole.",
    "provisional_ball_holed/lifted_from_hole_first.no": "The provisional ball is still in the hole.",
}
