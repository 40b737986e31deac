"""The drawings of a ruling come after its words, all the same: in its folds, over the whole screen, on paper, out of reach."""

from collections.abc import Iterator
from io import BytesIO

import pytest
from playwright.sync_api import Browser, Page, Route, expect
from pypdf import PdfReader

from marram.words.texts import text as said
from tests.desk.places import Ground
from tests.desk.settled import drawn, settled

pytestmark = pytest.mark.browser

ASKED = "what=ball_in_penalty_area&penalty_area_colour=red&found_in_penalty_area=yes"
LAST = "last_stroke_from_penalty_area"
DRAWINGS = "**/drawings?**"


@pytest.fixture
def page(chromium: Browser, address: str) -> Iterator[Page]:
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address)
    found = context.new_page()
    faults: list[str] = []
    found.on("pageerror", lambda error: faults.append(str(error)))
    yield found
    context.close()
    assert not faults


def rule(page: Page, ground: Ground) -> None:
    """Answer the last question of a case, so that the page of the ruling comes by the desk's script."""
    places = f"ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}"
    page.goto(f"/case?hole=9&{places}&{ASKED}")
    settled(page)
    page.locator(f"button[name={LAST}][value=no]").click()
    expect(page.locator(".ruling.ruling")).to_be_visible()
    settled(page)


def test_they_arrive_in_the_folds_of_the_page_and_on_paper(page: Page, ground: Ground) -> None:
    """Nothing of the page moves while they come; each stands with its own option, and is printed."""
    held: list[Route] = []
    page.route(DRAWINGS, lambda route: held.append(route))  # noqa: PLW0108 - a method of a list it cannot mark as its own
    with page.expect_request(DRAWINGS):
        rule(page, ground)
    expect(page.locator(".option figure svg")).to_have_count(0)
    drawn(page)
    before = page.locator(".reminder").bounding_box()
    for one in held:
        one.continue_()
    expect(page.locator(".option figure svg")).to_have_count(3)
    drawn(page)

    assert len(held) == 1
    assert page.locator(".reminder").bounding_box() == before
    for letter in "ABC":
        mine = page.locator(f".option[data-letter={letter}] figure svg")
        assert (mine.get_attribute("aria-labelledby") or "").startswith(f"option-{letter}-title")
    (paper,) = PdfReader(BytesIO(page.pdf(format="A4"))).pages
    assert said("rulings.option.drawing_comes") not in paper.extract_text()


def test_the_whole_screen_waits_for_its_drawing(page: Page, ground: Ground) -> None:
    """Tapped before the drawing is there, it opens as soon as it is."""
    held: list[Route] = []
    page.route(DRAWINGS, lambda route: held.append(route))  # noqa: PLW0108 - a method of a list it cannot mark as its own
    with page.expect_request(DRAWINGS):
        rule(page, ground)
    page.locator("[data-whole-screen]").first.click()
    expect(page.locator("dialog[open]")).to_have_count(0)
    held[0].continue_()
    expect(page.locator("dialog[open] svg")).to_be_visible()


def test_out_of_reach_it_is_said_and_they_come_when_the_desk_is_back(page: Page, ground: Ground) -> None:
    """The fold says what became of the drawing; the very page gets it later, without being loaded anew."""
    page.route(DRAWINGS, lambda route: route.abort("internetdisconnected"))
    rule(page, ground)
    fold = page.locator(".option .measures").first
    fold.locator("summary").click()
    expect(fold.locator("figure")).to_have_text(said("rulings.option.drawing_missing"))
    page.unroute(DRAWINGS)
    page.context.set_offline(True)
    page.context.set_offline(False)
    expect(fold.locator("figure svg")).to_be_visible()
    expect(page.locator(".option figure svg")).to_have_count(3)


def test_what_was_on_its_way_when_the_desk_came_back_is_asked_for_again(page: Page, ground: Ground) -> None:
    """It was sent before the desk was in reach, and fails after: nobody need do anything for it to come."""
    page.route(DRAWINGS, lambda route: route.abort("internetdisconnected"))
    rule(page, ground)
    fold = page.locator(".option .measures").first
    expect(page.locator(".option figure").first).to_have_text(said("rulings.option.drawing_missing"))
    page.unroute(DRAWINGS)
    held: list[Route] = []
    page.route(DRAWINGS, lambda route: held.append(route) if not held else route.continue_())
    with page.expect_request(DRAWINGS):
        fold.locator("summary").click()
    back = page.evaluate_handle("() => ({ heard: new Promise(done => addEventListener('online', done)) })")
    page.context.set_offline(True)
    page.context.set_offline(False)
    back.evaluate("({ heard }) => heard.then(() => true)")
    held[0].abort("internetdisconnected")
    expect(fold.locator("figure svg")).to_be_visible()


def test_printed_by_the_browsers_own_key_they_are_on_the_paper(page: Page, ground: Ground) -> None:
    """Before they have come: the paper waits for them."""
    lost: list[Route] = []
    page.route(DRAWINGS, lambda route: lost.append(route) if not lost else route.continue_())
    with page.expect_request(DRAWINGS):
        rule(page, ground)
    (paper,) = PdfReader(BytesIO(page.pdf(format="A4"))).pages
    assert said("rulings.option.drawing_comes") not in paper.extract_text()
    expect(page.locator(".option figure svg")).to_have_count(3)


def test_printed_out_of_reach_the_paper_says_that_they_are_missing(page: Page, ground: Ground) -> None:
    page.route(DRAWINGS, lambda route: route.abort("internetdisconnected"))
    rule(page, ground)
    (paper,) = PdfReader(BytesIO(page.pdf(format="A4"))).pages
    assert said("rulings.option.drawing_comes") not in paper.extract_text()
    assert said("rulings.option.drawing_missing") in " ".join(paper.extract_text().split())


def test_a_question_answered_before_the_course_has_come_leaves_the_map_whole(
    page: Page, ground: Ground
) -> None:
    """Both pages asked for the same part of the map, and neither had shown anything of it: the map comes, once."""
    held: list[Route] = []
    come: list[bool] = []
    page.route("**/api/course/**", lambda route: route.continue_() if come else held.append(route))
    page.goto(f"/case?hole=9&ball={ground.in_the_burn()}&{ASKED}")
    page.locator(f"button[name={LAST}][value=no]").click()
    expect(page.locator(".ruling.ruling")).to_be_visible()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(0)
    come.append(True)
    for one in held:
        one.continue_()
    expect(page.locator("#map[data-ready=yes]")).to_have_count(1)
    drawn(page)

    assert len(held) > 1
    assert page.locator("#map .mark-ball").count() == 1
