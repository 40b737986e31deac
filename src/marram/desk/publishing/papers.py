"""The sheets of the event, to print: for each round every one that there is enough for, as a page or as PDF on A4 or Letter."""

from fastapi import APIRouter, HTTPException, Request, Response

from marram.desk.log.kept import kept_here
from marram.desk.people.answers import page
from marram.desk.publishing.pages import style_of_sheets
from marram.desk.shell.workplace import workplace_on
from marram.paper.paper_size import PaperSize
from marram.paper.sheet_html import event_sheet_html
from marram.paper.sheet_pdf import event_sheet_pdf
from marram.records.starting_sheet import rounds
from marram.services.sheets.event_papers import EventPapers, SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from marram.words.place import YARDS, region_asked_for
from marram.words.texts import text

router = APIRouter()

ALL = "all"
"""What all sheets of a round together are asked for by."""


@router.get("/papers")
def every_sheet(request: Request) -> Response:
    """Show which sheets can be printed, by round."""
    kept = kept_here(request)
    known = rounds(kept.records, kept.event_id)
    return page(
        request,
        "papers.html",
        title=text("publishing.papers"),
        rounds=[
            (number, one, [(name, title_of(name)) for name in _papers(request, number).possible()])
            for number, one in enumerate(known, start=1)
        ],
    )


@router.get("/papers/{number}/{sheet}.{form}")
def one_sheet(request: Request, number: int, sheet: str, form: str, paper: str = "a4") -> Response:
    """Give a sheet of a round, or all of them one behind the other, as a page or as PDF."""
    try:
        wanted = list(SheetName) if sheet == ALL else [SheetName(sheet)]
        size = PaperSize(paper)
    except ValueError:
        raise HTTPException(404) from None
    if form not in {"pdf", "html"}:
        raise HTTPException(404)
    papers = _papers(request, number)
    made = [papers.sheet(one, yards=in_yards(request)) for one in wanted if one in papers.possible()]
    if not made:
        raise HTTPException(404)
    if form == "html":
        return Response(
            event_sheet_html(made, size, style_of_sheets(size)), media_type="text/html; charset=utf-8"
        )
    filename = f"{sheet}-{number}-{paper}.pdf"
    return Response(
        event_sheet_pdf(made, size),
        media_type="application/pdf",
        headers={"Content-Disposition": f'inline; filename="{filename}"'},
    )


def in_yards(request: Request) -> bool:
    """Tell whether whoever asks measures holes in yards, by the region of the first language that the browser asks for."""
    return region_asked_for(request.headers.get("accept-language", "")) in YARDS


def title_of(name: SheetName) -> str:
    """Return what a sheet is called."""
    return text(f"paper.title.{name.value.replace('-', '_')}")


def _papers(request: Request, number: int) -> EventPapers:
    """Return what the sheets of a round are made of.

    Raises:
        InputError: there is no such round.
    """
    kept = kept_here(request)
    known = rounds(kept.records, kept.event_id)
    day = known[number - 1].day if 0 < number <= len(known) else None
    course = workplace_on(request, day).course if day else request.app.state.workplace.course
    return papers_of_records(kept.records, kept.event.name, course=course, round_=number)
