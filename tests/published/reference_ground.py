"""Published values on the course, the ball found or not, and relief."""

from typing import Any

import marram
from marram.course.checks.par_by_length import MEN, WOMEN, Lengths
from marram.relief.place.player import LONGEST_CLUB
from marram.rules.penalty import PenaltyKind
from marram.rules.relief_option import Limit, Reference, ReliefKind
from marram.rules.ruling import Action, Ruling
from tests.published.reference_table import ON, asked, kinds, option, ruled, value


def metres(lengths: dict[int, Lengths]) -> list[tuple[float, float | None]]:
    return [(one.shortest, one.longest) for one in lengths.values()]


@value("par-yardage-01")
def men_by_length(_given: dict[str, Any], expected: Any) -> None:
    """The metres stand in the statement; the yards are those of the same table, ten metres apart at most."""
    assert metres(MEN) == [(0, 240), (220, 450), (410, 650), (610, None)]
    same_limits(MEN, expected)


@value("par-yardage-02")
def women_by_length(_given: dict[str, Any], expected: Any) -> None:
    assert metres(WOMEN) == [(0, 200), (180, 380), (340, 550), (520, None)]
    same_limits(WOMEN, expected)


def same_limits(lengths: dict[int, Lengths], yards: dict[str, Any]) -> None:
    """The two tables give the same limits, each rounded in its own unit."""
    for par, one in lengths.items():
        for ours, theirs in zip((one.shortest, one.longest), yards[str(par)], strict=True):
            assert (ours is None) == (theirs is None)
            assert ours is None or abs(ours - theirs * 0.9144) <= 6


@value("equipment-club-01")
def longest_club(_given: dict[str, Any], expected: Any) -> None:
    """What a club-length can be on the map at most."""
    assert abs(expected["max_in"] * 0.0254 - LONGEST_CLUB) < 1e-9


@value("club-length-01")
def measured_with(_given: dict[str, Any], expected: Any) -> None:
    assert expected["club"] == "longest except putter"
    right = ruled("club_length_measured", measured_with="longest_club")
    assert right.notes == ("same_length_all_round",)
    for wrong in ("putter", "shorter_club"):
        other = marram.rule(
            "club_length_measured",
            {"measured_with": wrong},
            played_on=ON,
            form_of_play="stroke_play",
            sides="individual",
            local_rules=[],
        )
        assert not isinstance(other, Ruling) or other.notes != right.notes


@value("search-01")
def three_minutes(_given: dict[str, Any], expected: Any) -> None:
    limit = expected["minutes"]
    found = ruled("ball_found_in_time", search_minutes=limit, identified_in_reasonable_time=True)
    assert found.action is Action.PLAY_AS_IT_LIES
    over = asked("ball_found_in_time", search_minutes=limit + 0.1)
    assert over.fact != "identified_in_reasonable_time"


@value("search-02")
def one_minute_left(given: dict[str, Any], expected: Any) -> None:
    """Both searches add up: two minutes and one are within time, two and more than one are not."""
    used, left = given["used_s"] / 60, expected["left_s"] / 60
    assert asked("ball_found_in_time", search_minutes=used + left).fact == "identified_in_reasonable_time"
    assert (
        asked("ball_found_in_time", search_minutes=used + left + 0.1).fact != "identified_in_reasonable_time"
    )


@value("boundary-01")
def all_of_the_ball(_given: dict[str, Any], expected: Any) -> None:
    assert not ruled("ball_near_boundary", all_of_ball_out_of_bounds=False).relief
    out = ruled(
        "ball_near_boundary",
        all_of_ball_out_of_bounds=True,
        provisional_state="not_played",
        last_stroke_from_penalty_area=False,
    )
    assert option(out, ReliefKind.STROKE_AND_DISTANCE).penalty == expected["penalty"]


CONDITION = {
    "area_of_ball": "general_area",
    "interference": "ball",
    "in_the_way": "ground_under_repair",
    "stroke_unreasonable_anyway": False,
    "only_by_unreasonable_choice": False,
}


