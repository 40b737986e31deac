"""The position of the phone places the ball, or says that it is elsewhere."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.words.texts import text as said
from tests.desk.places import Ground
from tests.desk.test_browser import SIZES, ready

pytestmark = pytest.mark.browser


@pytest.fixture
def located(chromium: Browser, address: str) -> Iterator[Page]:
    """A phone that may be asked for its position."""
    context = chromium.new_context(viewport=SIZES["phone"], base_url=address, permissions=["geolocation"])
    yield context.new_page()
    context.close()


def test_the_phone_s_position_moves_the_map_and_the_cross_places_the_ball(
    located: Page, ground: Ground
) -> None:
    """The position only moves the map: the official still says where the ball lies."""
    latitude, longitude = ground.fairway(hole=6, along=200).split(",")
    located.context.set_geolocation(
        {"latitude": float(latitude), "longitude": float(longitude), "accuracy": 6}
    )
    located.goto("/")
    ready(located)
    located.get_by_role("button", name=said("shell.at_phone")).click()
    expect(located.locator("#pick-words")).to_contain_text("to about 6 m")
    located.get_by_role("button", name=said("shell.at_cross")).click()

    expect(
        located.get_by_role("heading", name=said("rulings.ball.lies", where="in the general area"))
    ).to_be_visible()
    expect(located.locator(".eyebrow")).to_contain_text("hole 6")


def test_a_phone_elsewhere_is_told_so(located: Page) -> None:
    """A position off the course moves nothing."""
    located.context.set_geolocation({"latitude": 10, "longitude": 10, "accuracy": 6})
    located.goto("/ball?hole=6")
    ready(located)
    located.get_by_role("button", name=said("shell.at_phone")).click()

    expect(located.locator("#pick-words")).to_contain_text("not on this course")
