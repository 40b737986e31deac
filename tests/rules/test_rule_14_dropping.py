"""Rule 14.3: every way of putting a ball down, before and after it is played."""

from datetime import date
from typing import Any

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.facts.ball import Area
from marram.rules.facts.dropping import Deflection, DropNumber, WayOfDropping
from marram.rules.facts.relief import LineRelief
from marram.rules.penalty import PenaltyKind
from marram.rules.relief_option import Limit
from marram.rules.ruling import Action, Ruling
from marram.words.headline import costs_something

WRONG = [way for way in WayOfDropping if way is not WayOfDropping.RIGHT]
# Rule 14.2e: where the nearest spot may lie, by the area of the spot required.
NEAREST_SPOT = {
    Area.GENERAL_AREA: Limit.GENERAL_AREA,
    Area.BUNKER: Limit.IN_BUNKER,
    Area.PENALTY_AREA: Limit.IN_PENALTY_AREA,
    Area.PUTTING_GREEN: Limit.ON_GREEN_OR_GENERAL_AREA,
}


def ruling(incident: str, day: date, form: str, **facts: Any) -> Ruling:
    result = marram.rule(incident, facts, played_on=day, form_of_play=form, local_rules=[])
    assert isinstance(result, Ruling), result
    return result


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("way", WRONG)
def test_a_drop_in_a_wrong_way_is_never_counted(day: date, way: WayOfDropping) -> None:
    """Rule 14.3b: however many drops there were, a wrong one is repeated, without penalty (Rule 14.5a)."""
    for number in DropNumber:
        result = ruling("ball_dropped", day, "stroke_play", way_of_dropping=way, drop_number=number)

        assert (result.penalties, result.action) == ((), Action.DROP_AGAIN)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("way", WRONG)
def test_played_from_the_relief_area_a_wrong_drop_costs_one_stroke_and_placing_the_general_penalty(
    day: date, way: WayOfDropping
) -> None:
    """Rule 14.3b: the penalty depends on whether the ball was placed, not on how the drop was wrong."""
    result = ruling("dropped_ball_played", day, "stroke_play", way_of_dropping=way, ball_in_relief_area=True)

    kind = PenaltyKind.GENERAL if way is WayOfDropping.PLACED else PenaltyKind.STROKES
    assert [one.kind for one in result.penalties] == [kind]
    assert result.action is Action.PLAY_AS_IT_LIES


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("way", WayOfDropping)
def test_played_from_outside_the_relief_area_every_drop_is_a_wrong_place(
    day: date, way: WayOfDropping
) -> None:
    """Rules 14.3b and 14.7a: outside the relief area the way of dropping no longer matters."""
    result = ruling("dropped_ball_played", day, "match_play", way_of_dropping=way, ball_in_relief_area=False)

    assert [one.citation for one in result.penalties] == ["14.7a"]
    assert result.action is Action.HOLE_OVER


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("form", ["stroke_play", "match_play"])
@pytest.mark.parametrize("deflection", [one for one in Deflection if one is not Deflection.NOTHING])
def test_only_players_and_their_caddies_are_penalised_and_only_where_the_ball_might_have_stayed(
    day: date, form: str, deflection: Deflection
) -> None:
    """Rule 14.3d and its Exception: who deflected it, and whether it could still come to rest inside."""
    for chance in (True, False):
        result = ruling(
            "ball_dropped",
            day,
            form,
            way_of_dropping=WayOfDropping.RIGHT,
            deflection_of_drop=deflection,
            could_rest_in_relief_area=chance,
            ball_in_relief_area=False,
            drop_number=DropNumber.FIRST,
        )
        breach = chance and deflection in (
            Deflection.DELIBERATE_BY_PLAYER,
            Deflection.DELIBERATE_BY_OTHER_PLAYER,
        )

        assert [one.kind for one in result.penalties] == [PenaltyKind.GENERAL] * breach


@pytest.mark.parametrize("line", LineRelief)
def test_a_ball_placed_after_two_drops_back_on_the_line_pays_for_its_relief_once(line: LineRelief) -> None:
    """Rule 14.3c(2): placing ends the relief under way; its price (Rules 16.1c(2), 17.1d(2), 19.2b, 19.3) is not due again."""
    found = ruling(
        "back_on_the_line_drop",
        EDITIONS[-1],
        "stroke_play",
        line_relief=line,
        way_of_dropping=WayOfDropping.RIGHT,
        deflection_of_drop=Deflection.NOTHING,
        rest_within_club_length=False,
        drop_number=DropNumber.SECOND,
    )

    assert found.action is Action.PLACE
    assert not costs_something(found)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(("area", "limit"), NEAREST_SPOT.items())
def test_the_nearest_spot_where_the_ball_stays_lies_in_the_area_that_rule_14_2e_names(
    day: date, area: Area, limit: Limit
) -> None:
    """Rule 14.2e governs a ball replaced as well as a ball placed after two drops, never nearer the hole."""
    replaced = ruling(
        "ball_to_be_replaced",
        day,
        "stroke_play",
        lie_altered=False,
        ball_stays_on_spot=False,
        spot_that_stays_exists=True,
        area_of_ball=area,
        original_ball_unavailable=False,
    )
    placed = ruling(
        "ball_placed_after_two_drops",
        day,
        "stroke_play",
        stays_where_first_touched=False,
        spot_that_stays_exists=True,
        area_of_placing_spot=area,
    )

    assert replaced.relief[0].limits == placed.relief[0].limits == (Limit.NOT_NEARER, limit)
