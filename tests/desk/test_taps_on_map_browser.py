"""Taps on the map, and while the map is on its way: none is lost, none places a ball that was not meant to."""

import re
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, Route, expect

from tests.desk.holding import holding
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled

pytestmark = pytest.mark.browser


def test_no_answer_moves_away_from_a_finger_when_the_course_arrives(phone: BrowserContext) -> None:
    """What stands above the answers takes its room before the map is there, on a slow network too."""
    page = phone.new_page()
    held: list[Route] = []
    page.route("**/api/course/**", holding(held))
    page.goto("/ball?hole=9")
    drawn(page)
    before = page.locator("#panel").bounding_box()
    expect(page.locator("#pick-words")).to_be_visible()
    expect(page.locator("#at-cross")).to_be_disabled()
    held.pop().continue_()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(page.locator("#at-cross")).to_be_enabled()
    drawn(page)

    assert page.locator("#panel").bounding_box() == before


def test_an_option_chosen_before_the_course_is_there_is_brought_out(
    phone: BrowserContext, ground: Ground
) -> None:
    """A tap on "Show on the map" is not lost while the map is on its way."""
    page = phone.new_page()
    held: list[Route] = []
    page.route("**/api/course/**", holding(held))
    page.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    option = page.locator(".show-option").last
    option.click()
    expect(option).to_have_attribute("aria-pressed", "true")
    held.pop().continue_()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)

    expect(option).to_have_attribute("aria-pressed", "true")
    expect(page.locator(f".relief.o-{option.get_attribute('data-letter')}.strong").first).to_be_attached()


def test_the_whole_course_zooms_by_double_tap_and_opens_a_hole_by_its_number(phone: BrowserContext) -> None:
    """Neither places a ball; a single tap elsewhere is shown at once, and places it once however often it is repeated."""
    page = phone.new_page()
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    box = page.locator("#map").bounding_box()
    assert box is not None
    middle = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    before = page.evaluate("marramMap.getZoom()")
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(1)
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(0)
    assert page.evaluate("marramMap.getZoom()") > before
    assert urlsplit(page.url).path == "/"

    page = phone.new_page()  # the view of the first is kept
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    ninth = page.locator("#map .hole-number").filter(has_text=re.compile("^9$"))
    expect(ninth).to_be_visible()
    drawn(page)
    number = ninth.bounding_box()
    assert number is not None
    page.touchscreen.tap(number["x"] + 12, number["y"] + 12)
    page.wait_for_url(re.compile(r"/ball\?hole=9(&|$)"))
    settled(page)
    assert "ball=" not in page.url

    asked_for: list[str] = []
    page.on("request", lambda request: "ball=" in request.url and asked_for.append(request.url))
    held: list[Route] = []
    page.route(re.compile("ball="), holding(held))
    drawn(page)
    box = page.locator("#map").bounding_box()
    assert box is not None
    at = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    with page.expect_request(re.compile("ball=")):
        page.touchscreen.tap(*at)
    expect(page.locator(".tapped")).to_have_count(1)
    page.touchscreen.tap(at[0] + 8, at[1])
    held.pop().continue_()
    page.wait_for_url(re.compile("ball="))
    page.touchscreen.tap(at[0] + 8, at[1])
    settled(page)
    assert not held
    assert len(asked_for) == 1


def test_a_map_that_does_not_arrive_is_said_and_fetched_again(phone: BrowserContext) -> None:
    """Out of reach the page says that the map is missing and goes on working; a tap on the button fetches it."""
    page = phone.new_page()
    page.route("**/api/course/**", lambda route: route.abort("internetdisconnected"))
    page.goto("/ball?hole=9")
    fault = page.locator("#map-fault[role=status]")
    expect(fault).to_contain_text("has not arrived")
    page.unroute("**/api/course/**")
    fault.get_by_role("button").click()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(fault).to_be_empty()
