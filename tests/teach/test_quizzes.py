"""Quizzes: one right answer, wrong ones that are real rulings of something near, nothing that gives it away."""

from collections import Counter
from dataclasses import replace
from datetime import date
from itertools import islice
from random import Random

import pytest

from marram.errors import InputError
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import incident
from marram.rules.penalty import OWN
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes import quiz
from marram.teach.quizzes.apart import is_allowed_too, told_apart
from marram.teach.quizzes.believable import PARTNERS
from marram.teach.quizzes.drafting import FEWEST_ANSWERS, MOST_ANSWERS, asks_for_finding, draft, may_be_asked
from marram.teach.quizzes.near import near_rulings
from marram.teach.quizzes.of_incident import step, steps_of
from marram.teach.quizzes.quiz import questions
from marram.teach.quizzes.saying import of_the_player
from marram.teach.quizzes.told import why_not
from marram.teach.situations.how_often import ONLY_IN
from marram.teach.situations.reaching import taught
from marram.teach.situations.sampling import situation, situations
from marram.words.headline import headline, said_by_note
from tests.cli.running import marram

DRAWN = list(islice(questions(11), 80))


@pytest.mark.parametrize("one", DRAWN, ids=lambda one: one.situation.incident)
def test_exactly_one_answer_is_right(one) -> None:
    """All answers differ in words, and only the right one says what the ruling says."""
    words = [answer.words for answer in one.answers]
    assert FEWEST_ANSWERS <= len(set(words)) == len(words) <= MOST_ANSWERS
    assert one.answers[one.right].headline == of_the_player(one.situation, one.situation.headline)
    assert [answer for answer in one.answers if answer.near is None] == [one.answers[one.right]]


@pytest.mark.parametrize("one", DRAWN[::4], ids=lambda one: one.situation.incident)
def test_a_wrong_answer_is_the_ruling_of_something_near(one) -> None:
    """With the facts it names otherwise, or in the form of play or edition it names, the engine rules so."""
    for answer in one.answers:
        near = answer.near
        if near is None or near.incident or near.misjudged:
            continue
        found = rule(
            one.situation.incident,
            {**one.situation.facts, **dict(near.otherwise)},
            played_on=date(near.edition, 12, 1) if near.edition else one.situation.played_on,
            form_of_play=near.form,
        )
        assert isinstance(found, Ruling)
        assert headline(found, near.form) == answer.headline
        assert why_not(one, answer).endswith(".")


def test_the_form_of_the_answers_does_not_give_the_right_one_away() -> None:
    """Whoever takes the longest, the shortest or one without penalty, whatever was told, is hardly better than chance (25 %)."""
    drawn = list(islice(questions(79), 300))

    def found_by(picked) -> float:
        return sum((one.right in at) / len(at) for one in drawn for at in [picked(one)]) / len(drawn)

    def free(one):
        places = [place for place, each in enumerate(one.answers) if each.words.startswith("No penalty;")]
        return places or range(len(one.answers))

    def of_length(most):
        def picked(one):
            lengths = [len(each.words) for each in one.answers]
            return [place for place, each in enumerate(lengths) if each == most(lengths)]

        return picked

    assert found_by(of_length(max)) < 0.33
    assert found_by(of_length(min)) < 0.33
    assert found_by(free) < 0.36  # 0.45 before questions were thinned out


def test_only_few_incidents_cannot_be_asked_about() -> None:
    """Those that come to one thing whatever is told, and those whose answer is told with them."""
    without = {one.name for one in taught() if not may_be_asked(one.name)}
    assert "seen_only_on_video" in without  # "no penalty, play on" would be no answer to it
    assert len(without) <= 18
    assert "ball_in_two_areas" in without  # the area that is named is the answer
    assert "whose_turn" not in without  # asked for what is found


@pytest.mark.parametrize("name", [one.name for one in taught() if may_be_asked(one.name)][::6])
def test_every_incident_has_a_question(name) -> None:
    """Of what the lot draws of an incident, other rulings lie near enough to be asked about."""
    drawn = [situation(name, Random(seed)) for seed in range(91, 97)]
    assert any(one is not None and draft(one) for one in drawn)


@pytest.mark.parametrize("seed", range(4))
def test_what_it_may_be_taken_for_fits_the_form_of_play(seed) -> None:
    """Beside incidents of partners, which tell who plays together, every near ruling can be given in the form of play."""
    one = situation("four_ball_hole", Random(seed))
    assert one is not None
    for form in (FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY):
        found = list(near_rulings(replace(one, form=form, facts={})))
        assert [near for near in found if near.incident]


def test_neither_place_nor_length_gives_the_right_answer_away() -> None:
    """Of 80 questions each place is right at times, and the longest answer is right in less than half of them."""
    places = Counter(one.right for one in DRAWN)
    assert set(range(FEWEST_ANSWERS)) <= set(places)
    longest = sum(
        len(one.answers[one.right].words) == max(len(answer.words) for answer in one.answers) for one in DRAWN
    )
    assert longest < len(DRAWN) / 2


def test_a_quiz_on_the_shell_is_the_same_for_its_seed() -> None:
    """The seed printed below a quiz gives it again."""
    first, again = (marram("quiz", "3", "--seed", "7") for _ in range(2))
    assert first.out == again.out
    assert "marram quiz --seed 7" in first.out


def test_where_the_finding_is_asked_for_the_answers_are_findings() -> None:
    """Whose turn it is, and how many points there are, is asked as that and not as a penalty."""
    for name in ("whose_turn", "stableford_points", "foursomes_whose_turn", "par_bogey_hole"):
        found = next(one for one in map(draft, situations(3, incidents=(name,))) if one is not None)
        assert found.answers[found.right].words == found.situation.headline
        assert not any("penalty" in one.words for one in found.answers)


