"""Several incidents on a phone, 390 px wide, in a real browser: from the first ruling to the combined one."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.words.texts import text as said
from tests.desk.answers import answer
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled
from tests.desk.test_browser import SIZES, TOO_SMALL, reach, ready, tap_map

pytestmark = pytest.mark.browser

LIFTED = "what=ball_lifted_by_player&area_of_ball=general_area&handled_as=lifted&handling_allowed=no"


@pytest.fixture
def phone(chromium: Browser, address: str) -> Iterator[Page]:
    """A phone that may be asked for its position; an error of a script fails the test."""
    context = chromium.new_context(
        viewport=SIZES["phone"], has_touch=True, base_url=address, permissions=["geolocation"]
    )
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    yield page
    context.close()
    assert not faults


def test_a_second_incident_and_both_together(phone: Page, ground: Ground) -> None:
    """The second is started from the ruling on the first; reload and back keep both; the total counts both."""
    phone.goto(f"/case?hole=9&ball={ground.fairway()}&{LIFTED}")
    phone.get_by_role("link", name=said("rulings.ruling.more")).click()
    expect(phone.get_by_role("heading", name=said("rulings.ball.title_again"))).to_be_visible()
    tap_map(phone, ground.fairway(along=300))
    phone.get_by_role("link", name=said("rulings.what.title")).click()
    expect(phone.get_by_role("searchbox")).to_be_visible()
    settled(phone)
    phone.get_by_role("searchbox").fill("frost altered ground")
    altered = phone.get_by_role(
        "link", name=re.compile("The ground, sand, soil, dew, frost or water was altered")
    )
    expect(phone).to_have_url(re.compile("q=frost"))  # the list has followed the typing
    settled(phone)
    altered.press("Enter")
    answer(phone, "Elsewhere")
    expect(phone).to_have_url(re.compile(r"1\.what=ball_lifted_by_player.*number=2.*altered_place=elsewhere"))
    phone.reload()
    expect(phone.locator(".so-far")).to_contain_text("Incident 1 The player or caddie lifted the ball")
    answer(phone, "Yes")
    answer(phone, "None of these")
    answer(phone, "The surface")

    phone.get_by_role("link", name=said("rulings.ruling.together", count="2")).click()
    question = phone.get_by_role("heading", name=re.compile("^Between incidents 1 and 2"))
    expect(question).to_be_focused()
    answer(phone, "Yes")
    dealt_with = phone.get_by_role("heading", name=re.compile("had the ball been played"))
    expect(dealt_with).to_be_visible()
    answer(phone, "No")
    expect(phone.locator(".totals")).to_contain_text("three penalty strokes")
    drawn(phone)
    assert phone.evaluate(TOO_SMALL) == []
    assert phone.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    phone.go_back()
    expect(dealt_with).to_be_visible()
    settled(phone)
    phone.go_forward()
    expect(phone.locator(".totals")).to_contain_text("three penalty strokes")

    phone.get_by_role("link", name="Remove incident 1").click()
    expect(phone.locator(".so-far")).not_to_contain_text("Incident")
    expect(phone.get_by_role("heading", name=re.compile("^Two penalty strokes"))).to_be_visible()


def test_together_by_keyboard(phone: Page) -> None:
    """The Tab key and Enter lead from the question between two incidents to its answer, and to change it."""
    two = "2.what=ground_altered&2.altered_place=elsewhere&2.conditions_improved=yes&2.preparing_how=none_of_these&2.alteration=surface"
    first = "&".join(f"1.{one}" for one in LIFTED.split("&"))
    phone.goto(f"/together?{first}&{two}&ball_settled_1=yes")
    ready(phone)
    reach(phone, "No")
    phone.keyboard.press("Enter")
    expect(phone.locator(".totals")).to_contain_text("two penalty strokes")
    reach(phone, "change")
    phone.keyboard.press("Enter")
    expect(phone.locator(".answer[aria-current]")).to_contain_text(said("rulings.question.yours"))


def test_whose_act_it_was_by_keyboard(phone: Page) -> None:
    """The fold of an act opens by the keyboard, and one key then makes it another player's; nothing is wider than the phone."""
    acts = "&".join(f"1.{one}" for one in LIFTED.split("&"))
    phone.goto(f"/together?{acts}&form=stroke_play")
    ready(phone)
    reach(phone, said("rulings.act.more"))
    phone.keyboard.press("Enter")
    expect(phone.get_by_text(said("rulings.act.whose"))).to_be_visible()
    settled(phone)
    assert phone.evaluate(TOO_SMALL) == []
    assert phone.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    reach(phone, "Another player's")
    phone.keyboard.press("Enter")
    expect(phone).to_have_url(re.compile("by_1=another_player"))
    expect(phone.locator(".incidents")).to_contain_text("Another player's")


