"""Back where one was: the editor, the holes and the marking lead back to the case they were opened from."""

from urllib.parse import quote

import pytest
from fastapi import FastAPI
from playwright.sync_api import Browser, expect

from tests.desk.asking import TestClient
from tests.desk.settled import drawn

CASE = "/case?what=ball_in_penalty_area&hole=17&ball=55.0052370,4.0021430"
PAGES = ("/map", "/holes/2025-06-21", "/marking")


@pytest.mark.parametrize("path", PAGES)
def test_the_page_leads_back_to_its_case_also_after_saving(editing: FastAPI, path: str) -> None:
    """The link back goes to the case given, and still does on a page without it, such as after a save."""
    desk = TestClient(editing)
    said = desk.get(f"{path}?back={quote(CASE, safe='')}").text
    for page in (said, desk.get(path).text):
        assert f'href="{CASE.replace("&", "&amp;")}"' in page
        assert "Back to the case" in page


@pytest.mark.parametrize(
    "back", ["https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere.example", "case"]
)
def test_it_never_leads_to_another_site(editing: FastAPI, back: str) -> None:
    """Whatever an address says, back is a page of this desk."""
    page = TestClient(editing).get(f"/map?back={quote(back, safe='')}").text
    assert "elsewhere.example" not in page
    assert "Back to the course" in page


def test_the_way_to_the_holes_of_today_keeps_the_case(editing: FastAPI) -> None:
    """The address without a day goes on to the day's with the case."""
    page = TestClient(editing).get(f"/holes?back={quote(CASE, safe='')}").text
    assert "Back to the case" in page


@pytest.mark.parametrize("path", PAGES)
def test_the_list_of_rooms_beside_a_case_leads_back_to_it_too(editing: FastAPI, path: str) -> None:
    """A link that knows no case was followed on a case's page: the page it leads to goes back there, after a save as well."""
    desk = TestClient(editing)
    said = desk.get(path, headers={"referer": f"{str(desk.base_url).rstrip('/')}{CASE}"}).text
    for page in (said, desk.get(path).text):
        assert f'href="{CASE.replace("&", "&amp;")}"' in page
        assert "Back to the case" in page


@pytest.mark.parametrize("came", ["https://elsewhere.example/case?what=sand_touched", "/log", "http://["])
def test_it_leads_back_to_no_case_of_another_site(editing: FastAPI, came: str) -> None:
    """What another site, another page or a broken header says one came from is not gone back to."""
    desk = TestClient(editing)
    referer = came if ":" in came else f"{str(desk.base_url).rstrip('/')}{came}"
    page = desk.get("/map", headers={"referer": referer}).text
    assert "elsewhere.example" not in page
    assert "Back to the course" in page


@pytest.mark.browser
def test_the_view_of_a_case_is_there_again(chromium: Browser, address: str) -> None:
    """Who leaves a case for another page and comes back finds the map where it was."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    page = context.new_page()
    page.goto(CASE)
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    view = "[marramMap.getZoom(), marramMap.getCenter().lat, marramMap.getCenter().lng].map((one) => one.toFixed(5))"
    page.evaluate("void marramMap.setView([55.0049, 4.0027], 18.5, { animate: false })")
    before = page.evaluate(view)
    page.goto("/marking")
    page.goto(CASE)
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    assert page.evaluate(view) == before
    context.close()
