"""A competition closed and reopened from the shell: the same checks as at the desk, and the same entries."""

import json
from pathlib import Path

from marram.demo import EVENT
from marram.schema import read_json
from tests.cli.running import marram
from tests.services.scoring import PARS, scoring


def _records(folder: Path, cards: int) -> str:
    """Records of an event of two players and one round, so many of whose cards are in."""
    event = {**read_json(EVENT, "event"), "rounds": [], "scores": ["gross"]}
    event["players"] = event["players"][:2]
    event["starting_times"] = [
        {"time": "08:00", "tee": 1, "players": [one["name"] for one in event["players"]]}
    ]
    with scoring(folder, event) as kept:
        competition = kept.competition
        for more, player in enumerate(list(competition.labels)[:cards]):
            kept.whole((player, competition.rounds[0].id), (PARS[0] + more, *PARS[1:]))
    return str(folder / "club.db")


def test_what_stands_between_keeps_a_competition_open(tmp_path: Path) -> None:
    """A card is missing: exit code 3, the reason, and no entry; --look tells the same of a competition that could close."""
    records = _records(tmp_path, 1)
    refused = marram("results", "close", records)

    assert refused.code == 3
    assert "Not everybody who is in has returned every card" in refused.out
    assert json.loads(marram("results", "close", records, "--json").out)["closed"] is False


def test_a_competition_is_closed_and_reopened_from_the_shell(tmp_path: Path) -> None:
    """Looked at, it stays open; closed once, a second time changes nothing; reopened only where the Rules allow it and why is said."""
    records = _records(tmp_path, 2)
    assert marram("results", "close", records, "--look").code == 0
    assert marram("results", "reopen", "administrative", "--records", records).code == 2
    twice = marram(
        "results", "reopen", "administrative", "--records", records, "--form", "stroke_play", "--open"
    )
    assert twice.code == 2
    assert "--form, --open: the records tell this" in twice.err

    assert json.loads(marram("results", "close", records, "--json").out)["closed"] is True
    assert marram("results", "close", records).code == 0
    asked = marram("results", "reopen", "breach", "--records", records, "--why", "a breach")
    assert asked.code == 3
    allowed = marram("results", "reopen", "administrative", "--records", records)
    assert (allowed.code, "may be changed" in allowed.out) == (0, True)
    assert json.loads(marram("results", "close", records, "--json", "--look").out)["closed"] is True
    assert (
        marram(
            "results",
            "reopen",
            "administrative",
            "--records",
            records,
            "--why",
            "the total was added wrongly",
        ).code
        == 0
    )
    assert json.loads(marram("results", "close", records, "--json", "--look").out)["closed"] is False
