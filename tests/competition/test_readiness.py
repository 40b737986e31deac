"""Readiness tells what still stands between now and the first start, and nothing that is done."""

from datetime import date, datetime, time
from typing import Any

import pytest

from marram.competition.conditions.readiness import About, Exists, readiness
from marram.competition.conditions.reading import read_event_file

DAY = date(2025, 6, 21)
COMPLETE: dict[str, Any] = {
    "played_on": DAY.isoformat(),
    "round": "Final",
    "holes": [1, 2, 3],
    "form_of_play": "stroke_play",
    "sides": "individual",
    "scores": ["net"],
    "allowance": 95,
    "local_rules": ["E-8"],
    "ties": {"first_place": ["countback", "play_off"], "other_places": ["shared"]},
    "closes": "when the result is announced",
    "officials": [{"name": "Ottiline Brackmere", "role": "chief referee, holes 1 to 3"}],
    "players": [{"name": "Tobiah Ling", "handicap_index": 8.1}],
    "starting_times": [{"time": "08:00", "tee": 1, "players": ["Tobiah Ling"]}],
}
THERE = Exists(holes_on_map=(1, 2, 3), holes_set={DAY: (1, 2, 3)})

LACKING: list[tuple[dict[str, Any], Exists, About, str]] = [
    ({"form_of_play": None}, THERE, About.CONDITIONS, "form of play is not set"),
    ({"form_of_play": "maximum_score"}, THERE, About.CONDITIONS, "the maximum for a hole is not set"),
    ({"allowance": None}, THERE, About.CONDITIONS, "no handicap allowance"),
    ({"ties": None}, THERE, About.CONDITIONS, "how ties are decided"),
    (
        {"ties": {"first_place": ["countback"], "other_places": ["shared"]}},
        THERE,
        About.CONDITIONS,
        "may leave it undecided",
    ),
    (
        {
            "rounds": [{"name": "Last", "played_on": "2025-06-22"}],
            "cut": {"after_round": 1, "places": 10},
            "teams": {"size": 4, "counting": 3},
        },
        Exists(holes_on_map=(1, 2, 3), holes_set={DAY: (1, 2, 3), date(2025, 6, 22): (1, 2, 3)}),
        About.CONDITIONS,
        "a team with too few players left has no place",
    ),
    (
        {
            "sides": "four_ball",
            "ties": {"first_place": ["play_off"], "other_places": ["shared"]},
            "starting_times": [
                {"time": "08:00", "tee": 1, "players": ["Tobiah Ling", "B", "C"]},
                {"time": "08:10", "tee": 1, "players": ["D", "E"]},
            ],
            "players": [
                {"name": name, "handicap_index": 8, "side": side}
                for name, side in (("Tobiah Ling", "L"), ("B", "L"), ("C", "L"), ("D", "M"), ("E", "M"))
            ],
        },
        THERE,
        About.PLAYERS,
        "too few or too many players: L (3).",
    ),
    (
        {
            "sides": "foursomes",
            "starting_times": [{"time": "08:00", "tee": 1, "players": ["Tobiah Ling", "B", "C"]}],
            "players": [
                {"name": name, "handicap_index": 8, "side": side}
                for name, side in (("Tobiah Ling", "L"), ("B", "L"), ("C", ""))
            ],
        },
        THERE,
        About.PLAYERS,
        "on which side they play: C.",
    ),
    ({"local_rules": None}, THERE, About.CONDITIONS, "which Local Rules"),
    ({}, Exists(holes_on_map=(1, 2), holes_set={DAY: (1, 2)}), About.COURSE, "holes 3 are not on the map"),
    ({}, Exists(holes_on_map=(1, 2, 3), holes_set={DAY: (1, 3)}), About.HOLES, "location is set for 2"),
    (
        {},
        Exists(["the green of 2 is open"], (1, 2, 3), {DAY: (1, 2, 3)}),
        About.COURSE,
        "the green of 2 is open",
    ),
    (
        {},
        Exists(
            holes_on_map=(1, 2, 3), holes_set={DAY: (1, 2, 3)}, unmarked={"E-8": "no such zone is drawn."}
        ),
        About.LOCAL_RULES,
        "E-8 is in force, and no such zone is drawn.",
    ),
    ({"players": [{"name": "Tobiah Ling"}]}, THERE, About.PLAYERS, "no handicap: Tobiah Ling"),
    ({"handicap_limit": 8}, THERE, About.PLAYERS, "Above the handicap limit of 8: Tobiah Ling"),
    ({"field_size": 0}, THERE, About.PLAYERS, "the field is 0"),
    ({"starting_times": []}, THERE, About.STARTING_TIMES, "no starting time: Tobiah Ling"),
    (
        {},
        Exists(
            holes_on_map=(1, 2, 3),
            holes_set={DAY: (1, 2, 3)},
            last_home={DAY: datetime.combine(DAY, time(22))},
            sunset={DAY: datetime.combine(DAY, time(21, 30))},
        ),
        About.STARTING_TIMES,
        "the sun sets at 21:30",
    ),
    (
        {},
        Exists(holes_on_map=(1, 2, 3), holes_set={DAY: (1, 2, 3)}, dark=frozenset({DAY})),
        About.STARTING_TIMES,
        "the sun does not rise there",
    ),
    (
        {"officials": [{"name": "Ottiline Brackmere", "role": "referee"}]},
        THERE,
        About.OFFICIALS,
        "without a place",
    ),
]


def test_nothing_stands_where_everything_is_there() -> None:
    """A complete event on a complete course is ready."""
    assert readiness(read_event_file(COMPLETE), THERE) == ()


