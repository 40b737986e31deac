"""A sheet of the event as one page of HTML that stands alone: style inside, no script, readable and printable anywhere."""

from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from marram.paper.paper_size import PaperSize
from marram.paper.sheet import Cards, Part, Picture, Sheet, Table
from marram.words.language import language

if TYPE_CHECKING:
    from jinja2 import Template


def event_sheet_html(sheets: Sequence[Sheet], paper: PaperSize = PaperSize.A4, stylesheet: str = "") -> str:
    """Return sheets as one page of HTML.

    Args:
        sheets: one at least.
        paper: the paper that a browser prints it on.
        stylesheet: an address at which the same style is found, for a server whose pages may hold none inside
            (Content Security Policy); saved to a file, the page keeps the style that is in it.
    """
    return _template().render(
        sheets=sheets,
        language=language().code,
        style=event_sheet_style(paper),
        stylesheet=stylesheet,
        kind=_kind,
        title=sheets[0].called,
    )


def event_sheet_style(paper: PaperSize = PaperSize.A4) -> str:
    """Return the style of a sheet, printed on a paper."""
    size = "letter" if paper is PaperSize.LETTER else "A4"
    return f"@page {{ size: {size}; margin: 13mm; }}\n{_style()}"


def _kind(part: Part) -> str:
    if isinstance(part, Table):
        return "table"
    if isinstance(part, Cards):
        return "cards"
    return "picture" if isinstance(part, Picture) else "words"


@cache
def _style() -> str:
    """Return what is the same on every paper."""
    return (Path(__file__).parent / "event_sheet.css").read_text(encoding="utf-8")


@cache
def _template() -> "Template":
    from jinja2 import Environment, PackageLoader, StrictUndefined  # noqa: PLC0415 - only a page needs it

    loader = PackageLoader("marram", "paper")
    made = Environment(
        loader=loader, autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )
    return made.get_template("event_sheet.html")
