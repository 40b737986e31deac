"""``marram changes`` before 2019: only what is taught is compared, and it says so."""

import json

import pytest

from marram.rules.editions import FIRST_DAY
from marram.rules.incidents import INCIDENTS
from tests.cli.running import marram


def test_the_changes_of_2019_are_those_of_the_teaching_incidents() -> None:
    """Each change is of an incident that reaches back; what is left out is said in one line."""
    rows = json.loads(marram("changes", "--from", "2016", "--to", "2019", "--every", "--json").out)["changes"]
    taught = {one.name for one in INCIDENTS if one.covered_from < FIRST_DAY}
    assert {row["incident"] for row in rows} == taught

    text = marram("changes", "--from", "2016", "--to", "2019", "--every").out
    assert f"{len(INCIDENTS) - len(taught)} incidents are not covered before 2019" in text


def test_the_changes_of_2023_are_listed_once() -> None:
    """The teaching incidents repeat others, so they are not walked unasked from 2019 on."""
    rows = json.loads(marram("changes", "--every", "--json").out)["changes"]
    assert rows
    assert not any(row["incident"].startswith("teaching_") for row in rows)


def test_an_incident_that_does_not_reach_back_is_refused() -> None:
    """Asked for by name before 2019 it is an error, never an empty list."""
    finished = marram("changes", "--from", "2016", "--to", "2019", "--incident", "ball_moved_by_player")
    assert finished.code == 2
    assert "not covered" in finished.err


def test_a_ruling_of_the_former_rules() -> None:
    """`--edition 2016` rules on a teaching incident and names the former Rule."""
    finished = marram("rule", "teaching_double_hit", "--edition", "2016", "--form", "stroke_play")
    assert finished.code == 0
    assert "former 14-4" in finished.out


def test_a_form_of_play_leaves_out_the_changes_of_the_others() -> None:
    """Rule 21.1c of 2019 took points off in Stableford for a late start; stroke play was never touched by that."""
    asked = ("changes", "--incident", "started_off_time", "--json", "--form")
    stableford, stroke_play = (
        json.loads(marram(*asked, form).out)["changes"] for form in ("stableford", "stroke_play")
    )
    assert any("points deducted" in row["before"] for row in stableford)
    assert all("Two penalty strokes" in row["after"] or "Disqual" in row["after"] for row in stableford)
    assert not any("deducted" in row["before"] for row in stroke_play)


def test_changes_told_in_the_same_words_are_told_once() -> None:
    """The text groups what reads alike and says how often; the data keeps every one."""
    text = marram("changes", "--incident", "unplayable_ball").out
    rows = json.loads(marram("changes", "--incident", "unplayable_ball", "--json").out)["changes"]
    told = [line for line in text.splitlines() if line.startswith("  - ")]
    alike = {(json.dumps(row["provision"]), row["before"], row["after"], *row["differences"]) for row in rows}
    assert len(told) == len(alike) < len(rows)
    assert "(--json lists them all)" in " ".join(text.split())


def test_changes_are_told_one_by_one_with_the_ruling_on_both_days() -> None:
    """Unasked for more, each change is told once: how it was, how it is, and a situation ruled on both days."""
    rows = json.loads(marram("changes", "--json").out)["changes"]
    assert len({row["key"] for row in rows}) == len(rows)
    assert all(
        row["example"]["differences"] or row["example"]["before"] != row["example"]["after"] for row in rows
    )

    text = " ".join(marram("changes").out.split())
    for row in rows:
        assert f"{row['rule']}: {row['title']}" in text
        assert f"Now: {row['now']}" in text


def test_what_players_meet_in_most_rounds_is_told_first() -> None:
    """The order is for players: common changes first."""
    rows = json.loads(marram("changes", "--from", "2016", "--to", "2019", "--json").out)["changes"]
    assert [row["common"] for row in rows] == sorted(row["common"] for row in rows)


def test_a_clarifications_day_is_told_by_itself() -> None:
    """Clarification 10.2b/1 (2025) and G-9 with it; on a day of no clarification nothing is made up."""
    text = " ".join(marram("changes", "--on", "2025-01-01").out.split())
    assert "2 things decided otherwise since 1 January 2025" in text
    assert "A putter that stands by itself" in text
    assert "Nothing that marram knows is decided otherwise" in marram("changes", "--on", "2024-06-01").out


def test_a_local_rule_is_told_without_it_and_with_it(tmp_path) -> None:
    """E-5: the first six places where it is met whole, the rest by name; all of them with --every; drawn where asked."""
    told = marram("changes", "--local-rule", "E-5").out
    assert told.count("Without it:") == told.count("With it:") == 6
    assert "And in 7 more incidents" in told
    assert marram("changes", "--local-rule", "E-5", "--every").out.count("Without it:") == 13

    drawn = tmp_path / "drawn"
    assert marram("changes", "--local-rule", "E-5", "--drawings", str(drawn)).code == 0
    assert "<svg" in (drawn / "ball_not_found-after-1.svg").read_text(encoding="utf-8")


def test_those_who_know_are_told_what_is_rare_first() -> None:
    """The same changes, turned round."""
    common, rare = (
        [row["key"] for row in json.loads(marram("changes", "--first", first, "--json").out)["changes"]]
        for first in ("common", "rare")
    )
    assert rare == common[::-1]


@pytest.mark.parametrize(
    "asked",
    [
        ("--on", "2025-13-01"),
        ("--from", "2015-01-01"),
        ("--local-rule", "Z-9"),
        ("--local-rule", "M-1", "--to", "2019"),
        ("--from", "2023-01-01", "--to", "2022-01-01"),
    ],
)
def test_what_cannot_be_compared_is_refused(asked: tuple[str, ...]) -> None:
    """A day that is none, before the Rules known here, turned round; a code that is none or of another list."""
    finished = marram("changes", *asked)
    assert finished.code == 2
    assert finished.err
    assert not finished.out
