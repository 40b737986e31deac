"""Why a place is told as an official would: with the cut that was missed, and with signs where they belong."""

import pytest

from marram.competition.conditions.choices import Score, TieMethod
from marram.competition.conditions.event_file import Cut, Ties
from marram.competition.results.board import LeaderBoard
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.competition.results.why import why
from marram.rules.facts.conditions import FormOfPlay
from marram.words.spoken import spoken
from tests.competition.making import PARS, card

GROSS = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)
COUNTBACK = Ties((TieMethod.COUNTBACK,), (TieMethod.COUNTBACK,))
PAR = sum(PARS)


def over(strokes: int) -> list[int]:
    """Return a round of so many over par, all on the first holes."""
    return [par + (at < strokes) for at, par in enumerate(PARS)]


def after_a_cut(*, made_cut: frozenset[str] | None = None) -> LeaderBoard:
    terms = Terms(GROSS, (18, 18), cut=Cut(1, places=1), ties=COUNTBACK, made_cut=made_cut)
    return LeaderBoard(
        terms, [card("ada", over(1)), card("bo", over(3)), card("cy", over(3)), card("di", over(5))]
    )


@pytest.mark.parametrize(
    ("side", "words"),
    [
        ("bo", f"bo missed the cut: {PAR + 3} after round 1, and the last who plays on has {PAR + 1}."),
        ("cy", "cy missed the cut. cy shares place 2 with bo."),
        ("di", f"di missed the cut. di comes after cy: the total: {PAR + 5} against {PAR + 3}."),
    ],
)
def test_who_missed_the_cut_is_told_so(side: str, words: str) -> None:
    assert spoken(why(after_a_cut(), side).words) == words


def test_a_cut_that_another_result_made_is_told_without_its_figures() -> None:
    """Where net scores made the cut, the gross figures would tell nothing."""
    assert spoken(why(after_a_cut(made_cut=frozenset({"ada"})), "bo").words) == "bo missed the cut."


def test_holes_against_the_target_have_their_sign() -> None:
    """A hole better than par is one up, two worse are two down."""
    terms = Terms(Scoring(FormOfPlay.PAR_BOGEY, Score.GROSS), ties=COUNTBACK)
    better = [par - (at == 4) for at, par in enumerate(PARS)]
    board = LeaderBoard(terms, [card("up", better), card("down", over(2))])
    assert spoken(why(board, "down").words) == "down comes after up: the total: -2 against +1."


def test_a_score_on_the_course_is_told_against_par_with_its_sign() -> None:
    """Two over after three holes come after one over on a whole round."""
    terms = Terms(GROSS, ties=COUNTBACK)
    out = [*[par + 1 for par in PARS[:2]], *PARS[2:3], *([None] * 15)]
    board = LeaderBoard(terms, [card("in", over(1)), card("out", out)])
    assert "+2 against +1" in spoken(why(board, "out").words)
