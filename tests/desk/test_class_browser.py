"""A class on phones whose network goes and comes back: the question stays, what was answered arrives once, no phone is lost."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from marram.desk.log.kept import KeptHere
from marram.records.classes import answers_of, class_of, classes, explain_class, next_question
from marram.words.texts import text as said
from tests.clubs import club
from tests.desk.serving import served
from tests.desk.settled import PATIENCE, settled
from tests.desk.signing_in import guarded
from tests.desk.test_class import begun

pytestmark = pytest.mark.browser


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def joined(chromium: Browser, address: str, code: str) -> Page:
    """A phone of nobody in particular, at the question."""
    context = chromium.new_context(viewport={"width": 390, "height": 844}, base_url=address, has_touch=True)
    context.set_default_timeout(PATIENCE)
    page = context.new_page()
    page.goto(f"/class/{code}")
    settled(page)
    return page


def test_a_phone_out_of_reach_keeps_its_question_and_its_answer(chromium: Browser, kept: KeptHere) -> None:
    """Answered without a network, the choice waits on the page, the last one counts, and it arrives by itself."""
    app = guarded(kept)
    _, one = begun(app, kept)
    with served(app) as address:
        phone = joined(chromium, address, one.code)
        phone.context.set_offline(True)
        buttons = phone.locator("form.answers button")
        buttons.nth(0).tap()
        expect(phone.locator("#class-reach")).to_have_text(said("classes.waits"))
        buttons.nth(1).tap()
        expect(buttons.nth(1)).to_have_attribute("data-chosen", "")
        assert not answers_of(kept.records, one)
        phone.context.set_offline(False)
        expect(phone.get_by_text(said("classes.answered", letter="B"))).to_be_visible(timeout=PATIENCE)
        assert answers_of(kept.records, one) == {1: {1: 1}}
        phone.context.close()
        app.state.live.leaving = lambda: True


def test_a_phone_that_comes_back_goes_on_where_the_class_is(chromium: Browser, kept: KeptHere) -> None:
    """While it was away the teacher opened the explanation and asked the next question; a phone that joins late is there too."""
    app = guarded(kept)
    _, one = begun(app, kept)
    with served(app) as address:
        phone = joined(chromium, address, one.code)
        phone.context.set_offline(True)
        explain_class(kept.records, one)
        (now,) = [each for each in classes(kept.records, kept.event_id) if each.code == one.code]
        next_question(kept.records, now)
        expect(phone.locator("form.answers")).to_have_count(1)
        late = joined(chromium, address, one.code)
        expect(late.locator(".eyebrow")).to_contain_text(said("quizzes.number", number=2))
        phone.context.set_offline(False)
        expect(phone.locator(".eyebrow")).to_contain_text(said("quizzes.number", number=2), timeout=PATIENCE)
        found = class_of(kept.records, kept.event_id, one.code)
        assert found is not None
        assert found.number == 2
        for each in (phone, late):
            each.context.close()
        app.state.live.leaving = lambda: True
