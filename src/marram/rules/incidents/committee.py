"""Incidents: resolving doubt and disputes."""

from marram.rules.incidents.incident import Incident

THEME = "Resolving doubt and disputes"

INCIDENTS: tuple[Incident, ...] = ()
