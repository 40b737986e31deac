"""Learning at the desk: questions and the day they come again are asked for; the device alone keeps what was learned."""

import json
from collections import Counter

from marram.teach.quizzes.learning import TWICE, question_about, units
from marram.words.texts import text as said
from tests.desk.asking import TestClient


def test_the_page_says_where_what_was_learned_stays(client: TestClient) -> None:
    """The page stands alone, with its words, and says that nobody else sees it."""
    page = client.get("/quiz/learn")
    assert page.status_code == 200
    assert said("quizzes.learn.about") in page.text


def test_a_question_has_one_right_answer_and_why(client: TestClient) -> None:
    """About the incident asked for, with one right answer."""
    found = client.get("/api/quiz/question", params={"unit": "unplayable_ball", "seed": 3}).json()
    assert found["unit"] == "unplayable_ball"
    assert [one["right"] for one in found["answers"]].count(True) == 1
    assert all(one["why"] for one in found["answers"])


def test_a_card_goes_to_the_desk_and_comes_back(client: TestClient) -> None:
    """What was answered right twice is due later than after once."""
    at = {"right": "true", "at": "2026-03-01T09:00:00Z"}
    first = client.get("/api/quiz/reviewed", params=at).json()
    again = {"right": "true", "at": "2026-03-04T09:00:00Z", "card": json.dumps(first)}
    second = client.get("/api/quiz/reviewed", params=again).json()
    assert second["due"] > first["due"]


def test_what_cannot_be_read_is_refused_in_a_sentence(client: TestClient) -> None:
    """No card, no incident: a fault each, and no traceback."""
    bad = client.get(
        "/api/quiz/reviewed", params={"right": "true", "at": "2026-03-01T09:00:00Z", "card": "[1]"}
    )
    assert bad.status_code == 400
    assert client.get("/api/quiz/question", params={"unit": "no_such_thing"}).status_code in {400, 404}


def test_a_phone_is_given_questions_to_keep(client: TestClient) -> None:
    """A question about every incident that has one, a second about most of those met most often, and the list of all."""
    held = client.get("/api/quiz/kept").json()
    assert held["units"] == list(units())
    asked = Counter(one["unit"] for one in held["questions"])
    without = [unit for unit in units() if unit not in asked]
    assert all(question_about(unit, 1) is None for unit in without)
    assert len(without) < 5
    assert sum(asked[unit] == 2 for unit in units()[:TWICE]) > TWICE / 2
