"""A briefing on paper: one situation a page, or all of it on one page as a handout."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass

from marram.paper.paper_size import PaperSize
from marram.paper.typeset import typeset
from marram.words.language import language
from marram.words.texts import text


@dataclass(frozen=True, slots=True)
class Slide:
    """A page of a briefing as it is printed.

    Attributes:
        title: what it is about.
        told: what happened; a line each where it is several.
        question: what is asked.
        ruling: the ruling.
        why: why, a line for each reason.
        rules: the Rules it rests on, for the handout.
        flag: what the engine decides otherwise now; empty where nothing.
        drawing: an SVG; empty where there is no ground to draw.
    """

    title: str
    told: str
    question: str
    ruling: str
    why: str
    rules: str = ""
    flag: str = ""
    drawing: str = ""


def briefing_pdf(
    title: str, slides: Sequence[Slide], *, handout: bool = False, paper: PaperSize = PaperSize.A4
) -> bytes:
    """Return a briefing as PDF.

    Args:
        title: its name.
        slides: its pages, one at least.
        handout: whether all of it stands on one page, without drawings.
        paper: the size of the pages, which lie across unless it is the handout.
    """
    drawings = {f"drawing-{at}": one.drawing for at, one in enumerate(slides) if one.drawing and not handout}
    pages = [
        {
            **asdict(one),
            "drawing": f"drawing-{at}.svg" if f"drawing-{at}" in drawings else "",
            "alt": one.told,
            "page": text("briefings.page", number=at + 1, count=len(slides)),
        }
        for at, one in enumerate(slides)
    ]
    data = {
        "language": language().code,
        "paper": paper.in_typst,
        "title": title,
        "handout": handout,
        "pages": pages,
        "words": {key: text(f"briefings.{key}") for key in ("ruling", "why", "advice")},
    }
    return typeset("briefing", data, drawings)
