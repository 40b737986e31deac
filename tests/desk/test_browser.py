"""The main job in a real browser, on a phone and at a table: tap the ball, answer, read, see where to drop."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.words.texts import text as said
from tests.desk.answers import answer
from tests.desk.asking import question
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled

pytestmark = pytest.mark.browser

TOO_SMALL = """() => [...document.querySelectorAll(
  'button, .holes a, .theme a, .so-far a, summary, input:not([type=hidden]), .conditions a, .leaflet-bar a')]
  .filter(one => one.offsetParent !== null)
  .map(one => [one.outerHTML.slice(0, 80), (one.closest('label') ?? one).getBoundingClientRect()])
  .filter(([, box]) => box.width < 44 || box.height < 44)
  .map(([html, box]) => [html, box.width, box.height])"""
"""What a finger could miss."""

SIZES = {"phone": {"width": 390, "height": 844}, "table": {"width": 1280, "height": 900}}


@pytest.fixture(params=SIZES)
def page(request: pytest.FixtureRequest, chromium: Browser, address: str) -> Iterator[Page]:
    """A fresh page of each size. Any request to elsewhere, and any error of a script, fails the test."""
    context = chromium.new_context(
        viewport=SIZES[request.param], has_touch=request.param == "phone", base_url=address
    )
    found = context.new_page()
    elsewhere: list[str] = []
    faults: list[str] = []
    found.on(
        "request", lambda one: None if one.url.startswith((address, "data:")) else elsewhere.append(one.url)
    )
    found.on("pageerror", lambda error: faults.append(str(error)))
    yield found
    context.close()
    assert not elsewhere
    assert not faults


def ready(page: Page) -> None:
    """The map is drawn and shows what the page is about."""
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)


def whole(page: Page) -> None:
    """The page is as it stays, its map drawn where it has one."""
    expect(page.locator("#map:not([data-ready=yes])")).to_have_count(0)
    drawn(page)


def tap_map(page: Page, place: str) -> None:
    """Tap where ``place`` is drawn now."""
    latitude, longitude = place.split(",")
    ready(page)
    drawn(page)
    x, y = page.evaluate(
        f"() => {{ const p = window.marramMap.latLngToContainerPoint([{latitude}, {longitude}]); return [p.x, p.y]; }}"
    )
    page.locator("#map").click(position={"x": x, "y": y})


def test_the_main_job(page: Page, ground: Ground) -> None:
    """From the whole course to the drop areas: hole, ball, incident, answers, ruling, crossing point, relief."""
    page.goto("/")
    page.get_by_role("link", name="Hole 9 par 5").click()
    expect(page.get_by_role("heading", name=said("rulings.ball.title"))).to_be_visible()

    tap_map(page, ground.in_the_burn())
    expect(
        page.get_by_role("heading", name=said("rulings.ball.lies", where="in a penalty area"))
    ).to_be_visible()
    expect(page).to_have_url(re.compile(r"/ball\?ball=55\.00\d+,3\.99\d+&hole=9"))

    page.get_by_role("link", name=said("rulings.what.title")).click()
    expect(page.get_by_role("heading", name=said("rulings.what.title"))).to_be_visible()
    settled(page)
    page.get_by_role("link", name=re.compile("The ball is in a penalty area, or may be")).click()
    expect(page.get_by_role("heading", name=question("found_in_penalty_area"))).to_be_visible()
    answer(page, "Yes")
    answer(page, "No")

    expect(page.locator(".ruling")).to_be_visible()
    expect(page.locator(".option")).to_have_count(3)
    lateral = page.locator(".option", has_text=said("relief.kind.lateral"))
    lateral.get_by_role("button", name=re.compile("Show where the ball last crossed")).click()
    expect(page.locator("#pick-words")).to_contain_text("last crossed the edge")
    tap_map(page, ground.in_the_burn(0))

    expect(page).to_have_url(re.compile(r"entry=55\.00"))
    expect(page.locator("path.r-area.o-C")).to_have_count(1)
    lateral.get_by_role("button", name="Show on the map Lateral relief").click()
    expect(lateral.get_by_role("button", name="Show on the map Lateral relief")).to_have_attribute(
        "aria-pressed", "true"
    )
    drawn(page)
    box = page.locator("path.r-area.o-C").bounding_box()
    assert box is not None
    assert box["width"] > 60, "brought out, a drop area is large enough to be read"


def test_a_reload_and_the_back_button_keep_the_case(page: Page, ground: Ground) -> None:
    """After a reload the same question stands there; going back shows the one before."""
    page.goto(f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area")
    ready(page)
    answer(page, "Yes")
    second = page.get_by_role("heading", name=question("last_stroke_from_penalty_area"))
    expect(second).to_be_visible()

    page.reload()
    expect(second).to_be_visible()
    page.go_back()
    expect(page.get_by_role("heading", name=question("found_in_penalty_area"))).to_be_visible()
    settled(page)
    page.go_forward()
    expect(second).to_be_visible()


def test_an_answer_is_changed_from_the_ruling(page: Page, ground: Ground) -> None:
    """Every reason has its "change" link, which leads back with the answer marked, and on to another ruling."""
    page.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    page.get_by_role(
        "link", name=re.compile("change the answer to Is the penalty area red or yellow")
    ).click()
    expect(page.locator(".answer[aria-current]")).to_contain_text(said("rulings.question.maps"))
    answer(page, "Yellow")

    expect(page.locator(".option")).to_have_count(2)
    expect(page).to_have_url(re.compile("penalty_area_colour=yellow"))


def test_the_search_narrows_the_list_as_it_is_typed(page: Page) -> None:
    """The list follows the typing, and what was typed stays in the address."""
    page.goto("/what")
    ready(page)
    page.get_by_role("searchbox").press_sequentially("embedded")

    expect(page.get_by_role("link", name=re.compile("The ball is embedded in the ground"))).to_be_visible()
    expect(page.get_by_text("The provisional ball was holed")).to_have_count(0)
    expect(page).to_have_url(re.compile("q=embedded"))
    page.reload()
    expect(page.get_by_role("searchbox")).to_have_value("embedded")


def test_a_typed_number_survives_a_reload(page: Page) -> None:
    """What is typed but not yet sent is not lost."""
    page.goto("/case?what=ball_found_in_time&ask=search_minutes")
    page.get_by_role("spinbutton", name="Minutes").fill("4")
    page.reload()

    expect(page.get_by_role("spinbutton", name="Minutes")).to_have_value("4")


def test_settings_change_the_edition_and_come_back(page: Page) -> None:
    """From a case to the conditions and back: the case is the same, the Rules are those of the new day."""
    page.goto("/case?what=unplayable_ball&area_of_ball=bunker")
    expect(page.locator("#conditions")).to_contain_text("Rules 2023")
    page.get_by_role("link", name=re.compile("Change the conditions")).click()
    page.get_by_label(said("conditions.day")).fill("2022-07-01")
    page.get_by_label("Match play").check()
    page.get_by_role("button", name=said("conditions.keep")).click()

    expect(page.locator("#conditions")).to_contain_text("Rules 2019")
    expect(page.locator("#conditions")).to_contain_text("match play")
    expect(page).to_have_url(re.compile(r"/case\?what=unplayable_ball&area_of_ball=bunker&on=2022-07-01"))


def test_the_whole_way_with_the_keyboard(page: Page) -> None:
    """No pointer is needed: the ball is placed with arrow keys and the cross, answers with Enter."""
    page.goto("/ball?hole=17")
    ready(page)
    page.locator("#map").focus()
    for _ in range(3):
        page.keyboard.press("ArrowUp")
    expect(page.locator("#cross")).to_be_visible()
    page.get_by_role("button", name=said("shell.at_cross")).focus()
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name=re.compile("^The ball lies"))).to_be_focused()

    reach(page, said("rulings.what.title"))
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name=said("rulings.what.title"))).to_be_focused()
    reach(page, said("rulings.what.tell"))
    page.keyboard.type("unplayable")
    choice = page.get_by_role("link", name=re.compile("The player treats the ball as unplayable"))
    expect(choice).to_be_visible()
    expect(page).to_have_url(re.compile("q=unplayable"))
    settled(page)
    reach(page, "The player treats the ball as unplayable")
    page.keyboard.press("Enter")
    expect(page.locator("h1")).to_be_focused()
    for _ in range(8):
        settled(page)
        if page.locator(".ruling").count():
            break
        page.keyboard.press("Tab")
        while not page.evaluate("document.activeElement.matches('.answer')"):
            page.keyboard.press("Tab")
        before = page.url
        page.keyboard.press("Enter")
        page.wait_for_url(lambda url, before=before: url != before)
        expect(page.locator("h1")).to_be_focused()
    expect(page.locator(".ruling")).to_have_count(1)


def test_the_cross_stands_where_it_places_the_ball(page: Page) -> None:
    """The cross is drawn in the middle of the map, which is the place its button takes."""
    page.goto("/ball?hole=17")
    ready(page)
    drawn(page)
    cross, frame = page.locator("#cross").bounding_box(), page.locator("#map").bounding_box()

    assert cross is not None
    assert frame is not None
    for start, length in (("x", "width"), ("y", "height")):
        assert abs(cross[start] + cross[length] / 2 - frame[start] - frame[length] / 2) < 1


def reach(page: Page, words: str) -> None:
    """Press Tab until what has the focus carries ``words``."""
    settled(page)
    for _ in range(60):
        page.keyboard.press("Tab")
        said = page.evaluate(
            "() => { const e = document.activeElement; return [e.textContent, ...(e.labels ? [...e.labels].map(l => l.textContent) : [])].join(' '); }"
        )
        if words in said:
            return
    pytest.fail(f"{words!r} cannot be reached with the Tab key.")


def test_a_fault_is_a_page_in_the_browser_too(page: Page) -> None:
    """A link that cannot be used, followed within a case, ends on the page that says why."""
    page.goto("/case?what=unplayable_ball")
    ready(page)
    page.evaluate(
        "() => { const a = document.createElement('a'); a.href = '/case?what=nonsense'; a.textContent = 'bad link';"
        " document.getElementById('panel').append(a); window.htmx.process(a); }"
    )
    page.get_by_role("link", name="bad link").click()

    expect(page.get_by_role("heading", name=said("shell.error.no_page"))).to_be_visible()


def test_what_is_touched_is_large_enough(page: Page) -> None:
    """Buttons, and links that stand alone, are 44 px or more each way (WCAG 2.2, criterion 2.5.5)."""
    for path in ("/", "/ball?hole=9", "/what", "/case?what=ball_moved_by_player", "/settings"):
        page.goto(path)
        whole(page)
        assert page.evaluate(TOO_SMALL) == [], path


def test_nothing_runs_off_the_side(page: Page, ground: Ground) -> None:
    """No page scrolls sideways, at 390 px either."""
    ruling = (
        f"/case?hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    for path in (
        "/",
        "/ball?hole=3",
        "/what",
        "/case?what=ball_moved_by_player",
        ruling,
        "/settings",
        "/nowhere",
    ):
        page.goto(path)
        whole(page)
        assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"), path


def test_without_javascript_a_case_is_ruled_to_the_end(chromium: Browser, address: str) -> None:
    """Links and forms alone lead from the first page to the ruling."""
    context = chromium.new_context(java_script_enabled=False, base_url=address)
    page = context.new_page()
    page.goto("/")
    page.get_by_role("link", name=said("rulings.start.without_map")).click()
    page.get_by_role("searchbox").fill("unplayable")
    page.get_by_role("button", name="Search").click()
    page.get_by_role("link", name=re.compile("The player treats the ball as unplayable")).click()
    page.wait_for_url("**/case?*")
    while page.locator(".answer").count():
        before = page.url
        page.locator(".answer").first.click()
        page.wait_for_url(
            lambda url, before=before: url != before
        )  # loaded: what is counted is the next page

    expect(page.locator(".ruling")).to_be_visible()
    context.close()
