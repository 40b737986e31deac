"""Learning on a phone out of reach of the desk: questions it keeps, answers that are worked out once the desk is back."""

import re
import socket
from typing import Any

import pytest
from playwright.sync_api import expect

from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.desk.offline.test_phone_killed import reached, serious
from tests.desk.settled import PATIENCE


@pytest.mark.browser
def test_a_phone_out_of_reach_asks_and_what_was_answered_is_worked_out_later(chromium: Any) -> None:
    """Without the desk a kept question is asked and judged; with it the answer becomes a card with its day, by itself."""
    app = create_app()
    with socket.create_server(("127.0.0.1", 0)) as free:
        port = free.getsockname()[1]
    here = f"http://127.0.0.1:{port}/quiz/learn"
    context = chromium.new_context(viewport={"width": 390, "height": 844}, service_workers="allow")
    context.set_default_timeout(PATIENCE)
    page = context.new_page()
    with reached(app, port):
        page.goto(here)
        expect(page.locator("button.answer").first).to_be_visible(timeout=3 * PATIENCE)
        expect(page.locator("#held")).not_to_be_empty(timeout=3 * PATIENCE)
        assert not serious(page)
    page.goto(here)
    expect(page.get_by_text(said("quizzes_script.here"))).to_be_visible()
    page.locator("button.answer").first.click()
    expect(page.get_by_text(said("quizzes_script.later"))).to_be_visible()
    expect(page.locator("h1")).to_contain_text(re.compile("Right|Not right"))
    assert not serious(page)
    with reached(app, port):
        page.goto(here)
        expect(page.locator("#progress")).to_contain_text("1 of ")
    context.close()
