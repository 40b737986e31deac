"""Hands on the map editor in a browser: look, tap, drag with a finger, save."""

import re

from playwright.sync_api import Page, expect

from marram.words.texts import text as said
from tests.desk.settled import drawn
from tests.desk.test_map_editor import DAY

CORNERS = [(55.004, 4.0), (55.004, 4.0003), (55.0042, 4.0003)]
"""Of the ground under repair that tests draw: latitude, longitude."""

Pixel = dict[str, float]


def ready(page: Page) -> None:
    expect(page.locator("#editor-map[data-ready=yes]")).to_have_count(1)


def look_at(page: Page, latitude: float, longitude: float, zoom: float = 19) -> None:
    page.evaluate(f"void window.marramMap.setView([{latitude}, {longitude}], {zoom}, {{ animate: false }})")


def pixel(page: Page, latitude: float, longitude: float) -> Pixel:
    """Return where a place is drawn now, from the corner of the map."""
    drawn(page)
    found: Pixel = page.evaluate(
        f"() => {{ const p = window.marramMap.latLngToContainerPoint([{latitude}, {longitude}]);"
        " return {x: p.x, y: p.y}; }"
    )
    return found


def draw(page: Page) -> None:
    """Draw ground under repair with three taps."""
    look_at(page, 55.0041, 4.00015)
    page.get_by_role("button", name="Draw", exact=True).tap()
    tap_corners(page, CORNERS)
    finish(page)


def tap_corners(page: Page, places: list[tuple[float, float]], before: int = 0) -> None:
    """Tap corners of the sketch, each when the one before it is there; ``before`` are there already."""
    for number, place in enumerate(places, before + 1):
        page.locator("#editor-map").tap(position=pixel(page, *place))
        expect(page.locator(".sketch-point")).to_have_count(number)


def finish(page: Page) -> None:
    """Make the sketch an area, which is then the one chosen."""
    page.get_by_role("button", name="Finish").tap()
    expect(page.locator("#chosen")).to_be_visible()


def save(page: Page, who: str = "Ada", day: str = DAY) -> None:
    page.get_by_label(said("editor.who")).fill(who)
    page.get_by_label(said("editor.from"), exact=True).fill(day)
    page.get_by_role("button", name=said("editor.save_version")).click()


def choose(page: Page, words: str) -> None:
    page.locator("summary", has_text=said("editor.choose_by_name")).click()
    page.get_by_label(said("editor.area")).select_option(words)
    page.get_by_role("button", name=said("editor.choose_it")).click()


def corners(page: Page) -> list[tuple[float, float]]:
    """Return the corners of the chosen area, as its text shows them: latitude, longitude."""
    lines = page.locator("#chosen-corners").input_value().split("\n")
    found = []
    for line in lines:
        latitude, longitude = map(float, line.split(","))
        found.append((latitude, longitude))
    return found


def expect_corners(page: Page, count: int) -> None:
    """Wait until the chosen area has so many corners."""
    expect(page.locator("#chosen-corners")).to_have_value(re.compile(rf"^.+(\n.+){{{count - 1}}}$"))


def swipe(page: Page, start: Pixel, right: float, down: float) -> None:
    """Drag something of the chosen area with one finger: real touch events, as a phone sends them."""
    before = page.locator("#chosen-corners").input_value()
    page.evaluate("scrollTo(0, 0)")
    box = page.locator("#editor-map").bounding_box()
    assert box is not None
    session = page.context.new_cdp_session(page)
    x, y = box["x"] + start["x"], box["y"] + start["y"]

    def send(kind: str, share: float) -> None:
        points = [] if kind == "touchEnd" else [{"x": x + share * right, "y": y + share * down}]
        session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

    send("touchStart", 0)
    for step in (0.2, 0.4, 0.6, 0.8, 1):
        send("touchMove", step)
    send("touchEnd", 1)
    expect(page.locator("#chosen-corners")).not_to_have_value(before)
