"""The changes between two editions as they were found, kept in the package so that telling them takes no walk of the book.

``make docs`` writes ``found.json`` anew; a test compares it with what the book says.
"""

import json
from collections.abc import Sequence
from dataclasses import asdict
from importlib.resources import files
from typing import Any

from marram.rules.editions import EDITION_2019, EDITION_2023, FORMER_RULES, as_clarified
from marram.teach.what_changed.grouping import Example, Touched, what_changed

PAIRS = ((FORMER_RULES, EDITION_2019), (EDITION_2019, EDITION_2023))
"""The editions compared, each with the one before."""
FILE = files("marram.teach.what_changed") / "found.json"


def found_now() -> dict[str, Any]:
    """Walk the book and return what ``found.json`` should hold."""
    return {
        "marram": 1,
        "kind": "what_changed",
        "pairs": [
            {
                "from": earlier.year,
                "to": later.year,
                "changes": [asdict(one) for one in what_changed(as_clarified(earlier), as_clarified(later))],
            }
            for earlier, later in PAIRS
        ],
    }


def kept(earlier: int, later: int) -> Sequence[Touched] | None:
    """Return the changes kept for two editions named by their years; ``None`` where that pair is not kept."""
    document = json.loads(FILE.read_text(encoding="utf-8"))
    for pair in document["pairs"]:
        if (pair["from"], pair["to"]) == (earlier, later):
            return [Touched(**{**one, "example": Example(**one["example"])}) for one in pair["changes"]]
    return None
