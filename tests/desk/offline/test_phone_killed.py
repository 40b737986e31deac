"""A phone out of reach of the desk, killed twice: the case goes on, and every entry arrives once."""

import os
import signal
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

import pytest
import uvicorn
from axe_playwright_python.sync_playwright import Axe
from fastapi import FastAPI
from playwright.sync_api import Browser, Error, Page, expect

from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.records.making import made
from marram.records.verifying import verified
from marram.services.keeping import start
from tests.desk.conftest import CHROMIUM, QUIET
from tests.desk.settled import PATIENCE

CASE = "what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no&penalty_area_colour=red"


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


@pytest.mark.browser
def test_entries_of_a_phone_killed_twice_arrive_once(chromium: Browser, tmp_path: Path) -> None:
    """Out of reach a case opens in the book on the phone; two entries survive two kills and are in the log once each."""
    with made(tmp_path / "club.db") as records:
        start(records, "Quillsand Links", course_file=COURSE, maps=tmp_path / "none", event=EVENT)
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
            page.goto(f"{desk}/offline#/ball_in_penalty_area?{CASE.partition('&')[2]}")
            expect(page.locator("#waits")).to_have_text("One entry waits on this phone.")
            record(page, "second")
            expect(page.locator("#waits")).to_have_text("2 entries wait on this phone.")
        assert kept.log.head(kept.event_id) == 0
        with phone(chromium, profile) as page, reached(app, port):
            page.goto(f"{desk}/offline")
            expect(page.locator("#waits")).to_have_text("Nothing waits on this phone.")
            page.reload()
            expect(page.locator("#waits")).to_have_text("Nothing waits on this phone.")
        notes = [kept.log.parts(one.id)[0] for one in kept.log.entries(kept.event_id)]
        assert sorted(one.content.decode() for one in notes if one) == ["first", "second"]
        assert all(one.broken is None for one in verified(records))


def serious(page: Page) -> list[Any]:
    return [
        one["id"]
        for one in Axe().run(page).response["violations"]
        if one["impact"] in ("serious", "critical")
    ]