@value("relief-01")
def one_club_length(_given: dict[str, Any], expected: Any) -> None:
    free = option(ruled("abnormal_course_condition", **CONDITION), ReliefKind.FREE)
    again = option(
        ruled(
            "unplayable_ball",
            area_of_ball="general_area",
            spot_of_ball_known=True,
            last_stroke_from_penalty_area=False,
        ),
        ReliefKind.STROKE_AND_DISTANCE,
    )
    assert [free.club_lengths, again.club_lengths] == [expected["club_lengths"]] * 2
    assert Limit.NOT_NEARER in free.limits
    assert Limit.NOT_NEARER in again.limits
    assert Limit.SAME_AREA_AS_REFERENCE in again.limits


@value("relief-02")
def two_club_lengths(_given: dict[str, Any], expected: Any) -> None:
    red = ruled(
        "ball_in_penalty_area",
        found_in_penalty_area=True,
        last_stroke_from_penalty_area=False,
        penalty_area_colour="red",
    )
    unplayable = ruled(
        "unplayable_ball",
        area_of_ball="general_area",
        spot_of_ball_known=True,
        last_stroke_from_penalty_area=False,
    )
    for found in (red, unplayable):
        aside, back = option(found, ReliefKind.LATERAL), option(found, ReliefKind.BACK_ON_THE_LINE)
        assert aside.club_lengths == expected["lateral"]
        assert back.club_lengths == expected["back_on_line"]
        assert back.dropped_on_line
        assert aside.penalty == back.penalty == expected["penalty"]


@value("relief-03")
def from_knee_height(_given: dict[str, Any], expected: Any) -> None:
    assert expected["height"] == "knee"
    wrong = ruled("ball_dropped", way_of_dropping="not_knee_height")
    assert wrong.action is Action.DROP_AGAIN
    assert "wrong_drops_are_not_counted" in wrong.notes
    right = ruled(
        "ball_dropped", way_of_dropping="right", deflection_of_drop="nothing", ball_in_relief_area=True
    )
    assert right.action is Action.PLAY_AS_IT_LIES


@value("relief-04")
def embedded(_given: dict[str, Any], expected: Any) -> None:
    facts = {"in_own_pitch_mark": True, "below_ground_level": True, "in_sand_not_fairway": False}
    (free,) = (
        one
        for one in ruled(
            "embedded_ball",
            area_of_ball="general_area",
            stroke_unreasonable_anyway=False,
            spot_behind_in_general_area=True,
            **facts,
        ).relief
        if one.penalty == 0
    )
    assert free.club_lengths == expected["club_lengths"]
    assert free.reference is Reference.BEHIND_EMBEDDED_BALL
    bunker = ruled("embedded_ball", area_of_ball="bunker", last_stroke_from_penalty_area=False)
    assert all(one.penalty for one in bunker.relief)


@value("green-01")
def wrong_green(_given: dict[str, Any], expected: Any) -> None:
    assert expected["compulsory"]
    for interference in ("ball_on_it", "stance_only", "swing"):
        more = {} if interference == "ball_on_it" else {"only_by_unreasonable_choice": False}
        found = ruled(
            "wrong_green", wrong_green_interference=interference, played_despite_wrong_green=False, **more
        )
        assert found.action is Action.TAKE_RELIEF
        (free,) = found.relief
        assert (free.reference, free.club_lengths) == (Reference.NEAREST_POINT, expected["club_lengths"])


@value("no-play-zone-01")
def no_play(_given: dict[str, Any], expected: Any) -> None:
    assert expected["compulsory"]
    assert expected["penalty"] == "general"
    for interference in ("ball_inside", "stance_or_swing"):
        played = ruled(
            "no_play_zone",
            no_play_zone_interference=interference,
            played_despite_zone=True,
            serious_breach="no",
            balls_after_wrong_place="not_corrected",
        )
        assert kinds(played) == [PenaltyKind.GENERAL]
