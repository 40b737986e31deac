"""Sides with a name of their own: their players are named wherever somebody looks for them."""

import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from typing import Any

import pytest

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.entry import new_ident
from marram.schema import read_json
from tests.desk.asking import TestClient
from tests.services.scoring import scoring

NAMES = ("Łucja Wróbel", "Günther Öhl", "Siân O'Dwyer", "Bjørn Aas")


def event(**more: Any) -> dict[str, Any]:
    told = {
        "form_of_play": "stroke_play",
        "sides": "foursomes",
        "scores": ["gross"],
        "results_public": True,
        "local_rules": [],
        "rounds": [],
        "players": [{"name": name, "side": f"Pair {at // 2 + 1}"} for at, name in enumerate(NAMES)],
        "starting_times": [{"time": "08:00", "tee": 1, "players": list(NAMES)}],
    }
    return {**read_json(EVENT, "event"), **told, **more}


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with scoring(tmp_path, event()) as found:
        yield keep_here(found.records)


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


@pytest.mark.parametrize("page", ["/cards", "/results", "/board", "/papers/1/results.html"])
def test_the_players_of_a_side_stand_beside_its_name(desk: TestClient, page: str) -> None:
    """Cards, results, the public board and the sheet of results name the partners of each pair."""
    told = re.sub(r"<[^>]+>|\s+", " ", unescape(desk.get(page).text))

    assert "Pair 1" in told
    assert "Günther Öhl / Łucja Wróbel" in told
    assert "Bjørn Aas / Siân O'Dwyer" in told


def test_the_page_that_tells_why_names_them(desk: TestClient) -> None:
    """Under the name of the side stand its players, where no row of the card does."""
    asked = re.search(r'href="(/results/why[^"]+)"', desk.get("/results").text)

    assert asked
    page = unescape(desk.get(unescape(asked[1])).text)
    assert "Günther Öhl / Łucja Wróbel" in page or "Bjørn Aas / Siân O'Dwyer" in page


def test_a_published_result_names_them(desk: TestClient) -> None:
    """The list that was published names the partners in its page and in its JSON."""
    where = desk.post("/published", data={"what": "results", "tapped": new_ident()}).headers["location"]
    listed = unescape(desk.get(where).text)
    address = re.search(r'href="(/published/[^"]+\.json)"', listed)

    assert address
    assert "Pair 2 (Bjørn Aas / Siân O'Dwyer)" in [
        one["name"] for one in desk.get(address[1]).json()["results"][0]["places"]
    ]


@pytest.mark.parametrize(
    ("typed", "card"),
    [
        ("lucja", "Pair 1"),
        ("Wróbel", "Pair 1"),
        ("guenther", "Pair 1"),
        ("gunther ohl", "Pair 1"),
        ("bjorn", "Pair 2"),
        ("sian o'd", "Pair 2"),
    ],
)
def test_a_card_is_found_without_the_accents_of_a_name(desk: TestClient, typed: str, card: str) -> None:
    """On a keyboard that has no Ł, ü or ø the card is found as it is typed there."""
    found = desk.get("/cards", params={"round": 1, "q": typed})

    assert found.status_code == 303
    assert card in desk.get(found.headers["location"]).text


def test_no_choice_is_offered_where_there_is_one_result(tmp_path: Path) -> None:
    """Gross and net are to be chosen between, the whole field alone is not."""
    with scoring(tmp_path, event(scores=["gross", "net"], allowance=50)) as found:
        desk = TestClient(create_app(kept_here=keep_here(found.records)), follow_redirects=False)
        page = desk.get("/results").text

    assert 'aria-current="true">Gross' in page
    assert "Whole field" not in page