@pytest.mark.parametrize(("change", "there", "about", "words"), LACKING, ids=[one[3] for one in LACKING])
def test_what_is_lacking_is_told_with_a_remedy(
    change: dict[str, Any], there: Exists, about: About, words: str
) -> None:
    """Taking one thing away tells exactly that, with what to do."""
    document = {key: value for key, value in {**COMPLETE, **change}.items() if value is not None}
    (only,) = readiness(read_event_file(document), there)
    assert only.about is about
    assert words in only.what
    assert only.remedy


def test_an_empty_event_is_told_all_it_lacks() -> None:
    """Where nothing is set, every part of the work but the Local Rules' marking is named."""
    assert {one.about for one in readiness(read_event_file({}))} == {
        About.CONDITIONS,
        About.COURSE,
        About.PLAYERS,
        About.OFFICIALS,
    }


@pytest.mark.parametrize(
    ("change", "percent"),
    [
        ({"sides": "four_ball", "form_of_play": "stableford"}, 85),
        ({"sides": "four_ball", "form_of_play": "match_play", "match_may_end_tied": False, "ties": None}, 90),
        ({"sides": "best_of_four", "scores_counting": 2}, 85),
        ({"sides": "foursomes"}, 50),
        ({}, 100),  # fewer than 30 players (Clarification C/1)
        (
            {
                "players": [{"name": f"P{at}", "handicap_index": 1.0} for at in range(30)],
                "starting_times": None,
            },
            95,
        ),
    ],
)
def test_the_recommended_allowance_of_the_form_is_named(change: dict[str, Any], percent: int) -> None:
    """Rules of Handicapping, Appendix C (2024)."""
    document = {
        key: value for key, value in {**COMPLETE, "allowance": None, **change}.items() if value is not None
    }
    remedies = [one.remedy for one in readiness(read_event_file(document), THERE)]
    assert any(f"Give allowance; {percent} per cent" in one for one in remedies)


@pytest.mark.parametrize(
    "change",
    [
        {
            "sides": "four_ball",
            "form_of_play": "maximum_score",
            "maximum": {"by": "times_par", "number": 2},
        },
        {"sides": "best_of_four", "side_size": 3, "scores_counting": 2},
    ],
    ids=["Four-Ball Maximum Score", "best two of three"],
)
def test_no_allowance_is_recommended_where_the_table_names_none(change: dict[str, Any]) -> None:
    """Appendix C of 2020 and 2024 have no row for these forms: the remedy says so and names no number."""
    document = {
        key: value for key, value in {**COMPLETE, "allowance": None, **change}.items() if value is not None
    }
    remedies = [one.remedy for one in readiness(read_event_file(document), THERE)]
    (remedy,) = [one for one in remedies if one.startswith("Give allowance")]
    assert "does not name this form" in remedy
    assert "per cent" not in remedy


def test_shares_taken_from_another_form_are_told() -> None:
    """Gruesomes stand in no table: that the shares of greensomes are taken is said, and stops nothing."""
    change = {"sides": "foursomes", "variation": "gruesomes", "allowance": None}
    document = {key: value for key, value in {**COMPLETE, **change}.items() if value is not None}
    (told,) = [one for one in readiness(read_event_file(document), THERE) if "gruesomes" in one.what]
    assert "greensomes" in told.remedy
    assert not told.stops


SPARE = (
    "Adela Crook",
    "Bran Eddy",
    "Cato Fenn",
    "Dora Gale",
    "Elis Hobb",
    "Faye Inch",
    "Gus Jolly",
    "Hale Kerr",
)


def _starting(*groups: tuple[str, int, int], **more: Any) -> list[Any]:
    """Return what still stands about groups, each of a time, a tee and how many play."""
    names = iter(SPARE)
    drawn = [(at, tee, [next(names) for _ in range(count)]) for at, tee, count in groups]
    found = {
        **COMPLETE,
        "players": [
            {"name": name, "handicap_index": 5.0, "side": f"pair {at // 2}" if more else ""}
            for at, name in enumerate(name for _, _, names in drawn for name in names)
        ],
        "starting_times": [{"time": at, "tee": tee, "players": names} for at, tee, names in drawn],
        **more,
    }
    return [one for one in readiness(read_event_file(found), THERE) if one.about is About.STARTING_TIMES]


@pytest.mark.parametrize(("count", "least"), [(2, 8), (3, 10), (4, 11)])
def test_a_starting_interval_shorter_than_recommended_is_a_warning(count: int, least: int) -> None:
    """A minute less than Committee Procedures 4A(1) recommend is told with the figure, and stops nothing; the figure is not."""
    assert _starting(("08:00", 1, count), (f"08:{least:02}", 1, count)) == []
    (only,) = _starting(("08:00", 1, count), (f"08:{least - 1:02}", 1, count))
    assert f"after {least - 1} minutes; at least {least} are recommended" in only.what
    assert not only.stops


def test_an_interval_is_between_starts_at_one_tee() -> None:
    """Two tees and a shotgun start have none; sides that share a ball play two balls between four."""
    assert _starting(("08:00", 1, 3), ("08:05", 2, 3)) == []
    assert _starting(("08:00", 1, 4), ("08:00", 1, 4)) == []
    assert _starting(("08:00", 1, 4), ("08:09", 1, 4), sides="foursomes", allowance=50) == []
    (only,) = _starting(("08:00", 1, 4), ("08:09", 1, 4), sides="four_ball", allowance=85)
    assert "plays 4 balls" in only.what
