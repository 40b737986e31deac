"""Rule 12.2b: what touching the sand costs, over every way of touching it."""

from datetime import date

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.facts.bunker import BallAndBunker, SandTouch
from marram.rules.penalty import PenaltyKind
from marram.rules.ruling import Ruling

# Rule 12.2b(1): with the ball in the bunker these four are breaches whatever they do to the conditions.
ALWAYS = {SandTouch.TESTING, SandTouch.CLUB_BY_BALL, SandTouch.PRACTICE_SWING, SandTouch.BACKSWING}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("where", BallAndBunker)
@pytest.mark.parametrize("how", SandTouch)
def test_without_improvement_only_four_ways_cost_and_only_with_the_ball_in_the_bunker(
    day: date, where: BallAndBunker, how: SandTouch
) -> None:
    """Where nothing is improved, the general penalty follows exactly for the four acts of Rule 12.2b(1)."""
    facts = {"ball_and_bunker": where, "sand_touch": how, "sand_improved": False}
    result = marram.rule("sand_touched", facts, played_on=day)

    assert isinstance(result, Ruling)
    expected = where is BallAndBunker.LIES_IN_IT and how in ALWAYS
    assert [one.kind for one in result.penalties] == [PenaltyKind.GENERAL] * expected


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("where", [one for one in BallAndBunker if one is not BallAndBunker.LIES_IN_IT])
def test_the_backswing_for_a_stroke_from_outside_is_free_even_if_it_improves(
    day: date, where: BallAndBunker
) -> None:
    """Rule 8.1b(7), and the USGA on actions that are allowed (rules.usga.org/?p=17367): the stroke being made, none is penalised."""
    facts = {"ball_and_bunker": where, "sand_touch": SandTouch.BACKSWING, "sand_improved": True}
    result = marram.rule("sand_touched", facts, played_on=day)

    assert isinstance(result, Ruling)
    assert (result.penalties, result.citations[0]) == ((), "8.1b(7)")
