"""A briefing as PDF: its pages with their drawings, or the handout."""

from marram.course.model import Course
from marram.paper.briefing import Slide, briefing_pdf
from marram.paper.paper_size import PaperSize
from marram.teach.briefings.deck import Deck, Page
from marram.teach.briefings.drawing_up import drawing_of, rules_of, way_of
from marram.words.texts import text

MOST_STEPS = 3
"""Questions of a way that can still be read in the column of a printed page (own choice)."""


def deck_pdf(
    deck: Deck, course: Course | None = None, *, handout: bool = False, paper: PaperSize = PaperSize.A4
) -> bytes:
    """Return a deck as PDF.

    Args:
        deck: the deck.
        course: the course its situations are drawn on; ``None``: no drawings.
        handout: whether all of it stands on one page.
        paper: the size of the pages.
    """
    slides = [_slide(one, None if handout else course, at) for at, one in enumerate(deck.pages)]
    return briefing_pdf(deck.title, slides, handout=handout, paper=paper)


def flag_of(page: Page) -> str:
    """Return what is to be said where the engine decides otherwise now; empty where it does not."""
    return text("briefings.decides_otherwise", was=page.was) if page.was else ""


def _slide(page: Page, course: Course | None, at: int) -> Slide:
    words = {name: page.part(name) for name in ("title", "told", "question", "ruling", "why")}
    return Slide(
        **words,
        rules=rules_of(page),
        flag=flag_of(page),
        drawing=drawing_of(page, course, f"page-{at}")
        or (way_of(page, prefix=f"way-{at}", two_until=1, most=MOST_STEPS) if course else ""),
    )
