"""The page for the pocket: all of the book in it, nothing asked of a network, and what cannot be used refused."""

import base64
import gzip
import json
import re
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.demo import EVENT
from marram.desk.offline.pocket import pocket_page
from marram.rules.incidents import INCIDENTS
from marram.services.cases.conditions import conditions_of_event
from marram.services.cases.event import read_event
from tests.cli.running import marram
from tests.desk.axe import serious
from tests.desk.settled import settled

MOST = 1_000_000
"""What the page may weigh, in bytes: it goes from phone to phone (own choice; 0.63 MB with an event, 0.85 without)."""


@pytest.fixture(scope="module")
def pocket(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The page of the invented event, in a file."""
    event = read_event(EVENT)
    file = tmp_path_factory.mktemp("pocket") / "pocket.html"
    file.write_bytes(pocket_page(conditions_of_event(event), event)[0])
    return file


def held(page: str, name: str) -> Any:
    found = re.search(rf'<script type="application/gzip" id="{name}">([^<]*)</script>', page)
    assert found
    return json.loads(gzip.decompress(base64.b64decode(found[1])))


def test_the_page_holds_the_whole_book_and_names_no_other_place(pocket: Path) -> None:
    """Every incident stands in it; it links to and loads nothing beside itself, and its policy allows nothing else."""
    page = pocket.read_text(encoding="utf-8")

    assert [one["name"] for one in held(page, "book")["incidents"]] == [one.name for one in INCIDENTS]
    assert len(page.encode()) < MOST
    assert "default-src 'none'" in page
    without_data = re.sub(r'<script type="application/[^<]*</script>', "", page)
    assert not re.findall(
        r"""(?:src|href)=["'](?!#)|https?://|@import|url\(|fetch\(|XMLHttpRequest""", without_data
    )


def test_an_event_and_an_edition_name_one_day_only(tmp_path: Path) -> None:
    """Where the event has its day, an edition beside it is refused, and nothing is written."""
    done = marram("pocket", str(tmp_path / "p.html"), "--event", str(EVENT), "--edition", "2019")

    assert done.code == 2
    assert "leave out --edition" in done.err
    assert not list(tmp_path.iterdir())


@pytest.mark.browser
def test_a_phone_never_connected_finds_asks_and_rules(pocket: Path, chromium: Browser) -> None:
    """From a file, offline: found by words, answered, an answer changed by one tap, back by the browser; axe finds nothing."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, offline=True)
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.on("console", lambda message: faults.append(message.text))
    page.goto(pocket.as_uri())
    expect(page.locator("#panel")).not_to_have_attribute("aria-busy", "true")
    assert not serious(page)
    expect(page.get_by_text("Not here: the course map")).to_be_visible()
    page.get_by_label("own words").fill("picked up her ball on the fairway without marking it")
    page.get_by_role("link", name="lifted", exact=False).first.click()
    expect(page.locator(".answers a").first).to_be_visible()
    asked = []
    while page.locator(".answers a").count():
        asked.append(page.locator("h1").inner_text())
        page.locator(".answers a").last.focus()
        page.keyboard.press("Enter")
        expect(page.locator("h1")).not_to_have_text(asked[-1])
        expect(page.locator("h1")).to_be_focused()
    ruled = page.locator("h1").inner_text()
    assert asked
    assert not serious(page)
    page.locator(".answered a").first.click()
    expect(page.locator("h1")).to_have_text(asked[0])
    page.go_back()
    expect(page.locator("h1")).to_have_text(ruled)
    settled(page)
    assert not faults
    context.close()


GAPS = [30 + round(670 * number / 19) for number in range(20)]
"""Milliseconds between the taps of 20 double taps, from the fastest to the slowest seen (as in ``test_taps_browser.py``)."""
ASKED = ("match_score_wrong", "ball_doubtful", "club_damaged", "estimate_wrong", "ball_lifted_by_player")
"""Incidents that begin with a question, after whose first answer another one is asked at the same place of the screen."""


def tapped_first(page: Page) -> tuple[float, float]:
    """Tap the first answer, and return where it is on the screen."""
    box = page.locator(".answers a").first.bounding_box()
    assert box is not None
    at = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.touchscreen.tap(*at)
    return at


@pytest.mark.browser
def test_the_second_tap_of_one_hand_answers_nothing(pocket: Path, chromium: Browser) -> None:
    """Twenty double taps: each answers one question, and the first of the next, which is meant, is taken."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True, offline=True)
    page = context.new_page()
    page.clock.install(time=1_750_000_000)
    page.goto(pocket.as_uri())
    expect(page.locator("#panel")).not_to_have_attribute("aria-busy", "true")
    page.clock.pause_at(1_750_000_100)
    met = 0
    for number, gap in enumerate(GAPS):
        incident = ASKED[number % len(ASKED)]
        page.evaluate("(name) => (location.hash = `#/${name}`)", incident)
        page.wait_for_url(f"**#/{incident}")
        page.clock.run_for(5000)
        asked = page.locator("h1").inner_text()
        at = tapped_first(page)
        expect(page.locator("h1")).not_to_have_text(asked)
        answered = page.url
        page.clock.run_for(gap)
        met += page.evaluate(ON_AN_ANSWER, list(at))
        page.touchscreen.tap(*at)
        page.clock.run_for(50)
        assert page.url == answered, (gap, incident)
    assert met > 4  # else another page falls under the finger than the one this is about
    context.close()


@pytest.mark.browser
def test_an_answer_shows_the_finger_on_it_before_it_is_lifted(pocket: Path, chromium: Browser) -> None:
    """Going down marks it while the question still stands there; a finger that moves the page takes the mark away."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True, offline=True)
    page = context.new_page()
    page.goto(f"{pocket.as_uri()}#/{ASKED[0]}")
    answer = page.locator(".answers a").first
    expect(answer).to_be_visible()
    asked = page.locator("h1").inner_text()
    for kind, marked in (("pointerdown", 1), ("pointercancel", 0)):
        answer.dispatch_event(kind, {"bubbles": True})
        expect(page.locator(".answers .taken")).to_have_count(marked)
        expect(page.locator("h1")).to_have_text(asked)
    context.close()


ON_AN_ANSWER = """([x, y]) => [...document.querySelectorAll(".answers a")].some((one) => {
  const box = one.getBoundingClientRect();
  return box.left < x && x < box.right && box.top < y && y < box.bottom;
})"""
"""Whether an answer is at a place of the screen."""
