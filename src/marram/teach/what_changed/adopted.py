"""What adopting a Local Rule changes: in which incidents, in how many situations, and the shortest that shows it.

``make changes`` writes ``adopted.json`` anew; a test compares it with what the book says.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass
from datetime import date
from functools import cache
from importlib.resources import files
from typing import Any

from marram.rules.editions import EDITION_2019, EDITION_2023, as_clarified
from marram.rules.engine.changes import Change, adopting
from marram.rules.engine.export import facts_of
from marram.rules.engine.fact import Fact
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.incidents import INCIDENTS, incident
from marram.rules.local_rules.adoption import adopt
from marram.teach.situations.fitting_together import contradict
from marram.teach.situations.how_often import weight
from marram.teach.what_changed.grouping import costs_the_same, oddity_of, other_local_rules, tokens_of

FILE = files("marram.teach.what_changed") / "adopted.json"
DAYS = (as_clarified(EDITION_2019), as_clarified(EDITION_2023))
"""The days for which it is kept: each edition as clarified."""


@dataclass(frozen=True, slots=True)
class Moved:
    """What adopting a Local Rule changes in one incident.

    Attributes:
        incident: the incident's name.
        situations: how many situations of the book are ruled otherwise.
        facts: the shortest of them, answers as tokens; the Local Rule itself is no part of it.
    """

    incident: str
    situations: int
    facts: Mapping[str, Any]


def found_for(code: str, day: date) -> list[Moved]:
    """Walk the book and return what adopting a Local Rule changes on a day, what happens most on courses first.

    Args:
        code: its published code.
        day: the day of play.
    """
    fact = LOCAL_RULES[code]
    every = [here for name in asking(fact) if (here := moved(name, day, fact)) is not None]
    return sorted(every, key=lambda one: (-weight(incident(one.incident)), -one.situations, one.incident))


def asking(fact: Fact[Any]) -> list[str]:
    """Return the incidents in which it is asked whether a Local Rule is in force."""
    return [one.name for one in INCIDENTS if not one.for_teaching and fact in facts_of(one.name)]


def moved(name: str, day: date, fact: Fact[bool]) -> Moved | None:
    """Walk an incident and return what adopting a Local Rule changes in it; ``None`` where nothing."""
    every = [one for one in adopting(name, day, fact) if not contradict(tokens_of(one))]
    differing = [one for one in every if not one.renumbered_only] or every
    if not differing:
        return None
    shown = min(differing, key=_how_plain)
    return Moved(name, sum(one.combinations for one in differing), tokens_of(shown))


def _how_plain(one: Change) -> tuple[float, ...]:
    return other_local_rules(one), costs_the_same(one), len(one.facts), oddity_of(one)


def adopted_now() -> dict[str, Any]:
    """Walk the book and return what ``adopted.json`` should hold."""
    return {
        "marram": 1,
        "kind": "local_rules_adopted",
        "days": [
            {
                "day": day.isoformat(),
                "codes": {
                    code: [asdict(one) for one in found_for(code, day)]
                    for code in LOCAL_RULES
                    if not adopt([code], day).faults
                },
            }
            for day in DAYS
        ],
    }


def adopted(code: str, day: date) -> Sequence[Moved]:
    """Return what adopting a Local Rule changes on a day: as kept for that day's edition, or from a walk.

    Args:
        code: its published code.
        day: the day of play.
    """
    return _kept()[day][code] if day in _kept() and code in _kept()[day] else found_for(code, day)


@cache
def _kept() -> Mapping[date, Mapping[str, Sequence[Moved]]]:
    document = json.loads(FILE.read_text(encoding="utf-8"))
    return {
        date.fromisoformat(one["day"]): {
            code: [Moved(**each) for each in every] for code, every in one["codes"].items()
        }
        for one in document["days"]
    }
