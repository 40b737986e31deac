"""A tap answers one question: the page guards every choice against the second tap of a double tap."""

import re
from urllib.parse import parse_qsl, urlsplit

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from tests.desk.answers import Case, answers, asked
from tests.desk.holding import holding
from tests.desk.settled import settled

pytestmark = pytest.mark.browser

CASES = (
    ("match_score_wrong", "score_put_right", "no"),
    ("scorecard_fault", "card_fault", "player_did_not_certify"),
    ("other_person_acted", "how_involved", "requested"),
    ("estimate_wrong", "played_before_known_wrong", "yes"),
    ("club_added", "more_than_fourteen", "no"),
    ("club_damaged", "after_damage", "repaired"),
    ("ball_doubtful", "ball_fault", "altered"),
    ("damaged_ball_changed", "ball_damage", "cut_or_cracked_before"),
    ("ball_at_edge_of_teeing_area", "part_of_ball_in_teeing_area", "no"),
)
"""Incidents whose first answer, so given, is followed by a question with a button at the same place of the screen."""

GAPS = [30 + round(670 * number / 49) for number in range(50)]
"""Milliseconds between two taps: those of 50 double taps, from the fastest to the slowest seen."""

DOUBLE_TAPS = [(gap, CASES[number % len(CASES)]) for number, gap in enumerate(GAPS)]


@pytest.fixture
def page(phone: BrowserContext) -> Page:
    """A page whose clock stands still unless it is moved on."""
    found = phone.new_page()
    found.clock.install(time=1_750_000_000)
    found.goto("/settings")
    found.clock.pause_at(1_750_000_100)
    return found


def start(page: Page, case: Case) -> tuple[float, float]:
    """Show the first question, a while after whatever was tapped before; return where the answer to be given is."""
    page.goto(asked(case))
    page.locator("#map[data-ready=yes]").wait_for(state="attached")  # what stands above the answers is there
    page.clock.run_for(5000)
    box = page.locator(f"button[name={case[1]}][value={case[2]}]").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def until_answered(page: Page, case: Case) -> None:
    """Let the answer arrive and the page settle."""
    page.wait_for_url(re.compile(f"[?&]{case[1]}={case[2]}"))
    page.locator(f"#panel:not([aria-busy]):not(:has(button[name={case[1]}]))").wait_for()
    page.clock.run_for(25)


def on_a_button(page: Page, at: tuple[float, float]) -> bool:
    """Tell whether a button of an answer is at a place of the screen."""
    found: bool = page.evaluate(
        """([x, y]) => [...document.querySelectorAll('button.answer')].some((one) => {
             const box = one.getBoundingClientRect();
             return box.left < x && x < box.right && box.top < y && y < box.bottom;
           })""",
        list(at),
    )
    return found


def test_a_second_tap_after_the_answer_is_there_answers_nothing(page: Page) -> None:
    """Fifty double taps on a fast network: each second one falls on a button of the next question, and is not taken."""
    for gap, case in DOUBLE_TAPS:
        at = start(page, case)
        page.touchscreen.tap(*at)
        until_answered(page, case)
        page.clock.run_for(max(gap - 25, 0))
        assert on_a_button(page, at)
        page.touchscreen.tap(*at)
        page.clock.run_for(3000)

        assert answers(page) == {case[1]: case[2]}, (gap, case)
        assert page.locator("#panel[aria-busy]").count() == 0

    page.touchscreen.tap(*at)  # meant: it is taken
    page.locator("#panel[aria-busy]").wait_for(state="detached")
    page.wait_for_url(lambda url: len(url) > len(asked(case)) + 60)


def test_a_second_tap_while_the_first_is_on_its_way_answers_nothing(page: Page) -> None:
    """Fifty double taps on a slow network: the first is sent, once, and shown to be; the second is not taken."""
    held: list[Route] = []
    for gap, case in DOUBLE_TAPS:
        sent = re.compile(f"[?&]{case[1]}={case[2]}")
        page.route(sent, holding(held))
        at = start(page, case)
        with page.expect_request(sent):
            page.touchscreen.tap(*at)
        assert page.locator("#panel").get_attribute("aria-busy") == "true"
        assert page.locator("button.taken").count() == 1
        page.clock.run_for(gap)
        page.touchscreen.tap(*at)
        page.clock.run_for(1000)
        assert len(held) == 1
        held.pop().continue_()
        until_answered(page, case)
        page.unroute(sent)

        assert not held
        assert answers(page) == {case[1]: case[2]}, (gap, case)