def test_together_without_javascript(chromium: Browser, address: str) -> None:
    """Links and forms alone lead from one ruling to the combined one."""
    context = chromium.new_context(java_script_enabled=False, base_url=address, viewport=SIZES["phone"])
    page = context.new_page()
    page.goto(f"/case?{LIFTED}")
    page.get_by_role("link", name=said("rulings.ruling.more")).click()
    page.get_by_role("searchbox").fill("frost altered ground")
    page.get_by_role("button", name="Search").click()
    page.get_by_role("link", name=re.compile("The ground, sand, soil, dew")).click()
    for words in ("Elsewhere", "Yes", "None of these", "The surface"):
        answer(page, words)
    page.get_by_role("link", name=said("rulings.ruling.together", count="2")).click()
    answer(page, "Yes")
    answer(page, "No")

    expect(page.locator(".totals")).to_contain_text("three penalty strokes")
    context.close()


def test_the_phone_s_accuracy_goes_into_the_address(phone: Page, ground: Ground) -> None:
    """The cross left where the phone put it is as good as the phone; moved by the official it is a tap."""
    latitude, longitude = (float(part) for part in ground.in_the_burn(0).split(","))
    phone.context.set_geolocation({"latitude": latitude, "longitude": longitude, "accuracy": 6})
    phone.goto("/ball?hole=9")
    ready(phone)
    phone.get_by_role("button", name=said("shell.at_phone")).click()
    expect(phone.locator("#pick-words")).to_contain_text("to about 6 m")
    expect(phone.locator("path.accuracy")).to_have_count(1)
    phone.get_by_role("button", name=said("shell.at_cross")).click()
    expect(phone).to_have_url(re.compile(r"ball=55\.[\d.]+,3\.[\d.]+(;|%3B)u(=|%3D)6&"))
    expect(phone.locator(".doubt")).to_contain_text("measure on the ground")
    expect(phone.locator(".eyebrow")).to_contain_text("From the phone, to about 6 m")
    settled(phone)

    phone.get_by_role("button", name=said("shell.at_phone")).click()
    expect(phone.locator("#pick-words")).to_contain_text("to about 6 m")
    phone.locator("#map").focus()
    phone.keyboard.press("ArrowUp")
    phone.wait_for_function(f"() => Math.abs(window.marramMap.getCenter().lat - {latitude}) > 1e-5")
    phone.get_by_role("button", name=said("shell.at_cross")).click()
    expect(phone.locator(".eyebrow")).to_contain_text(said("rulings.ball.from_map"))


def test_tee_markers_are_tapped(phone: Page, ground: Ground) -> None:
    """Two taps on the map, and stroke and distance draws the teeing area of the day."""
    line = ground.course.hole(9).line
    (x, y), tee = line.coords[0][:2], ground.at(line.coords[0][:2])
    phone.goto(
        f"/case?hole=9&ball={ground.in_the_burn()}&previous={tee}&what=ball_in_penalty_area"
        "&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
    )
    ready(phone)
    card = phone.locator(".option", has_text=said("relief.kind.stroke_and_distance"))
    for side, at in (("left", (x - 2, y + 1)), ("right", (x + 2, y + 1))):
        card.get_by_role("button", name=f"Show the {side} tee-marker").click()
        expect(phone.locator("#pick-words")).to_contain_text(f"Tap the {side} tee-marker")
        tap_map(phone, ground.at(at))
        expect(phone).to_have_url(re.compile(f"{side}_marker=55"))

    expect(card.get_by_role("button", name="Show the left tee-marker")).to_have_count(0)
    expect(card).not_to_contain_text("The mapped tee is shown")
    expect(phone.locator(".mark-left_marker, .mark-right_marker")).to_have_count(2)
    expect(phone.locator("path.r-area.o-A")).to_have_count(1)


def test_an_option_taken_without_a_script(chromium: Browser, address: str) -> None:
    """By keyboard and without JavaScript: the option is told, the total stands above, and the next act goes on."""
    context = chromium.new_context(viewport=SIZES["phone"], base_url=address, java_script_enabled=False)
    page = context.new_page()
    page.goto(
        "/case?what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
        "&penalty_area_colour=red&on=2024-06-01&form=stroke_play&local=none"
    )
    page.locator("summary", has_text=said("rulings.chosen.title")).focus()
    page.keyboard.press("Enter")
    page.get_by_role("link", name="Took lateral relief").focus()
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", level=1)).to_contain_text("One penalty stroke")
    before = page.get_by_label(said("rulings.together.before"))
    before.fill("1")
    before.press("Enter")
    expect(page.get_by_role("heading", level=1)).to_contain_text("third")
    page.get_by_role("link", name=said("rulings.together.next")).click()
    expect(page.get_by_role("heading", level=1, name=said("rulings.what.title"))).to_be_visible()
    assert "option_taken_1=lateral" in page.url
    assert "strokes_before=1" in page.url
    context.close()
