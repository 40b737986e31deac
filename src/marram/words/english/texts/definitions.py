"""A Definition of the Rules where it is cited: how, and the name of each."""

TEXTS: dict[str, str] = {
    "definition": "Definition: {name}",
    "former_definition": "former Definition: {name}",
    "definition.abnormal_course_condition": "abnormal course condition",
    "definition.advice": "advice",
    "definition.boundary_object": "boundary object",
    "definition.club_length": "club-length",
    "definition.holed": "holed",
    "definition.integral_object": "integral object",
    "definition.loose_impediment": "loose impediment",
    "definition.lost_ball": "lost ball",
    "definition.moved": "moved",
    "definition.out_of_bounds": "out of bounds",
    "definition.penalty_area": "penalty area",
    "definition.relief_area": "relief area",
    "definition.stroke": "stroke",
    "definition.wrong_ball": "wrong ball",
    "definition.wrong_place": "wrong place",
}
