"""Which incidents are likely where a ball lies, as tables for a phone (``desk/offline/static/likely_here.js``)."""

from typing import Any

from marram.rules.facts.ball import Area
from marram.services.cases.conditions import Conditions
from marram.services.cases.likely import (
    AREA_BEFORE_NEAR,
    BY_AREA,
    BY_KIND,
    MOST,
    NEAR,
    by_competition,
    by_local_rule,
)


def likely_tables(conditions: Conditions) -> dict[str, Any]:
    """Return the tables of :mod:`marram.services.cases.likely` under the conditions of a book, with areas as a phone names them.

    Keys: ``most`` and ``near`` (metres); ``by_kind``, the weightiest first; ``by_area``; ``area_first``: where the area comes
    before what is near; ``by_local_rule`` by area; ``by_competition``.
    """
    return {
        "most": MOST,
        "near": NEAR,
        "by_kind": [[kind.value, list(names)] for kind, names in BY_KIND.items()],
        "by_area": {_named(area): list(names) for area, names in BY_AREA.items()},
        "area_first": [_named(area) for area in AREA_BEFORE_NEAR],
        "by_local_rule": {_named(area): by_local_rule(area, conditions) for area in BY_AREA},
        "by_competition": by_competition(conditions),
    }


def _named(area: Area | None) -> str:
    return area.value if area else "out"


__all__ = ["likely_tables"]
