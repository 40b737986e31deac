"""``marram rule``: decided, more facts needed, or bad input; always said in words and in the exit code."""

import json

import pytest

from tests.cli.running import marram

MOVED = ["rule", "ball_moved_by_player", "--edition", "2023", "--form", "stroke_play", "--local-rule", "none"]


def test_a_missing_fact_is_asked_with_exit_code_3() -> None:
    """Off a terminal the next question is printed, with its answers and how to give one."""
    found = marram(*MOVED)
    assert found.code == 3
    assert "Answer with --fact " in found.out
    assert "the referee and the Committee decide" in found.out


def test_answering_what_is_asked_leads_to_a_ruling() -> None:
    """Following the questions, always with the first answer offered, ends in a ruling with exit code 0."""
    facts: list[str] = []
    for _ in range(15):
        found = marram(*MOVED, "--json", *facts)
        document = json.loads(found.out)
        if found.code != 3:
            break
        question = document["words"]["question"]
        facts += ["--fact", f"{question['fact']}={question['answers'][0]['token']}"]
    assert found.code == 0
    assert document["kind"] == "ruling"
    assert document["result"]["citations"]
    assert document["words"]["why"]


def test_the_conditions_are_echoed() -> None:
    """What was ruled under is said: day, edition, form of play, Local Rules."""
    document = json.loads(marram(*MOVED, "--json").out)
    assert (document["played_on"], document["edition"]) == ("2026-01-01", "2023-01-01")
    assert (document["form_of_play"], document["local_rules"]) == ("stroke_play", [])


@pytest.mark.parametrize(
    ("arguments", "message"),
    [
        (["rule", "ball_moved_by_plyer"], "Did you mean 'ball_moved_by_player'"),
        (["rule", "ball_moved_by_player", "--fact", "area_of_bal=bunker"], "Did you mean 'area_of_ball'"),
        (["rule", "ball_moved_by_player", "--fact", "area_of_ball=bunkr"], "Did you mean 'bunker'"),
        (["rule", "ball_moved_by_player", "--fact", "bunker"], "is not NAME=VALUE"),
        (["rule", "ball_moved_by_player", "--fact", "area_of_ball=bunker", "--fact", "area_of_ball=putting_green"], "given twice"),
        (["rule", "ball_moved_by_player", "--played-on", "2018-06-01"], "2018-06-01 is not covered"),
        (["rule", "ball_moved_by_player", "--played-on", "yesterday"], "year-month-day"),
        (["rule", "ball_moved_by_player", "--edition", "2021"], "Give 2019 or 2023"),
        (["rule", "ball_moved_by_player", "--edition", "2019", "--played-on", "2024-01-01"], "give one of them"),
        (["rule", "ball_moved_by_player", "--form", "strokeplay"], "Did you mean 'stroke_play'"),
        (["rule", "ball_moved_by_player", "--local-rule", "Q-7"], "no Local Rule 'Q-7'"),
        (["rule", "ball_moved_by_player", "--form", "stroke_play", "--form=match_play"], "--form is given more than once"),
        (["relief", "x.geojson", "--hole", "7", "--hand", "left", "--hole", "8"], "--hole is given more than once"),
        (["rule", "ball_moved_by_player", "--form", "pairs"], "--form: 'pairs' is not an answer"),
        (["rule", "ball_moved_by_player", "--played-on", "yesterday"], "--played-on: 'yesterday' is not a date"),
        (["rule", "club_added", "--fact", "holes_with_breach=-1"], "give a whole number (holes) from 0 up"),
        (["changes", "--from", "2018"], "--from '2018': there is no such edition"),
        (["rule"], "say what happened"),
        (["facts", "ball_moved_by_plyer"], "Did you mean 'ball_moved_by_player'"),
        (["incidents", "zzz"], "No incident has the words"),
    ],
)  # fmt: skip
def test_bad_input_is_named_with_exit_code_2(arguments: list[str], message: str) -> None:
    """Each slip is answered with what is wrong and what to do; nothing is printed as if it were a ruling."""
    found = marram(*arguments)
    assert found.code == 2
    assert message in found.err
    assert "Traceback" not in found.err
    assert not found.out


def test_what_is_rather_another_incident_is_said_with_what_to_type() -> None:
    """Off a terminal the other incident and the facts to add stand in the answer; it is not decided (exit code 3)."""
    given = ["rule", "ball_placed_after_two_drops", "--fact", "stays_where_first_touched=moved_later"]
    found = marram(*given)
    document = json.loads(marram(*given, "--json").out)

    assert found.code == 3
    assert "This is rather: Wind, water or gravity moved the ball at rest." in found.out
    assert "marram rule ball_moved_by_natural_forces --fact put_in_play_by_hand=yes" in found.out
    assert document["kind"] == "hand_over"
    assert document["result"]["incident"] == document["words"]["rather"]["incident"]


def test_sides_say_who_bears_the_penalty() -> None:
    """``--sides`` stands beside ``--form``: the penalty names its bearer, in words and in JSON, and in the case."""
    given = [
        "rule",
        "ball_moved_by_player",
        "--edition",
        "2023",
        "--form",
        "stroke_play",
        "--sides",
        "foursomes",
    ]
    facts = ["cause_known=yes", "area_of_ball=general_area", "movement_accidental=no", "handling_allowed=no"]
    given += [part for one in facts for part in ("--fact", one)]

    text, document = marram(*given), json.loads(marram(*given, "--json").out)

    assert "One penalty stroke for the side" in text.out
    assert "Foursomes" in text.out
    assert document["sides"] == document["case"]["sides"] == "foursomes"
    assert [one["who"] for one in document["result"]["penalties"]] == ["side"]


def test_sides_that_are_none_are_refused() -> None:
    """What is no way of playing together is told with what there is."""
    found = marram("rule", "too_many_clubs", "--edition", "2023", "--sides", "fourball")

    assert found.code == 2
    assert "Did you mean 'four_ball'?" in found.err
