"""Incidents: in a bunker."""

from marram.rules.incidents.incident import Incident

THEME = "In a bunker"

INCIDENTS: tuple[Incident, ...] = ()
