"""Incidents: the teeing area."""

from marram.rules.incidents.incident import Incident

THEME = "The teeing area"

INCIDENTS: tuple[Incident, ...] = ()
