"""Rule 5.3a: what player and opponent get who are both off their starting time in a match."""

from datetime import date

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Ruling
from marram.words.headline import headline, tell_the_player

LATE = {"off_time": "late", "ready_when_group_could_start": "no", "exceptional_circumstances": "no"}
AT_WRONG_HOLE = {"sent_there_by_committee": "no", "exceptional_circumstances": "no"}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(
    ("incident", "facts"),
    [
        ("started_off_time", LATE),
        ("started_off_time", {"off_time": "early"}),
        ("started_at_wrong_place", AT_WRONG_HOLE),
    ],
)
def test_both_off_time_in_a_match_each_lose_the_hole_which_is_tied(
    incident: str, facts: dict[str, str], day: date
) -> None:
    """Rule 5.3a Exceptions 1 and 2 (read in the published Rules): the general penalty on the first hole, for either of them.

    That the hole is then tied follows from Rule 3.2a(2) and is said besides; the penalties are not left out for it.
    """
    told = {**facts, "minutes_off": 4, "opponent_off_time_too": "yes"}
    found = marram.rule(incident, told, played_on=day, form_of_play="match_play")

    assert isinstance(found, Ruling)
    assert [(one.kind, one.who) for one in found.penalties] == [(PenaltyKind.GENERAL, Who.EACH_PLAYER)]
    assert "first_hole_is_tied" in found.notes
    assert headline(found, FormOfPlay.MATCH_PLAY) == (
        "The hole is tied: loss of hole (the general penalty) for each player involved."
    )
    assert tell_the_player(found, FormOfPlay.MATCH_PLAY).startswith("Each of you loses the hole")


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize(
    ("sides", "who", "note"),
    [
        ("foursomes", Who.EACH_SIDE, "first_hole_is_tied"),
        # the partners of the two can still win or lose the hole (Rules 23.2a and 23.9a(1))
        ("four_ball", Who.EACH_PLAYER, "partner_plays_hole_on"),
    ],
)
def test_of_sides_that_are_both_off_time_each_bears_the_penalty(
    sides: str, who: Who, note: str, day: date
) -> None:
    """Rules 22.2 and 23.9a(1): one ball of a side loses the hole for it, one of two balls does not."""
    told = {**LATE, "minutes_off": 4, "opponent_off_time_too": "yes", "both_partners_present": "no"}
    facts = {**told, "sides": sides}
    found = marram.rule("started_off_time", facts, played_on=day, form_of_play="match_play")

    assert isinstance(found, Ruling)
    assert [(one.kind, one.who) for one in found.penalties] == [(PenaltyKind.GENERAL, who)]
    tied = {"first_hole_is_tied", "partner_plays_hole_on"}
    assert tied & {*found.notes} == {note}
