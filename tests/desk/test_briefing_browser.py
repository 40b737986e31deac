"""A briefing held in a room: the presenter's window and the room's stay in step, whichever of them goes on."""

import re

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from tests.desk.settled import settled

BRIEFING = "/briefing?kind=topics&topic=sand_touched&topic=fell_off_tee&count=4"
pytestmark = pytest.mark.browser


def opened(context: BrowserContext, path: str) -> Page:
    """Return a new window of the same browser at a path."""
    page = context.new_page()
    page.goto(path)
    settled(page)
    return page


def stands_at(page: Page, number: int, shown: int) -> None:
    """Expect a window at a page, its ruling shown to the room or not."""
    expect(page.locator(f'.slide[data-number="{number}"][data-shown="{shown}"]')).to_have_count(1)
    settled(page)


def test_two_windows_of_a_briefing_stay_in_step(chromium: Browser, address: str) -> None:
    """The presenter shows the room the ruling and goes on; a key in the room's window takes the presenter along; a window
    opened late comes to where the others are, and takes nobody back."""
    context = chromium.new_context(viewport={"width": 1280, "height": 800}, base_url=address)
    room = opened(context, BRIEFING)
    presenter = opened(context, f"{BRIEFING}&presenter=1&begun=0")
    expect(room.locator("main .next-stroke")).to_have_count(0)

    presenter.locator('[data-key="show"]').click()
    stands_at(room, 1, 1)
    expect(room.locator("main .next-stroke")).to_have_count(1)
    expect(room.locator("figure.way")).to_have_count(0)
    presenter.keyboard.press("PageDown")
    stands_at(presenter, 1, 2)
    stands_at(room, 1, 2)
    expect(room.locator("figure.way svg:visible")).to_have_count(1)
    presenter.keyboard.press("PageDown")
    stands_at(presenter, 2, 0)
    stands_at(room, 2, 0)

    room.bring_to_front()
    room.keyboard.press("ArrowRight")
    stands_at(room, 2, 1)
    stands_at(presenter, 2, 1)
    assert "presenter=1" in presenter.url
    assert "presenter" not in room.url

    late = opened(context, BRIEFING)
    stands_at(late, 2, 1)
    stands_at(room, 2, 1)
    stands_at(presenter, 2, 1)
    context.close()


def test_windows_of_another_briefing_are_left_alone(chromium: Browser, address: str) -> None:
    """Two briefings open in one browser do not move each other."""
    context = chromium.new_context(viewport={"width": 1280, "height": 800}, base_url=address)
    other = opened(context, "/briefing?kind=beginners&count=3")
    one = opened(context, BRIEFING)
    third = opened(context, BRIEFING)
    one.locator('[data-key="show"]').click()
    stands_at(third, 1, 1)
    stands_at(other, 1, 0)
    context.close()


def test_the_clock_runs_from_when_the_briefing_began(chromium: Browser, address: str) -> None:
    """It keeps its start from page to page, and says how far one should be."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    page = opened(context, f"{BRIEFING}&presenter=1")
    expect(page.locator("#clock")).to_have_text(re.compile(r"\d+:\d\d"))
    begun = page.locator("#clock").get_attribute("data-begun")
    page.locator('[data-key="next"]').click()
    stands_at(page, 2, 0)
    assert page.locator("#clock").get_attribute("data-begun") == begun
    assert page.evaluate("document.documentElement.scrollWidth") <= 390
    context.close()


READ_FROM_THE_BACK = 24
"""Pixels of a sentence at least (own choice)."""


@pytest.mark.parametrize(("width", "height"), [(1280, 800), (1024, 768)])
def test_ruling_and_drawing_are_seen_together_and_read_from_the_back(
    chromium: Browser, address: str, width: int, height: int
) -> None:
    """On screens of a laptop and of an old projector nothing of a drawn page that is ruled has to be scrolled to."""
    context = chromium.new_context(viewport={"width": width, "height": height}, base_url=address)
    page = opened(context, "/briefing?kind=beginners&number=4&shown=1")
    for part in (".next-stroke", ".slide .steps", "figure.drawing svg"):
        box = page.locator(part).first.bounding_box()
        assert box
        assert box["y"] + box["height"] <= height, part
    for part in (".next-stroke", ".slide .steps li"):
        size = page.locator(part).first.evaluate("one => parseFloat(getComputedStyle(one).fontSize)")
        assert size >= READ_FROM_THE_BACK, part
    context.close()


READ_FROM_THE_MIDDLE = 18
"""Pixels of a sentence on a page that would be too long otherwise (own choice)."""


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (1024, 768)])
def test_a_long_page_is_set_smaller_until_the_room_sees_it_whole(
    chromium: Browser, address: str, width: int, height: int
) -> None:
    """A change with many reasons (E-12, which tells of two editions) ends above the lower edge, its buttons included."""
    context = chromium.new_context(viewport={"width": width, "height": height}, base_url=address)
    page = opened(context, "/briefing?kind=changes&topic=2019&topic=2023&count=20&number=4&shown=1")
    page.evaluate("document.fonts.ready")
    box = page.locator(".slide .row").first.bounding_box()
    assert box
    assert box["y"] + box["height"] <= height
    reasons = page.locator(".slide .steps li").first
    assert reasons.evaluate("one => parseFloat(getComputedStyle(one).fontSize)") >= READ_FROM_THE_MIDDLE
    page.set_viewport_size({"width": 1920, "height": 1600})
    expect(reasons).to_have_css("font-size", re.compile(r"2[4-9]"))
    context.close()
