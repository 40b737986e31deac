"""Briefings kept at the desk: own words stay, what is decided otherwise is flagged, two who change one at once."""

import json
from collections.abc import Iterator
from datetime import UTC, datetime
from io import BytesIO
from pathlib import Path

import pytest
from fastapi import FastAPI
from pypdf import PdfReader

from marram.desk.log.kept import KeptHere
from marram.records.briefings import briefing_of, briefings, change_briefing
from marram.teach.briefings.deck import PARTS
from marram.teach.briefings.deck_file import read
from marram.words.texts import text as said
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def app(kept: KeptHere) -> FastAPI:
    return guarded(kept)


@pytest.fixture
def referee(app: FastAPI, kept: KeptHere) -> TestClient:
    return signed_in(app, kept, "referee")


def drawn(referee: TestClient) -> str:
    data = {
        "csrf": signature(referee, "/briefings"),
        "kind": "topics",
        "topics": "sand_touched, 17",
        "count": 3,
    }
    found = referee.post("/briefings", data=data)
    assert found.status_code == 303
    return str(found.headers["location"])


def posted(referee: TestClient, address: str, step: str, version: int, **more: object) -> int:
    data = {"csrf": signature(referee, address), "step": step, "version": version, **more}
    return referee.post(address, data=data).status_code


def words_of(referee: TestClient, address: str, number: int) -> dict[str, str]:
    shown = referee.get(address).context["pages"][number - 1]["parts"]
    return {name: words for name, words, _ in shown}


def test_own_words_are_kept_and_survive_ruling_anew(referee: TestClient) -> None:
    """A question put otherwise stands on the slide, stays when all is ruled anew, and goes back to what the engine tells."""
    address = drawn(referee)
    made = words_of(referee, address, 2)
    assert posted(referee, address, "edit", 1, number=2, **{**made, "question": "May she?"}) == 303
    assert posted(referee, address, "renew", 2) == 303
    assert words_of(referee, address, 2) == {**made, "question": "May she?"}
    assert "May she?" in referee.get(f"{address}/slides?number=2").text
    assert posted(referee, address, "as_made", 3, number=2) == 303
    assert words_of(referee, address, 2) == made


def test_what_is_decided_otherwise_now_is_flagged_until_it_was_seen(
    referee: TestClient, kept: KeptHere
) -> None:
    """A page kept with another ruling gets today's, tells the old one, and is quiet once confirmed."""
    address = drawn(referee)
    ident = address.rsplit("/", 1)[1]
    one = briefing_of(kept.records, kept.event_id, ident)
    assert one
    document = json.loads(one.document)
    now = document["pages"][0]["made"]["ruling"]
    document["pages"][0]["made"]["ruling"] = "Nine penalty strokes."
    change_briefing(kept.records, one, json.dumps(document), datetime.now(UTC))
    posted(referee, address, "renew", 2)
    page = referee.get(address)
    assert page.context["pages"][0]["flag"] == said(
        "briefings.decides_otherwise", was="Nine penalty strokes."
    )
    assert words_of(referee, address, 1)["ruling"] == now
    assert "Nine penalty strokes." in referee.get(f"{address}/slides?presenter=1").text
    assert "Nine penalty strokes." not in referee.get(f"{address}/slides?shown=1").text
    posted(referee, address, "confirm", 3, number=1)
    assert not referee.get(address).context["pages"][0]["flag"]


def test_of_two_who_change_it_at_once_neither_overwrites_the_other(
    referee: TestClient, kept: KeptHere
) -> None:
    """The second, who saw an older version, is told so, and the first one's words stay."""
    address = drawn(referee)
    made = words_of(referee, address, 1)
    assert posted(referee, address, "edit", 1, number=1, **{**made, "title": "Sand"}) == 303
    assert posted(referee, address, "edit", 1, number=1, **{**made, "title": "Water"}) == 400
    assert words_of(referee, address, 1)["title"] == "Sand"
    (one,) = briefings(kept.records, kept.event_id)
    assert (one.version, read(one.document).pages[0].part("title")) == (2, "Sand")


def test_a_part_left_empty_is_refused_and_slides_and_paper_are_made(referee: TestClient) -> None:
    """Nothing empty is kept; deck and handout are PDF; a briefing that is none is said."""
    address = drawn(referee)
    empty = dict.fromkeys(PARTS, " ")
    assert posted(referee, address, "edit", 1, number=1, **empty) == 400
    for query in ("", "?handout=true"):
        assert referee.get(f"{address}/pdf{query}").content.startswith(b"%PDF")
    for query in ("?paper=letter", "?handout=true&paper=letter"):
        sheet = PdfReader(BytesIO(referee.get(f"{address}/pdf{query}").content)).pages[0].mediabox
        assert sorted((float(sheet.width), float(sheet.height))) == [
            612,
            792,
        ]  # ANSI/ASME Y14.1, size A: 8.5 by 11 inches
        assert f"{address}/pdf{query}".replace("&", "&amp;") in referee.get(address).text
    assert referee.get(f"{address}/pdf?paper=foolscap").status_code in (400, 422)
    assert referee.get("/briefings/00000000-0000-4000-8000-000000000009").status_code == 404


def test_a_selection_is_drawn_by_lot_and_its_number_gives_it_again(referee: TestClient) -> None:
    """Whoever types the number of an evening has the same situations again; another number has others."""
    asked = {
        "csrf": signature(referee, "/briefings"),
        "kind": "beginners",
        "count": "6",
        "topics": "",
        "title": "",
    }

    def pages_of(seed: str) -> tuple[str, list[object]]:
        address = str(referee.post("/briefings", data={**asked, "seed": seed}).headers["location"])
        page = referee.get(address)
        return page.context["selection"], [each["parts"] for each in page.context["pages"]]

    by_lot, pages = pages_of("")
    number = by_lot.removesuffix(".").split()[-1]
    assert pages_of(number) == (by_lot, pages)
    other = str((int(number) + 1) % 10_000)
    assert pages_of(other)[0] != by_lot
