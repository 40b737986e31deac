"""A case handed over is announced on whatever page the official who gets it looks at, until they have looked at the case."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from marram.records.entry import new_ident
from tests.clubs import club
from tests.desk.serving import served
from tests.desk.settled import settled
from tests.desk.signing_in import SIGNATURE, guarded, signed_in
from tests.desk.test_log import RULING

pytestmark = pytest.mark.browser


def test_it_is_told_on_the_page_one_is_on_and_on_no_other_official_s(chromium: Any, tmp_path: Path) -> None:
    """Without a reload on the page of a ruling; the next page says it too; once the case was opened none does."""
    with club(tmp_path) as kept, served(app := guarded(kept)) as address:
        giver, taker, third = (
            signed_in(app, kept, "referee", name) for name in ("Hesper Lund", "Torvi Marsk", "Wendel Brae")
        )
        contexts = []
        pages = []
        for device in (taker, third):
            context = chromium.new_context(base_url=address, viewport={"width": 390, "height": 844})
            context.add_cookies(
                [{"name": name, "value": value, "url": address} for name, value in device.cookies.items()]
            )
            contexts.append(context)
            pages.append(context.new_page())
        phone, other = pages
        for page in pages:
            with page.expect_response("**/api/live*"):
                page.goto(RULING)
            settled(page)
            expect(page.locator("#handed")).to_be_hidden()
        to = phone.locator("#handed").get_attribute("data-to")
        form = giver.get("/begin")
        signature = SIGNATURE.search(form.text).group(1)  # type: ignore[union-attr]
        sent = giver.post("/begin", data={"tapped": new_ident(), "player": "", "csrf": signature})
        case = sent.headers["location"].partition("begun=")[2].partition("&")[0]
        handed = {"case": case, "to": to, "tapped": new_ident(), "csrf": signature}
        assert giver.post("/open-cases/hand-over", data=handed).status_code == 303

        expect(phone.locator("#handed")).to_be_visible()
        expect(phone.locator("#handed")).to_contain_text("Hesper Lund")
        phone.goto("/log")
        expect(phone.locator("#handed")).to_be_visible()
        phone.locator("#handed a").click()
        expect(phone).to_have_url(f"{address}/open-cases")
        phone.goto(f"/?begun={case}")
        expect(phone.locator("#handed")).to_be_hidden()
        phone.goto("/log")
        expect(phone.locator("#handed")).to_be_hidden()
        expect(other.locator("#handed")).to_be_hidden()
        for context in contexts:
            context.close()
