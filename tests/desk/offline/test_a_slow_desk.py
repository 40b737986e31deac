"""A desk that is slow: the phone helps itself to the book in place of a ruling, and of no room of the Committee."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser, expect

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.desk.offline import web_app
from marram.schema import read_json
from tests.desk.serving import served
from tests.desk.settled import PATIENCE
from tests.services.scoring import scoring


@pytest.mark.browser
def test_a_room_is_waited_for_however_slow_the_desk_is(
    chromium: Browser, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With no patience at all a case opens in the book, and cards, results, a sheet, the log and how play is stopped still come from the desk."""
    source = web_app.source
    hurried = re.sub(r"PATIENCE = \d+", "PATIENCE = 0", source("offline/worker.js"))
    assert "PATIENCE = 0" in hurried
    monkeypatch.setattr(
        web_app, "source", lambda name: hurried if name == "offline/worker.js" else source(name)
    )
    event = {**read_json(EVENT, "event"), "scores": ["gross"], "results_public": True}
    with scoring(tmp_path, event) as found, served(create_app(kept_here=keep_here(found.records))) as address:
        context = chromium.new_context(base_url=address, service_workers="allow")
        context.set_default_timeout(PATIENCE)
        page = context.new_page()
        page.goto("/offline")
        expect(page.locator("#held")).not_to_be_empty(timeout=3 * PATIENCE)
        page.goto("/case?what=ball_moved_by_player")
        assert "/offline#/ball_moved_by_player" in page.url
        for room in ("/cards?round=1", "/results", "/papers/1/notice.html", "/suspension", "/log"):
            answer = page.goto(room)
            assert answer
            assert answer.ok
            assert page.url == address + room
        context.close()
