"""Incidents: unplayable ball."""

from marram.rules.incidents.incident import Incident

THEME = "Unplayable ball"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "unplayable_ball",
        "The player treats the ball as unplayable",
        "19.1",
        THEME,
        "book.rule_19_unplayable:unplayable_ball",
        "bush tree plugged bunker lip drop one stroke stuck in a tree wedged in a penalty area",
    ),
)
