"""Classes that are taught, in both databases: the first answer of a phone stays, a second tap changes nothing."""

from datetime import UTC, datetime

from marram.records.classes import (
    CODE_LENGTH,
    LETTERS,
    answer_class,
    answered_by,
    answers_of,
    begin_class,
    class_of,
    classes,
    end_class,
    explain_class,
    next_question,
)
from marram.records.database import Records

NOW = datetime(2026, 2, 3, 18, 30, tzinfo=UTC)


def test_a_class_is_found_by_its_code_however_it_is_typed(records: Records, event: str) -> None:
    """Small letters and spaces around it do not matter; another code finds nothing."""
    one = begin_class(records, event, NOW)
    assert len(one.code) == CODE_LENGTH
    assert set(one.code) <= set(LETTERS)
    assert class_of(records, event, f" {one.code.lower()} ") == one
    assert class_of(records, event, "OOOOOO") is None
    assert classes(records, event) == [one]


def test_the_first_answer_of_a_phone_stays(records: Records, event: str) -> None:
    """A second answer of the same phone does not count, one of another phone does."""
    one = begin_class(records, event, NOW)
    assert answer_class(records, one, "phone 1", 2, NOW)
    assert not answer_class(records, one, "phone 1", 0, NOW)
    assert answer_class(records, one, "phone 2", 0, NOW)
    assert answered_by(records, one, "phone 1") == 2
    assert answers_of(records, one) == {1: {2: 1, 0: 1}}


def test_nothing_counts_once_the_explanation_is_open_or_the_question_is_over(
    records: Records, event: str
) -> None:
    """What was on its way to the question before counts neither for it nor for the next."""
    one = begin_class(records, event, NOW)
    explain_class(records, one)
    assert not answer_class(records, one, "phone 1", 1, NOW)
    next_question(records, one)
    assert not answer_class(records, one, "phone 1", 1, NOW)
    now = class_of(records, event, one.code)
    assert now is not None
    assert (now.number, now.is_explained) == (2, False)
    assert answer_class(records, now, "phone 1", 1, NOW)


def test_a_second_tap_does_not_skip_a_question(records: Records, event: str) -> None:
    """Two taps on "next" on the same page lead to the second question, not to the third."""
    one = begin_class(records, event, NOW)
    next_question(records, one)
    next_question(records, one)
    now = class_of(records, event, one.code)
    assert now is not None
    assert now.number == 2


def test_a_class_that_ended_stays_as_it_was(records: Records, event: str) -> None:
    """Nothing is answered or changed any more, and what was answered stays."""
    one = begin_class(records, event, NOW)
    answer_class(records, one, "phone 1", 1, NOW)
    end_class(records, one, NOW)
    explain_class(records, one)
    assert not answer_class(records, one, "phone 2", 1, NOW)
    now = class_of(records, event, one.code)
    assert now is not None
    assert now.ended_at is not None
    assert not now.is_explained
    assert answers_of(records, now) == {1: {1: 1}}
