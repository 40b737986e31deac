"""Incidents: making a stroke, advice and help."""

from marram.rules.incidents.incident import Incident

THEME = "Making a stroke, advice and help"

INCIDENTS: tuple[Incident, ...] = ()
