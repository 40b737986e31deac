"""A ruling request: nothing idle is asked, nothing is assumed, every fault is said at once."""

from datetime import date

import pytest

import marram
from marram.errors import BadAnswer, DateNotCovered, InputError, UnknownFact, UnknownIncident
from marram.rules.engine.request import Book, walk
from marram.rules.facts.conditions import date_of_play
from marram.rules.result import NeedFacts
from marram.rules.ruling import PenaltyKind, Ruling
from tests.rules.engine.toy import Colour, colour, entry, late, wet

DAY = date(2024, 5, 1)


def ask(known: dict) -> object:
    return walk(Book(entry), {date_of_play: DAY, **known})


def test_the_next_question_is_the_first_that_matters() -> None:
    """The idle question is skipped, and does not stand among the reasons."""
    result = ask({colour: Colour.GREEN})
    assert isinstance(result, NeedFacts)
    assert result.fact == "toy_wet"
    assert [reason.fact for reason in result.reasons] == ["toy_colour"]
    ruling = ask({colour: Colour.GREEN, wet: True})
    assert isinstance(ruling, Ruling)
    assert [reason.fact for reason in ruling.reasons] == ["toy_colour", "toy_wet"]


def test_stakes_say_what_each_answer_leaves_open() -> None:
    """For each answer: how many outcomes remain and which penalties."""
    result = ask({colour: Colour.GREEN})
    assert isinstance(result, NeedFacts)
    assert [(stake.answers, stake.outcomes) for stake in result.stakes] == [((True,), 1), ((False,), 1)]
    assert [len(stake.penalties[0]) for stake in result.stakes] == [1, 0]


def test_what_is_settled_is_said() -> None:
    """What all remaining outcomes share is settled; where they differ nothing is claimed."""
    result = ask({colour: Colour.RED})
    assert isinstance(result, NeedFacts)
    assert result.settled.action is not None
    assert result.settled.penalties is None


def test_a_number_settles_every_threshold() -> None:
    """A known number is compared with each threshold; the bounds belong to the lower side."""
    kinds = {}
    for minutes in (5, 10, 11):
        ruling = ask({colour: Colour.RED, late: minutes})
        assert isinstance(ruling, Ruling)
        kinds[minutes] = [penalty.kind for penalty in ruling.penalties]
    assert kinds == {5: [PenaltyKind.STROKES], 10: [PenaltyKind.GENERAL], 11: []}


def test_an_unknown_incident_suggests_the_nearest() -> None:
    """A slip of the pen is answered with the right name."""
    with pytest.raises(UnknownIncident, match="Did you mean"):
        marram.rule("ball_moved_by_natural_force", {}, played_on=DAY)


def test_an_unknown_fact_suggests_the_nearest() -> None:
    """A misspelt fact is never taken for unknown."""
    with pytest.raises(UnknownFact, match="Did you mean 'area_of_ball'"):
        marram.rule("ball_moved_by_player", {"area_of_bal": "bunker"}, played_on=DAY)


def test_all_faults_are_said_at_once() -> None:
    """Two wrong facts give two sentences."""
    with pytest.raises(InputError) as caught:
        marram.rule("ball_moved_by_player", {"area_of_bal": "bunker", "area_of_ball": "x"}, played_on=DAY)
    assert len(caught.value.faults) == 2


def test_a_day_before_the_first_edition_is_refused() -> None:
    """It is never answered with a neighbouring edition."""
    with pytest.raises(DateNotCovered, match="2018-12-31 is not covered"):
        marram.rule("ball_moved_by_player", {}, played_on=date(2018, 12, 31))


def test_an_unknown_local_rule_or_form_is_refused() -> None:
    """Conditions of the competition are checked like facts."""
    with pytest.raises(BadAnswer, match="Z-9"):
        marram.rule("ball_moved_by_player", {}, played_on=DAY, local_rules=["Z-9"])
    with pytest.raises(BadAnswer, match="stroke_play"):
        marram.rule("ball_moved_by_player", {}, played_on=DAY, form_of_play="stroke")
