"""Only questions of which the like was read and found good are asked; what a reader says is entered whole or not at all."""

from dataclasses import replace
from itertools import islice
from random import Random

import pytest

from marram.errors import InputError
from marram.rules.engine.changes import substance
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.ruling import Ruling
from marram.teach.quizzes import quiz
from marram.teach.quizzes.approved import (
    LENGTH,
    Kept,
    Read,
    is_approved,
    is_approved_act,
    mark_of,
    read_from,
    read_so_far,
)
from marram.teach.quizzes.drafting import draft
from marram.teach.quizzes.learning import units
from marram.teach.quizzes.quiz import question, questions
from marram.teach.quizzes.reading import drafted, entered, unread, unread_acts
from marram.teach.quizzes.strokes import strokes_questions
from marram.teach.situations.reaching import TODAY, taught
from marram.teach.situations.sampling import NAMES, situations
from marram.teach.situations.situation import ruled

NOTHING = Read({}, {})
DRAFTS = [one for one in map(draft, islice(situations(2_026), 60)) if one is not None]


def test_what_is_asked_was_read_and_found_good() -> None:
    """Of 120 questions of any quiz each has its mark among those approved."""
    assert all(is_approved(one) for one in islice(questions(83), 120))


def test_what_nobody_read_is_not_asked(monkeypatch) -> None:
    """Of the same situation a question is asked while it is approved, and none once its mark is gone."""
    one = next(one for one in DRAFTS if is_approved(one))
    assert question(one.situation, Random(1)) is not None
    monkeypatch.setattr(quiz, "is_approved", lambda _: False)
    assert question(one.situation, Random(1)) is None


def test_a_question_is_known_by_its_facts_and_not_by_its_player() -> None:
    """Another player on another hole, or the answers in another order, is the same question."""
    for one in DRAFTS:
        other = next(name for name in NAMES if name != one.situation.player)
        elsewhere = None if one.situation.hole is None else 19 - one.situation.hole
        again = draft(replace(one.situation, player=other, hole=elsewhere))
        assert again is not None
        assert mark_of(again) == mark_of(one)
        assert mark_of(replace(one, answers=one.answers[::-1], right=len(one.answers) - 1)) == mark_of(one)


def test_other_facts_another_form_or_other_answers_are_another_question() -> None:
    """Whatever a reader would judge otherwise has to be read again."""
    marks = {(mark_of(one), one.situation.incident) for one in DRAFTS}
    told = {
        (one.situation.incident, one.situation.form, str(sorted(one.situation.facts.items())))
        for one in DRAFTS
    }
    assert len(marks) == len(told)
    for one in DRAFTS:
        if len(one.answers) == 4:
            assert mark_of(replace(one, answers=one.answers[:-1])) != mark_of(one)


def test_another_ruling_has_to_be_read_again() -> None:
    """Where the engine decides the same facts otherwise, the approval is gone."""
    for one in DRAFTS:
        form = next(each for each in FormOfPlay if each is not one.situation.form)
        other = ruled(one.situation.incident, one.situation.facts, form, one.situation.played_on)
        if other is not None and substance(other) != substance(one.situation.ruling):
            changed = replace(one, situation=replace(one.situation, ruling=other))
            assert mark_of(changed) != mark_of(one)


def test_most_of_what_happens_on_courses_was_read() -> None:
    """Of what the sampler draws most can be asked; where the Rules or the near rulings change, this says that reading is due."""
    found = [one for one in map(draft, islice(situations(31), 240)) if one is not None]
    assert sum(map(is_approved, found)) > 0.55 * len(found)


def test_every_incident_that_is_learned_has_approved_questions() -> None:
    """The learner's plan names no incident of which nothing may be asked."""
    approved = read_so_far(Kept.QUESTIONS).approved
    assert [name for name in units() if not approved.get(name)] == []
    assert len(units()) > 190


@pytest.mark.parametrize("kind", Kept)
def test_the_file_holds_marks_of_known_incidents_each_once(kind) -> None:
    """No mark is both approved and refused, and what is written is what was read."""
    read = read_so_far(kind)
    assert {*read.approved, *read.refused} <= {one.name for one in taught()}
    for name, marks in read.approved.items():
        assert not marks & read.refused.get(name, frozenset())
        assert all(len(mark) == LENGTH and int(mark, 16) >= 0 for mark in marks)
    assert read_from(read.text(kind)) == read


def test_a_reader_sees_what_waits_and_enters_what_was_found() -> None:
    """A question found good waits no more; one that was refused is shown again only when asked for."""
    names = ["hole_completed", "ball_lifted"]
    first, second, *_ = waiting = list(unread(names, 3, 12, NOTHING))
    assert len({one.mark for one in waiting}) == len(waiting)
    shown = first.shown()
    assert shown.startswith(f"{first.question.situation.incident}/{first.mark} ")
    assert shown.count("\n  * ") == 1
    lines = [
        f"{one.question.situation.incident}/{one.mark} {verdict}"
        for one, verdict in ((first, "+"), (second, "- two answers are right"))
    ]
    read = entered(lines, NOTHING)
    assert {one.mark for one in unread(names, 3, 12, read)} == {one.mark for one in waiting} - {
        first.mark,
        second.mark,
    }
    assert [one.mark for one in unread(names, 3, 12, read, again=True)] == [second.mark]
    better = entered([lines[1].replace(" - ", " + ")], read)
    assert second.mark in better.approved[second.question.situation.incident]
    assert not any(better.refused.values())


@pytest.mark.parametrize(
    "line", ["nonsense", "ball_lifted/abc +", "no_such/0123456789 +", "ball_lifted/0123456789 good"]
)
def test_a_line_that_is_no_verdict_enters_nothing(line) -> None:
    """Every fault is told with its line."""
    with pytest.raises(InputError, match="Line 2"):
        entered(["ball_lifted/0123456789 +", line], NOTHING)


def test_the_same_facts_are_drafted_the_same_whatever_is_drawn_before() -> None:
    """What is read once holds for every quiz: no seed of the quiz is in the answers."""
    for name in ("ball_lifted", "whose_turn", "abnormal_course_condition"):
        here, there = ({one.mark: one for one in drafted(name, seed, 60)} for seed in (4, 5))
        assert set(here) & set(there)
        for mark in set(here) & set(there):
            words = [sorted(each.words for each in one[mark].question.answers) for one in (here, there)]
            assert (
                words[0] == words[1]
                or here[mark].question.situation.player != there[mark].question.situation.player
            )


def test_a_story_about_strokes_is_put_together_of_approved_acts() -> None:
    """Each act was read with what was done then; an act nobody read is in no story."""
    for one in islice(strokes_questions(8), 60):
        for act, ruling in zip(one.happened, one.result.parts, strict=True):
            assert isinstance(ruling, Ruling)
            assert is_approved_act(act, ruled(act.incident, act.facts, FormOfPlay.STROKE_PLAY, TODAY))


def test_acts_are_read_as_questions_are() -> None:
    """What was found good waits no more."""
    first, *_ = waiting = list(unread_acts(3, 30, NOTHING))
    assert first.shown().startswith(f"{first.act.incident}/{first.mark} ")
    read = entered([f"{first.act.incident}/{first.mark} +"], NOTHING)
    assert [one.mark for one in unread_acts(3, 30, read)] == [one.mark for one in waiting[1:]]
