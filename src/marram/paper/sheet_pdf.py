"""A sheet of the event as PDF, set with Typst."""

from collections.abc import Sequence
from dataclasses import asdict
from typing import Any

from marram.paper.paper_size import PaperSize
from marram.paper.sheet import Cards, Part, Picture, Sheet, Table, Words
from marram.paper.typeset import typeset
from marram.words.language import language


def event_sheet_pdf(sheets: Sequence[Sheet], paper: PaperSize = PaperSize.A4) -> bytes:
    """Return sheets as one PDF, each from a page of its own.

    Args:
        sheets: one at least.
        paper: the size of the pages.
    """
    drawings: dict[str, str] = {}
    data = {
        "language": language().code,
        "paper": paper.in_typst,
        "title": sheets[0].called,
        "sheets": [_plain(sheet, drawings) for sheet in sheets],
    }
    return typeset("event_sheet", data, drawings)


def _plain(sheet: Sheet, drawings: dict[str, str]) -> dict[str, Any]:
    return {
        "title": sheet.title,
        "event": sheet.event,
        "about": sheet.about,
        "day": sheet.day,
        "foot": sheet.foot,
        "parts": [_part(one, drawings) for one in sheet.parts],
    }


def _part(part: Part, drawings: dict[str, str]) -> dict[str, Any]:
    if isinstance(part, Picture):
        name = f"drawing-{len(drawings)}"
        drawings[name] = part.svg
        return {"part": "picture", "heading": part.heading, "drawing": f"{name}.svg", "alt": part.alt}
    if isinstance(part, Table):
        columns = [{**asdict(one), "side": one.side.value} for one in part.columns]
        rows = [[asdict(cell) for cell in row] for row in part.rows]
        return {
            "part": "table",
            "heading": part.heading,
            "columns": columns,
            "rows": rows,
            "none": part.none,
            "across": part.across,
            "together": part.together,
            "new_page": part.new_page,
        }
    kind = {Words: "words", Cards: "cards"}[type(part)]
    return {"part": kind, **asdict(part)}
