"""A map mended at the desk: by touch on a phone, by keyboard at a table; nothing serious for axe."""

import json
import re

import pytest
from playwright.sync_api import expect

from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.course.mending.broken import BREAKS, document, features
from tests.desk.axe import serious
from tests.desk.serving import served

pytestmark = pytest.mark.browser


@pytest.fixture
def address(tmp_path):
    """A desk on nine holes with faults of several kinds, one of them with many choices."""
    found = features()
    for name, hole in (("hole_backwards", 2), ("invalid_geometry", 4), ("no_par", 8), ("bad_position", 5)):
        BREAKS[name](found, hole)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    with served(create_app(path, maps=tmp_path / "maps")) as running:
        yield running


def opened(chromium, address, **how):
    context = chromium.new_context(base_url=address, **how)
    page = context.new_page()
    faults = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.goto("/")
    page.locator("#mending-map[data-ready=yes]").wait_for(state="attached")
    return page, faults


def test_a_phone_mends_the_map_by_touch(chromium, address) -> None:
    """Each fault is visited by a tap, before and after are drawn, Accept saves; in the end the course opens."""
    page, faults = opened(chromium, address, viewport={"width": 390, "height": 844}, has_touch=True)
    expect(page).to_have_url(f"{address}/map/mend")
    assert page.evaluate("document.documentElement.scrollWidth") == 390
    turned = page.locator(".task", has_text="Turn the line round")
    turned.locator(".place").tap()
    expect(page.locator("path.as-it-is")).to_have_count(1)
    expect(page.locator("path.as-proposed")).to_have_count(1)
    expect(page.locator(".arrow")).to_have_count(2)
    page.get_by_label("Who mends it").fill("R. Marker")
    for version in (2, 3, 4):
        accept = page.locator("#list + .tasks .big-button").first
        size = accept.bounding_box()
        assert size["height"] >= 44
        accept.tap()
        page.wait_for_url(f"**/map/mend?on=*&done={version}")
        page.locator("#mending-map[data-ready=yes]").wait_for(state="attached")
        expect(page.get_by_label("Who mends it")).to_have_value("R. Marker")
    page.get_by_role("link", name=said("mending.to_course")).tap()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    assert not faults


def test_the_keyboard_reaches_and_accepts_a_proposal(chromium, address) -> None:
    """By Tab and Enter alone: from the name to the first fault, seen on the map, accepted."""
    page, faults = opened(chromium, address, viewport={"width": 1280, "height": 850})
    page.get_by_label("Who mends it").focus()
    page.keyboard.type("R. Marker")
    for _ in range(40):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.matches('.task .big-button')"):
            break
    page.keyboard.press("Enter")
    page.wait_for_url("**/map/mend?on=*&done=2")
    expect(page.get_by_text("Version 2 is saved: mended")).to_be_visible()
    assert not faults


@pytest.mark.parametrize("width", [390, 1280])
def test_axe_finds_nothing_serious(chromium, address, width) -> None:
    """The page of proposals and the page that leads to it, all folds open."""
    page, _ = opened(chromium, address, viewport={"width": width, "height": 850})
    for path in ("/map/mend", "/what", "/map"):
        page.goto(path)
        assert not serious(page, unfolded=True), path


def test_what_is_proposed_half_the_earth_away_is_seen(chromium, tmp_path) -> None:
    """A green with longitude and latitude swapped: the map shows where it would lie, large enough to be looked at."""
    found = features()
    BREAKS["misplaced"](found, 4)
    path = tmp_path / "links.geojson"
    path.write_text(json.dumps(document(found)), encoding="utf-8")
    with served(create_app(path, maps=tmp_path / "maps")) as address:
        page, faults = opened(chromium, address, viewport={"width": 390, "height": 844}, has_touch=True)
        page.locator(".task .place").first.tap()
        green = page.locator("path.as-proposed").bounding_box()
        whole = page.locator("#mending-map").bounding_box()
    assert green["width"] > 44
    assert whole["y"] < green["y"] < whole["y"] + whole["height"]
    assert not faults


def test_without_javascript_the_list_mends(chromium, address) -> None:
    """The forms alone: accepted, chosen from the list, left."""
    context = chromium.new_context(base_url=address, java_script_enabled=False)
    page = context.new_page()
    page.goto("/map/mend")
    page.get_by_label("Who mends it").fill("R. Marker")
    page.get_by_role("button", name=re.compile("Accept.*Turn the line round")).click()
    expect(page.get_by_text("Version 2 is saved: mended")).to_be_visible()
    page.get_by_role("button", name=said("mending.leave")).first.click()
    expect(page.get_by_text(said("mending.left", count="1"))).to_be_visible()
    context.close()
