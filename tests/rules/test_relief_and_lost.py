"""Laws of the Rules on relief: what no leaf of Rules 2, 16, 17, 18, 19 and Local Rule E-5 may break.

Source of each law: the sub-rule named in its docstring (Rules of Golf 2019 and 2023).
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest

import marram
from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.ball import Area
from marram.rules.facts.lost import OriginalBall, ProvisionalState, Whereabouts
from marram.rules.facts.penalty_area import Colour
from marram.rules.incidents import INCIDENTS
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Outcome, Ruling

THEMES = ("Free relief", "Penalty areas", "Lost, out of bounds, provisional ball", "Unplayable ball")
NAMES = [one.name for one in INCIDENTS if one.theme in THEMES]
DAYS = (EDITION_2019, EDITION_2023)
EVERY = [(name, day) for name in NAMES for day in DAYS]


def rulings(name: str, day: date) -> Iterator[Ruling]:
    yield from (leaf for leaf in leaves_on(book(name).root, day) if isinstance(leaf, Ruling))


def answers(outcome: Outcome, fact: str) -> tuple[object, ...]:
    return next((reason.answers for reason in outcome.reasons if reason.fact == fact), ())


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_lateral_relief_is_never_given_from_a_yellow_penalty_area(name: str, day: date) -> None:
    """Rule 17.1d(3): only a red penalty area has lateral relief from where the ball crossed its edge."""
    for ruling in rulings(name, day):
        for fact in ("penalty_area_colour", "first_penalty_area_colour"):
            if answers(ruling, fact) == (Colour.YELLOW,):
                assert all(
                    one.reference is not Reference.CROSSING_POINT for one in ruling.relief
                ), ruling  # fmt: skip


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_no_provisional_ball_is_gone_on_with_for_a_ball_in_a_penalty_area(name: str, day: date) -> None:
    """Rule 18.3c(3): virtually certain to be in a penalty area, the original lets no provisional ball come into play.

    What lies in or on something inside the edges is in the penalty area (Rule 17.1a), a movable obstruction too.
    """
    for ruling in rulings(name, day):
        in_obstruction = answers(ruling, "whereabouts") == (Whereabouts.MOVABLE_OBSTRUCTION,) or answers(
            ruling, "original_ball"
        ) == (OriginalBall.IN_MOVABLE_OBSTRUCTION,)
        if in_obstruction and answers(ruling, "area_of_ball") == (Area.PENALTY_AREA,):
            assert all(one.kind is not ReliefKind.PROVISIONAL for one in ruling.relief), ruling


@pytest.mark.parametrize("state", ["found", "second_found"])
def test_free_relief_in_the_penalty_area_is_left_and_playing_again(state: str) -> None:
    """Rules 15.2b, 18.1 and 18.3c(3): the provisional ball is given up, relief is free, stroke and distance stays open."""
    ruled = marram.rule(
        "ball_not_found",
        {
            "whereabouts": "movable_obstruction",
            "provisional_state": state,
            "nearer_stroke_at_provisional": "no",
            "area_of_ball": "penalty_area",
        },
        edition=2023,
    )
    assert isinstance(ruled, Ruling)
    assert [(one.kind, one.penalty) for one in ruled.relief] == [
        (ReliefKind.UNDER_WHERE_IT_CAME_TO_REST, 0),
        (ReliefKind.STROKE_AND_DISTANCE, 1),
    ]
    assert "provisional_abandoned_if_played" in ruled.notes


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_back_on_the_line_follows_the_edition(name: str, day: date) -> None:
    """Definitions: relief area. Since 2023 the ball is dropped on the line; before, a point was chosen."""
    for ruling in rulings(name, day):
        for option in ruling.relief:
            if option.kind is ReliefKind.BACK_ON_THE_LINE:
                assert option.dropped_on_line is (day is EDITION_2023)
                assert (Limit.NOT_NEARER in option.limits) is (day is EDITION_2019)
                assert option.club_lengths == 1
            else:
                assert not option.dropped_on_line


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_penalty_relief_always_includes_stroke_and_distance(name: str, day: date) -> None:
    """Rule 18.1: stroke and distance is there whenever lateral relief, or relief on the line, is offered."""
    for ruling in rulings(name, day):
        kinds = {one.kind for one in ruling.relief}
        choice = ruling.action in (Action.TAKE_RELIEF, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF)
        if choice and ReliefKind.LATERAL in kinds:
            assert ReliefKind.STROKE_AND_DISTANCE in kinds, ruling


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_free_relief_outside_is_never_given_for_a_ball_in_a_penalty_area(name: str, day: date) -> None:
    """Rules 16.1a(2), 16.3a(1), 17.3: free relief for a ball in a penalty area stays inside it, if there is any."""
    for ruling in rulings(name, day):
        if answers(ruling, "area_of_ball") == (Area.PENALTY_AREA,):
            for option in ruling.relief:
                if option.penalty == 0:
                    assert Limit.IN_PENALTY_AREA in option.limits, ruling


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_relief_options_let_either_ball_be_used(name: str, day: date) -> None:
    """Rule 14.3a: in taking relief the original ball or another may be dropped or placed."""
    for ruling in rulings(name, day):
        if ruling.action in (Action.TAKE_RELIEF, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF):
            assert ruling.which_ball is not None
            assert ruling.which_ball.value == "original_or_another", ruling


@pytest.mark.parametrize("day", DAYS)
def test_the_alternative_is_never_an_option_for_the_original_after_a_provisional_ball(day: date) -> None:
    """Model Local Rule E-5: not for the original ball once a provisional ball was played and is at hand."""
    seen = 0
    for name in ("ball_not_found", "ball_near_boundary", "alternative_to_stroke_and_distance"):
        for ruling in rulings(name, day):
            extended = [one for one in ruling.relief if one.kind is ReliefKind.EXTENDED]
            seen += len(extended)
            if answers(ruling, "provisional_state") == (ProvisionalState.FOUND,):
                assert not extended, ruling
            if answers(ruling, "local_rule_e_5") != (True,):
                assert not extended, ruling
    assert seen


def _told_apart_by_edition_only(option: ReliefOption) -> ReliefOption:
    """Take away what the 2023 edition changed in back-on-the-line relief."""
    if option.kind is not ReliefKind.BACK_ON_THE_LINE:
        return option
    return replace(option, dropped_on_line=False, limits=option.limits[1:])


@pytest.mark.parametrize("name", sorted(set(NAMES)))
def test_editions_differ_only_where_the_published_changes_say_so(name: str) -> None:
    """Changes of 2023 to these Rules: the line, 9.3 Exception 2, 16.3b; else equal outcomes.

    A drop back on the line ends in the same outcomes but for the Local Rule; other facts lead to them.
    Source: the list of principal changes in the 2023 book, and Rule 16.2 of both editions.
    """
    changed = {
        "embedded_ball",  # 16.3b
        "lifted_to_see",  # 16.3b
        "relief_ball_moved_by_nature",  # 9.3 Exception 2
        "back_on_the_line_drop",  # Model Local Rule E-12, of use before 2023 only
        "dangerous_animal",  # the exception moved from 16.2a to 16.2b(3)
        "ball_not_found",  # the Clarification to 17.1a was renumbered
        "ball_found_in_time",  # leads to the same after three minutes
    }
    found = [
        {
            replace(one, relief=tuple(_told_apart_by_edition_only(option) for option in one.relief))
            for one in rulings(name, day)
        }
        for day in DAYS
    ]

    assert (found[0] != found[1]) is (name in changed)


def test_two_lost_balls_cost_a_stroke_each() -> None:
    """Rule 18.3c(2), 18.2b: original and provisional ball lost from the tee: the next ball is the fifth stroke."""
    result = marram.rule(
        "ball_not_found",
        {
            "whereabouts": "not_known",
            "provisional_state": "lost_or_out",
            "last_stroke_from_penalty_area": "no",
        },
        played_on=date(2024, 6, 1),
        form_of_play="stroke_play",
        local_rules=[],
    )

    assert isinstance(result, Ruling)
    strokes_made = 2
    so_far = strokes_made + sum(one.strokes for one in result.penalties) + result.relief[0].penalty
    assert so_far + 1 == 5
