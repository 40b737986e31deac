"""Incidents: players with disabilities."""

from marram.rules.incidents.incident import Incident

THEME = "Players with disabilities"

INCIDENTS: tuple[Incident, ...] = ()
