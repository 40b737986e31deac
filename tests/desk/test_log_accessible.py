"""The rooms of the log by the rules of axe, on a phone, signed in as the chief referee: nothing serious or critical."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from marram.desk.people.door import COOKIE
from tests.clubs import club
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.settled import settled
from tests.desk.signing_in import guarded, signature, signed_in
from tests.desk.test_log import RULING, form

PAGES = (
    "/now",
    "/ready",
    "/published",
    "/entries",
    "/draw?round=2",
    "/begin",
    "/open-cases",
    "/opinions",
    "/opinions/ask" + RULING.removeprefix("/case"),
    "/player" + RULING.removeprefix("/case"),
    RULING,
    "/log",
    "/log?q=stakes",
    "/log/1",
    "/day?on=2025-06-21",
    "/suspension",
    "/people",
    "/me",
)


@pytest.mark.browser
def test_no_room_of_the_log_has_a_serious_finding(chromium: Browser, tmp_path: Path) -> None:
    """axe finds nothing serious or critical on any page, folds opened; no page is wider than the phone."""
    with club(tmp_path) as kept:
        app = guarded(kept)
        chief = signed_in(app, kept, "chief_referee")
        csrf = {"csrf": signature(chief, "/suspension")}
        chief.post("/record", data={**form(chief), **csrf, "note": "beside the stakes"})
        asked = {**csrf, "case": RULING.partition("?")[2], "tapped": form(chief)["ident"], "note": "so?"}
        chief.post("/opinions/ask", data=asked)
        stopped = {**csrf, "how": "immediate", "cause": "lightning", "tapped": form(chief)["ident"]}
        chief.post("/suspension", data=stopped)
        grave = []
        with served(app) as address:
            context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
            context.add_cookies([{"name": COOKIE, "value": chief.cookies[COOKIE], "url": address}])
            page = context.new_page()
            for path in PAGES:
                page.goto(path)
                settled(page)
                grave += [(path, rule, where) for rule, where, _ in serious(page, unfolded=True)]
                if page.evaluate("document.documentElement.scrollWidth > innerWidth"):
                    grave.append((path, "wider than the phone", ""))
            context.close()
        assert kept.log.head(kept.event_id) == 3
    assert not grave
