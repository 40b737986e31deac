"""Incidents: improving the conditions."""

from marram.rules.incidents.incident import Incident

THEME = "Improving the conditions"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "fixed_object_moved",
        "Something growing or fixed was moved, bent or broken",
        "8.1a(1)",
        THEME,
        "book.rule_08_improving:fixed_object_moved",
        "branch grass bush boundary stake fence tee-marker stance swing improve tree leaves knocked "
        "down broke bent branches out of bounds post rope sign backed into",
    ),
    Incident(
        "object_put_in_position",
        "A loose or movable object was put where it helps the stroke",
        "8.1a(2)",
        THEME,
        "book.rule_08_improving:object_put_in_position",
        "building a stance towel kneel stone rake knees built",
    ),
    Incident(
        "ground_altered",
        "The ground, sand, soil, dew, frost or water was altered before the stroke",
        "8.1a(3)",
        THEME,
        "book.rule_08_improving:ground_altered",
        "divot pitch-mark pressed down smoothed footprint line of play improve lie replaced trod "
        "improved tapped flattened behind ball dew wiped patted",
    ),
    Incident(
        "conditions_worsened",
        "The lie, stance, swing or line of play got worse after the ball came to rest",
        "8.1d",
        THEME,
        "book.rule_08_restoring:conditions_worsened",
        "restore sand splashed pitch-mark bunker shot footprints animal raked lie altered on green "
        "other player pitch mark divot ball landed",
    ),
    Incident(
        "own_conditions_altered",
        "The player altered other conditions on purpose to affect their own ball or a later stroke",
        "8.2",
        THEME,
        "book.rule_08_deliberate:own_conditions_altered",
        "slope roll back later stroke care for the course branch relief area",
    ),
    Incident(
        "anothers_conditions_altered",
        "The player altered conditions on purpose to help or hinder another player",
        "8.3",
        THEME,
        "book.rule_08_deliberate:anothers_conditions_altered",
        "improve worsen partner opponent knowledge",
    ),
)
