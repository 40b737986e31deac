"""Incidents: the teeing area."""

from marram.rules.incidents.incident import Incident

THEME = "The teeing area"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "began_outside_teeing_area",
        "A player began the hole from outside the teeing area",
        "6.1b",
        THEME,
        "book.rule_06_teeing_area:began_outside_teeing_area",
        "in front of tee-markers wrong tee ahead markers teed up tees colour outside forward behind two "
        "club-lengths cancelled recall "
        "tee of another hole wrong hole",
    ),
    Incident(
        "ball_at_edge_of_teeing_area",
        "Was the ball in the teeing area?",
        "6.2b(1)",
        THEME,
        "book.rule_06_teeing_area:ball_at_edge_of_teeing_area",
        "partly inside edge of teeing area feet stance stood outside line two club-lengths back overhang tee",
    ),
    Incident(
        "fell_off_tee",
        "The ball fell or was knocked off the tee",
        "6.2b(5)",
        THEME,
        "book.rule_06_teeing_area:fell_off_tee",
        "before stroke practice swing knocked address addressed wind toppled falling swung missed accidentally",
    ),
    Incident(
        "ball_in_play_in_teeing_area",
        "After a stroke the ball still lies near the tee",
        "6.2b(6)",
        THEME,
        "book.rule_06_teeing_area:ball_in_play_in_teeing_area",
        "missed air shot topped whiff airswing swing fresh re-tee tee again rolled back fell off",
    ),
    Incident(
        "tee_marker_moved",
        "A player moved a tee-marker",
        "6.2b(4)",
        THEME,
        "book.rule_06_teeing_area:tee_marker_moved",
        "marker in the way missing gone tee markers kicked straightened tripped",
    ),
    Incident(
        "teeing_area_improved",
        "A player improved something in the teeing area",
        "6.2b(3)",
        THEME,
        "book.rule_06_teeing_area:teeing_area_improved",
        "grass divot branch pressed down weeds sand dew stamped behind ball broke off",
    ),
    Incident(
        "teed_wrongly",
        "A player teed the ball on something other than a tee",
        "6.2b(2)",
        THEME,
        "book.rule_06_teeing_area:teed_wrongly",
        "non-conforming nonconforming tee peg height brush scorecard object cone illegal long",
    ),
)
