"""Published values about penalties in forms of play, which the Rules themselves give; and that no published value is passed over."""

import re
from datetime import date
from pathlib import Path
from typing import Any

import pytest

import marram
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Ruling
from tests.competition.reference import reference

IN_2021, IN_2025 = date(2021, 6, 1), date(2025, 6, 21)

TOPICS = {
    "conventions",
    "stableford",
    "par-bogey",
    "maximum-score",
    "countback",
    "ties-playoff",
    "match-play",
    "scorecard",
    "start-time",
    "clubs",
}
ONES = {"four-ball-11", "four-ball-12", "four-ball-13", "foursomes-05"}
"""Published values about the competition; those of handicaps are tested with handicaps."""

NOT_HERE: dict[str, str] = {}
"""Published values that are no test, and why."""


def ruled(incident: str, facts: dict[str, Any], form: str, day: date, sides: str = "individual") -> Ruling:
    """Return a ruling of which nothing is left to ask."""
    result = marram.rule(incident, facts, played_on=day, form_of_play=form, sides=sides, local_rules=[])
    assert isinstance(result, Ruling), result
    return result


def expects(ident: str) -> dict[str, Any]:
    """Return what a published value expects."""
    found: dict[str, Any] = reference()[ident]["expected"]
    return found


CLUBS = {"more_than_fourteen": True, "excess_noticed": "during_round"}


def test_stableford_03_and_par_bogey_04_penalties_against_the_total() -> None:
    """Until 2022: clubs two points a hole and four at most, one hole and two at most in Par/Bogey; a start two points."""
    points, holes = expects("stableford-03"), expects("par-bogey-04")
    for count in (1, 2, 5):
        (off,) = ruled(
            "too_many_clubs", {**CLUBS, "holes_with_breach": count}, "stableford", IN_2021
        ).penalties
        assert off.kind is PenaltyKind.POINTS_DEDUCTED
        assert off.strokes == min(count * points["clubs_per_hole"], points["clubs_max"])
        (off,) = ruled(
            "too_many_clubs", {**CLUBS, "holes_with_breach": count}, "par_bogey", IN_2021
        ).penalties
        assert off.kind is PenaltyKind.HOLES_DEDUCTED
        assert off.strokes == min(count * holes["per_hole"], holes["max"])
    late = {
        "ready_when_group_could_start": False,
        "off_time": "late",
        "minutes_off": 3,
        "exceptional_circumstances": False,
    }
    (off,) = ruled("started_off_time", late, "stableford", IN_2021).penalties
    assert (off.kind, off.strokes) == (PenaltyKind.POINTS_DEDUCTED, points["start_within_5_min"])


def test_start_time_01_the_window_of_five_minutes() -> None:
    """Up to five minutes late or early is the general penalty; more disqualifies."""
    expected = expects("start-time-01")
    for direction in ("late", "early"):
        for minutes, kind in (
            (expected["window_minutes"], PenaltyKind.GENERAL),
            (expected["window_minutes"] + 0.1, PenaltyKind.DISQUALIFICATION),
        ):
            facts = {
                "ready_when_group_could_start": False,
                "off_time": direction,
                "minutes_off": minutes,
                "exceptional_circumstances": False,
            }
            (only,) = ruled("started_off_time", facts, "stroke_play", IN_2025).penalties
            assert only.kind is kind


@pytest.mark.parametrize("form", ["stroke_play", "match_play"])
def test_foursomes_05_wrong_order(form: str) -> None:
    """Partners who play in the wrong order lose the hole in match play, and get two strokes in stroke play."""
    expected = expects("foursomes-05")
    found = marram.rule(
        "foursomes_wrong_order", {}, played_on=IN_2025, form_of_play=form, sides="foursomes", local_rules=[]
    )
    kinds = {
        (one.kind, one.strokes)
        for part in getattr(found, "stakes", ())
        for penalties in part.penalties
        for one in penalties
    } | {(one.kind, one.strokes) for one in getattr(found, "penalties", ())}
    assert (PenaltyKind.GENERAL, expected["stroke_play_penalty"]) in kinds
    assert expected["match_play_penalty"] == "loss of hole"


def test_no_published_value_of_the_competition_is_passed_over() -> None:
    """Each is named in the name of a test of this folder, or in the list of those that are none with its reason."""
    wanted = {one["id"] for one in reference().values() if one["topic"] in TOPICS} | ONES
    named = " ".join(
        name
        for path in Path(__file__).parent.glob("test_*.py")
        for name in re.findall(r"def (test_\w+)", path.read_text(encoding="utf-8"))
    )

    def tested(ident: str) -> bool:
        topic, number = ident.rsplit("-", 1)
        return any(
            number in re.findall(r"\d\d", part)
            for part in re.findall(rf"{topic.replace('-', '_')}((?:_\d\d|_and_\d\d)+)", named)
        )

    assert sorted(one for one in wanted - NOT_HERE.keys() if not tested(one)) == []
    assert NOT_HERE.keys() <= wanted
