"""Two devices at one event: one joins by the link that the other made, and what it records is seen there as it happens."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import expect

from marram.demo import EVENT
from marram.desk.app import create_app
from marram.desk.log.kept import keep_here
from marram.desk.people.door import Door
from marram.schema import read_json
from tests.clubs import club
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.signing_in import guarded
from tests.desk.test_cards import SCORES
from tests.desk.test_log import RULING
from tests.services.scoring import scoring

pytestmark = pytest.mark.browser


def test_a_referee_joins_by_the_chiefs_link_and_is_seen_to_rule(chromium: Any, tmp_path: Path) -> None:
    """Without a reload: where the referee is, and the ruling. Ended from elsewhere, the phone is nobody's; no page has a fault of access."""
    faults: list[str] = []
    with club(tmp_path) as kept, served(guarded(kept)) as address:
        contexts = [
            chromium.new_context(base_url=address, viewport={"width": width, "height": 844})
            for width in (1280, 390)
        ]
        chief, phone = (one.new_page() for one in contexts)
        for page in (chief, phone):
            page.on("pageerror", lambda error: faults.append(str(error)))
        chief.goto(f"/join/{Door(kept.records, kept.event_id).first_link()}")
        chief.get_by_label("Ottiline Brackmere").check()
        chief.get_by_role("button", name="Join").click()
        chief.goto("/people")
        chief.get_by_role("button", name="Make a link").click()
        expect(chief.get_by_role("img", name="The link as a code")).to_be_visible()
        faults += access(chief)
        phone.goto(chief.locator(".link a").get_attribute("href"))
        phone.get_by_label("Jorund Saltwick").check()
        faults += access(phone)
        phone.get_by_role("button", name="Join").click()
        chief.goto("/now?hour=play")
        expect(chief.locator("#live[data-open=yes]")).to_be_attached()
        phone.get_by_text("Say where you are").click()
        phone.get_by_label("Hole").select_option("7")
        faults += access(phone)
        phone.get_by_role("button", name="I am here").click()
        expect(chief.locator("#places")).to_contain_text("Jorund Saltwick hole 7")
        phone.goto(RULING)
        phone.get_by_role("button", name="Record this ruling").click()
        expect(chief.locator("#entries li")).to_contain_text("hole 9")
        faults += access(chief)
        chief.goto("/people")
        chief.get_by_role("button", name="End it Jorund Saltwick, referee").click()
        phone.goto("/log")
        expect(phone.get_by_role("heading", name="Sign in")).to_be_visible()
        for one in contexts:
            one.close()
    assert faults == []


HIDDEN = """() => {
  Object.defineProperty(document, "hidden", { configurable: true, get: () => true });
  document.dispatchEvent(new Event("visibilitychange"));
}"""


def test_first_screens_in_tabs_that_nobody_looks_at_leave_room_for_a_page(
    chromium: Any, tmp_path: Path
) -> None:
    """A browser keeps six connections to a desk: first screens in six hidden tabs hold none, and the seventh page comes.

    Looked at again, a tab hears what happened meanwhile.
    """
    with club(tmp_path) as kept, served(create_app(kept_here=kept)) as address:
        context = chromium.new_context(base_url=address)
        tabs = [context.new_page() for _ in range(6)]
        for tab in tabs:
            tab.goto("/now?hour=play")
            expect(tab.locator("#live[data-open=yes]")).to_be_attached()
            tab.evaluate(HIDDEN)
        page = context.new_page()
        page.goto(RULING)
        page.get_by_role("button", name="Record this ruling").click()
        expect(page.get_by_role("heading", level=1)).to_be_visible()
        assert tabs[0].locator("#entries li").count() == 0
        tabs[0].evaluate(HIDDEN.replace("true }", "false }").replace("=> true", "=> false"))
        expect(tabs[0].locator("#entries li")).to_contain_text("hole 9")
        context.close()


def test_boards_in_tabs_that_nobody_looks_at_leave_room_for_a_page(chromium: Any, tmp_path: Path) -> None:
    """Six boards of everybody in hidden tabs hold no connection: the seventh comes."""
    event = {**read_json(EVENT, "event"), **SCORES}
    with scoring(tmp_path, event) as found, served(create_app(kept_here=keep_here(found.records))) as address:
        context = chromium.new_context(base_url=address)
        for _ in range(6):
            tab = context.new_page()
            tab.goto("/board")
            expect(tab.locator("#live[data-open=yes]")).to_be_attached()
            tab.evaluate(HIDDEN)
        page = context.new_page()
        page.goto("/board")
        expect(page.locator("#live[data-open=yes]")).to_be_attached()
        context.close()


def access(page: Any) -> list[str]:
    """Faults of access that are serious, and a page wider than its screen."""
    wide = page.evaluate("document.documentElement.scrollWidth > innerWidth")
    return [rule for rule, *_ in serious(page)] + ["wide"] * wide
