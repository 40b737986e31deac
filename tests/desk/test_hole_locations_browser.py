"""Hole locations in a real browser: dragged, typed, moved with arrow keys; kept over a reload; two people at once."""

import re
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.course.versions.hole_days import HoleDays
from marram.desk.app import create_app
from marram.words.texts import text as said
from tests.desk.axe import serious
from tests.desk.serving import served
from tests.desk.settled import drawn, settled
from tests.desk.test_browser import TOO_SMALL
from tests.desk.test_hole_locations import DAY

pytestmark = pytest.mark.browser
SIZES = {"phone": {"width": 390, "height": 844}, "table": {"width": 1280, "height": 850}}


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("maps")


@pytest.fixture(scope="module")
def desk_address(folder: Path) -> Iterator[str]:
    with served(create_app(maps=folder)) as address:
        yield address


@pytest.fixture(autouse=True)
def days(folder: Path) -> Iterator[HoleDays]:
    """What the desk keeps; empty when a test begins."""
    kept = HoleDays(folder / "hole-locations")
    yield kept
    for path in kept.place.glob("*.json"):
        path.unlink()


@pytest.fixture(params=SIZES)
def page(request: pytest.FixtureRequest, chromium: Browser, desk_address: str) -> Iterator[Page]:
    """A fresh page of each size. Any error of a script, and any request to elsewhere, fails the test."""
    context = chromium.new_context(
        viewport=SIZES[request.param], has_touch=request.param == "phone", base_url=desk_address
    )
    found = context.new_page()
    faults: list[str] = []
    found.on("pageerror", lambda error: faults.append(str(error)))
    found.on(
        "request", lambda one: None if one.url.startswith((desk_address, "data:")) else faults.append(one.url)
    )
    yield found
    context.close()
    assert not faults


def opened(page: Page, hole: int = 4) -> None:
    page.goto(f"/holes/{DAY}")
    expect(page.locator("#setting[data-ready=yes]")).to_have_count(1)
    settled(page)
    page.get_by_role("button", name=re.compile(rf"^Hole {hole}\b")).click()
    expect(page.locator("#hole-title")).to_contain_text(f"Hole {hole}")
    settled(page)


def type_paces(page: Page, front: int, side: int, which: str) -> None:
    page.get_by_label(said("holes.which"), exact=True).select_option(which)
    page.get_by_label(said("holes.side"), exact=True).fill(str(side))
    page.get_by_label(said("holes.front"), exact=True).fill(str(front))
    page.get_by_label(said("holes.front"), exact=True).press("Tab")
    expect(page.locator("#numbers")).to_contain_text(f"{front} from the front · {side} from the {which}")
    settled(page)


def save(page: Page, who: str = "Ada") -> None:
    page.get_by_label("Who", exact=True).fill(who)
    page.get_by_role("button", name=said("holes.save_day")).click()


def drag_cup(page: Page, right: float, down: float) -> None:
    page.evaluate("window.scrollTo(0, 0)")  # typing has scrolled a phone's green out of sight
    drawn(page)
    box = page.locator("#cup .cup").bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + right / 2, y + down / 2)
    page.mouse.move(x + right, y + down)
    page.mouse.up()


def test_dragged_it_is_where_it_was_dropped(page: Page) -> None:
    """A drag of a fifth of the picture down is as many paces nearer the front as the picture's scale says."""
    opened(page)
    type_paces(page, 18, 10, "left")
    green = page.locator("#green").bounding_box()
    assert green is not None
    # The picture is 240 units wide for the deeper or wider of the green plus margins; the desk tells its pace.
    pace = page.evaluate(
        f"fetch('/api/holes/{DAY}').then(a => a.json()).then(t => t.greens.find(g => g.hole === 4).pace)"
    )
    down = green["height"] / 5
    drag_cup(page, 0, down)
    expected = 18 - 240 / 5 / pace
    expect(page.locator("#numbers")).to_contain_text(
        re.compile(rf"^({int(expected)}|{round(expected)}) from the front")
    )


def test_a_finger_drags_it_and_does_not_scroll(chromium: Browser, desk_address: str) -> None:
    """On a phone the touch is the hole's: it ends where the finger left, 60 pixels nearer the front, and the page stays."""
    context = chromium.new_context(viewport=SIZES["phone"], has_touch=True, base_url=desk_address)
    page = context.new_page()
    opened(page)
    type_paces(page, 18, 10, "left")
    page.evaluate("window.scrollTo(0, 0)")
    drawn(page)
    start = page.locator("#cup .cup").bounding_box()
    assert start is not None
    x, y = start["x"] + start["width"] / 2, start["y"] + start["height"] / 2
    finger = context.new_cdp_session(page)

    def touch(kind: str, *points: dict[str, float]) -> None:
        finger.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": list(points)})

    touch("touchStart", {"x": x, "y": y})
    for step in range(1, 7):
        touch("touchMove", {"x": x, "y": y + 10 * step})
    touch("touchEnd")
    expect(page.locator("#numbers")).not_to_contain_text("18 from the front")
    settled(page)
    end = page.locator("#cup .cup").bounding_box()
    assert end is not None
    assert end["y"] - start["y"] == pytest.approx(60, abs=1.5)
    assert page.evaluate("window.scrollY") == 0
    context.close()


