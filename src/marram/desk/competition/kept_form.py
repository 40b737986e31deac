"""The form that changes conditions of the event, as it was filled in, and what it gives of them."""

from collections.abc import Sequence
from datetime import date
from typing import Any

from pydantic import BaseModel

from marram.errors import InputError, shown
from marram.records.starting_sheet import Known
from marram.said import said

STEPS = 4
"""How many steps of a penalty a line of the code of conduct has: as many as there are penalties (Rule 1.2b)."""


class Filled(BaseModel):
    """The form as it was filled in; what stands in it several times comes in the order of the page."""

    tapped: str = ""
    stood: str = ""
    days: list[str] = []
    local: list[str] = []
    local_known: str = "yes"
    scores: list[str] = []
    allowance: str = ""
    cut_after: str = ""
    cut_places: str = ""
    cut_within: str = ""
    cut_ties: bool = False
    cut_score: str = ""
    first: list[str] = []
    other: list[str] = []
    strokes: str = ""
    pace_policy: str = ""
    minutes: str = ""
    about: list[str] = []
    step: list[str] = []
    notice: str = ""
    closes: str = ""
    public: str = ""

    def given(self) -> dict[str, Any]:
        """Return the conditions by their keys; ``None`` for what is left empty. A number that is none goes on as typed, to be told."""
        return {
            "local_rules": self.local if self.local_known == "yes" else None,
            "scores": self.scores or None,
            "allowance": _number(self.allowance),
            "cut": self._cut(),
            "ties": self._ties(),
            "pace_policy": self.pace_policy.strip() or None,
            "minutes_of_play": _number(self.minutes),
            "code_of_conduct": self._conduct() or None,
            "notice_to_players": [one.strip() for one in self.notice.splitlines() if one.strip()] or None,
            "closes": self.closes.strip() or None,
            "results_public": {"true": True, "false": False}.get(self.public),
        }

    def _cut(self) -> dict[str, Any] | None:
        found = {
            "after_round": _number(self.cut_after),
            "places": _number(self.cut_places),
            "within": _number(self.cut_within),
            "score": self.cut_score or None,
        }
        if found["after_round"] is None and found["places"] is None and found["within"] is None:
            return None
        return {
            **{key: value for key, value in found.items() if value is not None},
            "ties": self.cut_ties,
        }

    def _ties(self) -> dict[str, Any] | None:
        first, other = [one for one in self.first if one], [one for one in self.other if one]
        found = {
            "first_place": first or None,
            "other_places": other or None,
            "countback_strokes": self.strokes or None,
        }
        return {key: value for key, value in found.items() if value is not None} or None

    def _conduct(self) -> list[dict[str, Any]]:
        rows = [self.step[at : at + STEPS] for at in range(0, len(self.step), STEPS)]
        return [
            {"about": about.strip(), "penalties": [one for one in steps if one]}
            for about, steps in zip(self.about, rows, strict=False)
            if about.strip() or any(steps)
        ]


def days_given(given: Sequence[str], known: Sequence[Known]) -> dict[str, date]:
    """Return the days of rounds that differ from what they are, by the identifier of the round.

    Raises:
        InputError: what is given for one is no day; each is told.
    """
    found: dict[str, date] = {}
    faults = []
    for one, typed in zip(known, given, strict=False):
        try:
            day = date.fromisoformat(typed.strip()) if typed.strip() else one.day
        except ValueError:
            faults.append(
                said("{given} is no day of a round; give one as year-month-day.", given=shown(typed))
            )
            continue
        if day is not None and day != one.day:
            found[one.id] = day
    if faults:
        raise InputError(*faults)
    return found


def _number(typed: str) -> int | float | str | None:
    typed = typed.strip()
    if not typed:
        return None
    try:
        return int(typed) if typed.isascii() and typed.lstrip("-").isdecimal() else float(typed)
    except ValueError:
        return typed
