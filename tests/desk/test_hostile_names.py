"""Markup and escape codes in the names of a map: text on every page and in every answer, never run."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.course import load
from marram.demo import COURSE
from marram.desk.app import create_app
from tests.desk.asking import TestClient
from tests.desk.places import Ground
from tests.desk.serving import served
from tests.desk.test_guard import ROUTES
from tests.hostile_names import hostile_course, markup_in, orders_in

LINKS = load(COURSE)
"""Named as it is: where its places are."""
AS_WRITTEN = {"/api/map", "/map/file"}
"""The map itself as JSON, to be edited and kept: it holds its names as they were given."""


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return hostile_course(tmp_path_factory.mktemp("hostile"))


@pytest.fixture(scope="module")
def desk(path: Path, tmp_path_factory: pytest.TempPathFactory) -> TestClient:
    return TestClient(create_app(path, maps=tmp_path_factory.mktemp("hostile") / "maps"))


@pytest.fixture(scope="module")
def balls() -> list[str]:
    """Addresses of a ball on the fairway, in a penalty area, and with the relief from it drawn."""
    ground = Ground(LINKS)
    at, burn = ground.fairway(), ground.in_the_burn()
    places = f"ball={burn}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=20)}"
    case = f"what=ball_in_penalty_area&hole=9&{places}"
    return [f"/ball?hole=9&ball={at}", f"/ball?hole=9&ball={burn}", f"/ball?{case}", f"/case?{case}"]


def test_no_name_becomes_markup_or_an_order(desk: TestClient, balls: list[str]) -> None:
    """In whatever the desk can be asked for: pages, drawings, JSON, files."""
    shown = 0
    asked = [
        one for method, one in ROUTES if method == "GET" and one != "/api/quiz/kept"
    ]  # seconds of questions
    for address in [*asked, *balls]:
        answer = desk.get(address)
        kind = answer.headers.get("content-type", "")
        if not kind.startswith(("text/html", "image/svg", "application/", "text/")) or "pdf" in kind:
            continue
        if address not in AS_WRITTEN:
            assert orders_in(answer.text) == set(), address
        if "html" in kind or "svg" in kind:
            assert markup_in(answer.text) == [], address
        shown += "alert(1)" in answer.text
    assert shown > 8  # the names did reach pages and answers


@pytest.mark.browser
@pytest.mark.parametrize("page_of", ["/", "/marking", "/map", "ball"])
def test_no_name_is_run_by_a_browser(
    chromium: Browser, path: Path, balls: list[str], tmp_path: Path, page_of: str
) -> None:
    """On the maps, which scripts draw, every name is text: nothing is run, and the policy had nothing to forbid."""
    with served(create_app(path, maps=tmp_path / "maps")) as address:
        context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
        page: Page = context.new_page()
        told: list[str] = []
        page.on("dialog", lambda dialog: (told.append(dialog.message), dialog.dismiss()))
        page.on("pageerror", lambda error: told.append(str(error)))
        page.on("console", lambda one: told.append(one.text) if "Content Security" in one.text else None)
        for one in balls if page_of == "ball" else [page_of]:
            page.goto(one, wait_until="networkidle")
            expect(page.locator("main")).to_be_visible()
            assert page.locator("img[src=x], [onerror]").count() == 0
            assert orders_in(page.locator("body").inner_text()) == set()
        assert told == []
        context.close()
