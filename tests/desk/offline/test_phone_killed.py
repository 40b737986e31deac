"""A phone out of reach of the desk, killed twice: the case goes on, and every entry arrives once."""

import os
import re
import signal
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest
import uvicorn
from fastapi import FastAPI
from playwright.sync_api import Browser, Error, Page, expect

from marram.course.lies.regions import Ground, ground_of
from marram.course.loading import load
from marram.demo import COURSE
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.records.verifying import verified
from tests.clubs import club_records
from tests.desk.axe import serious
from tests.desk.conftest import CHROMIUM, QUIET
from tests.desk.settled import PATIENCE

UNMAPPED = "found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
CASE = f"what=ball_in_penalty_area&{UNMAPPED}&penalty_area_colour=red"
SCREEN = """([x, y]) => {
  const at = new DOMPoint(x, -y).matrixTransform(document.getElementById("course-map").getScreenCTM());
  return [at.x, at.y];
}"""
"""Where a place in metres is on the screen."""


@contextmanager
def reached(app: FastAPI, port: int) -> Iterator[None]:
    """A desk in reach at a port, for as long as it is wanted."""
    listening = socket.create_server(("127.0.0.1", port))
    server = uvicorn.Server(uvicorn.Config(app, log_level="error", lifespan="off", ws="none"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    try:
        yield
    finally:
        server.should_exit = server.force_exit = True
        thread.join(timeout=20)
        listening.close()


@contextmanager
def phone(chromium: Browser, profile: Path) -> Iterator[Page]:
    """A phone with what its disk holds; leaving the block kills it at once, as an empty battery does."""
    context = chromium.browser_type.launch_persistent_context(
        profile, executable_path=str(CHROMIUM), args=QUIET, viewport={"width": 390, "height": 844}
    )
    context.set_default_timeout(PATIENCE)
    try:
        yield context.pages[0]
    finally:
        for pid in started_on(profile):
            os.kill(pid, signal.SIGKILL)
        with suppress(Error):  # Playwright may have noticed already
            context.close()


def started_on(profile: Path) -> list[int]:
    """Return the processes of the browser that works on this profile."""
    found = []
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            command = (folder / "cmdline").read_bytes()
        except OSError:
            continue
        if f"--user-data-dir={profile}".encode() in command:
            found.append(int(folder.name))
    return found


def record(page: Page, note: str) -> None:
    page.get_by_label("Note").fill(note)
    page.get_by_role("button", name="Record").click()
    expect(page.get_by_text("It waits on this phone")).to_be_visible()


def tapped_in_red_penalty_area(page: Page) -> None:
    """Tap the map at a place that is well inside, once on the whole hole and once drawn larger, as closely as a tap is read."""
    course = load(COURSE)
    red = ground_of(course, 9).region(Ground.RED_PENALTY_AREA)
    assert red is not None
    near = red.shape & course.hole(9).line.buffer(10)
    place = near.buffer(-3).representative_point()
    for _ in range(2):
        page.mouse.click(*page.evaluate(SCREEN, [place.x, place.y]))
        expect(page.locator(".lie")).to_contain_text("in a penalty area")
        for _ in range(5):
            page.get_by_role("button", name="Draw larger").click()
    expect(page.locator(".lie .what")).to_have_text("Hole 9: the ball lies in a penalty area")


def likely_where_it_lies(page: Page) -> None:
    """Show the same place before anything was told to have happened: what is likely there stands under the map, and leads on."""
    case = page.url
    page.evaluate("location.hash = location.hash.replace(/^#\\/[^?]+/, '#/map')")
    likely = page.locator(".likely a")
    expect(likely.first).to_contain_text("penalty area")
    likely.first.click()
    expect(page).to_have_url(re.compile(r"/offline#/ball_in_penalty_area\?.*ball="))
    page.goto(case)
    expect(page.locator("h1")).to_contain_text("In the penalty area")


@pytest.mark.browser
def test_entries_of_a_phone_killed_twice_arrive_once(chromium: Browser, tmp_path: Path) -> None:
    """Out of reach a case opens in the book on the phone, and a lie is read on its map, with what is likely there; two entries survive two kills and are in the log once each."""
    with club_records(tmp_path) as records:
        kept = keep_here(records)
        app = create_app(kept_here=kept)
        with socket.create_server(("127.0.0.1", 0)) as free:
            port = free.getsockname()[1]
        desk, profile = f"http://127.0.0.1:{port}", tmp_path / "phone"
        with phone(chromium, profile) as page:
            with reached(app, port):
                page.goto(f"{desk}/offline")
                expect(page.locator("#held")).not_to_be_empty(timeout=3 * PATIENCE)
            page.goto(f"{desk}/case?hole=9&{CASE}")
            expect(page.locator("h1")).to_contain_text("In the penalty area")
            assert page.url.startswith(f"{desk}/offline#/ball_in_penalty_area")
            assert not serious(page)
            record(page, "first")
        with phone(chromium, profile) as page:
            page.goto(f"{desk}/offline#/map?hole=9&of=ball_in_penalty_area&{UNMAPPED}")
            expect(page.locator("#waits")).to_have_text("One entry waits on this phone.")
            assert not serious(page)
            tapped_in_red_penalty_area(page)
            page.get_by_role("link", name="Go on").click()
            expect(page.locator("h1")).to_contain_text("In the penalty area")
            likely_where_it_lies(page)
            record(page, "second")
            expect(page.locator("#waits")).to_have_text("2 entries wait on this phone.")
        assert kept.log.head(kept.event_id) == 0
        with phone(chromium, profile) as page, reached(app, port):
            page.goto(f"{desk}/offline")
            expect(page.locator("#waits")).to_have_text("Nothing waits on this phone.")
            page.reload()
            expect(page.locator("#waits")).to_have_text("Nothing waits on this phone.")
        second = kept.log.entries(kept.event_id)[1].content["case"]["incidents"][0]
        assert (
            second["facts"]["penalty_area_colour"] == "red"
        )  # nobody answered it: the map says so, on the phone and here
        assert second["places"].keys() == {"ball"}
        notes = [kept.log.parts(one.id)[0] for one in kept.log.entries(kept.event_id)]
        assert sorted(one.content.decode() for one in notes if one) == ["first", "second"]
        assert all(one.broken is None for one in verified(records))
