"""``marram paper``: the sheets of the event."""

from dataclasses import dataclass
from pathlib import Path

from marram.cli import long_work
from marram.cli.paper_given import paper_given
from marram.cli.show import print_json, show_lines
from marram.cli.writing import different, write_files
from marram.course.loading import load
from marram.errors import InputError, shown
from marram.paper.paper_size import PaperSize
from marram.paper.sheet import Sheet
from marram.rules.plain import as_plain
from marram.said import said
from marram.services.sheets.event_papers import EventPapers, SheetName, papers_of_file
from marram.words.texts import text

ALL = "all"


@dataclass(frozen=True, slots=True)
class Source:
    """What the sheets are made of, as typed: the event or its name in records, and what belongs to it."""

    event: str | None
    records: str | None
    course: Path | None
    round: int
    draw: Path | None
    cards: Path | None

    @property
    def files(self) -> tuple[Path, ...]:
        """The files that are read, as far as they are given."""
        named = (
            None if self.records is not None else self.event,
            self.records,
            self.course,
            self.draw,
            self.cards,
        )
        return tuple(Path(one) for one in named if one is not None)


def print_sheets(
    name: str,
    source: Source,
    *,
    paper: str,
    yards: bool,
    pdf: Path | None,
    html: Path | None,
    as_json: bool,
) -> None:
    """Write sheets as PDF and HTML; without a file print them.

    Raises:
        InputError: what is asked for cannot be had; nothing is written.
    """
    size = paper_given(paper)
    different(pdf, html, read=source.files)
    wanted = None if name == ALL else _named(name)
    papers = _papers(source)
    names = papers.possible() if wanted is None else (wanted,)
    with long_work.shown() as progress:
        sheets = []
        for number, one in enumerate(names):
            progress("sheets", number / len(names) / 2)
            sheets.append(papers.sheet(one, yards=yards))
        progress("setting", 1 / 2)
        files = _files(sheets, size, pdf, html)
    _write(files)
    if as_json:
        print_json({"marram": 1, "kind": "paper", "sheets": [_plain(one) for one in sheets]})
    elif pdf is None and html is None:
        show_lines([line for one in sheets for line in one.lines()])


def _files(sheets: list[Sheet], size: PaperSize, pdf: Path | None, html: Path | None) -> dict[Path, bytes]:
    from marram.paper.sheet_html import event_sheet_html
    from marram.paper.sheet_pdf import event_sheet_pdf

    files = {}
    if html is not None:
        files[html] = event_sheet_html(sheets, size).encode()
    if pdf is not None:
        files[pdf] = event_sheet_pdf(sheets, size)
    return files


def _write(files: dict[Path, bytes]) -> None:
    if files:
        write_files(files)
        for path in files:
            print(text("paper.written", path=path))


def _plain(sheet: Sheet) -> dict[str, object]:
    return {
        "title": sheet.title,
        "event": sheet.event,
        "about": sheet.about,
        "day": sheet.day,
        "parts": [{"part": type(one).__name__.lower(), **as_plain(one)} for one in sheet.parts],
        "foot": sheet.foot,
    }


def _papers(source: Source) -> EventPapers:
    with long_work.shown():
        course = None if source.course is None else load(source.course)
    if source.records is None:
        return papers_of_file(
            None if source.event is None else Path(source.event),
            course=course,
            round_=source.round,
            draw=source.draw,
            cards=source.cards,
        )
    faults = [
        said("{option} belongs to an event in a file; with --records leave it out.", option=option)
        for option, given in (("--draw", source.draw), ("--cards", source.cards))
        if given is not None
    ]
    if faults:
        raise InputError(*faults)
    from marram.records.database import opened
    from marram.services.sheets.event_papers_kept import map_of_round, papers_of_records

    with opened(source.records) as there:
        on_map = course or map_of_round(there, source.event, source.round)
        return papers_of_records(there, source.event, course=on_map, round_=source.round)


def _named(name: str) -> SheetName:
    try:
        return SheetName(name.casefold().replace("_", "-"))
    except ValueError:
        known = ", ".join((*(one.value for one in SheetName), ALL))
        raise InputError(
            said("There is no sheet {given}; give one of {known}.", given=shown(name), known=known)
        ) from None
