"""Incidents: marking, lifting, cleaning, replacing."""

from marram.rules.incidents.incident import Incident

THEME = "Marking, lifting, cleaning, replacing"

INCIDENTS: tuple[Incident, ...] = ()
