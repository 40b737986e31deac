"""Results in words: the answer first, general penalties resolved by the form of play, no key left bare."""

from datetime import date

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import Node, leaves_on
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import INCIDENTS
from marram.rules.relief_option import Limit, Reference, ReliefKind, Setting
from marram.rules.ruling import (
    Action,
    Deadline,
    NeedFacts,
    Ruling,
    Settled,
    Stroke,
    WhichBall,
    Who,
    general_penalty,
    no_penalty,
    penalty,
)  # fmt: skip
from marram.words.english import catalogue
from marram.words.messages import term
from marram.words.sheet import headline, sheet


@pytest.mark.parametrize(
    "kind", [Action, Deadline, Stroke, Who, WhichBall, Limit, Reference, ReliefKind, Setting]
)
def test_every_member_of_a_result_enum_has_words(kind: type) -> None:
    """No reader ever sees the name of a Python object."""
    for member in kind:
        assert term(member) != f"{kind.__name__}.{member.name}"


def test_every_action_has_a_short_form() -> None:
    """Headlines use the short form."""
    assert all(term(one, ".short") != f"Action.{one.name}.short" for one in Action)


@pytest.mark.parametrize(
    ("form", "words"),
    [
        (FormOfPlay.STROKE_PLAY, "Two penalty strokes (the general penalty): play it as it lies."),
        (FormOfPlay.MATCH_PLAY, "Loss of hole (the general penalty): the hole is over."),
        (None, "The general penalty (two strokes; in match play loss of hole): play it as it lies."),
    ],
)
def test_the_general_penalty_is_resolved_by_the_form_of_play(form: FormOfPlay | None, words: str) -> None:
    """Rule 1.3c(2): loss of hole in match play, two strokes in stroke play; both are said when unknown."""
    assert headline(general_penalty("12.2b(1)").play_as_it_lies(), form) == words


def test_a_hole_lost_in_a_match_leaves_nothing_to_do_with_the_ball() -> None:
    """Rules 1.3c(2) and 6.5: with loss of hole the hole is over; in stroke play the ball is played on."""
    ruling = general_penalty("11.2b").replace_ball()
    lost = sheet(ruling, form_of_play=FormOfPlay.MATCH_PLAY)
    assert lost.headline == f"Loss of hole (the general penalty): {term(Action.HOLE_OVER, '.short')}."
    assert term(Action.REPLACE) not in lost.steps
    assert (lost.options, lost.if_wrong) == ((), ())
    assert term(Action.REPLACE) in sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY).steps
    assert term(Action.REPLACE) in sheet(ruling).steps


def test_a_stroke_of_penalty_in_a_match_leaves_the_hole_open() -> None:
    """Rule 1.3c(2): one penalty stroke does not end a hole in a match."""
    ruling = penalty(1, "9.4b").replace_ball()
    assert term(Action.REPLACE) in sheet(ruling, form_of_play=FormOfPlay.MATCH_PLAY).steps


def test_penalties_of_others_name_them() -> None:
    """A penalty that is not the player's says whose it is."""
    ruling = penalty(1, "9.5b", Who.OPPONENT).replace_ball()
    assert headline(ruling) == "One penalty stroke for the opponent: replace the ball."


def test_no_penalty_is_said_plainly() -> None:
    """The first line of a ruling without penalty says so."""
    assert headline(no_penalty("9.3").play_as_it_lies()) == "No penalty: play it as it lies."


def test_every_question_has_help_and_a_source() -> None:
    """Each fact of the vocabulary says how it is established and where it comes from."""
    for fact in vocabulary().values():
        assert fact.question.endswith("?"), fact.name
        assert fact.help, fact.name
        assert fact.source, fact.name
        assert len(fact.question) <= 140, (fact.name, len(fact.question))


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
@pytest.mark.parametrize("day", EDITIONS)
def test_every_leaf_can_be_read(name: str, day: date) -> None:
    """Each outcome turns into a sheet in which no message key and no enum name is left bare."""
    keys = {*catalogue("NOTES"), *catalogue("TERMS")}
    for leaf in leaves_on(book(name).root, day):
        words = sheet(leaf)
        lines = [
            words.headline,
            *words.penalties,
            *words.steps,
            *words.if_wrong,
            *words.cautions,
            *words.criteria,
        ]
        assert not keys.intersection(lines), lines
        assert all(one.answer and one.question for one in words.why)
        if isinstance(leaf, Ruling):
            assert words.headline.endswith("."), words.headline


def test_a_question_becomes_a_sheet_with_its_answers() -> None:
    """The next question is the headline; its answers carry tokens and words."""
    root = book("ball_moved_by_player").root
    assert isinstance(root, Node)
    need = NeedFacts("area_of_ball", "9.4b", (), Settled(None, None, None))
    words = sheet(need)
    assert words.question is not None
    assert words.headline == words.question.question
    assert words.question.answers[0].token == "teeing_area"
