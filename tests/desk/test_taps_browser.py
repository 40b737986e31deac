"""A tap answers one question: the page guards every choice against the second tap of a double tap."""

import re
from collections.abc import Callable, Iterator
from urllib.parse import parse_qsl, urlsplit

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Route, expect

from marram.services.conditions import KEYS
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled

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
Case = tuple[str, str, str]


@pytest.fixture
def phone(chromium: Browser, address: str) -> Iterator[BrowserContext]:
    """A phone at the desk."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, has_touch=True, base_url=address)
    yield context
    context.close()


@pytest.fixture
def page(phone: BrowserContext) -> Page:
    """A page whose clock stands still unless it is moved on."""
    found = phone.new_page()
    found.clock.install(time=1_750_000_000)
    found.goto("/settings")
    found.clock.pause_at(1_750_000_100)
    return found


def holding(held: list[Route]) -> Callable[[Route], None]:
    """Return what holds requests back until they are let go."""

    def hold(route: Route) -> None:
        held.append(route)

    return hold


def asked(case: Case) -> str:
    return f"/case?what={case[0]}&on=2025-06-21&form=stroke_play&sides=individual&local=none"


def start(page: Page, case: Case) -> tuple[float, float]:
    """Show the first question, a while after whatever was tapped before; return where the answer to be given is."""
    page.goto(asked(case))
    page.locator("#map[data-ready=yes]").wait_for()  # what stands above the answers is there
    page.clock.run_for(5000)
    box = page.locator(f"button[name={case[1]}][value={case[2]}]").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def answers(page: Page) -> dict[str, str]:
    """Return what the address says is answered, beside the conditions."""
    pairs = dict(parse_qsl(urlsplit(page.url).query))
    return {key: value for key, value in pairs.items() if key not in {"what", *KEYS}}


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


def test_an_answer_given_out_of_reach_is_kept_and_sent(phone: BrowserContext) -> None:
    """The page says that the desk is out of reach; once it is back the answer arrives without another tap."""
    page, (what, fact, value) = phone.new_page(), CASES[5]
    page.goto(asked((what, fact, value)))
    phone.set_offline(True)
    page.locator(f"button[name={fact}][value={value}]").click()
    alert = page.locator("#reach[role=alert]")
    expect(alert).to_contain_text("cannot be reached")
    expect(page.locator("button.taken")).to_have_count(1)
    assert answers(page) == {}

    phone.set_offline(False)
    page.wait_for_url(re.compile(f"[?&]{fact}={value}"))
    expect(alert).to_be_empty()
    assert answers(page) == {fact: value}


def test_another_answer_out_of_reach_replaces_the_kept_one(phone: BrowserContext) -> None:
    """Only the last choice is sent."""
    page, case = phone.new_page(), CASES[5]
    page.goto(asked(case))
    phone.set_offline(True)
    page.locator(f"button[name={case[1]}][value={case[2]}]").click()
    expect(page.get_by_role("alert")).to_contain_text("cannot be reached")
    other = page.locator(f"button[name={case[1]}]:not([value={case[2]}])").first
    value = other.get_attribute("value")
    other.click()
    expect(other).to_have_class(re.compile("taken"))
    phone.set_offline(False)
    page.wait_for_url(re.compile(f"[?&]{case[1]}="))

    assert answers(page) == {case[1]: value}


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
        page.get_by_label("Search").fill("unplayable")
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


def test_no_answer_moves_away_from_a_finger_when_the_course_arrives(phone: BrowserContext) -> None:
    """What stands above the answers takes its room before the map is there, on a slow network too."""
    page = phone.new_page()
    held: list[Route] = []
    page.route("**/api/course/**", holding(held))
    page.goto("/ball?hole=9")
    drawn(page)
    before = page.locator("#panel").bounding_box()
    expect(page.locator("#pick-words")).to_be_visible()
    expect(page.locator("#at-cross")).to_be_disabled()
    held.pop().continue_()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(page.locator("#at-cross")).to_be_enabled()
    drawn(page)

    assert page.locator("#panel").bounding_box() == before


def test_an_option_chosen_before_the_course_is_there_is_brought_out(
    phone: BrowserContext, ground: Ground
) -> None:
    """A tap on "Show on the map" is not lost while the map is on its way."""
    page = phone.new_page()
    held: list[Route] = []
    page.route("**/api/course/**", holding(held))
    page.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    option = page.locator(".show-option").last
    option.click()
    expect(option).to_have_attribute("aria-pressed", "true")
    held.pop().continue_()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)

    expect(option).to_have_attribute("aria-pressed", "true")
    expect(page.locator(f".relief.o-{option.get_attribute('data-letter')}.strong").first).to_be_attached()


def test_an_answer_given_out_of_reach_survives_a_reload_and_arrives_once(phone: BrowserContext) -> None:
    """Whoever loads the page anew before the answer could be sent finds it sent, once, when the desk is back."""
    page, (what, fact, value) = phone.new_page(), CASES[5]
    page.goto(asked((what, fact, value)))
    settled(page)
    answer = re.compile(f"[?&]{fact}={value}")
    page.route(answer, lambda route: route.abort("internetdisconnected"))
    page.locator(f"button[name={fact}][value={value}]").click()
    expect(page.locator("#reach")).to_contain_text("cannot be reached")
    page.unroute(answer)

    sent: list[str] = []
    page.on("request", lambda request: answer.search(request.url) and sent.append(request.url))
    page.reload()
    page.wait_for_url(answer)
    settled(page)
    assert answers(page) == {fact: value}
    page.reload()
    settled(page)
    assert len(sent) == 2  # the answer, and the page it led to loaded anew
    assert answers(page) == {fact: value}


def test_the_whole_course_zooms_by_double_tap_and_opens_a_hole_by_its_number(phone: BrowserContext) -> None:
    """Neither places a ball; a single tap elsewhere is shown at once, and places it once however often it is repeated."""
    page = phone.new_page()
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    box = page.locator("#map").bounding_box()
    assert box is not None
    middle = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    before = page.evaluate("marramMap.getZoom()")
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(1)
    page.touchscreen.tap(*middle)
    expect(page.locator(".tapped")).to_have_count(0)
    assert page.evaluate("marramMap.getZoom()") > before
    assert urlsplit(page.url).path == "/"

    page = phone.new_page()  # the view of the first is kept
    page.goto("/")
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)
    ninth = page.locator("#map .hole-number").filter(has_text=re.compile("^9$"))
    expect(ninth).to_be_visible()
    drawn(page)
    number = ninth.bounding_box()
    assert number is not None
    page.touchscreen.tap(number["x"] + 12, number["y"] + 12)
    page.wait_for_url(re.compile(r"/ball\?hole=9(&|$)"))
    settled(page)
    assert "ball=" not in page.url

    asked_for: list[str] = []
    page.on("request", lambda request: "ball=" in request.url and asked_for.append(request.url))
    held: list[Route] = []
    page.route(re.compile("ball="), holding(held))
    drawn(page)
    box = page.locator("#map").bounding_box()
    assert box is not None
    at = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    with page.expect_request(re.compile("ball=")):
        page.touchscreen.tap(*at)
    expect(page.locator(".tapped")).to_have_count(1)
    page.touchscreen.tap(at[0] + 8, at[1])
    held.pop().continue_()
    page.wait_for_url(re.compile("ball="))
    page.touchscreen.tap(at[0] + 8, at[1])
    settled(page)
    assert not held
    assert len(asked_for) == 1


def test_a_map_that_does_not_arrive_is_said_and_fetched_again(phone: BrowserContext) -> None:
    """Out of reach the page says that the map is missing and goes on working; a tap on the button fetches it."""
    page = phone.new_page()
    page.route("**/api/course/**", lambda route: route.abort("internetdisconnected"))
    page.goto("/ball?hole=9")
    fault = page.locator("#map-fault[role=status]")
    expect(fault).to_contain_text("has not arrived")
    page.unroute("**/api/course/**")
    fault.get_by_role("button").click()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    expect(fault).to_be_empty()


def test_an_entry_that_has_just_come_under_the_finger_is_not_taken(page: Page) -> None:
    """When the list of incidents is replaced while one types, a tap meant for what stood there takes nothing else."""
    page.goto("/what?q=embedded")
    page.clock.run_for(2000)
    page.get_by_label("Search").focus()
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

    page.get_by_label("Search").focus()
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
