"""Said by the sentence that follows: one case told of each fact."""

CASES: dict[str, str] = {
    "alternative_to_stroke_and_distance/next_hole_started.yes": "{player} had begun another hole.",
    "alternative_to_stroke_and_distance/balls_after_wrong_place.not_corrected+next_hole_started.no": "So far {player} had not corrected that by playing another ball.",
    "temporary_line_hit_for_certain.yes": "It is virtually certain that the ball hit that line.",
    "temporary_line_hit_for_certain.no": "It is not virtually certain that the ball hit that line.",
    "area_of_ball.general_area+cut_to_fairway_height": "",
    "cut_to_fairway_height.no+area_of_ball.general_area": "The ball lay in the general area, in grass longer than fairway height.",
    "something_in_the_way/thing_in_the_way.condition+in_the_way": "",
    "something_in_the_way/thing_in_the_way.condition": "In the way was a sprinkler head.",
    "something_in_the_way/thing_in_the_way.growing": "In the way was a bush.",
    "foursomes_start/both_partners_present.no+off_time.early": "",
    "foursomes_start/both_partners_present.no+off_time.late": "At the starting time one of the two partners was not there.",
    "minutes_off+off_time.early": "That was {answer} too early.",
    "breach_when.several_holes+holes_of_breach": "",
    "holes_of_breach+breach_when.several_holes": "It went on while {answer} were played.",
    "hit_by_design.yes+who_meant_the_hit": "",
}
