"""The rooms of matches, partners' cards and printed sheets by the rules of axe, on a phone: nothing serious or critical."""

import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.records.entry import new_ident
from tests.desk.asking import TestClient
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.settled import settled
from tests.desk.test_bracket import draw, result, start
from tests.desk.test_bracket import event as bracket_event
from tests.desk.test_cards_of_partners import fill, side
from tests.desk.test_matches import addresses, enter, match_event
from tests.services.partners import with_partners
from tests.services.scoring import scoring

pytestmark = pytest.mark.browser


@contextmanager
def desk_of(folder: Path, event: Mapping[str, Any]) -> Iterator[tuple[Any, TestClient, str]]:
    """An open desk: what it keeps, a device, and its address."""
    folder.mkdir()
    with scoring(folder, event) as found:
        kept = keep_here(found.records)
        app = create_app(kept_here=kept)
        with served(app) as address:
            yield kept, TestClient(app, follow_redirects=False), address


def faults_of(page: Page, path: str) -> list[tuple[str, str]]:
    """What axe finds that is serious or critical, folds opened, and whether the page is wider than the phone."""
    page.goto(path)
    if page.locator("#heading").count():
        settled(page)
    found = [(path, f"{rule}: {where}") for rule, where, _ in serious(page, unfolded=True)]
    if page.evaluate("document.documentElement.scrollWidth > innerWidth"):
        found.append((path, "wider than the phone"))
    return found


def test_rooms_of_matches_partners_and_sheets_have_no_serious_finding(
    chromium: Browser, tmp_path: Path
) -> None:
    """axe finds nothing serious on any of them, none is wider than the phone, and a sheet has its style in spite of the guard."""
    faults: list[tuple[str, str]] = []
    phone = {"width": 390, "height": 844}
    with desk_of(tmp_path / "matches", match_event()) as (_, desk, address):
        match = addresses(desk)[0]
        for how in ("won-first", "tied", "penalty-second"):
            enter(desk, match, how)
        context = chromium.new_context(viewport=phone, base_url=address)
        for path in ("/matches", match, f"{match}?place=2", "/matches/board"):
            faults += faults_of(context.new_page(), path)
        context.close()
    draws = {**bracket_event(), "results_public": True}
    with desk_of(tmp_path / "bracket", draws) as (_, desk, address):
        draw(desk)
        start(desk, 1, 1)
        result(desk, 1, 2, "walkover-second")
        context = chromium.new_context(viewport=phone, base_url=address)
        for path in ("/matches/bracket", "/matches", addresses(desk)[0], "/matches/board", "/officials"):
            faults += faults_of(context.new_page(), path)
        context.close()
    partners = {**with_partners(sides="four_ball", scores=["gross"]), "results_public": True}
    with desk_of(tmp_path / "partners", partners) as (kept, desk, address):
        card = side(kept)
        fill(desk, card, {1: 3}, {1: 6, 9: "-"})
        for what in ("starting_times", "results"):
            assert desk.post("/published", data={"tapped": new_ident(), "what": what}).status_code == 303
        lists = re.findall(r"/published/\w{64}\.html", desk.get("/published").text)
        assert len(lists) == 2
        context = chromium.new_context(viewport=phone, base_url=address)
        page = context.new_page()
        for path in ("/cards?round=1", card, "/board", "/papers", "/published", "/conditions", *lists):
            faults += faults_of(page, path)
        assert (
            page.locator("thead th").first.evaluate("one => getComputedStyle(one).borderBottomWidth") == "2px"
        )
        context.close()
    assert not faults
