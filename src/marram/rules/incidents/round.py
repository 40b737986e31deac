"""Incidents: the round."""

from marram.rules.incidents.incident import Incident

THEME = "The round"

INCIDENTS: tuple[Incident, ...] = ()
