"""What script and focus do for whoever waits or works by keyboard: sheets that take a while, holes of a match one after the other."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser, Route, expect

from tests.desk.settled import settled
from tests.desk.test_matches import addresses, match_event
from tests.desk.test_scoring_accessible import desk_of

pytestmark = pytest.mark.browser


def test_holes_are_entered_one_after_the_other_by_keyboard(chromium: Browser, tmp_path: Path) -> None:
    """After a hole one Tab leads to the first answer of the next; what the hole made of the match stays in sight."""
    with desk_of(tmp_path / "matches", match_event()) as (_, desk, address):
        page = chromium.new_page(base_url=address, viewport={"width": 390, "height": 844})
        page.goto(addresses(desk)[0])
        settled(page)
        page.locator(".hole-of-match button").first.focus()
        for hole in (2, 3):
            with page.expect_navigation():
                page.keyboard.press("Enter")
            settled(page)
            expect(page.locator("#next")).to_contain_text(str(hole))
            expect(page.locator(".match-state").first).to_be_in_viewport()
            page.keyboard.press("Tab")
            expect(page.locator(".hole-of-match button").first).to_be_focused()
        page.close()


def test_all_sheets_of_a_round_come_as_one_file_and_the_page_says_so(
    chromium: Browser, tmp_path: Path
) -> None:
    """While they are made it says that they are; then that they are there, and nothing is sent twice."""
    with desk_of(tmp_path / "matches", match_event()) as (_, desk, address):
        page = chromium.new_page(base_url=address, accept_downloads=True)
        page.goto("/papers")
        settled(page)
        form = page.locator("form[action='/papers/1/all.pdf']")
        asked: list[str] = []
        page.on("request", lambda one: asked.append(one.url) if "all.pdf" in one.url else None)
        held: list[Route] = []
        page.route("**/all.pdf?*", lambda one: held.append(one))  # noqa: PLW0108 - the library marks what it is given
        form.get_by_role("button").first.click()
        expect(form.get_by_role("status")).to_contain_text("being made")
        form.get_by_role("button").first.click()
        assert len(asked) == 1
        with page.expect_download() as download:
            held[0].continue_()
        expect(form.get_by_role("status")).to_contain_text("with the downloads")
        assert Path(download.value.path()).read_bytes().startswith(b"%PDF")
        assert "paper=a4" in asked[0]
        page.close()
        one = desk.get("/papers/1/starting-sheet.html").text
        whole = desk.get("/papers/1/all.html").text
        assert len(whole) > len(one)
        assert desk.get("/papers/1/none.pdf").status_code == 404
