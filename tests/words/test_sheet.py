"""Results in words: the answer first, general penalties resolved by the form of play, no key left bare."""

from datetime import date

import pytest

import marram
from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import Node, leaves_on
from marram.rules.facts import vocabulary
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import INCIDENTS
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting
from marram.rules.result import NeedFacts, Settled
from marram.rules.ruling import (
    Action,
    Deadline,
    Reason,
    Ruling,
    Stroke,
    WhichBall,
    Who,
    disqualification,
    general,
    general_penalty,
    no_penalty,
    penalty,
)  # fmt: skip
from marram.words.english import catalogue, find
from marram.words.messages import term
from marram.words.relief_options import option_words
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


def test_the_same_penalty_on_two_holes_is_one_number() -> None:
    """Two strokes on each of two holes (Rule 4.1b) read as the four strokes they are."""
    on_two_holes = no_penalty("4.1b").also(general("4.1b(1)"), general("4.1b(1)")).next(Action.PLAY_ON)

    assert headline(on_two_holes, FormOfPlay.STROKE_PLAY) == "Four penalty strokes: play on."
    assert headline(on_two_holes) == "Four penalty strokes in all (in match play loss of hole): play on."


def test_no_penalty_is_said_plainly() -> None:
    """The first line of a ruling without penalty says so."""
    assert headline(no_penalty("5.7d(1)").play_as_it_lies()) == "No penalty: play it as it lies."


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


def lateral(strokes: int) -> ReliefOption:
    return ReliefOption(
        ReliefKind.LATERAL, "17.1d(3)", Reference.CROSSING_POINT, 2, (Limit.NOT_NEARER,), strokes
    )


@pytest.mark.parametrize(
    ("costs", "may_play", "line"),
    [
        ((1,), False, "In the penalty area: one penalty stroke; take penalty area relief."),
        ((2, 1), False, "In the penalty area: one or two penalty strokes; take penalty area relief."),
        ((0,), False, "In the penalty area: no penalty; take relief."),
        ((0, 1), False, "In the penalty area: no penalty, or one penalty stroke; take relief."),
        (
            (1,),
            True,
            "In the penalty area: play it as it lies, or take penalty area relief for one penalty stroke.",
        ),
    ],
)
def test_the_first_line_says_what_relief_costs(costs: tuple[int, ...], may_play: bool, line: str) -> None:
    """Rules 17.1d and 18.2b: relief that must be paid for is never announced as no penalty alone."""
    options = [lateral(cost) for cost in costs]
    assert headline(no_penalty("17.1d").with_options(*options, may_play_as_it_lies=may_play)) == line


def test_going_on_with_a_provisional_ball_is_not_announced_as_free() -> None:
    """Rule 18.3c(2): the provisional ball in play counts with the stroke of stroke and distance."""
    result = marram.rule(
        "provisional_ball", {"original_ball": "lost"}, played_on=date(2024, 5, 1), local_rules=[]
    )
    assert isinstance(result, Ruling)
    assert (
        headline(result)
        == "The provisional ball is in play: one penalty stroke; go on with the provisional ball."
    )


def test_relief_that_must_be_paid_for_is_not_headed_no_penalty() -> None:
    """Rule 18.2b: a lost ball costs the stroke of stroke and distance, though nothing was done wrong."""
    words = sheet(no_penalty("18.2b").with_options(lateral(1), may_play_as_it_lies=False))
    assert words.penalties == ("One penalty stroke for the relief that must be taken (17.1d(3)).",)


def test_a_disqualified_player_is_told_nothing_of_the_hole() -> None:
    """Rule 1.3c(1): disqualification ends the player's part; there is no hole to go on with."""
    words = sheet(disqualification("3.3b(3)").next(Action.HOLE_OVER))
    assert (words.headline, words.steps) == ("Disqualification.", ())


@pytest.mark.parametrize(
    ("on_line", "area"),
    [
        (
            True,
            "within one club-length of the spot, on the line from the hole back through the spot of the ball,",
        ),
        (False, "within one club-length of a point chosen on the line from the hole back through the spot"),
    ],
)
def test_back_on_the_line_names_the_point_the_area_is_measured_from(on_line: bool, area: str) -> None:
    """Rule 19.2b: in 2019 a point chosen on the line; since 2023 the spot there first touched by the ball."""
    option = ReliefOption(
        ReliefKind.BACK_ON_THE_LINE, "19.2b", Reference.LINE_THROUGH_BALL, 1, (), 1, dropped_on_line=on_line
    )
    assert option_words(option).area.startswith(area)


def test_a_spot_is_named_as_one() -> None:
    """A relief area of no size is the reference point itself."""
    option = ReliefOption(ReliefKind.FREE, "15.2", Reference.UNDER_BALL, 0, ())
    assert option_words(option).area == "at the point directly under where the ball came to rest"


def test_relief_for_a_ball_not_found_is_named_after_the_edge_it_crossed() -> None:
    """Rule 15.2b: of a ball not found nobody knows where it came to rest; its title does not say so either."""
    titles = {
        reference: option_words(
            ReliefOption(ReliefKind.UNDER_WHERE_IT_CAME_TO_REST, "15.2a(2)", reference, 1, ())
        ).title
        for reference in (Reference.UNDER_BALL, Reference.UNDER_EDGE_CROSSED)
    }
    assert titles == {
        Reference.UNDER_BALL: "Relief under where the ball came to rest",
        Reference.UNDER_EDGE_CROSSED: "Relief under where the ball crossed the edge",
    }


@pytest.mark.parametrize(("holes", "words"), [(1, "1 hole"), (2, "2 holes")])
def test_an_amount_given_is_said_with_its_unit(holes: int, words: str) -> None:
    """A number is shown as given, in the singular where it is one."""
    reason = Reason("holes_with_breach", "4.1b", above=0)
    why = sheet(Ruling(reasons=(reason,)), given={"holes_with_breach": holes}).why
    assert why[0].answer == words


def test_a_correction_begins_with_its_deadline() -> None:
    """Rule 14.5: until when a mistake can be corrected is said first, then how, then what follows if not."""
    ruling = no_penalty("14.5").correct("replace_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    (line,) = sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY).if_wrong
    assert line == (
        "Before making a stroke: put the ball back on its original spot. "
        "If not: two penalty strokes (the general penalty) for the player (14.7a)."
    )


def test_a_hole_lost_in_a_match_is_not_told_to_be_played_on() -> None:
    """Rule 1.3c(2): loss of hole says all; in stroke play the same breach leaves the player to play on."""
    ruling = general_penalty("10.3a(1)").next(Action.PLAY_ON)
    in_match = sheet(ruling, form_of_play=FormOfPlay.MATCH_PLAY)
    assert (in_match.headline, in_match.steps) == ("Loss of hole (the general penalty).", ())
    assert sheet(ruling, form_of_play=FormOfPlay.STROKE_PLAY).steps == ("Play on.",)


def test_a_preferred_lie_is_measured_as_the_notice_says() -> None:
    """Model Local Rules E-3 and M-1 set the length, in club-lengths or inches."""
    option = ReliefOption(ReliefKind.PREFERRED_LIE, "E-3", Reference.BALL, None, ())
    assert option_words(option).area == "within the Local Rule's length of the spot of the ball"


def test_every_term_is_found() -> None:
    """The short way to a term knows every module that holds some."""
    terms = catalogue("TERMS")
    assert {key: find("TERMS", key) for key in terms} == terms
