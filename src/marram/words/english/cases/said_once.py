"""Said by the sentence that follows: one case told of each fact."""

CASES: dict[str, str] = {
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
