"""Incidents: where the round and its holes are begun."""

from marram.rules.incidents.incident import Incident

THEME = "Starting place and order of holes"

INCIDENTS: tuple[Incident, ...] = (
    Incident(
        "started_at_wrong_place",
        "A player started the round at the wrong hole or starting place",
        "5.3a",
        THEME,
        "book.rule_05_order_of_holes:started_at_wrong_place",
        "wrong starting point tee hole tenth first shotgun draw start list two-tee went to began",
    ),
    Incident(
        "holes_out_of_order",
        "Holes were played in the wrong order, or one was left out",
        "5.1",
        THEME,
        "book.rule_05_order_of_holes:holes_out_of_order",
        "skipped missed omitted sequence order wrong hole left out jumped next route lost way short cut played twice",
    ),
)
