"""The map read in the sun: its key, what is out, the edges near the ball, and the look chosen on the device."""

import pytest
from playwright.sync_api import Browser, Page, expect
from shapely import Point, box

from marram.course.model import Course, Kind
from tests.desk.places import Ground
from tests.desk.settled import drawn

pytestmark = pytest.mark.browser

BY_THE_SALTMARSH = (595.0, 20.0)


def in_view(page: Page, course: Course) -> object:
    """Return the part of the course that the map shows, in metres."""
    west, south, east, north = page.evaluate(
        "() => { const b = marramMap.getBounds(); return [b.getWest(), b.getSouth(), b.getEast(), b.getNorth()]; }"
    )
    return box(*course.plane.to_metres(west, south), *course.plane.to_metres(east, north))


def test_the_key_names_what_is_in_view_and_out_stands_beyond_the_boundary(
    chromium: Browser, address: str, ground: Ground, course: Course
) -> None:
    """No kind of area in view is missing from the key, none farther off is in it; every "out" lies outside the boundary."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    page = context.new_page()
    page.goto(f"/ball?hole=14&ball={ground.at(BY_THE_SALTMARSH)}")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(page.locator(".out-label").first).to_be_attached()
    drawn(page)
    shown = in_view(page, course)
    page.get_by_role("button", name="Key").click()
    expect(page.locator(".map-key li").first).to_be_visible()
    named = set(page.locator(".map-key li").all_inner_texts())
    areas = {
        Kind.RED_PENALTY_AREA: "Red penalty area",
        Kind.BUNKER: "Bunker",
        Kind.PUTTING_GREEN: "Putting green",
    }
    far = {Kind.YELLOW_PENALTY_AREA: "Yellow penalty area", Kind.GROUND_UNDER_REPAIR: "Ground under repair"}
    places = page.evaluate(
        """() => { const found = []; marramMap.eachLayer((one) => {
          if (one.options.icon?.options.className === "out-label") found.push([one.getLatLng().lng, one.getLatLng().lat]);
        }); return found; }"""
    )
    boundary = next(iter(course.of(Kind.BOUNDARY))).geometry

    for kind, words in {**areas, **far}.items():
        seen = any(one.geometry.intersects(shown) for one in course.of(kind))
        nearly = any(one.geometry.intersects(shown.buffer(15)) for one in course.of(kind))
        assert words in named if seen else words not in named or nearly, words
    assert places
    assert not any(boundary.contains(Point(course.plane.to_metres(*place))) for place in places)
    expect(page.locator(".relief-label", has_text="inside the boundary")).to_be_attached()

    page.goto(f"/ball?hole=9&ball={ground.in_the_burn()}")
    expect(
        page.locator(".relief-label", has_text="red penalty area: The Burn")
    ).to_be_attached()  # words of any length
    context.close()


def test_a_look_chosen_on_the_device_is_kept_and_the_device_decides_else(
    chromium: Browser, address: str
) -> None:
    """Dark by the device; light once chosen, also after a reload; larger type makes letters a quarter larger."""
    context = chromium.new_context(
        viewport={"width": 390, "height": 844}, base_url=address, color_scheme="dark"
    )
    page = context.new_page()
    page.goto("/ball?hole=9")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    paper = "getComputedStyle(document.body).backgroundColor"
    fairway = "getComputedStyle(document.querySelector('path.k-fairway')).fill"
    dark = page.evaluate(f"[{paper}, {fairway}]")
    page.locator("[data-look=colours]").select_option("light")
    page.locator("[data-look=type]").select_option("larger")
    page.reload()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(page.locator("[data-look=colours]")).to_have_value("light")
    light = page.evaluate(f"[{paper}, {fairway}]")
    size = page.evaluate("parseFloat(getComputedStyle(document.documentElement).fontSize)")

    assert all(sum(map(int, one[4:-1].split(","))) < 300 for one in dark), dark
    assert all(sum(map(int, one[4:-1].split(","))) > 400 for one in light), light
    assert size == 20
    assert page.evaluate("document.documentElement.scrollWidth") == 390
    context.close()


def test_magnified_to_twice_its_size_nothing_overflows_and_on_its_side_the_map_stands_beside(
    chromium: Browser, address: str, ground: Ground
) -> None:
    """390 pixels at 200 % are 195 wide: no page is wider; nor with type alone twice as large. At 844 by 390 map and interview share the screen."""
    burn = f"hole=9&ball={ground.in_the_burn()}"
    ruled = (
        f"/case?{burn}&what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    drawn_too = f"{ruled}&entry={ground.in_the_burn(0)}"
    paths = ("/", f"/ball?{burn}", f"/what?{burn}", f"/case?{burn}&what=ball_in_penalty_area", drawn_too)
    context = chromium.new_context(viewport={"width": 195, "height": 422}, base_url=address)
    page = context.new_page()
    for path in paths:
        page.goto(path)
        drawn(page)
        assert page.evaluate("document.documentElement.scrollWidth") == 195, path
    page.set_viewport_size({"width": 390, "height": 844})
    for path in paths:
        page.goto(path)
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        drawn(page)
        assert page.evaluate("document.documentElement.scrollWidth") == 390, path
    page.evaluate("document.documentElement.style.fontSize = ''")
    page.set_viewport_size({"width": 844, "height": 390})
    drawn(page)
    map_box, panel = page.locator("#map").bounding_box(), page.locator("#panel").bounding_box()

    assert map_box
    assert panel
    assert map_box["x"] + map_box["width"] <= panel["x"] + 1
    assert map_box["y"] + map_box["height"] <= 390
    assert map_box["height"] > 250
    context.close()


def test_a_drawing_fills_the_screen_and_goes_back_to_its_card(
    chromium: Browser, address: str, ground: Ground
) -> None:
    """The figure of a card is as wide as the phone, and stands in its card again when it is closed."""
    done = "found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    page = context.new_page()
    page.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area&{done}&entry={ground.in_the_burn(0)}"
    )
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    page.locator("[data-whole-screen]").first.click()
    expect(page.locator("dialog[open] svg")).to_be_visible()
    box_of = page.locator("dialog[open] svg").bounding_box()
    page.keyboard.press("Escape")
    expect(page.locator("dialog[open]")).to_have_count(0)

    assert box_of
    assert box_of["width"] >= 370
    expect(page.locator(".option figure svg")).to_have_count(page.locator("[data-whole-screen]").count())
    context.close()


OVER_EACH_OTHER = """() => {
  const boxes = (what) => [...document.querySelectorAll(what)].map((one) => one.getBoundingClientRect()).filter((box) => box.width);
  const over = (one, other) => one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
  const labels = boxes("#map .relief-label span");
  const tools = boxes("#map .option-letter:not(.faint), #map .map-key .tool, #map .leaflet-control-zoom");
  return [labels.length, tools.length, labels.filter((one) => tools.some((other) => over(one, other))).length];
}"""
"""How many labels and how many letters and tools stand on the map, and how many labels stand over one of these."""


def test_no_label_stands_over_the_letter_of_an_option_or_a_tool(
    chromium: Browser, address: str, ground: Ground
) -> None:
    """Back on the line from the burn, brought out on a phone: letter, key and zoom can all be seen."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    page = context.new_page()
    page.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    page.locator(".show-option").first.click()
    expect(page.locator(".relief-label").first).to_be_attached()
    drawn(page)
    labels, tools, covering = page.evaluate(OVER_EACH_OTHER)
    context.close()

    assert (labels >= 3, tools, covering) == (True, 3, 0)
