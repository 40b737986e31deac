"""``marram changes`` before 2019: only what is taught is compared, and it says so."""

import json

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
