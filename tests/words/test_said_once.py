"""What a ruling finds is said once; who has lost the hole is told so in plain words.

Source of the second: Rules of Golf 2019 and 2023, Rule 1.3c(2): in match play the general penalty is loss of hole.
"""

import re

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import INCIDENTS
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Action
from marram.words.headline import headline, tell_the_player
from marram.words.sheet import sheet
from tests.words.test_headlines import rulings

AT_THE_HOLE = (
    "ball_against_flagstick",
    "ball_in_hole",
    "ball_may_have_moved",
    "ball_overhung_hole",
    "hole_completed",
)
OF_THE_STROKE = ("The stroke counts", "The stroke does not count", "It was a stroke")


@pytest.mark.parametrize("name", AT_THE_HOLE)
def test_a_ball_is_said_once_to_be_holed_or_not(name: str) -> None:
    """Neither the headline with the further steps, nor what the player is told with them, says it a second time."""
    for day in EDITIONS:
        for ruling in rulings(name, day):
            words = sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY)
            for first in (words.headline, words.tell):
                said = " ".join((first, *words.further))
                assert len(re.findall(r"\bholed\b(?! out)", said)) <= 1, said


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_a_hole_lost_is_told_as_lost(name: str) -> None:
    """In a match the player who alone has the general penalty has lost the hole; no stroke is said to count."""
    for ruling in rulings(name, EDITIONS[-1]):
        kinds = {one.kind for one in ruling.penalties}
        alone = {one.who for one in ruling.penalties} == {Who.PLAYER}
        if PenaltyKind.GENERAL in kinds and PenaltyKind.DISQUALIFICATION not in kinds and alone:
            told = tell_the_player(ruling, FormOfPlay.MATCH_PLAY)
            assert told.startswith("You lose the hole"), told
            assert told.endswith("(the general penalty).") or ruling.action is Action.STOP_PLAY, told
            assert not headline(ruling, FormOfPlay.MATCH_PLAY).startswith(OF_THE_STROKE), ruling
