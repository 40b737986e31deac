"""A ruling request: nothing idle is asked, nothing is assumed, every fault is said at once."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.errors import BadAnswer, DateNotCovered, InputError, UnknownFact, UnknownIncident
from marram.rules.engine.case import Case
from marram.rules.engine.request import Book, walk
from marram.rules.facts.conditions import date_of_play
from marram.rules.penalty import PenaltyKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Ruling, general_penalty, no_penalty, penalty
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


def test_hundreds_of_unknown_facts_are_all_named() -> None:
    """Each has its sentence; the nearest names are looked for as long as it can be a slip of the pen."""
    with pytest.raises(InputError) as caught:
        marram.rule("ball_moved_by_player", {f"area_of_ball_{n}": "x" for n in range(300)}, played_on=DAY)

    assert len(caught.value.faults) == 300
    assert sum("Did you mean" in fault for fault in caught.value.faults) == 50


@pytest.mark.parametrize("codes", ["E-5", 5, [5], [["E-5"]], ["E-5", None]])
def test_local_rules_that_are_no_list_of_codes_are_refused(codes: Any) -> None:
    """One text is not taken for a list of its letters, nor an empty one for none in force."""
    with pytest.raises(BadAnswer, match="no list of codes"):
        marram.rule("ball_moved_by_player", {}, played_on=DAY, local_rules=codes)


def test_local_rules_are_read_as_the_shell_reads_them() -> None:
    """A code that only defines something is taken, in any case of letters; one that began later is not."""
    alone = marram.rule("ball_moved_by_player", {}, played_on=DAY, local_rules=[])

    assert marram.rule("ball_moved_by_player", {}, played_on=DAY, local_rules=["e-8"]) == alone
    with pytest.raises(BadAnswer, match="2022-01-01"):
        marram.rule("ball_moved_by_player", {}, played_on=date(2019, 1, 1), local_rules=["G-10"])


@pytest.mark.parametrize("free", [True, False])
def test_play_on_is_not_settled_where_a_penalty_is_certain(free: bool) -> None:
    """Where only the size of a penalty is open, "play on" is not said; where there may be none, it is."""

    def costs(case: Case) -> Ruling:
        if case[wet]:
            return general_penalty("1.1").next(Action.PLAY_ON)
        return (no_penalty("1.1") if free else penalty(1, "1.1")).next(Action.PLAY_ON)

    asked = walk(Book(costs), {})
    assert isinstance(asked, NeedFacts)
    assert asked.settled.penalties is None
    assert asked.settled.action is (Action.PLAY_ON if free else None)


def test_a_provision_that_asks_for_a_code_nobody_registered_says_where_to_enter_it() -> None:
    """Whoever writes a Local Rule is told both files: the register of its area, and where its question is made."""

    def asks(case: Case) -> Ruling:
        return (penalty(1, "E-99") if case.local_rule("E-99") else no_penalty("E-99")).next(Action.PLAY_ON)

    with pytest.raises(LookupError, match=r"'E-99'.*register/area_e\.py.*facts/conditions\.py"):
        walk(Book(asks), {})
