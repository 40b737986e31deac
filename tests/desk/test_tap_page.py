"""The quiz on a drawing, at the desk: an image button sends the tap, and the page judges it."""

import re

import pytest
from fastapi import FastAPI

from marram.course.model import Course
from marram.desk.teaching.tap_page import SIDE, asked
from marram.teach.quizzes.taps import Kind
from marram.words.texts import text as said
from tests.desk.asking import TestClient

SEED = 7


def _first(course: Course, kind: Kind) -> int:
    return next(number for number in range(1, 12) if asked(SEED, number, course).kind is kind)


def _pixel(course: Course, number: int, place: tuple[float, float]) -> tuple[float, float]:
    return asked(SEED, number, course).view(float(SIDE)).at(place)


@pytest.fixture
def course(app: FastAPI) -> Course:
    return app.state.workplace.course


def test_a_question_shows_a_drawing_to_tap_and_not_its_answer(client: TestClient) -> None:
    """The page holds an image button of the size that taps are read in; its image shows no relief area."""
    page = client.get("/quiz/drawing", params={"seed": SEED, "number": 1})
    image = re.search(r'<input type="image"[^>]*src="([^"]+)" width="(\d+)"', page.text)
    assert image
    assert int(image[2]) == SIDE
    drawing = client.get(image[1].replace("&amp;", "&"))
    assert drawing.headers["content-type"].startswith("image/svg+xml")
    assert "url(#tap-area)" not in drawing.text


def test_a_tap_in_the_relief_area_is_right(client: TestClient, course: Course) -> None:
    """Where the question asks for a drop, a tap inside is right, and one in the corner is wrong with why."""
    number = _first(course, Kind.DROP)
    inside = asked(SEED, number, course).area.polygon.representative_point()
    x, y = _pixel(course, number, (inside.x, inside.y))
    right = client.get("/quiz/drawing", params={"seed": SEED, "number": number, "tap.x": x, "tap.y": y})
    assert said("quizzes.correct") in right.text
    assert "url(#tap-area)" in right.text
    wrong = client.get("/quiz/drawing", params={"seed": SEED, "number": number, "tap.x": 0, "tap.y": 0})
    assert said("quizzes.not_correct") in wrong.text
    assert wrong.context["verdict"]


def test_the_reference_point_is_judged_where_it_is_tapped(client: TestClient, course: Course) -> None:
    """A tap on the reference point, as the drawing is sized on the page, is right."""
    number = _first(course, Kind.REFERENCE)
    x, y = _pixel(course, number, asked(SEED, number, course).area.reference)
    page = client.get(
        "/quiz/drawing", params={"seed": SEED, "number": number, "tap.x": round(x), "tap.y": round(y)}
    )
    assert page.context["judged"].right


def test_an_area_is_drawn_corner_by_corner(client: TestClient, course: Course) -> None:
    """Taps add up in the address without a script, and the area is judged once it is said to be all."""
    number = _first(course, Kind.AREA)
    taps = ""
    for x, y in ((40, 40), (280, 40), (280, 280)):
        page = client.get(
            "/quiz/drawing", params={"seed": SEED, "number": number, "taps": taps, "tap.x": x, "tap.y": y}
        )
        assert page.context["judged"] is None
        taps = page.context["taps"]
    assert taps == "40,40;280,40;280,280"
    done = client.get("/quiz/drawing", params={"seed": SEED, "number": number, "taps": taps, "done": "yes"})
    assert 0 <= done.context["judged"].shared <= 1


def test_what_is_no_row_of_taps_is_refused(client: TestClient) -> None:
    """Letters, and an area with two corners, are told with what to give."""
    assert client.get("/quiz/drawing", params={"seed": SEED, "number": 1, "taps": "a,b"}).status_code == 400
