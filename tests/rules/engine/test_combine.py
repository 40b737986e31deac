"""Several breaches of one situation cost what Rule 1.3c(4) of the edition says.

Sources: Rules of Golf 2023, Rule 1.3c(4) (intervening events; Exception: failure to replace a moved ball;
strokes for penalty relief always added); Rules of Golf 2019, Rule 1.3c(4) (single or related acts: one
penalty, the higher; unrelated acts: each its own) with Interpretation 1.3c(4)/1, whose title says that an
intervening event between breaches results in multiple penalties. Sequences from the published text are in
``tests/published/situations.json``.
"""

from datetime import date

import pytest

import marram
from marram.errors import InputError
from marram.rules.penalty import PenaltyKind, Who, general
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Ruling, disqualification, general_penalty, no_penalty, penalty

IN_2019, IN_2023 = date(2021, 5, 1), date(2024, 5, 1)
TWO = general_penalty("12.2b(1)").play_as_it_lies()
ONE = penalty(1, "14.1a").play_as_it_lies()


def kinds(result: object) -> list[PenaltyKind]:
    assert isinstance(result, Ruling), result
    return [one.kind for one in result.penalties]


def test_2023_one_penalty_between_intervening_events() -> None:
    """Without an intervening event only the higher penalty is given."""
    result = marram.combine([ONE, TWO], {"intervening_event_1": "no"}, played_on=IN_2023)
    assert kinds(result) == [PenaltyKind.GENERAL]


def test_2023_an_intervening_event_separates_penalties() -> None:
    """After a stroke was completed or a breach became known, each breach costs its own."""
    result = marram.combine([ONE, TWO], {"intervening_event_1": "yes"}, played_on=IN_2023)
    assert kinds(result) == [PenaltyKind.STROKES, PenaltyKind.GENERAL]


def test_2019_related_acts_cost_one_penalty() -> None:
    """In 2019 the question is whether the acts are related."""
    related = {"acts_related_1": "yes", "intervening_event_1": "no"}
    assert kinds(marram.combine([ONE, TWO], related, played_on=IN_2019)) == [PenaltyKind.GENERAL]
    both = marram.combine([ONE, TWO], {"acts_related_1": "no"}, played_on=IN_2019)
    assert kinds(both) == [PenaltyKind.STROKES, PenaltyKind.GENERAL]


def test_2019_an_intervening_event_separates_related_acts() -> None:
    """In 2019 too: related acts with a stroke between them are breaches of their own (Interpretation 1.3c(4)/1)."""
    facts = {"acts_related_1": "yes", "intervening_event_1": "yes"}
    both = marram.combine([ONE, TWO], facts, played_on=IN_2019)
    assert kinds(both) == [PenaltyKind.STROKES, PenaltyKind.GENERAL]


def test_an_event_before_an_incident_without_penalty_counts_too() -> None:
    """Between the first and the third incident there are two gaps; an event in either separates their breaches."""
    parts = [TWO, no_penalty("13.1d(1)").play_as_it_lies(), TWO]
    asked = marram.combine(parts, played_on=IN_2023)
    assert isinstance(asked, NeedFacts)
    assert asked.fact == "intervening_event_1"
    asked = marram.combine(parts, {"intervening_event_1": "no"}, played_on=IN_2023)
    assert isinstance(asked, NeedFacts)
    assert asked.fact == "intervening_event_2"
    one = {"intervening_event_1": "no", "intervening_event_2": "no"}
    assert kinds(marram.combine(parts, one, played_on=IN_2023)) == [PenaltyKind.GENERAL]


def test_breaches_of_different_people_are_not_compared() -> None:
    """Each person gets the penalties of their own breaches; nothing lies between those of two people."""
    others = general_penalty("10.2a", Who.OTHER_PLAYER).play_as_it_lies()
    both = marram.combine([TWO, others], played_on=IN_2023)
    assert kinds(both) == [PenaltyKind.GENERAL, PenaltyKind.GENERAL]


def test_two_penalties_of_one_incident_stay_two() -> None:
    """Four strokes for two wrong places (Rule 14.7b(3)) are not reduced by a lesser breach that belongs to them."""
    four = general_penalty("14.7a").also(general("14.7a")).next(Action.PLAY_ON)
    total = marram.combine([ONE, four], {"intervening_event_1": "no"}, played_on=IN_2023)
    assert kinds(total) == [PenaltyKind.GENERAL, PenaltyKind.GENERAL]


def test_the_deciding_fact_is_asked() -> None:
    """What separates two breaches is never assumed."""
    result = marram.combine([ONE, TWO], played_on=IN_2023)
    assert isinstance(result, NeedFacts)
    assert result.fact == "intervening_event_1"


def test_nothing_is_asked_when_only_one_part_costs_anything() -> None:
    """A part without penalty needs no intervening event."""
    result = marram.combine([no_penalty("13.1d(1)").play_as_it_lies(), TWO], played_on=IN_2023)
    assert kinds(result) == [PenaltyKind.GENERAL]


@pytest.mark.parametrize("day", [IN_2019, IN_2023])
def test_not_replacing_a_moved_ball_costs_the_general_penalty_in_total(day: date) -> None:
    """The stroke for moving the ball is not added when it is then played from the wrong place."""
    moved = penalty(1, "9.4b").replace_ball()
    wrong_place = general_penalty("14.7a").play_as_it_lies()
    asked = marram.combine([moved, wrong_place], played_on=day)
    assert isinstance(asked, NeedFacts)
    assert asked.fact == "moved_ball_not_replaced_1"
    total = marram.combine([moved, wrong_place], {"moved_ball_not_replaced_1": "yes"}, played_on=day)
    assert kinds(total) == [PenaltyKind.GENERAL]


def test_a_later_wrong_place_is_a_breach_of_its_own() -> None:
    """Where the wrong place has nothing to do with the moved ball, the usual question decides."""
    moved = penalty(1, "9.4b").replace_ball()
    wrong_place = general_penalty("14.7a").play_as_it_lies()
    facts = {"moved_ball_not_replaced_1": "no", "intervening_event_1": "yes"}
    both = marram.combine([moved, wrong_place], facts, played_on=IN_2023)
    assert kinds(both) == [PenaltyKind.STROKES, PenaltyKind.GENERAL]


def test_cautions_of_every_part_are_kept() -> None:
    """A safety caution of an earlier incident is not lost."""
    first = no_penalty("16.2a").play_as_it_lies().caution("keep_away_from_animal")
    result = marram.combine([first, TWO], played_on=IN_2023)
    assert isinstance(result, Ruling)
    assert "keep_away_from_animal" in result.cautions


def test_disqualification_stands_alone() -> None:
    """Strokes no longer matter to a disqualified player."""
    result = marram.combine(
        [ONE, disqualification("1.2a")], {"intervening_event_1": "yes"}, played_on=IN_2023
    )
    assert kinds(result) == [PenaltyKind.DISQUALIFICATION]


def test_undecided_parts_are_named() -> None:
    """Only decided incidents can be combined; the message says which one is open."""
    open_part = marram.rule("ball_moved_by_player", {}, played_on=IN_2023)
    with pytest.raises(InputError, match="Incident 2 is not decided yet"):
        marram.combine([ONE, open_part], played_on=IN_2023)
    with pytest.raises(InputError, match="one to 6"):
        marram.combine([], played_on=IN_2023)
