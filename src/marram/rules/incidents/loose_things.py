"""Incidents: loose impediments and movable obstructions."""

from marram.rules.incidents.incident import Incident

THEME = "Loose impediments and movable obstructions"

INCIDENTS: tuple[Incident, ...] = ()
