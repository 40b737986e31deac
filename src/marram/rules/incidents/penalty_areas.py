"""Incidents: penalty areas."""

from marram.rules.incidents.incident import Incident

THEME = "Penalty areas"

INCIDENTS: tuple[Incident, ...] = ()
