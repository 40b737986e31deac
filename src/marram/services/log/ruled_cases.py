"""What was ruled on at an event, out of its log: what happened, the facts told, the form of play; nobody's name."""

from typing import Any

from marram.records.log import Log
from marram.services.log.log import RULING


def cases_of(log: Log, event: str) -> list[dict[str, Any]]:
    """Return the acts of the rulings of an event that stand, the first first.

    A case that was ruled without the form of play does not depend on it: it is told as one of stroke play.

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
        found += [
            {
                "incident": act["incident"],
                "facts": (facts := act.get("facts", {})),
                "form": case.get("form_of_play") or facts.get("form_of_play") or "stroke_play",
            }
            for act in case.get("incidents", ())
        ]
    return found