def test_typed_numbers_move_it_and_warnings_come_at_once(page: Page) -> None:
    """Two paces from the left edge is too near it; on the step of the fourth it is too steep."""
    opened(page)
    type_paces(page, 12, 2, "left")
    expect(page.locator("#warnings")).to_contain_text("paces from the edge of the green; at least four")
    type_paces(page, 17, 10, "left")
    expect(page.locator("#warnings")).to_contain_text(re.compile(r"too steep|from ground steeper"))
    page.get_by_label(said("holes.front"), exact=True).fill("99")
    page.get_by_label(said("holes.front"), exact=True).press("Tab")
    expect(page.locator("#setting-faults")).to_contain_text("99 paces from the front is off the green")
    expect(page.locator("#numbers")).to_contain_text("17 from the front")


def test_arrow_keys_move_it_by_half_a_pace(page: Page) -> None:
    """Four times up is two paces further from the front; what it now means is said for who does not see it."""
    opened(page)
    type_paces(page, 10, 8, "left")
    page.locator("#cup").focus()
    for _ in range(4):  # as fast as they come: none is lost
        page.keyboard.press("ArrowUp")
    expect(page.locator("#numbers")).to_contain_text("12 from the front")
    expect(page.locator("#moved-words")).to_contain_text("Hole 4: 12 from the front")
    expect(page.locator("#cup")).to_be_focused()


def test_a_tap_on_the_green_sets_it_there_and_undo_brings_it_back(page: Page) -> None:
    """Off the green nothing moves."""
    opened(page)
    type_paces(page, 10, 8, "left")
    start = page.locator("#numbers").inner_text()
    box = page.locator("#green").bounding_box()
    assert box is not None
    page.locator("#green").click(position={"x": box["width"] / 2, "y": box["height"] * 0.7})
    expect(page.locator("#numbers")).not_to_have_text(start)
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("#numbers")).to_have_text(start)
    page.locator("#green").click(position={"x": 3, "y": 3}, force=True)
    expect(page.locator("#setting-faults")).to_contain_text("stays where it was")
    expect(page.locator("#numbers")).to_have_text(start)


def test_moved_holes_survive_a_reload_and_are_saved(page: Page, days: HoleDays) -> None:
    """After a reload the moved hole is where it was; saved, the version holds all 18; the sheet can be fetched."""
    opened(page)
    type_paces(page, 10, 8, "left")
    page.reload()
    opened(page)
    expect(page.locator("#numbers")).to_contain_text(
        said("holes_script.place", front="10", side="8", which="left")
    )
    save(page)
    expect(page.locator(".settled")).to_contain_text("Version 1 is saved")
    version = days.latest(date.fromisoformat(DAY))
    assert version is not None
    assert (len(version.places), version.who) == (18, "Ada")
    with page.expect_download() as fetched:
        page.get_by_role("link", name=said("holes.sheet.pdf.letter")).first.click()
    assert fetched.value.suggested_filename == f"hole-locations-{DAY}-players.pdf"
    opened(page)
    expect(page.locator("#changes")).to_contain_text("Version 1 is saved; nothing is changed")


def test_tomorrow_is_that_of_the_readers_clock(chromium: Browser, desk_address: str) -> None:
    """Late on 30 June in Auckland, wherever the desk is: tomorrow is 1 July, today 30 June."""
    context = chromium.new_context(
        viewport=SIZES["phone"], base_url=desk_address, timezone_id="Pacific/Auckland"
    )
    page = context.new_page()
    page.clock.set_fixed_time("2031-06-30T22:15:00+12:00")
    page.goto(f"/holes/{DAY}")
    links = page.locator("#near-days a")
    expect(links.nth(0)).to_have_attribute("href", "/holes/2031-07-01")
    expect(links.nth(1)).to_have_attribute("href", "/holes/2031-06-30")
    context.close()


def test_the_sheet_of_a_day_can_be_read_by_everybody(page: Page) -> None:
    """Opened from the page of its day: eighteen greens, no wider than the screen; axe finds nothing grave."""
    opened(page)
    save(page)
    expect(page.locator(".settled")).to_be_visible()
    settled(page)
    page.get_by_role("link", name=said("holes.sheet.open")).first.click()
    expect(page.locator(".sheet-green")).to_have_count(18)
    settled(page)
    assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    assert not serious(page)