def test_two_different_answers_at_once_give_the_first(page: Page) -> None:
    """A tap on another answer while the first is on its way does not replace it."""
    held: list[Route] = []
    case = CASES[5]
    sent = re.compile(f"[?&]{case[1]}=")
    page.route(sent, holding(held))
    at = start(page, case)
    box = page.locator(f"button[name={case[1]}]:not([value={case[2]}])").first.bounding_box()
    assert box is not None
    with page.expect_request(sent):
        page.touchscreen.tap(*at)
    page.touchscreen.tap(box["x"] + 20, box["y"] + 20)
    held.pop().continue_()
    until_answered(page, case)

    assert not held
    assert answers(page) == {case[1]: case[2]}


def test_keys_are_not_held_up(page: Page) -> None:
    """Who answers by keyboard goes on at once: after a step the focus is on the heading, not on the next answer."""
    case = CASES[5]
    start(page, case)
    page.locator(f"button[name={case[1]}][value={case[2]}]").focus()
    page.keyboard.press("Enter")
    until_answered(page, case)
    page.keyboard.press("Enter")
    assert answers(page) == {case[1]: case[2]}

    page.locator("button.answer").first.focus()
    page.keyboard.press("Enter")
    page.wait_for_url(lambda url: len(parse_qsl(urlsplit(url).query)) > 8)


def test_a_search_still_on_its_way_does_not_rename_the_page_gone_to(phone: BrowserContext) -> None:
    """Whoever taps an incident before the list has followed the typing keeps its address: the search is given up."""
    page = phone.new_page()
    page.goto("/what?q=embedded")
    held: list[Route] = []
    page.route(re.compile(r"/what\?.*q=unplayable"), holding(held))
    with page.expect_request(re.compile("q=unplayable")):
        page.get_by_role("searchbox").fill("unplayable")
    given_up: list[str] = []
    page.on("requestfailed", lambda request: given_up.append(request.url))
    # The page itself has ranked what was typed; only then is the list at rest, and a tap on it meant for what stands there.
    unplayable = page.locator("#incidents a[href*=unplayable]").first
    expect(unplayable).to_be_visible()
    expect(page.locator("#incidents.new")).to_have_count(0)
    unplayable.click()
    page.wait_for_url("**/case?*")
    settled(page)

    assert len(given_up) == len(held) == 1
    assert urlsplit(page.url).path == "/case"


def test_an_entry_that_has_just_come_under_the_finger_is_not_taken(page: Page) -> None:
    """When the list of incidents is replaced while one types, a tap meant for what stood there takes nothing else."""
    page.goto("/what?q=embedded")
    page.clock.run_for(2000)
    page.get_by_role("searchbox").focus()
    page.evaluate(
        """() => { const list = document.querySelector('#incidents ul');
             list.prepend(...[...list.children].slice(1).reverse()); }"""
    )
    link = page.locator("#incidents a").first
    box = link.bounding_box()
    assert box is not None
    page.touchscreen.tap(box["x"] + 30, box["y"] + 10)
    page.clock.run_for(100)
    assert urlsplit(page.url).path == "/what"
    expect(page.locator("#not-taken[role=status]")).to_contain_text("the list has just changed")
    expect(link).to_have_class(re.compile("not-taken"))
    page.clock.run_for(4000)
    expect(page.locator("#not-taken")).to_be_empty()

    page.get_by_role("searchbox").focus()
    page.evaluate("document.querySelector('#incidents ul').lastElementChild.remove()")
    expect(page.locator("#incidents.new")).to_have_count(1)
    page.touchscreen.tap(box["x"] + 30, box["y"] + 10)  # it stands where it stood: taken at once
    page.wait_for_url("**/case?*")


def test_a_tap_elsewhere_on_a_page_just_come_is_told_and_then_taken(page: Page) -> None:
    """Away from the last tap a page takes taps after 350 ms; before, the tap is told not to be taken, in words."""
    case = CASES[5]
    at = start(page, case)
    page.touchscreen.tap(*at)
    until_answered(page, case)
    far = page.locator("button.answer").last
    box = far.bounding_box()
    assert box is not None
    place = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    assert abs(place[1] - at[1]) > 64
    page.clock.run_for(100)
    page.touchscreen.tap(*place)
    expect(page.locator("#not-taken")).to_contain_text("has just come")
    expect(far).to_have_class(re.compile("not-taken"))
    assert answers(page) == {case[1]: case[2]}

    page.clock.run_for(260)
    page.touchscreen.tap(*place)
    page.wait_for_url(lambda url: len(parse_qsl(urlsplit(url).query)) > 7)


def test_what_was_pushed_under_the_finger_by_news_is_not_taken(page: Page) -> None:
    """Play is stopped, or a second opinion asked for: the page moves down, a tap at once answers nothing, one a moment later does."""
    case = CASES[0]
    x, y = start(page, case)
    page.evaluate("document.dispatchEvent(new Event('moved'))")
    page.mouse.click(x, y)
    page.clock.run_for(200)
    assert answers(page) == {}
    page.clock.run_for(500)
    page.mouse.click(x, y)
    until_answered(page, case)

    assert answers(page) == {case[1]: case[2]}
