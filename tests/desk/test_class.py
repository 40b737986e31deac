"""A class at the desk: phones without an account, one answer each, the teacher who sees what was misunderstood."""

import json
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import httpx
import pytest
from fastapi import FastAPI

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import PUBLIC
from marram.desk.teaching.class_pages import asked
from marram.records.classes import Taught, answer_class, classes, explain_class
from marram.words.texts import count_text
from marram.words.texts import text as said
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.serving import served
from tests.desk.settled import PATIENCE
from tests.desk.signing_in import guarded, signature, signed_in

WHY = f"<h2>{said('quizzes.why')}</h2>"
"""The heading of the explanation; a situation may say "why" too."""


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def app(kept: KeptHere) -> FastAPI:
    return guarded(kept)


def begun(app: FastAPI, kept: KeptHere) -> tuple[TestClient, Taught]:
    """A referee who began a class."""
    teacher = signed_in(app, kept, "referee")
    assert teacher.post("/class", data={"csrf": signature(teacher, "/class")}).status_code == 303
    (one,) = classes(kept.records, kept.event_id)
    return teacher, one


def answered(app: FastAPI, kept: KeptHere, one: Taught, place: int) -> TestClient:
    """A phone that nobody signed in on, which joined and answered the first question."""
    phone = signed_in(app, kept, PUBLIC)
    data = {"csrf": signature(phone, f"/class/{one.code}"), "number": 1, "place": place}
    assert phone.post(f"/class/{one.code}", data=data).status_code == 303
    return phone


def test_a_phone_joins_by_its_code_and_answers_without_an_account(app: FastAPI, kept: KeptHere) -> None:
    """The code, typed small, leads to the question; the answer is kept, and no why is shown before the teacher opens it."""
    _, one = begun(app, kept)
    question = asked(one.seed, 1)
    phone = signed_in(app, kept, PUBLIC)
    joined = phone.get("/class", params={"code": one.code.lower()})
    assert joined.headers["location"] == f"/class/{one.code}"
    page = phone.get(f"/class/{one.code}")
    assert page.text.count('name="place"') == len(question.answers)
    assert WHY not in page.text
    phone = answered(app, kept, one, 1)
    again = phone.get(f"/class/{one.code}")
    assert said("classes.answered", letter="B") in again.text
    assert WHY not in again.text


def test_the_teacher_opens_the_explanation_for_all(app: FastAPI, kept: KeptHere) -> None:
    """Then each phone shows whether it was right, and the teacher what was misunderstood, by provision."""
    teacher, one = begun(app, kept)
    right = asked(one.seed, 1).right
    wrong = (right + 1) % len(asked(one.seed, 1).answers)
    phones = [answered(app, kept, one, place) for place in (right, wrong, wrong)]
    page = f"/class/{one.code}/teacher"
    before = teacher.get(page)
    assert count_text("classes.answers", 3) in before.text
    teacher.post(page, data={"csrf": signature(teacher, page), "number": 1, "step": "explain"})
    assert phones[0].get(f"/class/{one.code}").context["was_right"]
    assert not phones[1].get(f"/class/{one.code}").context["was_right"]
    assert WHY in phones[1].get(f"/class/{one.code}").text
    found = {each.citation: (each.wrong, each.answered) for each in teacher.get(page).context["understood"]}
    assert found == dict.fromkeys(asked(one.seed, 1).situation.ruling.citations, (2, 3))


def test_a_second_tap_of_the_teacher_skips_no_question(app: FastAPI, kept: KeptHere) -> None:
    """Two taps on the same page lead to the next question, not to the one after it."""
    teacher, one = begun(app, kept)
    page = f"/class/{one.code}/teacher"
    data = {"csrf": signature(teacher, page), "number": 1, "step": "next"}
    for _ in range(2):
        teacher.post(page, data=data)
    assert [each.number for each in classes(kept.records, kept.event_id)] == [2]


def test_a_phone_may_not_teach_and_a_code_that_is_none_is_said(app: FastAPI, kept: KeptHere) -> None:
    """The teacher's page asks a phone to sign in; an unknown code says where to look."""
    _, one = begun(app, kept)
    phone = signed_in(app, kept, PUBLIC)
    assert phone.get(f"/class/{one.code}/teacher").headers["location"].startswith("/sign-in")
    assert phone.get("/class/NOSUCH").status_code == 404
    assert said("classes.none") in phone.get("/class", params={"code": "NOSUCH"}).text


def test_phones_hear_live_that_somebody_answered_and_that_it_is_explained(
    app: FastAPI, kept: KeptHere
) -> None:
    """The stream of a class tells how it stands at once and with every change, and nothing of who or what."""
    _, one = begun(app, kept)
    with served(app) as address:
        with httpx.stream("GET", f"{address}/class/{one.code}/live", timeout=PATIENCE / 1000) as stream:
            told = (json.loads(line[6:]) for line in stream.iter_lines() if line.startswith("data: "))
            assert next(told) == {"state": "1:0:0", "answered": 0}
            answer_class(kept.records, one, "a phone", 0, datetime.now(UTC))
            assert next(told) == {"state": "1:0:0", "answered": 1}
            explain_class(kept.records, one)
            assert next(told) == {"state": "1:1:0", "answered": 1}
        app.state.live.leaving = lambda: True
