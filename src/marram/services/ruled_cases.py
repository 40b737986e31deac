"""What was ruled on at an event, out of its log: what happened, the facts told, the form of play; nobody's name."""

from typing import Any

from marram.records.log import Log
from marram.services.log import RULING


def cases_of(log: Log, event: str) -> list[dict[str, Any]]:
    """Return the acts of the rulings of an event that stand, the first first.

    Args:
        log: the log.
        event: the event, by identifier.
    """
    rulings = log.entries(event, kind=RULING)
    gone = {one.corrects for one in (*rulings, *log.entries(event, kind="withdrawn"))}
    found = []
    for entry in rulings:
        if entry.id in gone:
            continue
        case = entry.content["case"]
        form = case.get("conditions", {}).get("form_of_play") or "stroke_play"
        found += [
            {"incident": act["incident"], "facts": act.get("facts", {}), "form": form}
            for act in case.get("incidents", ())
        ]
    return found
