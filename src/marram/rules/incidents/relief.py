"""Incidents: free relief."""

from marram.rules.incidents.incident import Incident

THEME = "Free relief"

INCIDENTS: tuple[Incident, ...] = ()
