"""Incidents: wrong ball, other ball, order of play."""

from marram.rules.incidents.incident import Incident

THEME = "Wrong ball, other ball, order of play"

INCIDENTS: tuple[Incident, ...] = ()
