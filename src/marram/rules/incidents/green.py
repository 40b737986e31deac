"""Incidents: on the putting green."""

from marram.rules.incidents.incident import Incident

THEME = "On the putting green"

INCIDENTS: tuple[Incident, ...] = ()
