"""``marram situation``: several incidents in order give one combined ruling."""

import json
from pathlib import Path
from typing import Any

import pytest

from tests.cli.running import marram


def written(tmp_path: Path, document: Any) -> str:
    path = tmp_path / "situation.json"
    path.write_text(document if isinstance(document, str) else json.dumps(document), encoding="utf-8")
    return str(path)


MOVED = {
    "incident": "ball_moved_by_player",
    "facts": {"player_caused_movement": "yes", "area_of_ball": "general_area"},
}


MOVED_BY_ACCIDENT = {
    "cause_known": "yes",
    "area_of_ball": "bunker",
    "movement_accidental": "yes",
    "moved_while": "something_else",
}


def decided(incident: str) -> dict[str, str]:
    """Answer each question of an incident with its last answer until it is decided; return the facts."""
    facts: dict[str, str] = {}
    for _ in range(20):
        found = marram(
            "rule", incident, "--edition", "2023", "--form", "stroke_play", "--local-rule", "none", "--json",
            *(part for name, value in facts.items() for part in ("--fact", f"{name}={value}")),
        )  # fmt: skip
        document = json.loads(found.out)
        if document["kind"] != "need_facts":
            return facts
        question = document["words"]["question"]
        facts[question["fact"]] = question["answers"][-1]["token"]
    raise AssertionError(incident)


def test_two_incidents_are_ruled_and_combined(tmp_path: Path) -> None:
    """Each part has its ruling; the whole has one, under Rule 1.3c(4), once what lies between is known."""
    parts = [
        {"incident": "sand_touched", "facts": {"ball_and_bunker": "lies_in_it", "sand_touch": "testing"}},
        {
            "incident": "ball_moved_by_player",
            "facts": {**decided("ball_moved_by_player"), **MOVED_BY_ACCIDENT},
        },
    ]
    document: dict[str, Any] = {
        "edition": "2023",
        "form_of_play": "stroke_play",
        "local_rules": [],
        "incidents": parts,
    }
    found = marram("situation", written(tmp_path, document), "--json")
    result = json.loads(found.out)
    assert len(result["parts"]) == 2
    if found.code == 3:
        document["between"] = {result["combined"]["fact"]: "yes"}
        found = marram("situation", written(tmp_path, document), "--json")
        result = json.loads(found.out)
    assert found.code == 0
    assert "1.3c(4)" in result["combined"]["citations"]
    text = marram("situation", written(tmp_path, document)).out
    assert "Together" in text
    assert "In total:" in text


def test_an_open_part_is_asked(tmp_path: Path) -> None:
    """A part that is not decided names its next question, with exit code 3."""
    document = {"edition": "2023", "incidents": [{"incident": "ball_moved_by_player", "facts": {}}] * 2}
    found = marram("situation", written(tmp_path, document))
    assert found.code == 3
    assert "Add to the facts of incident 1" in found.out


def test_what_lies_between_is_answered_in_the_file(tmp_path: Path) -> None:
    """The question between two incidents says where its answer goes; put there, it leads on to the ruling."""
    wrong_ball = {
        "ball_struck": "wrong", "wrong_ball_moving_in_water": "no",
        "wrong_ball_corrected": "no", "next_hole_started": "no",
    }  # fmt: skip
    document: dict[str, Any] = {
        "edition": "2023",
        "form_of_play": "stroke_play",
        "local_rules": [],
        "incidents": [
            {"incident": "wrong_ball_played", "facts": wrong_ball},
            {"incident": "hole_completed", "facts": {"how_hole_ended": "holed"}},
        ],
    }
    asked = marram("situation", written(tmp_path, document))
    assert asked.code == 3
    assert '"between": "earlier_mistake_1"' in asked.out.replace("\n  ", " ")

    document["between"] = {"earlier_mistake_1": "same_ball"}
    ruled = marram("situation", written(tmp_path, document))
    assert ruled.code == 0
    assert "a stroke is made to begin another" in " ".join(ruled.out.split())
    assert "In total: two penalty strokes" in ruled.out


@pytest.mark.parametrize(
    ("document", "message"),
    [
        ("{", "is not JSON"),
        ("[]", "give an object"),
        ({"incidents": []}, "at least one incident"),
        ({"incidents": [{"facts": {}}]}, "incidents 1, incident is missing; give the name of an incident"),
        ({"incidents": [MOVED], "extra": 1}, "'extra' is not known"),
        ({"incidents": [{"incident": "nothing_such", "facts": {}}]}, "Incident 1 (nothing_such)"),
        ({"incidents": [MOVED] * 7}, "one to 6"),
        ({"marram": 2, "incidents": [MOVED]}, "version 2"),
    ],
)
def test_bad_files_are_named(tmp_path: Path, document: Any, message: str) -> None:
    """Every fault of the file is said, with exit code 2."""
    found = marram("situation", written(tmp_path, document))
    assert found.code == 2
    assert message in found.err
    assert "Traceback" not in found.err


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"edition": "2021"}, "edition '2021': there is no such edition"),
        ({"edition": None, "played_on": "soon"}, "played_on: 'soon' is not a date"),
        ({"played_on": "2024-05-01"}, "played_on and"),
        ({"form_of_play": "pairs"}, "form_of_play: 'pairs' is not an answer"),
        ({"local_rules": "E-5"}, "local_rules is 'E-5'; give a list of codes"),
        ({"between": ["yes"]}, 'between is ["yes"]; give an object'),
        ({"weather": "fair"}, "the key 'weather' is not known"),
    ],
)
def test_a_fault_names_the_file_and_the_key(tmp_path: Path, change: dict[str, Any], message: str) -> None:
    """A slip in the file is named by its place there, not by an option nobody typed."""
    path = written(tmp_path, {"edition": 2023, "incidents": [MOVED], **change})
    found = marram("situation", path)
    assert (found.code, found.out) == (2, "")
    assert message in found.err
    assert found.err.startswith(path)
    assert "--" not in found.err


def test_an_edition_may_be_a_number(tmp_path: Path) -> None:
    """JSON writes a year without quotes as naturally as with them."""
    document = {"incidents": [MOVED], "local_rules": [], "form_of_play": "stroke_play"}
    as_number, as_text = (
        marram("situation", written(tmp_path, {**document, "edition": edition}), "--json")
        for edition in (2023, "2023")
    )
    assert as_number == as_text
