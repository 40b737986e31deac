"""Incidents: penalty areas."""

from marram.rules.incidents.incident import Incident

THEME = "Penalty areas"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_in_penalty_area",
        "The ball is in a penalty area, or may be",
        "17.1",
        THEME,
        "book.rule_17_penalty_areas:ball_in_penalty_area",
        "water hazard pond lake ditch stream red yellow stakes lateral drop dropping zone drop zone "
        "opposite side",
    ),
    Incident(
        "played_from_penalty_area",
        "A ball was played from a penalty area, and is in one again, lost, out of bounds or unplayable",
        "17.2",
        THEME,
        "book.rule_17_penalty_areas:played_from_penalty_area",
        "second stroke from water still in extra option",
    ),
    Incident(
        "dropped_in_penalty_area",
        "A ball was dropped in the penalty area under stroke and distance, and the player would rather not play it",
        "17.2",
        THEME,
        "book.rule_17_penalty_areas:dropped_inside_but_not_played",
        "further relief two strokes",
    ),
    Incident(
        "done_in_penalty_area",
        "Something was touched, moved or done while the ball lay in a penalty area",
        "17.1b",
        THEME,
        "book.rule_17_penalty_areas:done_in_penalty_area",
        "grounded club practice swing water leaves stones loose impediment",
    ),
    Incident(
        "relief_ball_moved_by_nature",
        "A dropped ball moved by itself, for example rolled back into the penalty area",
        "9.3",
        THEME,
        "book.rule_17_penalty_areas:relief_ball_moved_by_nature",
        "wind gravity slope rolled after drop natural forces",
    ),
    Incident(
        "found_after_penalty_area_relief",
        "A ball was dropped beside a penalty area, and the original was then found elsewhere in three minutes",
        "17.1c",
        THEME,
        "book.rule_17_penalty_areas:original_found_after_relief",
        "known or virtually certain original found outside",
    ),
    Incident(
        "crossing_point_was_wrong",
        "After a drop it turns out that the ball had crossed the edge of the penalty area somewhere else",
        "17.1d",
        THEME,
        "book.rule_17_penalty_areas:crossing_point_was_wrong",
        "wrong estimate reference point last crossed edge point of entry",
    ),
)
