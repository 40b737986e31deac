"""Spaced repetition: what is known comes later and later, what is not comes soon; nothing is kept but the card."""

from datetime import UTC, datetime, timedelta

import pytest
from fsrs import Card, Rating, Scheduler

from marram.errors import InputError
from marram.teach.quizzes.learning import question_about, reviewed, units

BEGAN = datetime(2026, 3, 1, 9, 0, tzinfo=UTC)


def due(card) -> datetime:
    """Return when a card comes again."""
    return datetime.fromisoformat(card["due"])


def test_what_is_known_comes_later_each_time() -> None:
    """Answered right each time on the day it is due, the gaps grow."""
    card, at, gaps = None, BEGAN, []
    for _ in range(6):
        card = reviewed(card, True, at)
        gaps.append(due(card) - at)
        at = due(card)
    assert gaps[1:] == sorted(gaps[1:])
    assert gaps[-1] > timedelta(days=30)


def test_what_was_forgotten_comes_sooner_than_what_was_known() -> None:
    """After the same history a wrong answer brings it back sooner than a right one."""
    card = reviewed(reviewed(None, True, BEGAN), True, BEGAN + timedelta(days=3))
    at = due(card)
    assert due(reviewed(card, False, at)) < due(reviewed(card, True, at))


def test_the_schedule_is_that_of_the_library() -> None:
    """Right, wrong, right come to the same day as by the library itself."""
    scheduler, theirs, ours, at = Scheduler(enable_fuzzing=False), Card(card_id=0), None, BEGAN
    for right in (True, False, True, True):
        theirs, _ = scheduler.review_card(theirs, Rating.Good if right else Rating.Again, review_datetime=at)
        ours = reviewed(ours, right, at)
        at += timedelta(days=2)
    assert due(ours) == theirs.due


@pytest.mark.parametrize(
    "card",
    [
        {},
        {"due": "soon"},
        {**Card(card_id=0).to_dict(), "stability": -1},
        {**Card(card_id=0).to_dict(), "state": 9},
    ],
)
def test_what_is_no_card_is_refused(card) -> None:
    """A card that was not returned before is refused in a sentence."""
    with pytest.raises(InputError):
        reviewed(card, True, BEGAN)


def test_answers_out_of_order_are_refused() -> None:
    """An answer older than the last one says so."""
    card = reviewed(None, True, BEGAN)
    with pytest.raises(InputError, match="older"):
        reviewed(card, True, BEGAN - timedelta(days=1))


def test_each_incident_can_be_asked_about_anew() -> None:
    """The same seed gives the same question about an incident, another seed mostly another situation."""
    unit = units()[0]
    asked = [question_about(unit, seed) for seed in (1, 1, 2, 3, 4)]
    assert asked[0] == asked[1]
    assert len({str(one.situation.facts) for one in asked}) > 1
    assert {one.situation.incident for one in asked} == {unit}
