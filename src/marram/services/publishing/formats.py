"""A published document in its formats: JSON, CSV, XLSX, iCalendar, HTML; each made of the document alone."""

import csv
import io
from collections.abc import Callable, Iterator, Mapping
from datetime import date, datetime, time
from hashlib import sha256
from typing import Any
from zoneinfo import ZoneInfo

from marram.competition.draw.calendar import Appointment, calendar_of
from marram.errors import InputError
from marram.paper.sheet import Cell, Column, Part, Sheet, Side, Table, Words
from marram.paper.sheet_html import event_sheet_html
from marram.records.canonical import canonical
from marram.said import said
from marram.services.publishing.documents import BALLOT, BRACKET, RESULTS, STARTING_TIMES, Document
from marram.services.publishing.result_tables import ResultRow, ResultTable, result_tables
from marram.services.publishing.workbook import workbook
from marram.words.texts import long_day_words, text

MEDIA_TYPES = {
    "json": "application/json",
    "csv": "text/csv; charset=utf-8",
    "xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "ics": "text/calendar; charset=utf-8",
    "html": "text/html; charset=utf-8",
}
"""The formats by the ending of their address."""

USUAL_MINUTES = 300
"""How long a start lasts in a calendar where the conditions give no time: a round of groups of three or four (common practice)."""


def written(document: Document) -> bytes:
    """Return the bytes that are published, and that the address is the digest of."""
    return canonical(document).encode()


def digest_of(document: Document) -> str:
    """Return the SHA-256 of a document as it is published, in hexadecimal."""
    return sha256(written(document)).hexdigest()


def formats_of(document: Document) -> tuple[str, ...]:
    """Return the formats that a document has: a calendar only where its times are known to the minute in a zone."""
    timed = document["kind"] == STARTING_TIMES and document.get("day") and document.get("time_zone")
    return tuple(one for one in MEDIA_TYPES if one != "ics" or timed)


def in_format(
    document: Document, ending: str, published_at: datetime, stylesheet: str = "", change: int = 0
) -> bytes:
    """Return a document in a format.

    Args:
        document: as it is published.
        ending: one of :data:`MEDIA_TYPES`.
        published_at: when it was, with its time zone.
        change: how many lists of its kind and round were published before it, so that a calendar takes the later start over.
        stylesheet: the address of the page's style, for a server whose pages may hold none inside.

    Raises:
        InputError: it has no such format.
    """
    if ending not in formats_of(document):
        known = ", ".join(formats_of(document))
        raise InputError(said("This list is published as {known}.", known=known))
    makers: Mapping[str, Callable[[], bytes]] = {
        "json": lambda: written(document),
        "csv": lambda: _csv(document).encode(),
        "xlsx": lambda: workbook(document, _rows(document), published_at),
        "ics": lambda: _calendar(document, published_at, change).encode(),
        "html": lambda: event_sheet_html([published_sheet(document)], stylesheet=stylesheet).encode(),
    }
    return makers[ending]()


def published_sheet(document: Document) -> Sheet:
    """Return a published list as a sheet, with its digest at the foot."""
    day = document.get("day")
    return Sheet(
        text(f"publishing.{document['kind']}"),
        str(document.get("event") or ""),
        str(document.get("round_name") or ""),
        long_day_words(date.fromisoformat(day)) if day else "",
        tuple(_parts(document)),
        text("publishing.digest", digest=digest_of(document)),
    )


def _parts(document: Document) -> Iterator[Part]:
    if document["kind"] == RESULTS:
        yield from (_result_table(one) for one in result_tables(document))
        if document.get("closed"):
            yield Words("", (text("paper.results.closed"),))
        return
    header, *rows = _rows(document)
    columns = tuple(
        Column(
            text(f"publishing.column.{name}"),
            int(name in {"name", "club", "first_side", "second_side", "winner"}),
            Side.LEFT,
            name == "name",
        )
        for name in header
    )
    yield Table("", columns, tuple(tuple(Cell(str(one)) for one in row) for row in rows))
    if document["kind"] == BALLOT:
        yield Words(text("publishing.repeat"), (text("publishing.repeat.how", seed=document["seed"]),))


