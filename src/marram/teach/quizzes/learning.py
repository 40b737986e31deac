"""Spaced repetition: when something is asked again, by how often and how lately it was known.

The schedule is FSRS-6 (Free Spaced Repetition Scheduler, the published weights of the library ``fsrs``), without its random
spread, so that the same answers give the same days. Nothing is kept here: whoever learns holds a card for each incident.
"""

from collections.abc import Mapping
from datetime import UTC, datetime
from functools import cache
from random import Random
from typing import Any

from fsrs import Card, Rating, Scheduler

from marram.errors import InputError
from marram.rules.incidents import incident
from marram.said import said
from marram.teach.book.permanent import address_of
from marram.teach.quizzes.approved import Kept, read_so_far
from marram.teach.quizzes.drafting import Question, may_be_asked
from marram.teach.quizzes.quiz import is_taken_up, question
from marram.teach.situations.how_often import weight
from marram.teach.situations.reaching import taught
from marram.teach.situations.sampling import situation

TWICE = 60
"""Incidents, those met most often, of which a phone keeps two questions for where there is no network; of all others it keeps one."""
_TRIES = 120
_CARD = frozenset({"card_id", "state", "step", "stability", "difficulty", "due", "last_review"})
_LATEST = 100
"""Years from now after which a day is none of a card."""


@cache
def units() -> tuple[str, ...]:
    """Return the incidents that are learned, what is met most often first; those nothing can be asked about are left out."""
    asked = [
        one
        for one in taught()
        if may_be_asked(one.name) and read_so_far(Kept.QUESTIONS).approved.get(one.name)
    ]
    return tuple(one.name for one in sorted(asked, key=lambda one: (-weight(one), one.name)))


def question_about(unit: str, seed: int) -> Question | None:
    """Return a question about an incident, the same for the same seed; ``None`` where the lot finds none.

    Raises:
        UnknownIncident: there is no such incident.
    """
    lot = Random(f"{incident(unit).name} {seed}")  # noqa: S311 - a seed, no secret
    held: Question | None = None
    for _ in range(_TRIES):
        one = situation(unit, lot)
        found = None if one is None else question(one, lot)
        if found is not None and is_taken_up(found, lot):
            return found
        held = held or found
    return held


def to_keep(seed: int) -> list[Question]:
    """Return what a phone keeps: a question about every incident, two about those met most often; the same for the same seed."""
    asked = [question_about(unit, seed) for unit in units()]
    more = [question_about(unit, seed + 1) for unit in units()[:TWICE]]
    found: dict[str, Question] = {}
    for one in (*asked, *more):
        if one is not None:
            found.setdefault(address_of(one.situation), one)
    return list(found.values())


def reviewed(card: Mapping[str, Any] | None, right: bool, at: datetime) -> dict[str, Any]:
    """Return a card after one more answer: among the rest ``due``, when it should be asked again (ISO 8601, UTC).

    Args:
        card: the card as it was returned before; ``None`` for what was never asked.
        right: whether the answer was right.
        at: when it was given.

    Raises:
        InputError: it is no card of this schedule, or the answer is older than the one before.
    """
    before = Card(card_id=0) if card is None else _read(card)
    now = at.astimezone(UTC)
    if before.last_review is not None and now < before.last_review:
        raise InputError(
            said("The answer is older than the one before it: give answers in the order they came.")
        )
    after, _ = _scheduler().review_card(before, Rating.Good if right else Rating.Again, review_datetime=now)
    return dict(after.to_dict())


def _read(card: Mapping[str, Any]) -> Card:
    try:
        if set(card) != _CARD:
            raise ValueError
        found = Card.from_dict(card)  # type: ignore[arg-type]
        numbers = [one for one in (found.stability, found.difficulty) if one is not None]
        if not all(isinstance(one, int | float) and 0 < one < 365 * _LATEST for one in numbers):
            raise ValueError
        if found.due.tzinfo is None or (found.last_review is not None and found.last_review.tzinfo is None):
            raise ValueError
    except (KeyError, TypeError, ValueError, AttributeError, OverflowError):
        raise InputError(said("This is no card of the schedule: leave it out to begin anew.")) from None
    return found


@cache
def _scheduler() -> Scheduler:
    return Scheduler(enable_fuzzing=False)
