"""What was ruled on at an event, out of its log: what happened, the facts told, what was put right; nobody's name."""

from collections.abc import Iterator, Mapping
from datetime import date
from typing import Any

from marram.records.log import Log
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.local_rules.adoption import adopt
from marram.services.log.log import RULING
from marram.services.log.opinions import opinions


def cases_of(log: Log, event: str) -> list[dict[str, Any]]:
    """Return the acts of the rulings of an event that stand, the first first.

    A case that was ruled without the form of play does not depend on it: it is told as one of stroke play. What the Committee
    adopted and who plays together stand beside the facts that an official told, and are told as facts. ``went`` says whether
    the ruling was put right (``corrected``), went otherwise than computed (``otherwise``) or was asked about (``opinion``);
    ``at_first`` what was ruled before it was put right, in one line.

    Args:
        log: the log.
        event: the event, by identifier.
    """
    rulings = log.entries(event, kind=RULING)
    asked = {one.about for one in opinions(log, event)}
    by_id = {one.id: one for one in rulings}
    gone = {one.corrects for one in (*rulings, *log.entries(event, kind="withdrawn"))}
    found = []
    for entry in rulings:
        if entry.id in gone:
            continue
        case = entry.content["case"]
        before = by_id.get(entry.corrects or "")
        at_first = "" if before is None else str(before.content.get("headline", ""))
        if at_first == entry.content.get("headline", ""):
            at_first = ""
        tags = (
            ("corrected", bool(at_first)),
            ("otherwise", bool(entry.content.get("otherwise"))),
            ("opinion", bool(asked & {entry.id, entry.corrects} - {None})),
        )
        went = [name for name, holds in tags if holds]
        found += [
            {
                "incident": act["incident"],
                "facts": dict(_conditions(case)) | (facts := act.get("facts", {})),
                "went": went,
                "at_first": at_first,
                "form": case.get("form_of_play") or facts.get("form_of_play") or "stroke_play",
            }
            for act in case.get("incidents", ())
        ]
    return found


def _conditions(case: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """Yield what a case says beside its acts, as facts: which Local Rules are in force, and who plays together."""
    if "local_rules" in case:
        adopted = adopt(case["local_rules"], date.fromisoformat(case["played_on"])).in_rulings
        for code, fact in LOCAL_RULES.items():
            yield fact.name, "yes" if code in adopted else "no"
    if "sides" in case:
        yield "sides", str(case["sides"])