def _result_table(table: ResultTable) -> Table:
    """Return a result as a table for people: places as they are written, what stands against par with its sign."""
    names = 1
    columns = tuple(
        Column(heading, int(at == names), Side.LEFT, at == names) for at, heading in enumerate(table.headings)
    )
    return Table(table.title, columns, tuple(tuple(_cells(table, one)) for one in table.rows))


def _cells(table: ResultTable, row: ResultRow) -> Iterator[Cell]:
    yield from (Cell(row.placed), Cell(row.name, row.club))
    *figures, against = table.figures(row)
    yield from (Cell("" if one is None else str(one)) for one in figures)
    level = text("results.level") if against == 0 else f"{against or 0:+d}".replace("-", "−")
    yield Cell("" if against is None else level)
    yield Cell(row.words)


def _csv(document: Document) -> str:
    made = io.StringIO()
    csv.writer(made, lineterminator="\r\n").writerows(_rows(document))  # RFC 4180
    return made.getvalue()


def _rows(document: Document) -> list[list[Any]]:
    makers = {
        STARTING_TIMES: _start_rows,
        RESULTS: _result_rows,
        BALLOT: _ballot_rows,
        BRACKET: _bracket_rows,
    }
    return makers[document["kind"]](document)


def _start_rows(document: Document) -> list[list[Any]]:
    return [
        ["group", "time", "tee", "name", "club"],
        *(
            [group["number"], group["time"], group["tee"], one["name"], one["club"]]
            for group in document["groups"]
            for one in group["players"]
        ),
    ]


def _result_rows(document: Document) -> list[list[Any]]:
    def known(value: object) -> object:
        return "" if value is None else value

    return [
        ["result", "place", "name", "club", "rounds", "total", "against_level", "standing", "rule"],
        *(
            [
                " ".join(filter(None, (one["score"], one["division"]))),
                f"{known(each['place'])}{'=' if each['shared'] else ''}",
                each["name"],
                each["club"],
                " ".join(str(played["total"]) for played in each["rounds"]),
                known(each["total"]),
                known(each["against_level"]),
                each["out"] or each["standing"],
                known(each["rule"]),
            ]
            for one in document["results"]
            for each in one["places"]
        ),
        *(
            [
                " ".join((one["score"], text("competition.teams").lower())),
                f"{known(each['place'])}{'=' if each['shared'] else ''}",
                each["team"],
                "",
                " ".join(str(known(played["total"])) for played in each["rounds"]),
                known(each["total"]),
                "",
                "",
                "",
            ]
            for one in document["results"]
            for each in one.get("teams", ())
        ),
    ]


def _ballot_rows(document: Document) -> list[list[Any]]:
    return [
        ["order", "outcome", "key", "digest"],
        *(
            [number, "place" if number <= document["places"] else "reserve", one["key"], one["digest"]]
            for number, one in enumerate(document["order"], start=1)
        ),
    ]


def _bracket_rows(document: Document) -> list[list[Any]]:
    def side(of: Document | None) -> str:
        return "" if of is None else " · ".join(filter(None, (of["name"], of["club"])))

    return [
        ["round", "match", "first_side", "second_side", "winner", "result"],
        *(
            [
                number,
                one["number"],
                side(one["first"]),
                side(one["second"]),
                one[one["winner"]]["name"] if one["winner"] else "",
                one["result"],
            ]
            for number, stage in enumerate(document["rounds"], start=1)
            for one in stage
        ),
    ]


def _calendar(document: Document, published_at: datetime, change: int) -> str:
    zone, day = ZoneInfo(document["time_zone"]), date.fromisoformat(document["day"])
    return calendar_of(
        (
            Appointment(
                text("draw.start_of", event=document["event"], player=one["name"]),
                datetime.combine(day, time.fromisoformat(group["time"]), zone),
                document.get("minutes_of_play") or USUAL_MINUTES,
                text("draw.tee", tee=group["tee"]),
                sha256(f"{document['event']}\n{document['round']}\n{one['name']}".encode()).hexdigest()[:32],
                change,
            )
            for group in document["groups"]
            for one in group["players"]
        ),
        published_at,
    )
