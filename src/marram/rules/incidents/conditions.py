"""Incidents: improving the conditions."""

from marram.rules.incidents.incident import Incident

THEME = "Improving the conditions"

INCIDENTS: tuple[Incident, ...] = ()
