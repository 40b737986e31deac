"""A briefing asked of the engine again: the teacher's words stay, and what is decided otherwise now is flagged."""

from dataclasses import replace

from marram.course.model import Course
from marram.errors import InputError
from marram.teach.briefings.deck import Deck, Page
from marram.teach.briefings.drawing_up import page_of, situation_of
from marram.words.texts import text


def renewed(deck: Deck, again: Deck | None = None, course: Course | None = None) -> Deck:
    """Return a deck with every page ruled anew, one version on.

    Args:
        deck: the deck as it was kept.
        again: the same topic drawn up again; its new pages are added, and pages of the old one that it no longer
            holds stay where the teacher changed them or the engine decides otherwise. ``None``: the pages as they are.
        course: the course it is told of.
    """
    old = [_again(page, course) for page in deck.pages]
    if again is None:
        return replace(deck, pages=tuple(old), version=deck.version + 1)
    known = {page.key: page for page in old}
    new = [known.pop(page.key, page) for page in again.pages]
    kept = [page for page in known.values() if page.edited or page.was]
    return replace(
        again, title=deck.title, pages=(*new, *kept), version=deck.version + 1, left_out=again.left_out
    )


def confirmed(page: Page) -> Page:
    """Return a page whose new ruling the teacher has seen: the flag is gone."""
    return replace(page, was="")


def _again(page: Page, course: Course | None) -> Page:
    if not page.incident:
        return page
    before = page.was or page.made["ruling"]
    try:
        now = page_of(situation_of(page), course)
    except InputError:
        made = {**page.made, "ruling": text("briefings.no_ruling")}
        return replace(page, made=made, was=before)
    if now.made["ruling"] == page.made["ruling"]:
        return page
    made = {**page.made, "ruling": now.made["ruling"], "why": now.made["why"]}
    return replace(page, made=made, was="" if now.made["ruling"] == before else before)
