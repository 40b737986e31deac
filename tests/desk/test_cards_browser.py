"""A card by keyboard alone in Chromium, and the board that shows it without a reload."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.schema import read_json
from tests.desk.serving import served
from tests.desk.settled import settled
from tests.desk.test_cards import SCORES, card_of
from tests.desk.test_live_browser import access
from tests.services.scoring import PARS, scoring

pytestmark = pytest.mark.browser


def test_a_card_by_keyboard_stands_on_the_board_at_once(chromium: Any, tmp_path: Path) -> None:
    """One digit moves on; what differs is said as it comes; a reload loses nothing; the board follows; axe finds nothing."""
    faults: list[str] = []
    event = {**read_json(EVENT, "event"), **SCORES}
    with scoring(tmp_path, event) as found:
        kept = keep_here(found.records)
        with served(create_app(kept_here=kept)) as address:
            context = chromium.new_context(base_url=address, viewport={"width": 390, "height": 844})
            card, board = context.new_page(), context.new_page()
            for page in (card, board):
                page.on("pageerror", lambda error: faults.append(str(error)))
            board.goto("/results")
            expect(board.locator("#live[data-open=yes]")).to_be_attached()
            card.goto("/cards?round=1")
            faults += access(card)
            card.keyboard.type("dulsey")
            card.keyboard.press("Enter")
            expect(card.get_by_role("heading", name="Fenwin Dulsey")).to_be_visible()
            settled(card)
            first = card.get_by_label("Hole 1, Player")
            first.focus()
            card.keyboard.type("".join(map(str, PARS)))
            card.keyboard.type("".join(map(str, (*PARS[:6], 5, *PARS[7:]))))
            expect(card.locator("#differs")).to_have_text("Hole 7: player 4, marker 5.")
            expect(card.locator("#save")).to_be_focused()
            card.reload()
            expect(card.locator("#differs")).to_have_text("Hole 7: player 4, marker 5.")
            faults += access(card)
            card.get_by_label("Hole 7, Marker").focus()
            card.keyboard.type("4")
            expect(card.locator("#differs")).to_be_hidden()
            card.locator("#save").focus()
            card.keyboard.press("Enter")
            expect(board.locator("#board tbody tr").first).to_contain_text("Fenwin Dulsey")
            faults += access(board)
            board.goto("/board")
            faults += access(board)
            board.goto(f"/results/why?side={card_of(kept).rpartition('/')[2]}")
            faults += access(board)
            context.close()
    assert faults == []


def test_a_card_is_found_entered_and_taken_by_keys_alone(chromium: Any, tmp_path: Path) -> None:
    """Three letters and Enter find it, 36 digits fill it, Enter enters it; Space, Tab, Space and Enter take it: 45 keys, no mouse.

    Where figures differ, the marker's has the focus; the next name is typed at once.
    """
    event = {**read_json(EVENT, "event"), **SCORES}
    with scoring(tmp_path, event) as found:
        kept = keep_here(found.records)
        with served(create_app(kept_here=kept)) as address:
            context = chromium.new_context(base_url=address, viewport={"width": 1280, "height": 900})
            page = context.new_page()
            page.goto("/cards?round=1")
            expect(page.locator("#q")).to_be_focused()
            page.keyboard.type("dul")
            page.keyboard.press("Enter")
            settled(page)
            expect(page.get_by_label("Hole 1, Player")).to_be_focused()
            page.keyboard.type("".join(map(str, (*PARS, *PARS[:6], 5, *PARS[7:]))))
            page.keyboard.press("Enter")
            settled(page)
            expect(page.get_by_label("Hole 7, Marker")).to_be_focused()
            page.keyboard.type("4")
            page.locator("#save").press("Enter")
            settled(page)
            expect(
                page.get_by_role("group", name="Has the player certified the scores?").get_by_label("Yes")
            ).to_be_focused()
            for key in ("Space", "Tab", "Space", "Enter"):
                page.keyboard.press(key)
            expect(page.locator(".done")).to_contain_text("Fenwin Dulsey")
            expect(page.locator("#q")).to_be_focused()
            context.close()
        (card,) = kept.log.entries(kept.event_id, kind="card_returned")
    assert card.content["player_certified"] is card.content["marker_certified"] is True
