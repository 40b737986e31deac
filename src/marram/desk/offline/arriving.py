"""An entry that waited on a phone arrives: added once, however often it is sent, and what differs is told, never overwritten."""

import json
from dataclasses import replace
from typing import Any

from fastapi import APIRouter, Request, Response

from marram.desk.log.here import now
from marram.desk.log.kept import kept_here
from marram.desk.log.recording import Recorded, entry_of
from marram.records.entry import Entry, Kept
from marram.services.log.moments import DEVICE_AHEAD, device_ahead

router = APIRouter()


@router.post("/api/offline/entry")
def arrive(request: Request, response: Response, waited: Recorded) -> dict[str, Any]:
    """Add an entry, or find it there: its number, and the ruling in one line as the log has it.

    Status 409: another entry has this identifier; both are told, and nothing is changed.
    """
    kept = kept_here(request)
    entry = entry_of(request, waited)
    off = device_ahead(waited.sent_at, now())
    if off is not None:
        entry = replace(entry, content={**entry.content, DEVICE_AHEAD: off})
    found = kept.log.entry(entry.id)
    if found is None:
        found = kept.add(entry)
    elif found.event != kept.event_id or _told(found) != _telling(entry):
        response.status_code = 409
    own = found.event == kept.event_id
    headline = found.told["content"].get("headline", "") if own else ""
    return {"marram": 1, "number": found.number, "headline": headline}


def _told(kept: Kept) -> dict[str, Any]:
    """Return what an entry says, without the program that wrote it down: it may have changed while the phone was away."""
    body = kept.told
    return _core(body.get("given_at"), body.get("by"), body.get("player"), body["content"].get("case", {}))


def _telling(entry: Entry) -> dict[str, Any]:
    body = json.loads(entry.body())
    return _core(body.get("given_at"), body.get("by"), body.get("player"), body["content"].get("case", {}))


def _core(given_at: Any, by: Any, player: Any, case: dict[str, Any]) -> dict[str, Any]:
    return {
        "given_at": given_at,
        "by": by,
        "player": player,
        "case": {key: value for key, value in case.items() if key != "made_with"},
    }
