"""An examination on a phone: nothing is lost by a reload or a desk out of reach; axe finds nothing serious on its pages."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.classes import begin_class, explain_class
from marram.records.examinations import answer, begin, chosen_by, close, examination_of, sitters
from tests.clubs import club
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.test_examination import items_of, made

pytestmark = pytest.mark.browser

NOW = datetime.now(UTC)


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def desk(kept: KeptHere) -> Iterator[str]:
    app = create_app(kept_here=kept)
    with served(app) as address:
        yield address
        app.state.live.leaving = lambda: True


def phone(chromium: Browser, address: str, width: int = 390) -> Page:
    return chromium.new_context(viewport={"width": width, "height": 844}, base_url=address).new_page()


def test_nothing_is_lost_by_a_reload_or_a_desk_out_of_reach(
    chromium: Browser, desk: str, kept: KeptHere
) -> None:
    """A choice made out of reach waits on the device, stands there after a reload, and arrives once the desk is back."""
    one = made(kept)
    sitter = sitters(kept.records, one)[0]
    page = phone(chromium, desk)
    page.goto(f"/examination/{sitter.code}")
    expect(page.get_by_role("heading", name="Wait for your examiner")).to_be_visible()
    begin(kept.records, one, NOW)
    page.get_by_role("link", name="Sit the paper here").click()
    expect(page.get_by_role("heading", name="Your paper")).to_be_visible()
    page.locator("#item-1 .choice").nth(1).click()
    expect(page.get_by_text("All your answers are at the desk.")).to_be_visible()

    page.route("**/api/examination/**", lambda route: route.abort())
    page.locator("#item-2 .choice").nth(2).click()
    expect(page.get_by_text("One answer waits on this device.")).to_be_visible()
    page.reload()
    expect(page.locator("#item-2 input").nth(2)).to_be_checked()
    expect(page.get_by_text("One answer waits on this device.")).to_be_visible()
    assert set(chosen_by(kept.records, sitter)) == {1}

    page.unroute("**/api/examination/**")
    expect(page.get_by_text("All your answers are at the desk.")).to_be_visible()
    assert {item: each.place for item, each in chosen_by(kept.records, sitter).items()} == {1: 1, 2: 2}


def test_a_paper_opens_again_out_of_reach(chromium: Browser, desk: str, kept: KeptHere) -> None:
    """Reloaded without the desk it is the paper with every choice, never the book; the choices arrive once it is back."""
    one = made(kept)
    sitter = sitters(kept.records, one)[0]
    begin(kept.records, one, NOW)
    page = chromium.new_context(
        viewport={"width": 390, "height": 844}, base_url=desk, service_workers="allow"
    ).new_page()
    page.goto(f"/examination/{sitter.code}?here=true")
    expect(page.locator("#examination[data-here=yes]")).to_be_attached()
    page.locator("#item-1 .choice").nth(1).click()
    expect(page.get_by_text("All your answers are at the desk.")).to_be_visible()

    page.context.set_offline(True)
    page.locator("#item-2 .choice").nth(2).click()
    page.reload()
    expect(page.get_by_role("heading", name="Your paper")).to_be_visible()
    expect(page.locator("#item-1 input").nth(1)).to_be_checked()
    expect(page.locator("#item-2 input").nth(2)).to_be_checked()
    expect(page.get_by_text("One answer waits on this device.")).to_be_visible()

    page.get_by_role("button", name="Hand in").click()
    expect(page.get_by_text("The desk is out of reach.")).to_be_visible()
    expect(page.get_by_role("heading", name="Your paper")).to_be_visible()

    page.context.set_offline(False)
    expect(page.get_by_text("All your answers are at the desk.")).to_be_visible()
    assert {item: each.place for item, each in chosen_by(kept.records, sitter).items()} == {1: 1, 2: 2}
    close(kept.records, one, NOW)
    expect(page.get_by_role("heading", name="The papers are collected")).to_be_visible()
    page.wait_for_function("async () => !(await caches.has('marram-papers'))")


def test_when_the_time_is_over_nothing_can_be_chosen(chromium: Browser, desk: str, kept: KeptHere) -> None:
    """The clock says so, and every answer is closed; the paper can be handed in."""
    one = made(kept, minutes=1)
    begin(kept.records, one, datetime(2026, 1, 1, tzinfo=UTC))
    page = phone(chromium, desk)
    page.goto(f"/examination/{sitters(kept.records, one)[0].code}?here=true")
    expect(page.get_by_text("The time is over")).to_be_visible()
    expect(page.locator("#item-1 input").first).to_be_disabled()
    page.get_by_role("button", name="Hand in").click()
    page.get_by_role("button", name="Hand in now").click()
    expect(page.get_by_role("heading", name="Your paper is handed in")).to_be_visible()


@pytest.mark.parametrize("width", [390, 1280])
def test_axe_finds_nothing_serious(chromium: Browser, desk: str, kept: KeptHere, width: int) -> None:
    """Pages of an examination and of a class, in each of their states, at the width of a phone and of a laptop."""
    waiting, running, closed = (made(kept) for _ in range(3))
    for one in (running, closed):
        begin(kept.records, one, NOW)
        for sitter in sitters(kept.records, one):
            answer(
                kept.records, sitter, [(at, 1, at) for at in range(1, 1 + len(items_of(one, sitter)))], NOW
            )
    close(kept.records, closed, NOW)
    first = [sitters(kept.records, one)[0].code for one in (waiting, running, closed)]
    taught = begin_class(kept.records, kept.event_id, NOW)
    explained = begin_class(kept.records, kept.event_id, NOW)
    explain_class(kept.records, explained)
    assert examination_of(kept.records, kept.event_id, closed.id)
    page = phone(chromium, desk, width)
    page.goto("/briefings")
    page.get_by_label("What it is about").select_option("beginners")
    page.get_by_label("Pages at most").fill("2")
    page.get_by_role("button", name="Draw it up").click()
    expect(page.get_by_role("heading", name="The Rules for beginners")).to_be_visible()
    for path in (
        "/briefings",
        page.url,
        f"{page.url}/slides?shown=1",
        "/examination",
        *(f"/examination/{code}" for code in first),
        *(f"/examining/{one.id}" for one in (waiting, running, closed)),
        f"/examining/{running.id}/slips",
        "/class",
        *(f"/class/{one.code}{end}" for one in (taught, explained) for end in ("", "/teacher")),
        f"/examination/{first[1]}?here=true",  # from here on nothing else opens
        f"/examination/{first[1]}?handing=true",
    ):
        page.goto(path)
        assert not serious(page, unfolded=True), path
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), path