def test_what_is_told_of_one_form_of_play_is_in_that_form() -> None:
    """A match score is agreed in a match, and points are of Stableford."""
    for name, form in ONLY_IN.items():
        assert {one.form for one in islice(situations(5, incidents=(name,)), 6)} == {form}


def test_no_wrong_answer_is_ruled_out_without_a_rule() -> None:
    """Of 120 questions none offers the teeing area where it is not told of, or a penalty for a partner in no game of partners."""
    for one in islice(questions(9), 120):
        told = {*one.situation.facts.values()}
        of_tee = incident(one.situation.incident).rule.split(".")[0] == "6" or "tee" in one.situation.incident
        words = [each.words for each in one.answers if each.near]
        right = one.answers[one.right].words
        if not of_tee and "teeing_area" not in told and "teeing area" not in right:
            assert not [each for each in words if "teeing area" in each]
        if incident(one.situation.incident).theme != PARTNERS and "sides" not in told:
            assert "partner" in right or not [each for each in words if "partner" in each]


def test_no_answer_speaks_of_a_ball_that_the_situation_denies() -> None:
    """Where no provisional ball was played none is gone on with, and a ball that is not found is not played as it lies."""
    drawn = list(
        islice(questions(41, incidents=("ball_not_found", "ball_near_boundary", "ball_in_penalty_area")), 90)
    )
    none_played = [one for one in drawn if one.situation.facts.get("provisional_state") == "not_played"]
    assert none_played
    assert not [each for one in none_played for each in one.answers if "provisional" in each.words]
    for one in drawn:
        facts = one.situation.facts
        if one.situation.incident == "ball_not_found" or facts.get("found_in_penalty_area") == "no":
            assert not [each.words for each in one.answers if "as it lies" in each.words]


def test_every_wrong_answer_is_wrong_in_law() -> None:
    """Each costs something else, or leads to a step that cannot be taken beside the right one; none is a part of it."""
    for one in islice(questions(57), 120):
        right = (one.situation.ruling, one.situation.form)
        by_finding = one.answers[one.right].words == one.situation.headline
        if by_finding or asks_for_finding(one.situation.incident):
            continue
        for answer in one.answers:
            if answer.near is not None:
                assert not is_allowed_too(right[0], answer.near.ruling), answer.words
                assert told_apart(right, (answer.near.ruling, answer.near.form)), answer.words


def test_a_step_is_one_that_follows_such_a_thing() -> None:
    """What is done next in a wrong answer is done next after some answers to the same incident, or in the right one."""
    for one in islice(questions(61), 120):
        known = {*steps_of(one.situation.incident), step(one.situation.ruling)}
        for answer in one.answers:
            if answer.near is not None and answer.near.incident:
                assert step(answer.near.ruling) in known, answer.words


def test_free_relief_is_denied_in_words_where_it_is_asked_for() -> None:
    """Beside "take free relief" no answer is only less complete: it says that there is none."""
    for one in islice(questions(8, incidents=("abnormal_course_condition",)), 30):
        for answer in one.answers:
            if "as it lies" in answer.words and "penalty stroke" not in answer.words.split(";")[0]:
                assert ("take free relief" in answer.words) != ("no free relief" in answer.words)


def test_what_it_may_be_taken_for_speaks_of_nothing_that_was_not_told() -> None:
    """Of 120 questions no other incident's ruling costs more than both, ends the hole, or asks for a step of its own."""
    for one in islice(questions(23), 120):
        right = one.situation.ruling
        most = max(2, sum(each.strokes for each in right.penalties))
        for answer in one.answers:
            if answer.near is None or not answer.near.incident:
                continue
            other = answer.near.ruling
            assert sum(each.strokes for each in other.penalties if each.who in OWN) <= most, answer.words
            assert said_by_note(other) in ("", said_by_note(right)), answer.words
            ended = {Action.HOLED, Action.HOLE_OVER}
            assert other.action not in ended or right.action in {*ended, Action.STOP_PLAY}, answer.words


def test_no_answer_shapes_the_lie_in_sand_off_the_sand() -> None:
    """A ball whose area was told to be no bunker has no lie in sand to be shaped, nor a match two balls to be played out."""
    drawn = list(islice(questions(31, incidents=("ball_moved_in_search", "ball_lifted", "two_balls")), 60))
    poor = [
        answer.words
        for one in drawn
        for answer in one.answers
        if answer.near
        and (
            (
                "shape the lie" in answer.words
                and one.situation.facts.get("area_of_ball", "bunker") != "bunker"
            )
            or ("play out both" in answer.words and one.situation.form is FormOfPlay.MATCH_PLAY)
        )
    ]
    assert not poor


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"incidents": ("not_in_the_rules",)}, "no situation can be told"),
        (
            {"incidents": ("ball_broke",), "level": 3},
            "no situation could be drawn of ball_broke",
        ),
    ],
)
def test_what_gives_no_question_is_refused_and_not_drawn_for_ever(asked, says) -> None:
    """Questions that cannot be are told as that, with what to do instead."""
    with pytest.raises(InputError, match=says):
        next(questions(3, **asked))


def test_situations_of_which_no_question_can_be_asked_end(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where too few other rulings lie near whatever is drawn, that is said."""
    monkeypatch.setattr(quiz, "question", lambda _one, _lot: None)
    with pytest.raises(InputError, match="no question can be asked"):
        next(questions(3, incidents=("unplayable_ball",)))