def test_kept_moves_can_be_thrown_away(page: Page) -> None:
    """What a reload brought back goes when the official says so."""
    opened(page)
    start = page.locator("#numbers").inner_text()
    type_paces(page, 10, 8, "left")
    page.reload()
    opened(page)
    page.get_by_role("button", name=said("holes.throw_away")).click()
    expect(page.locator("#numbers")).to_have_text(start)
    page.reload()
    opened(page)
    expect(page.locator("#numbers")).to_have_text(start)


def both_move_hole_4(page: Page) -> None:
    """Cy moves the hole of version 1; Bo moves it elsewhere and saves first; then Cy saves."""
    opened(page)
    save(page)
    expect(page.locator(".settled")).to_be_visible()
    opened(page)
    type_paces(page, 10, 8, "left")
    look = page.evaluate(
        f"fetch('/api/holes/{DAY}/look?hole=4&front=8&side=6&which=right').then(a => a.json())"
    )
    body = {"base": 1, "who": "Bo", "moved": {"4": [look["longitude"], look["latitude"]]}}
    page.evaluate(
        "body => fetch(location.pathname.replace('/holes', '/api/holes'), {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify(body)})",
        body,
    )
    save(page, "Cy")


def test_two_who_move_the_same_hole_see_both(page: Page) -> None:
    """Theirs is drawn and told in paces beside mine; kept mine, it is saved on top of theirs; nothing is lost."""
    both_move_hole_4(page)
    faults = page.locator("#setting-faults")
    expect(faults).to_contain_text("Bo meanwhile saved version 2, which also moves hole 4")
    theirs = said("holes_script.place", front="8", side="6", which="right")
    mine = said("holes_script.place", front="10", side="8", which="left")
    expect(faults).to_contain_text(re.compile(f"Bo: {re.escape(theirs)}.*{re.escape(mine)}"))
    expect(page.locator("#green .theirs")).to_have_count(1)
    page.get_by_role("button", name=said("holes_script.keep_mine", hole="4")).click()
    save(page, "Cy")
    expect(page.locator(".settled")).to_contain_text("Version 3 is saved")
    opened(page)
    expect(page.locator("#numbers")).to_contain_text(
        said("holes_script.place", front="10", side="8", which="left")
    )


def test_theirs_can_be_taken(page: Page) -> None:
    """Then nothing of hole 4 is left to save."""
    both_move_hole_4(page)
    page.get_by_role("button", name=re.compile("^Take Bo")).click()
    expect(page.locator("#numbers")).to_contain_text(
        said("holes_script.place", front="8", side="6", which="right")
    )
    expect(page.locator("#changes")).to_contain_text("Version 2 is saved; nothing is changed")
    expect(page.get_by_role("button", name=said("holes.save_day"))).to_be_disabled()


def test_without_the_desk_what_was_moved_stays(page: Page) -> None:
    """A save that does not reach the desk says so, and a reload later brings the move back."""
    opened(page)
    type_paces(page, 10, 8, "left")
    page.context.set_offline(True)
    save(page)
    expect(page.locator("#setting-faults")).to_contain_text("Your locations stay on this device")
    page.context.set_offline(False)
    page.reload()
    opened(page)
    expect(page.locator("#numbers")).to_contain_text(
        said("holes_script.place", front="10", side="8", which="left")
    )


def test_nothing_is_too_small_too_wide_or_out_of_reach(page: Page) -> None:
    """axe finds nothing serious or critical, every target is 44 px, and the page does not scroll sideways."""
    opened(page)
    type_paces(page, 12, 2, "left")
    assert not serious(page, unfolded=True)
    assert page.evaluate(TOO_SMALL) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]


def test_the_form_without_javascript_is_within_reach(chromium: Browser, desk_address: str) -> None:
    """With scripts off the numbers of all 18 holes can be typed and saved; axe finds nothing grave."""
    context = chromium.new_context(viewport=SIZES["phone"], base_url=desk_address, java_script_enabled=False)
    page = context.new_page()
    page.goto(f"/holes/{DAY}")
    expect(page.locator("#typed-form input[name^=front-]")).to_have_count(18)
    page.get_by_label(said("holes.typed.front_of", hole="4")).fill("11")
    page.get_by_label(said("holes.typed.who")).fill("Ada")
    page.locator("#typed-form button").click()
    expect(page.locator(".settled")).to_contain_text("Version 1 is saved")
    expect(page.get_by_label(said("holes.typed.front_of", hole="4"))).to_have_value("11")
    context.close()
