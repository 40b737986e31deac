"""Incidents: dropping, placing and wrong places."""

from marram.rules.incidents.incident import Incident

THEME = "Dropping, placing and wrong places"

INCIDENTS: tuple[Incident, ...] = ()
