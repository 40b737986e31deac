"""The changes between two days as they were found, kept in the package so that telling them takes no walk of the book.

``make changes`` writes ``found.json`` anew; a test compares it with what the book says.
"""

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import asdict
from datetime import date, timedelta
from functools import cache
from importlib.resources import files
from itertools import combinations
from typing import Any

from marram.course.progress import Progress, no_progress
from marram.rules.editions import (
    CLARIFIED_ON,
    EDITION_2019,
    EDITION_2023,
    EDITIONS,
    FORMER_RULES,
    as_clarified,
    decided_since,
)
from marram.teach.what_changed.grouping import Example, Touched, what_changed

EDITIONS_COMPARED = (
    (as_clarified(FORMER_RULES), as_clarified(EDITION_2019)),
    (as_clarified(EDITION_2019), as_clarified(EDITION_2023)),
)
"""Each edition with the one before, both as clarified up to their last day."""
CLARIFICATIONS = tuple((day - timedelta(days=1), day) for day in CLARIFIED_ON)
"""The day of each clarification that decides something otherwise, with the day before."""
PAIRS = (*EDITIONS_COMPARED, *CLARIFICATIONS)
"""What is asked for most; each has its words tried by tests."""
_STATES = sorted({*EDITIONS, *CLARIFIED_ON})
_ASKED = {(decided_since(earlier), decided_since(later)) for earlier, later in PAIRS}
OTHER_PAIRS = tuple(pair for pair in combinations(_STATES, 2) if pair not in _ASKED)
"""Any two other days since 2019 lie in one of these pairs. (Former Rules are compared in the few incidents of teaching, at once.)"""
FILE = files("marram.teach.what_changed") / "found.json"


def found_now(pairs: Iterable[tuple[date, date]] = (*PAIRS, *OTHER_PAIRS)) -> dict[str, Any]:
    """Walk the book and return what ``found.json`` should hold, or of it what is found between some days."""
    return {
        "marram": 1,
        "kind": "what_changed",
        "pairs": [
            {
                "from": earlier.isoformat(),
                "to": later.isoformat(),
                "changes": [asdict(one) for one in what_changed(earlier, later)],
            }
            for earlier, later in pairs
        ],
    }


def found(earlier: date, later: date, progress: Progress = no_progress) -> Sequence[Touched]:
    """Return the changes between two days: those kept, or, of days that none are kept for, those of a walk.

    Args:
        earlier: the earlier day.
        later: the later one.
        progress: told how far a walk is.
    """
    ages = decided_since(earlier), decided_since(later)
    if ages[0] == ages[1]:
        return ()
    if ages in _kept():
        return _kept()[ages]
    names = {name for every in _kept().values() for one in every for name in one.incidents}
    walked = [name for name in names if name.startswith("teaching_") == (earlier < EDITION_2019)]
    return what_changed(earlier, later, walked, progress)


@cache
def _kept() -> Mapping[tuple[date, date], Sequence[Touched]]:
    document = json.loads(FILE.read_text(encoding="utf-8"))
    return {
        (decided_since(date.fromisoformat(pair["from"])), decided_since(date.fromisoformat(pair["to"]))): [
            Touched(**{**one, "example": Example(**one["example"])}) for one in pair["changes"]
        ]
        for pair in document["pairs"]
    }
