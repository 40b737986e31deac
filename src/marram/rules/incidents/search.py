"""Incidents: searching and identifying."""

from marram.rules.incidents.incident import Incident

THEME = "Searching and identifying"

INCIDENTS: tuple[Incident, ...] = ()
