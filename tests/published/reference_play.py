"""Published values on pace of play, the starting interval and stopping play."""

from datetime import time
from typing import Any

import marram
from marram.competition.conditions.reading import read_event_file
from marram.competition.conditions.starting_intervals import RECOMMENDED, short_intervals
from marram.competition.draw.wishes import starts
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.words.english.texts.suspension import TEXTS
from tests.published.reference_table import ON, kinds, ruled, strokes, value


@value("pace-intervals-01", "pace-intervals-02")
def shortest_recommended(_given: dict[str, Any], expected: Any) -> None:
    """Two starts as far apart as either source asks are not warned of, and those a minute closer than all of it are."""
    for balls, minutes in expected.items():
        asked = minutes if isinstance(minutes, list) else [minutes]
        assert RECOMMENDED[int(balls)] <= min(asked)
        for apart in (*asked, RECOMMENDED[int(balls)] - 1):
            names = [f"player {number}" for number in range(2 * int(balls))]
            found = read_event_file(
                {
                    "players": [{"name": name} for name in names],
                    "starting_times": [
                        {"time": "08:00", "tee": 1, "players": names[: int(balls)]},
                        {"time": f"08:{apart:02}", "tee": 1, "players": names[int(balls) :]},
                    ],
                }
            )
            assert bool(list(short_intervals(found))) is (apart not in asked)


@value("pace-intervals-06")
def ninety_minutes(given: dict[str, Any], expected: Any) -> None:
    """Ten groups at ten minutes: from the first start to the last are ninety."""
    found = starts(time(8), given["groups_between_gaps"], minutes=given["interval_min"])
    first, last = found[0].time, found[-1].time
    between = (last.hour - first.hour) * 60 + last.minute - first.minute
    assert between == expected["minutes_first_to_tenth_start"]


@value("pace-stroke-time-01")
def forty_seconds(_given: dict[str, Any], expected: Any) -> None:
    """Forty are within the recommendation, and forty and a half no longer settle it."""
    limit = float(expected["seconds"])
    within = ruled("stroke_took_long", time_limit_in_policy=False, seconds_for_stroke=limit)
    assert not within.penalties
    over = marram.rule(
        "stroke_took_long",
        {"time_limit_in_policy": False, "seconds_for_stroke": limit + 0.5},
        played_on=ON,
        form_of_play="stroke_play",
        sides="individual",
        local_rules=[],
    )
    assert not isinstance(over, Ruling | NeedFacts)


@value("pace-penalty-01")
def delays(_given: dict[str, Any], expected: Any) -> None:
    for form in ("stroke_play", "match_play"):
        first, second, third = (
            ruled("unreasonable_delay", form, delay_reasonable=False, delay_breach=which)
            for which in ("first", "second", "third")
        )
        assert strokes(first) == int(expected["1"].split()[0])
        assert kinds(second) == [PenaltyKind.GENERAL]
        assert expected["2"] == "general penalty"
        assert kinds(third) == [PenaltyKind.DISQUALIFICATION]
        assert expected["3"] == "disqualified"


@value("pace-penalty-02")
def between_holes(_given: dict[str, Any], expected: Any) -> None:
    assert expected["hole"] == "next"
    for which in ("first", "second"):
        found = ruled("unreasonable_delay", delay_reasonable=False, delay_breach=which)
        assert "between_holes_next_hole" in found.notes


def over_time(late: bool, behind: bool) -> Ruling:
    facts = {"over_policy_time": late}
    if late:
        facts["behind_group_in_front"] = behind
    more = {"policy_penalty": "one_stroke"} if late and behind else {}
    return ruled("group_over_time", "stroke_play", ("K-1",), **facts, **more)


@value("pace-policy-01")
def late_and_behind(_given: dict[str, Any], expected: Any) -> None:
    found = over_time(late=True, behind=True)
    assert strokes(found) == expected["penalty"]
    assert [one.who for one in found.penalties] == [Who.EACH_PLAYER]


@value("pace-policy-14")
def four_groups(given: dict[str, Any], expected: Any) -> None:
    for (minutes, behind), penalty in zip(given["cases"], expected["penalty"], strict=True):
        found = over_time(minutes > given["limit_min"], behind > given["interval"])
        assert strokes(found) == penalty


@value("pace-policy-03")
def bad_times(_given: dict[str, Any], expected: Any) -> None:
    facts = {"told_of_timing": True, "within_policy_time": False, "told_of_earlier_bad_time": True}
    first, second, third = (
        ruled("stroke_took_long", "stroke_play", ("K-2",), **facts, bad_time_number=which)
        for which in ("first", "second", "third")
    )
    assert [strokes(first), strokes(second)] == [int(expected["1"][0]), int(expected["2"][0])]
    assert kinds(third) == [PenaltyKind.DISQUALIFICATION]


@value("suspension-01")
def signals(_given: dict[str, Any], expected: Any) -> None:
    words = TEXTS["signals"]
    assert expected == {"immediate": "1 long", "normal": "3", "resume": "2 short"}
    assert "one long note stops play at once" in words
    assert "three notes stop it otherwise" in words
    assert "two short notes resume it" in words


@value("suspension-02")
def stopped(_given: dict[str, Any], expected: Any) -> None:
    assert expected["penalty"] == "disqualified"
    for facts in ({"suspension": "immediate"}, {"suspension": "normal", "played_on": "began_hole"}):
        found = ruled("played_after_suspension", **facts, playing_on_justified=False)
        assert kinds(found) == [PenaltyKind.DISQUALIFICATION]
    finished = ruled("played_after_suspension", suspension="normal", played_on="finished_hole")
    assert not finished.penalties


@value("suspension-03")
def players_disagree(_given: dict[str, Any], expected: Any) -> None:
    normal = {"suspension": "normal", "played_on": "finished_hole"}
    match = ruled("played_after_suspension", "match_play", **normal, opponent_stopped=True)
    assert kinds(match) == [PenaltyKind.GENERAL]
    assert expected["match"] == "both stop"
    assert "marker_must_stay" in ruled("played_after_suspension", **normal).notes
    alone = {"suspension": "normal", "played_on": "finished_without_marker", "playing_on_justified": False}
    assert kinds(ruled("played_after_suspension", **alone)) == [PenaltyKind.DISQUALIFICATION]


@value("suspension-04")
def alone(_given: dict[str, Any], expected: Any) -> None:
    assert expected["allowed_for"] == "lightning"
    reported = ruled("stopped_play", stop_reason="lightning", reported_stop=True)
    assert not reported.penalties
    assert kinds(ruled("stopped_play", stop_reason="lightning", reported_stop=False)) == [
        PenaltyKind.DISQUALIFICATION
    ]
    assert kinds(ruled("stopped_play", stop_reason="other")) == [PenaltyKind.DISQUALIFICATION]
