"""What is known unasked is not passed over: a ball in a no play zone, and no point of complete relief.

Rules of Golf 2019 and 2023, Rules 16.1b (the nearest point must be in the general area) and 16.1f(1) (relief must be taken).
"""

import pytest

from marram.rules.engine.export import facts_of
from marram.rules.engine.request import rule
from marram.rules.relief_option import ReliefKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import HandOver, Ruling

IN_GENERAL_AREA = {
    "area_of_ball": "general_area",
    "in_the_way": "ground_under_repair",
    "interference": "ball",
    "stroke_unreasonable_anyway": "no",
    "only_by_unreasonable_choice": "no",
}
EDITIONS = pytest.mark.parametrize("edition", [2019, 2023])


def ruled(facts, edition, local_rules=()):
    return rule(
        "abnormal_course_condition",
        facts,
        edition=edition,
        form_of_play="stroke_play",
        local_rules=list(local_rules),
    )


@EDITIONS
def test_without_a_point_in_the_general_area_the_ball_is_unplayable_or_played_as_it_lies(edition) -> None:
    """Rule 16.1b: told that there is no such point, no free relief is offered; the unplayable ball goes on from there."""
    found = ruled({**IN_GENERAL_AREA, "nearest_point_exists": "no"}, edition)
    assert isinstance(found, HandOver)
    assert (found.incident, found.citation) == ("unplayable_ball", "16.1b")
    assert found.reasons[-1].fact == "nearest_point_exists"
    then = rule(
        found.incident,
        {**dict(found.facts), "last_stroke_from_penalty_area": "no"},
        edition=edition,
        form_of_play="stroke_play",
        local_rules=[],
    )
    assert isinstance(then, Ruling)
    assert all(option.penalty for option in then.relief)


@EDITIONS
@pytest.mark.parametrize("told", [{}, {"nearest_point_exists": "yes"}])
def test_with_a_point_or_nothing_said_of_it_there_is_free_relief_and_no_question(edition, told) -> None:
    """The point is never asked for in the general area: the map or the ground shows it."""
    found = ruled({**IN_GENERAL_AREA, **told}, edition)
    assert isinstance(found, Ruling)
    assert [option.kind for option in found.relief] == [ReliefKind.FREE]
    open_case = ruled({"area_of_ball": "general_area", "in_the_way": "ground_under_repair"}, edition)
    assert isinstance(open_case, NeedFacts)
    assert open_case.fact != "nearest_point_exists"


@EDITIONS
def test_a_dropping_zone_stays_open_where_there_is_no_point(edition) -> None:
    """E-1: the dropping zone is relief of its own; only the relief at the point goes."""
    told = {**IN_GENERAL_AREA, "nearest_point_exists": "no"}
    found = ruled(told, edition, ["E-1"])
    while isinstance(found, NeedFacts):
        fact = found.fact
        told[fact] = True
        found = ruled(told, edition, ["E-1"])
    assert isinstance(found, Ruling)
    assert [option.kind for option in found.relief] == [ReliefKind.DROPPING_ZONE]


@EDITIONS
def test_a_condition_asked_about_with_the_ball_in_a_no_play_zone_is_handed_over(edition) -> None:
    """Rule 16.1f(1): relief must be taken, whatever else is known; of a ball outside nothing changes and nothing is asked."""
    found = ruled({**IN_GENERAL_AREA, "no_play_zone_interference": "ball_inside"}, edition)
    assert isinstance(found, HandOver)
    assert (found.incident, found.citation) == ("no_play_zone", "16.1f(1)")
    outside = ruled({**IN_GENERAL_AREA, "no_play_zone_interference": "none"}, edition)
    assert isinstance(outside, Ruling)
    assert "no_play_zone_interference" not in {one.name for one in facts_of("abnormal_course_condition")}
