"""Taps on the map, and while the map is on its way: none is lost, none places a ball that was not meant to."""

import re
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from tests.desk.holding import holding
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled

pytestmark = pytest.mark.browser

BETWEEN = 250
"""Milliseconds between the taps of a double tap: most are nearer to each other."""

SEEN = 500
"""Milliseconds after which a new page takes taps again, but not yet the second one of a double tap (350 and 750 in taps.js)."""


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


NEAR_THE_MIDDLE = """() => {
  const map = document.getElementById("map").getBoundingClientRect();
  const middle = [map.x + map.width / 2, map.y + map.height / 2];
  const at = (one) => (({ x, y, width, height }) => [x + width / 2, y + height / 2])(one.getBoundingClientRect());
  const far = (one) => Math.hypot(at(one)[0] - middle[0], at(one)[1] - middle[1]);
  const nearest = [...document.querySelectorAll("#map .hole-number")].sort((a, b) => far(a) - far(b))[0];
  return [nearest.textContent.trim(), ...at(nearest)];
}"""
"""The hole whose number stands nearest the middle of the map, and where."""


def stand_still(page: Page) -> None:
    """Stop the clock of the page, so that taps are as far apart in its time as a test says, however slow the machine is."""
    page.clock.pause_at(page.evaluate("Date.now()") + 1000)


def middle_of_map(page: Page) -> tuple[float, float]:
    box = page.locator("#map").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def test_the_whole_course_zooms_by_double_tap_and_opens_a_hole_by_its_number(phone: BrowserContext) -> None:
    """Neither places a ball: two taps a quarter of a second apart zoom, one on a number opens its hole."""
    page = phone.new_page()
    page.clock.install()
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    middle = middle_of_map(page)
    before = page.evaluate("marramMap.getZoom()")
    stand_still(page)
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(1)
    page.clock.run_for(BETWEEN)
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(0)
    page.clock.resume()
    page.wait_for_function("before => marramMap.getZoom() > before", arg=before)
    assert urlsplit(page.url).path == "/"

    drawn(page)
    hole, *at = page.evaluate(NEAR_THE_MIDDLE)
    page.touchscreen.tap(*at)
    page.wait_for_url(re.compile(rf"/ball\?hole={hole}(&|$)"))
    assert "ball=" not in page.url


CROWDED = """() => {
  const all = [...document.querySelectorAll("#map .hole-number")].map((one) => one.getBoundingClientRect());
  const near = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);
  const last = all.length - 1 - all.toReversed().findIndex((one, at, of) => of.slice(at + 1).some((other) => near(one, other) < 22));
  const one = [...document.querySelectorAll("#map .hole-number")][last];
  return [one.textContent.trim(), all[last].x + all[last].width / 2, all[last].y + all[last].height / 2];
}"""
"""A hole whose number stands within a finger of one that comes before it, and where."""


def test_where_numbers_stand_close_together_a_tap_opens_the_nearest(phone: BrowserContext) -> None:
    """A finger is broader than they are apart, and the one before it in the page is within it too."""
    page = phone.new_page()
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    page.evaluate("void marramMap.setZoom(marramMap.getZoom() - 1.2, { animate: false })")
    drawn(page)
    hole, *at = page.evaluate(CROWDED)
    page.touchscreen.tap(*at)
    page.wait_for_url(re.compile(r"/ball\?hole="))
    assert re.search(r"hole=(\d+)", page.url)[1] == hole  # type: ignore[index]


def test_a_tap_on_a_hole_is_shown_at_once_and_places_the_ball_once(phone: BrowserContext) -> None:
    """However often it is repeated by the same hand, while the desk answers and when it has answered."""
    page = phone.new_page()
    page.clock.install()
    page.goto("/ball?hole=9")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    asked_for: list[str] = []
    page.on("request", lambda request: "ball=" in request.url and asked_for.append(request.url))
    held: list[Route] = []
    page.route(re.compile("ball="), holding(held))
    drawn(page)
    x, y = middle_of_map(page)
    stand_still(page)
    with page.expect_request(re.compile("ball=")):
        page.touchscreen.tap(x, y)
    expect(page.locator(".tapped")).to_have_count(1)
    page.touchscreen.tap(x + 8, y)
    held.pop().continue_()
    page.wait_for_url(re.compile("ball="))
    page.clock.run_for(SEEN)
    expect(page.locator("#panel[aria-busy], .htmx-settling")).to_have_count(0)
    page.touchscreen.tap(x + 8, y)
    page.clock.resume()
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
