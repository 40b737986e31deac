"""Incidents: lost, out of bounds, provisional ball."""

from marram.rules.incidents.incident import Incident

THEME = "Lost, out of bounds, provisional ball"

INCIDENTS: tuple[Incident, ...] = ()
