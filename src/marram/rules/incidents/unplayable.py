"""Incidents: unplayable ball."""

from marram.rules.incidents.incident import Incident

THEME = "Unplayable ball"

INCIDENTS: tuple[Incident, ...] = ()
