"""Incidents: the ball at rest moved."""

from marram.rules.incidents.incident import Incident

THEME = "The ball at rest moved"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "ball_moved_by_player",
        "The player or caddie moved, lifted or touched the ball at rest",
        "9.4",
        THEME,
        "book.rule_09_ball_at_rest_moved:ball_moved_by_player",
        "kicked trod practice swing address",
    ),
)
