"""A result that is closed, and what may still change it: the Rules say (Rules 20.2d and 20.2e), by their own incidents."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from enum import Enum
from typing import Any

from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts, Result
from marram.rules.ruling import Judgement, Ruling


class Change(Enum):
    """Why somebody wants to change a closed result."""

    BREACH = "breach"
    """A breach came to light afterwards (Rule 20.2e)."""
    ADMINISTRATIVE = "administrative"
    """A mistake of the Committee in its work: a handicap or total worked out wrongly, a tie decided wrongly (20.2d(2))."""


_INCIDENT = {
    Change.BREACH: ("found_after_result", {}),
    Change.ADMINISTRATIVE: ("ruling_was_wrong", {"ruling_fault": "administrative"}),
}


@dataclass(frozen=True, slots=True)
class Closed:
    """A result that is closed.

    Attributes:
        at: when the competition closed, by the Terms of the Competition or else when the result was final.
    """

    at: datetime


@dataclass(frozen=True, slots=True)
class Reopening:
    """Whether a closed result may be changed.

    Attributes:
        allowed: whether it may; ``None`` while a question is open, or the Committee is to judge.
        result: what the Rules say, or ask next.
        facts: the facts that were given.
    """

    allowed: bool | None
    result: Result
    facts: Mapping[str, Any]


def reopening(
    change: Change,
    facts: Mapping[str, Any],
    *,
    played_on: date,
    form: FormOfPlay,
    closed: Closed | None,
) -> Reopening:
    """Return whether a result may still be changed, as Rule 20.2 has it.

    Args:
        change: why it is to be changed.
        facts: what is known, by the names of facts; what is not known is asked.
        played_on: the day of play, which decides the edition.
        form: the form of play.
        closed: the close; ``None`` where the competition is still open, so that any mistake is put right.
    """
    name, known = _INCIDENT[change]
    given = {**known, **facts}
    result = rule(name, given, played_on=played_on, form_of_play=form)
    if closed is None:
        return Reopening(True, result, given)
    if isinstance(result, NeedFacts | Judgement):
        return Reopening(None, result, given)
    changes = isinstance(result, Ruling) and (
        bool(result.penalties) or "correct_administrative_mistake" in result.notes
    )
    return Reopening(changes, result, given)
