"""The demonstration event: complete, and about nobody."""

import json

from marram.demo import EVENT
from marram.rules.editions import EDITION_2023, edition_of
from marram.rules.facts.conditions import FormOfPlay
from marram.services.cases.event import read_event

GIVEN = json.loads(EVENT.read_text(encoding="utf-8"))


def test_the_event_is_played_under_the_2023_edition_with_e_5() -> None:
    """Day, form of play and Local Rules are those the demonstration is about."""
    event = read_event(EVENT)

    assert event.played_on is not None
    assert edition_of(event.played_on) == EDITION_2023
    assert event.form_of_play is FormOfPlay.STROKE_PLAY
    assert event.local_rules == ("E-5",)


def test_every_player_starts_once() -> None:
    """The starting times hold each player exactly once, and nobody else."""
    starting = [name for group in GIVEN["starting_times"] for name in group["players"]]

    assert sorted(starting) == sorted(player["name"] for player in GIVEN["players"])


def test_groups_start_apart() -> None:
    """Starting times rise."""
    times = [group["time"] for group in GIVEN["starting_times"]]

    assert times == sorted(set(times))
