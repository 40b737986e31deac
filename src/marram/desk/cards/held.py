"""The one reading of the log that all requests of a desk share."""

from fastapi import FastAPI

from marram.desk.log.kept import KeptHere
from marram.services.results.event_results import EventResults


def event_results(app: FastAPI, kept: KeptHere) -> EventResults:
    """Return the cards and results of the desk's event, read on by whoever asks."""
    found: EventResults | None = getattr(app.state, "event_results", None)
    if found is None:
        found = app.state.event_results = EventResults(kept.log, kept.event_id)
    return found
