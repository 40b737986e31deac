"""Bad addresses get a clear page, and programs one error shape; never a traceback."""

from html import unescape

import pytest
from fastapi import FastAPI

from marram.words.texts import text as said
from tests.desk.asking import TestClient

BAD = [
    ("what=ball_moved_by_playr", 404, "Did you mean 'ball_moved_by_player'"),
    ("what=unplayable_ball&found=maybe", 400, "There is no fact 'found'"),
    ("what=unplayable_ball&area_of_ball=moon", 400, "'moon' is not an answer"),
    ("what=unplayable_ball&hole=19&ball=55.0,4.0", 400, "has no hole 19"),
    ("what=unplayable_ball&hole=seven", 400, "is not the number of a hole"),
    ("what=unplayable_ball&ball=here", 400, "is not a place"),
    ("what=unplayable_ball&ball=nan,nan", 400, "is not a place"),
    ("what=unplayable_ball&ball=91,4", 400, "is not a place"),
    ("what=unplayable_ball&hole=7&ball=10,10", 400, "middle of the course"),
    ("what=unplayable_ball&on=yesterday", 400, "is not a day"),
    ("what=unplayable_ball&ask=nonsense", 400, "There is no fact 'nonsense'"),
    ("what=unplayable_ball&hole=7&hole=8", 400, "hole is given twice"),
]


@pytest.mark.parametrize(("query", "status", "words"), BAD)
def test_a_bad_address_gets_a_page_that_says_why(
    client: TestClient, query: str, status: int, words: str
) -> None:
    """The page names the fault and leads back to the course."""
    page = client.get(f"/case?{query}")

    assert page.status_code == status
    assert any(words in fault for fault in page.context["faults"])
    assert 'href="/"' in page.text


@pytest.mark.parametrize(("query", "status", "words"), [one for one in BAD if "ask" not in one[0]])
def test_programs_get_one_error_shape(client: TestClient, query: str, status: int, words: str) -> None:
    """Below /api every error is ``{"marram": 1, "error": {code, message, faults}}``."""
    answer = client.get(f"/api/rule?{query}")
    body = answer.json()

    assert answer.status_code == status
    assert body.keys() == {"marram", "error"}
    assert body["error"].keys() == {"code", "message", "faults"}
    assert words in body["error"]["message"]


def test_all_faults_are_told_at_once(client: TestClient) -> None:
    """Two bad answers and a bad place make three faults in one page."""
    page = client.get("/case?what=unplayable_ball&area_of_ball=moon&nothing=1&ball=here")

    assert len(page.context["faults"]) == 3


def test_an_unknown_page_is_a_page_too(client: TestClient) -> None:
    """The way back stands on it; a program gets the error shape."""
    assert client.get("/nowhere").status_code == 404
    assert said("shell.back_to_course") in client.get("/nowhere").text
    assert client.get("/api/nowhere").json()["error"]["code"] == "not_found"


def test_a_wrong_method_is_refused_in_the_same_shape(client: TestClient) -> None:
    """Posting to a page that is only read says so."""
    assert client.post("/api/course").json()["error"]["code"] == "refused"


def test_a_failure_of_ours_is_a_page_too(app: FastAPI, monkeypatch: pytest.MonkeyPatch) -> None:
    """A fault nobody foresaw gives a page without a traceback, and says that the referee decides."""

    def fails(*_: object, **__: object) -> None:
        raise ZeroDivisionError("secret of the machine")

    monkeypatch.setattr("marram.desk.rulings.case.consult", fails)
    page = TestClient(app, raise_server_exceptions=False).get("/case?what=unplayable_ball")

    assert page.status_code == 500
    assert "secret" not in page.text
    assert "The referee decides" in page.text


@pytest.mark.parametrize(
    ("address", "fault"),
    [
        ("/log/abc", "number is 'abc'; give a whole number."),
        ("/holes/2025-13-40", "day is '2025-13-40'; give a day as year-month-day"),
        ("/marking?day=31.12.2025", "day is '31.12.2025'; give a day as year-month-day"),
    ],
)
def test_what_a_framework_refuses_is_said_in_our_words(client: TestClient, address: str, fault: str) -> None:
    """A part of an address that is no number or day is named, with what was given and what to give."""
    answer = client.get(address)

    assert answer.status_code == 400
    assert fault in unescape(answer.text)


@pytest.mark.parametrize(
    ("referer", "leads_back"),
    [
        ("{own}/cards/1/x?a=1&b=2", True),
        ("https://elsewhere.example/cards/1/x?a=1&b=2", False),
        ("{own}//elsewhere.example/x", False),
        ("", False),
    ],
)
def test_a_form_that_cannot_be_used_leads_back_to_the_page_it_was_on(
    client: TestClient, referer: str, *, leads_back: bool
) -> None:
    """By the address the browser names, where it is our own; elsewhere to the course alone."""
    own = str(client.base_url).rstrip("/")
    page = client.post("/entries/ballot", data={}, headers={"Referer": referer.format(own=own)})

    assert page.status_code == 400
    assert (said("shell.back_to_form") in page.text) is leads_back
    assert ('href="/cards/1/x?a=1&amp;b=2"' in page.text) is leads_back
    assert said("shell.back_to_course") in page.text
    assert "elsewhere.example" not in page.text
