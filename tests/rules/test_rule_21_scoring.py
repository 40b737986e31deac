"""Scoring against a fixed target agrees with the closed form of the published table (Rule 21)."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

import marram
from marram.rules.editions import EDITIONS
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Ruling

DAYS = st.sampled_from(EDITIONS)


def ruled(incident: str, facts: dict[str, object], day: date, form: str) -> Ruling:
    result = marram.rule(incident, facts, played_on=day, form_of_play=form, local_rules=[])
    assert isinstance(result, Ruling), result
    return result


@given(over=st.integers(-4, 12), day=DAYS)
def test_stableford_points_are_two_less_the_strokes_over_target(over: int, day: date) -> None:
    """Down to four under the target the points are max(0, 2 - over) (table in Rule 21.1b(1))."""
    result = ruled("stableford_points", {"holed_out": "yes", "strokes_over_target": over}, day, "stableford")

    points = max(0, 2 - over)
    assert result.notes == ((f"stableford_points_{points}",) if points else ("no_points_on_hole",))


@given(over=st.integers(-10, 10), day=DAYS)
def test_par_bogey_follows_the_sign(over: int, day: date) -> None:
    """A hole is won below, tied at and lost above the target (Rule 21.3b(1))."""
    result = ruled("par_bogey_hole", {"holed_out": "yes", "strokes_over_target": over}, day, "par_bogey")

    wanted = "won" if over < 0 else "tied" if over == 0 else "lost"
    assert result.notes == (f"hole_counts_as_{wanted}",)


@given(holes=st.integers(1, 18), day=DAYS)
def test_clubs_cost_two_strokes_a_hole_and_four_at_most(holes: int, day: date) -> None:
    """Two strokes for each hole of the breach, at most four in the round (Rule 4.1b)."""
    facts = {"excess_noticed": "during_round", "holes_with_breach": holes}
    result = ruled("too_many_clubs", facts, day, "stroke_play")

    assert sum(one.strokes for one in result.penalties) == min(2 * holes, 4)


@given(holes=st.integers(1, 18), day=DAYS)
def test_clubs_cost_a_hole_of_the_match_score_and_two_at_most(holes: int, day: date) -> None:
    """In a match one hole is deducted for each hole of the breach, at most two (Rule 4.1b)."""
    facts = {"excess_noticed": "during_round", "holes_with_breach": holes}
    result = ruled("too_many_clubs", facts, day, "match_play")

    assert [one.kind for one in result.penalties] == [PenaltyKind.HOLES_DEDUCTED]
    assert result.penalties[0].strokes == min(holes, 2)


@pytest.mark.parametrize(
    ("incident", "facts", "points"),
    [
        ("too_many_clubs", {"excess_noticed": "during_round", "holes_with_breach": 1}, 2),
        ("too_many_clubs", {"excess_noticed": "during_round", "holes_with_breach": 5}, 4),
        ("unreasonable_delay", {"delay_reasonable": "no", "delay_breach": "first"}, 1),
        ("unreasonable_delay", {"delay_reasonable": "no", "delay_breach": "second"}, 2),
        ("started_off_time", {"off_time": "early", "minutes_off": 2}, 2),
    ],
)
def test_points_deducted_in_stableford_until_2022(
    incident: str, facts: dict[str, object], points: int
) -> None:
    """The deductions are those of Rule 21.1c(1), edition of 2019 (as in Golf Monthly, May 2022)."""
    result = ruled(incident, facts, date(2021, 6, 1), "stableford")

    assert [(one.kind, one.strokes) for one in result.penalties] == [(PenaltyKind.POINTS_DEDUCTED, points)]


@given(minutes=st.floats(0.01, 90), form=st.sampled_from(["stroke_play", "match_play"]), day=DAYS)
def test_five_minutes_divide_penalty_from_disqualification(minutes: float, form: str, day: date) -> None:
    """Up to five minutes late costs the general penalty, more means disqualification (Rule 5.3a)."""
    facts = {
        "off_time": "late",
        "ready_when_group_could_start": "no",
        "exceptional_circumstances": "no",
        "minutes_off": minutes,
        "opponent_off_time_too": "no",
    }
    result = ruled("started_off_time", facts, day, form)

    wanted = PenaltyKind.GENERAL if minutes <= 5 else PenaltyKind.DISQUALIFICATION
    assert [one.kind for one in result.penalties] == [wanted]
