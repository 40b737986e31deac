"""A ruling handed on from a real browser: printed on one page, copied as text."""

from collections.abc import Iterator
from io import BytesIO

import pytest
from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader

from marram.words.texts import text as said
from tests.desk.places import Ground
from tests.desk.settled import settled

pytestmark = pytest.mark.browser

DRAWN = "what=ball_in_penalty_area&found_in_penalty_area=yes&last_stroke_from_penalty_area=no"
SIX_OPTIONS = "what=played_from_penalty_area&after_penalty_area=unplayable_outside&first_penalty_area_colour=red&handed=left"


@pytest.fixture
def page(chromium: Browser, address: str) -> Iterator[Page]:
    context = chromium.new_context(
        viewport={"width": 390, "height": 844},
        base_url=address,
        permissions=["clipboard-read", "clipboard-write"],
    )
    found = context.new_page()
    faults: list[str] = []
    found.on("pageerror", lambda error: faults.append(str(error)))
    yield found
    context.close()
    assert not faults


@pytest.mark.parametrize("asked", [DRAWN, SIX_OPTIONS], ids=["three options", "six options"])
def test_a_ruling_is_printed_on_one_page(page: Page, ground: Ground, asked: str) -> None:
    """A4 and Letter: every option with its drawing, the reasons and who decides; nothing to tap, and the screen as it was."""
    places = f"ball={ground.in_the_burn()}&entry={ground.in_the_burn(0)}&previous={ground.fairway(along=230)}"
    page.goto(f"/case?hole=9&{places}&{asked}")
    settled(page)
    folded = page.locator("details:not([open])").count()
    titles = page.locator(".option h3").all_inner_texts()
    for paper in ("A4", "Letter"):
        pages = PdfReader(BytesIO(page.pdf(format=paper))).pages
        assert len(pages) == 1
        told = " ".join(pages[0].extract_text().split())
        assert told.count(said("rulings.option.measures")) == page.locator(".option figure svg").count() >= 3
        for words in (
            page.locator("#heading").inner_text(),
            said("rulings.ruling.why"),
            "the Committee decide",
        ):
            assert " ".join(words.split()) in told
        for words in (
            "rulings.option.on_map",
            "rulings.ruling.print",
            "rulings.ruling.new",
            "rulings.chosen.title",
        ):
            assert said(words) not in told
        for title in titles:
            assert " ".join(title.split()[1:]) in told
    expect(page.locator("details:not([open])")).to_have_count(folded)


def test_a_ruling_is_copied_as_text(page: Page, ground: Ground) -> None:
    """The clipboard holds the text with the Rule; a word says so, and the focus stays on the button."""
    page.goto(f"/case?hole=9&ball={ground.in_the_burn()}&{DRAWN}")
    settled(page)
    button = page.get_by_role("button", name=said("rulings.ruling.copy"))
    button.click()
    expect(page.locator("#shared-words")).to_have_text(said("rulings.ruling.copied"))
    expect(button).to_be_focused()
    copied = page.evaluate("navigator.clipboard.readText()")
    assert copied.startswith(page.locator("#heading").inner_text().replace("\n", " "))
    assert "Rule 17.1d(3)" in copied
