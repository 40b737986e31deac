"""Incidents: other forms of play, partners and teams."""

from marram.rules.incidents.incident import Incident

THEME = "Other forms of play, partners and teams"

INCIDENTS: tuple[Incident, ...] = ()
