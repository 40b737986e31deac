"""Which principle stands behind a provision: by the longest number that the citation begins with."""

import re
from collections.abc import Iterable, Mapping

from marram.words.texts import text

MOST = 2
"""Principles told of a ruling at most (own choice: more would be a lecture)."""
BEHIND: Mapping[str, tuple[str, ...]] = {
    "area_decides": ("2",),
    "as_found": ("1.1", "2.1", "8", "8.1"),
    "as_it_lies": ("9", "9.1", "9.2"),
    "nature_moves": ("9.3",),
    "mover_pays": ("9.4",),
    "others_move": ("9.5", "9.6", "9.7"),
    "honesty": ("1.2", "1.3a"),
    "penalty_fits": ("1.3", "1.3c"),
    "no_relief_from_edge": ("2.3", "Definitions: boundary object"),
    "form": ("3", "21", "23.1", "22.1", "24"),
    "card": ("3.3b",),
    "equipment": ("4",),
    "pace": ("5",),
    "hole": ("6", "6.1", "6.2"),
    "one_ball": ("6.3",),
    "turn": ("6.4",),
    "search": ("7",),
    "own_stroke": ("10", "10.1"),
    "advice": ("10.2", "10.3", "24.4"),
    "rub": ("11",),
    "bunker": ("12",),
    "green": ("13", "13.1"),
    "flagstick": ("13.2", "13.3"),
    "put_back": ("14", "14.1", "14.2"),
    "drop": ("14.3",),
    "put_right": ("14.5",),
    "where_from": ("14.6",),
    "right_place": ("14.7",),
    "loose": ("15", "15.1", "15.2"),
    "in_the_way": ("15.3",),
    "free_relief": ("16", "16.1"),
    "danger": ("16.2",),
    "embedded": ("16.3", "16.4"),
    "water": ("17",),
    "lost": ("18", "18.1", "18.2"),
    "provisional": ("18.3",),
    "unplayable": ("19",),
    "doubt": ("20",),
    "other_forms": ("21",),
    "side": ("22",),
    "partners": ("23",),
    "team": ("24",),
    "adapted": ("25",),
}
"""For each principle the Rules, sub-rules and Definitions it stands behind; a longer number goes before a shorter one."""
LOCAL = "local"
_LOCAL_RULE = re.compile(r"[A-Z]-\d")
_BEFORE = re.compile(r"^Clarification ")


def principles_of(citations: Iterable[str]) -> tuple[str, ...]:
    """Return the principles behind what a ruling cites, in our own words, that of its first provision first."""
    found = dict.fromkeys(key for one in citations if (key := principle_behind(one)))
    return tuple(text(f"principles.of.{key}") for key in list(found)[:MOST])


def principle_behind(citation: str) -> str:
    """Return the key of the principle behind a provision; empty where none is told."""
    number = _BEFORE.sub("", citation)
    if _LOCAL_RULE.match(number):
        return LOCAL
    fitting = [
        (len(start), key) for key, starts in BEHIND.items() for start in starts if _begins(number, start)
    ]
    return max(fitting)[1] if fitting else ""


def _begins(number: str, start: str) -> bool:
    """Whether a number is another one or below it: ``16.1a(3)`` is below ``16.1`` and ``16``, ``16.10`` is not below ``16.1``."""
    rest = number.removeprefix(start)
    return number.startswith(start) and not rest[:1].isdigit()
