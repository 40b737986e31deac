"""Rule 15: what removing things, and lifting balls in the way, costs over every combination of facts."""

from datetime import date
from itertools import product

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.ball import Area
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Action, Ruling

# Rule 15.1b: the putting green (13.1d) and the teeing area (6.2b(6)) save the player from the penalty.
NO_FREE_RELIEF = ("no_free_relief", "no_relief_stroke_unreasonable", "no_relief_unreasonable_choice")
COSTLY = {Area.GENERAL_AREA, Area.BUNKER, Area.PENALTY_AREA}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("area", Area)
def test_a_ball_moved_by_removing_a_loose_impediment_costs_a_stroke_unless_area_or_exception_save_it(
    day: date, area: Area
) -> None:
    """Rule 15.1b with Rules 7.4, 9.4b Exception 4, 13.1d and 6.2b(6): exactly one stroke or none."""
    for searching, applying in product((True, False), repeat=2):
        facts = {
            "removed_thing": "loose_impediment",
            "ball_when_removed": "at_rest",
            "removal_moved_ball": True,
            "area_of_ball": area,
            "while_searching": searching,
            "applying_other_rule": applying,
        }
        result = marram.rule("natural_thing_removed", facts, played_on=day, form_of_play="match_play")

        assert isinstance(result, Ruling)
        assert [one.strokes for one in result.penalties] == [1] * (
            area in COSTLY and not searching and not applying
        )


@pytest.mark.parametrize("day", EDITIONS)
def test_moving_the_ball_with_a_movable_obstruction_never_costs_anything(day: date) -> None:
    """Rule 15.2a(1): the ball is replaced without penalty wherever it lay."""
    moved = [
        leaf
        for leaf in leaves_on(book("artificial_thing_removed").root, day)
        if isinstance(leaf, Ruling)
        and any(
            one.fact == "obstruction_removal_moved_ball" and one.answers == (True,) for one in leaf.reasons
        )
    ]

    assert moved
    assert all(not leaf.penalties and leaf.action is Action.REPLACE for leaf in moved)


@pytest.mark.parametrize("day", EDITIONS)
def test_free_relief_from_a_movable_obstruction_is_measured_from_right_under_the_ball(day: date) -> None:
    """Rule 15.2a(2) and (3): one club-length off the putting green, the very spot on it."""
    sizes = {}
    for on_green in (True, False):
        facts = {"found_in_obstruction": True, "obstruction_on_green": on_green}
        result = marram.rule("ball_in_or_on_movable_obstruction", facts, played_on=day)
        assert isinstance(result, Ruling)
        sizes[on_green] = [(one.reference.value, one.club_lengths, one.penalty) for one in result.relief]

    assert sizes == {True: [("under_ball", 0, 0)], False: [("under_ball", 1, 0)]}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("area", Area)
def test_a_ball_lifted_on_request_may_be_cleaned_on_the_putting_green_only(day: date, area: Area) -> None:
    """Rule 15.3b(2): marked and cleaned, it costs a stroke but on the putting green, and in the teeing area (6.2b(6))."""
    facts = {
        "area_of_ball": area,
        "interfering_ball": "lifted_on_request",
        "spot_marking": "right",
        "cleaned_when_lifted": True,
    }
    result = marram.rule("interfering_ball", facts, played_on=day)

    assert isinstance(result, Ruling)
    assert bool(result.penalties) == (area not in (Area.PUTTING_GREEN, Area.TEEING_AREA))
    assert all(one.kind is PenaltyKind.STROKES for one in result.penalties)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(
    ("incident", "facts"),
    [
        ("ant_hill", {"local_rule_f_11": True}),
        ("animal_dung", {"local_rule_f_12": True, "dung_of_animal_named": True}),
        (
            "accumulated_loose_impediments",
            {"local_rule_f_14": True, "accumulation_named": True, "ball_found_in_accumulation": True},
        ),
    ],
)
def test_what_a_local_rule_names_stays_loose_and_a_ball_in_the_teeing_area_may_be_moved(
    day: date, incident: str, facts: dict[str, bool]
) -> None:
    """Rule 15.1a, whatever F-11, F-12 or F-14 adds; Rule 6.2b(6): such a ball need not be played as it lies."""
    in_teeing_area = marram.rule(
        incident, {**facts, "area_of_ball": Area.TEEING_AREA}, played_on=day, form_of_play="match_play"
    )
    refused = [
        leaf
        for leaf in leaves_on(book(incident).root, day)
        if isinstance(leaf, Ruling) and any(one in leaf.notes for one in NO_FREE_RELIEF)
    ]

    assert isinstance(in_teeing_area, Ruling)
    assert (in_teeing_area.action, in_teeing_area.penalties) == (Action.PLAY_FROM_TEEING_AREA, ())
    assert "may_remove_loose_impediment" in in_teeing_area.notes
    assert refused
    assert all("may_remove_loose_impediment" in leaf.notes for leaf in refused)
