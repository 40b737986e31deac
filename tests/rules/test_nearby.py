"""Relief that is not there is told with the one fact that stands against it.

Sources: Rules of Golf 2023, 16.3a(1) (embedded: general area only), 17.1d(3) (lateral relief: red only), 17.3 and 19.1 (no
unplayable ball in a penalty area), 16.1a(3) (no free relief where a stroke is unreasonable for another reason).
"""

from collections.abc import Mapping
from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.engine.request import book, fact_named
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.conditions import Sides
from marram.rules.nearby import MissingRelief, missing_relief
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind
from marram.rules.result import Result
from marram.rules.ruling import Ruling
from marram.words.missing import missing_words

ON = date(2024, 6, 1)
GIVEN = {"form_of_play": "stroke_play", "local_rules": frozenset[str]()}
USUAL = {"last_stroke_from_penalty_area": "no"}


def ruled(incident: str, facts: Mapping[str, Any]) -> Result:
    """Return what the book says in stroke play without Local Rules."""
    return marram.rule(incident, facts, played_on=ON, form_of_play="stroke_play", local_rules=[])


def missed(incident: str, **facts: str) -> dict[tuple[str, ReliefKind | None], MissingRelief]:
    """Return what is not offered, by family and kind."""
    result = ruled(incident, facts | USUAL)
    assert isinstance(result, Ruling), result
    found = missing_relief(incident, facts | USUAL, result, played_on=ON, **GIVEN)  # type: ignore[arg-type]
    return {(one.family, one.kind): one for one in found}


def test_a_ball_in_a_penalty_area_cannot_be_unplayable() -> None:
    """Rules 17.3 and 19.1: what stands against unplayable ball relief is the area, and any other gives it."""
    found = missed("unplayable_ball", area_of_ball="penalty_area", penalty_area_colour="red")
    against = found["19", None]
    assert against.fact == "area_of_ball"
    assert "penalty area" in missing_words(against)


def test_lateral_relief_is_missed_at_a_yellow_penalty_area() -> None:
    """Rule 17.1d(3): lateral relief is for a red penalty area; the colour is what stands against it."""
    found = missed("ball_in_penalty_area", found_in_penalty_area="yes", penalty_area_colour="yellow")
    lateral = found["17", ReliefKind.LATERAL]
    assert (lateral.fact, lateral.given_by, lateral.always) == ("penalty_area_colour", "17.1d(3)", True)


def test_an_unplayable_ball_whose_spot_is_not_known_misses_what_is_measured_from_it() -> None:
    """Rule 19.2: without the spot of the ball only stroke and distance is left; the other options need it."""
    found = missed("unplayable_ball", area_of_ball="general_area", spot_of_ball_known="no")
    against = found["19", ReliefKind.LATERAL]
    assert (against.fact, against.given_by) == ("spot_of_ball_known", "19.2c")


def test_out_of_bounds_says_that_no_local_rule_gives_another_way() -> None:
    """Model Local Rule E-5: the alternative to stroke and distance is there only where the Committee has adopted it."""
    found = missed("ball_near_boundary", all_of_ball_out_of_bounds="yes", provisional_state="not_played")
    against = found["other", ReliefKind.EXTENDED]
    assert (against.fact, against.given_by) == ("local_rule_e_5", "E-5")
    assert "E-5" in missing_words(against)


def test_an_embedded_ball_in_a_bunker_misses_the_general_area() -> None:
    """Rule 16.3a(1): free relief for an embedded ball is for the general area only."""
    against = missed("embedded_ball", area_of_ball="bunker")["free", None]
    assert against.fact == "area_of_ball"
    assert [one.value for one in against.there] == ["general_area"]


def test_unplayable_ball_relief_is_never_called_missing_outside_a_penalty_area() -> None:
    """Rule 19.1: a ball can be unplayable anywhere else, whether the ruling at hand lists that or not."""
    found = missed(
        "abnormal_course_condition",
        area_of_ball="general_area",
        interference="ball",
        in_the_way="temporary_water",
        stroke_unreasonable_anyway="no",
        only_by_unreasonable_choice="no",
    )
    assert not {name for name, _ in found} & {"19"}


@pytest.mark.parametrize("incident", ["unplayable_ball", "embedded_ball", "ball_not_found", "ball_near_boundary"])  # fmt: skip
def test_the_neighbour_that_is_named_does_offer_it(incident: str) -> None:
    """Of every leaf: with the named answer instead, and all else the same, the relief is offered."""
    told = 0
    for leaf in leaves_on(book(incident).root, ON):
        if not isinstance(leaf, Ruling):
            continue
        facts = {
            one.fact: fact_named(one.fact).token(one.answers[0])
            for one in leaf.reasons
            if one.answers and not one.fact.startswith("local_rule") and one.fact != "form_of_play"
        }
        result = ruled(incident, facts)
        if not isinstance(result, Ruling):
            continue
        for one in missing_relief(incident, facts, result, played_on=ON, **GIVEN):  # type: ignore[arg-type]
            told += 1
            assert not set(one.there) & set(one.here)
            if one.always and one.fact in facts:
                other = ruled(incident, facts | {one.fact: one.there[0]})
                if isinstance(other, Ruling):
                    assert one.family in {family(option) for option in other.relief}, (one, facts)
    assert told or incident == "ball_near_boundary"


def test_who_plays_together_is_no_answer_to_change() -> None:
    """Like the form of play, it is a condition of the competition: where it is known, nothing is looked for beside it."""
    told = {"stood_to_learn_line": "no"}
    found = marram.rule(
        "partner_stood_behind",
        told,
        played_on=ON,
        form_of_play="stroke_play",
        local_rules=[],
        sides="individual",
    )
    assert isinstance(found, Ruling)
    assert "sides" in {reason.fact for reason in found.reasons}
    missing = missing_relief(
        "partner_stood_behind",
        told,
        found,
        played_on=ON,
        form_of_play="stroke_play",
        local_rules=frozenset(),
        sides=Sides.INDIVIDUAL,
    )
    assert "sides" not in {one.fact for one in missing}
