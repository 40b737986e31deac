"""Incidents: clubs, ball and equipment."""

from marram.rules.incidents.incident import Incident

THEME = "Clubs, ball and equipment"

INCIDENTS: tuple[Incident, ...] = ()
