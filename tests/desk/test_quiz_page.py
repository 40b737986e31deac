"""The quiz of the desk: questions at permanent addresses, answered without a script."""

import re

from marram.teach.quizzes.quiz import questions
from marram.words.texts import text as said
from tests.desk.asking import TestClient

ASKED = {"seed": 7, "number": 2}
QUESTION = next(questions(7002))


def test_a_quiz_without_a_seed_gets_one(client: TestClient) -> None:
    """The bare address leads to the first question of a quiz that can be sent on."""
    page = client.get("/quiz", follow_redirects=False)
    assert page.status_code == 303
    assert re.fullmatch(r"/quiz\?seed=\d+&number=1", page.headers["location"])


def test_the_question_does_not_tell_its_answer(client: TestClient) -> None:
    """Every answer is a button, and neither the finding nor any why stands on the page yet."""
    page = client.get("/quiz", params=ASKED)
    assert page.status_code == 200
    assert page.text.count('name="answer"') == len(QUESTION.answers)
    assert said("quizzes.right") not in page.text
    assert said("quizzes.why") not in page.text


def test_each_answer_is_judged_with_why(client: TestClient) -> None:
    """The right answer is right and no other; why stands beside each of them."""
    for place in range(len(QUESTION.answers)):
        page = client.get("/quiz", params={**ASKED, "answer": place})
        assert page.context["was_right"] is (place == QUESTION.right)
        assert said("quizzes.correct" if place == QUESTION.right else "quizzes.not_correct") in page.text
        assert page.text.count(said("quizzes.right")) == 1


def test_the_case_behind_a_question_is_ruled_alike(client: TestClient) -> None:
    """The link below the answers leads to the case, whose ruling is the right answer."""
    page = client.get("/quiz", params={**ASKED, "answer": 0})
    case = client.get(page.context["case_url"])
    assert case.status_code == 200
    assert case.context["sheet"].headline == QUESTION.situation.headline


def test_an_address_that_is_no_question_is_refused(client: TestClient) -> None:
    """A number or seed out of range is said, not a traceback."""
    assert client.get("/quiz", params={"seed": -1}).status_code in (400, 422)
    assert client.get("/quiz", params={"seed": 1, "number": 0}).status_code in (400, 422)
