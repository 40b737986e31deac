"""Which provisions the rulings of each incident cite: kept in the package, so that each can be given its turn at once.

``make changes`` writes ``reached.json`` anew; a test compares it with what the book says.
"""

import json
from collections.abc import Mapping, Sequence
from datetime import date
from functools import cache
from importlib.resources import files
from typing import Any

from marram.rules.editions import EDITION_2023, as_clarified
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import outcomes
from marram.rules.incidents import INCIDENTS
from marram.rules.incidents.incident import Incident
from marram.rules.ruling import Outcome, Ruling

FILE = files("marram.teach.situations") / "reached.json"
TODAY = as_clarified(EDITION_2023)
"""The day on which situations are sampled: the newest edition, as clarified."""


def taught() -> list[Incident]:
    """Return the incidents that situations are taken from: all but those that repeat others to show what changed in 2019."""
    return [one for one in INCIDENTS if not one.for_teaching]


def citations_of(outcome: Outcome) -> tuple[str, ...]:
    """Return the provisions that a ruling rests on; none for what is no ruling."""
    return outcome.citations if isinstance(outcome, Ruling) else ()


def offered_by(outcome: Outcome) -> tuple[str, ...]:
    """Return the provisions of the relief that a ruling offers, which it need not rest on: those that say how it is taken."""
    return tuple(option.citation for option in outcome.relief) if isinstance(outcome, Ruling) else ()


def provisions_of(name: str, day: date) -> list[str]:
    """Return the provisions that the rulings of an incident cite on a day, in the order of their names."""
    return sorted({one for end in outcomes(graph_of(name, day)) for one in citations_of(end)})


def offers_of(name: str, day: date) -> list[str]:
    """Return the provisions that rulings of an incident offer relief under and rest on nowhere, in the order of their names."""
    offered = {one for end in outcomes(graph_of(name, day)) for one in offered_by(end)}
    return sorted(offered - {*provisions_of(name, day)})


def reached_now() -> dict[str, Any]:
    """Walk the book and return what ``reached.json`` should hold."""
    return {
        "marram": 1,
        "kind": "provisions_reached",
        "played_on": TODAY.isoformat(),
        "incidents": {one.name: provisions_of(one.name, TODAY) for one in taught()},
        "offered": {one.name: found for one in taught() if (found := offers_of(one.name, TODAY))},
    }


@cache
def reached() -> Mapping[str, Sequence[str]]:
    """Return the provisions kept for each incident."""
    found: Mapping[str, Sequence[str]] = json.loads(FILE.read_text(encoding="utf-8"))["incidents"]
    return found


@cache
def reached_from() -> Mapping[str, Sequence[str]]:
    """Return the incidents whose rulings cite each provision, by provision."""
    found: dict[str, list[str]] = {}
    for name, provisions in reached().items():
        for provision in provisions:
            found.setdefault(provision, []).append(name)
    return found


@cache
def met_in() -> Mapping[str, Sequence[str]]:
    """Return the incidents in which each provision is met: rulings rest on it, or offer relief under it."""
    found = {provision: list(names) for provision, names in reached_from().items()}
    for name, provisions in json.loads(FILE.read_text(encoding="utf-8"))["offered"].items():
        for provision in provisions:
            found.setdefault(provision, []).append(name)
    return found
