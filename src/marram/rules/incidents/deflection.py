"""Incidents: the ball in motion was stopped or deflected."""

from marram.rules.incidents.incident import Incident

THEME = "The ball in motion was stopped or deflected"

INCIDENTS: tuple[Incident, ...] = ()
