"""Entries: lists of clubs read and taken whole or not at all, lots for places, withdrawals and who moves up."""

import re
from typing import Annotated, Literal

from fastapi import APIRouter, Depends, Form, Request, Response
from fastapi.responses import JSONResponse, RedirectResponse
from starlette.datastructures import UploadFile

from marram.competition.conditions.reading import read_event_file
from marram.competition.entries.ballot import Choosing
from marram.competition.entries.entry import Column
from marram.competition.entries.table import table_of
from marram.competition.entries.writing import written_entries
from marram.desk.cards.scoring_here import scoring_here, tap_here
from marram.desk.field.lists import NOT_READ, ListShown, carried, chosen, list_shown, written_index
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.answers import page
from marram.desk.shell.typed import Typed
from marram.errors import InputError
from marram.records.entry import new_ident
from marram.records.field import EntrantKept
from marram.records.people import names
from marram.records.starting_sheet import conditions
from marram.said import said
from marram.services.field.ballot_kept import Lots, ballot_file, lots_cast
from marram.services.field.entry_put_right import EntrySays, putting_right, tees_of
from marram.services.field.field_kept import (
    EventLog,
    columns_remembered,
    entries_kept,
    field_now,
    taken,
    withdrawing,
)
from marram.services.field.handicap_limit import limit_in
from marram.services.log.tap import Tap
from marram.services.publishing.formats import MEDIA_TYPES, digest_of, written
from marram.words.texts import text

router = APIRouter()


@router.get("/entries")
def entries(request: Request, took: int | None = None, who: str = "", righted: str = "") -> Response:
    """Show who plays, who waits, who withdrew; and what can be done, with the entry of ``who``."""
    return _page(request, kept_here(request), took=took, who=who, righted=righted)


async def _sent(request: Request) -> tuple[str, bytes, dict[str, str]]:
    """Read the name and bytes of the file of a form, and its other fields."""
    async with request.form() as form:
        file = form.get("file")
        fields = {key: value for key, value in form.items() if isinstance(value, str)}
        if isinstance(file, UploadFile) and file.filename:
            return file.filename, await file.read(), fields
        return "", b"", fields


@router.post("/entries/read")
def read(request: Request, sent: Annotated[tuple[str, bytes, dict[str, str]], Depends(_sent)]) -> Response:
    """Show what a list is read as: which column tells what, every bad line with its remedy; nobody is taken yet."""
    kept = kept_here(request)
    name, data, fields = sent
    try:
        if data:
            found = list_shown(table_of(data, name), columns_remembered(_at(kept)))
        elif "rows" in fields:
            found = list_shown(carried(fields["rows"]), chosen(fields, _headings(fields)))
        else:
            raise InputError(said("Choose the file of a list: CSV, or a spreadsheet as XLSX."))
    except InputError as error:
        return _page(request, kept, faults=error.faults)
    return _read_page(request, found)


@router.post("/entries/take")
def take(request: Request, given: Typed) -> Response:
    """Take every entry of a list that was read without fault."""
    kept = kept_here(request)
    tap = tap_here(request, given.get("tapped", ""))
    if kept.log.entry(tap.ident) is not None:  # tapped twice
        return RedirectResponse("/entries", 303)
    try:
        found = list_shown(carried(given.get("rows", "")), chosen(given, _headings(given)))
    except InputError as error:
        return _page(request, kept, faults=error.faults)
    try:
        if found.read is None:
            raise InputError(*found.faults)
        entry = taken(_at(kept), found.read, found.columns, tap)
    except InputError as error:
        return _read_page(request, found, error.faults)
    kept.add_tapped(entry)
    return RedirectResponse(f"/entries?took={len(found.read.entries)}", 303)


@router.post("/entries/ballot")
def ballot(
    request: Request,
    *,
    tapped: Annotated[str, Form()],
    seed: Annotated[str, Form(max_length=200)] = "",
    places: Annotated[int, Form(ge=1, le=2000)],
    limit: Annotated[str, Form(max_length=6)] = "",
    lowest: Annotated[bool, Form()] = False,
) -> Response:
    """Cast lots for the places."""
    kept = kept_here(request)
    try:
        tap = tap_here(request, tapped)
        choosing = Choosing.LOWEST_HANDICAPS if lowest else Choosing.BALLOT
        lots = Lots(seed.strip(), places, limit_in(limit) if limit.strip() else None, choosing)
        kept.add_tapped(lots_cast(_at(kept), lots, tap))
    except InputError as error:
        return _page(request, kept, faults=error.faults)
    return RedirectResponse("/entries", 303)


@router.post("/entries/withdraw")
def withdraw(
    request: Request,
    person: Annotated[str, Form(max_length=40)],
    tapped: Annotated[str, Form()],
    note: Annotated[str, Form(max_length=2000)] = "",
) -> Response:
    """Have somebody withdraw; the first reserve moves up into the very place."""
    kept = kept_here(request)
    try:
        tap: Tap = tap_here(request, tapped)
        kept.add_tapped(withdrawing(_at(kept), person, tap, note))
    except InputError as error:
        return _page(request, kept, faults=error.faults)
    return RedirectResponse("/entries", 303)


@router.post("/entries/put-right")
def put_right(
    request: Request,
    *,
    person: Annotated[str, Form(max_length=40)],
    tapped: Annotated[str, Form()],
    index: Annotated[str, Form(max_length=20)] = "",
    sex: Annotated[str, Form(max_length=10)] = "",
    tees: Annotated[str, Form(max_length=80)] = "",
    playing: Annotated[str, Form(max_length=6)] = "",
) -> Response:
    """Put right what an entry says, as long as the competition is not closed."""
    here = scoring_here(request)
    kept = here.kept
    says = EntrySays(index, sex, tees, playing)
    try:
        tap = tap_here(request, tapped)
        here.refuse_closed()
        file = read_event_file(conditions(kept.records, kept.event_id))
        kept.add_tapped(putting_right(_at(kept), file, person, says, tap))
    except InputError as error:
        return _page(request, kept, faults=error.faults, who=person, says=says)
    return RedirectResponse(f"/entries?righted={person}", 303)


@router.get("/entries/ballot.json")
def ballot_json(request: Request) -> Response:
    """Give the ballot as it is published: whoever has it can draw it again."""
    kept = kept_here(request)
    found = ballot_file(kept.records, kept.event.name, field_now(_at(kept)))
    name = f"ballot-{digest_of(found)[:12]}.json"
    return Response(
        written(found),
        media_type=JSONResponse.media_type,
        headers={"Content-Disposition": f'attachment; filename="{name}"'},
    )


@router.get("/entries/list.{form}")
def list_of_entries(request: Request, form: Literal["csv", "xlsx"]) -> Response:
    """Give who plays as a file that reads back as the same list."""
    kept = kept_here(request)
    playing = entries_kept(field_now(_at(kept)).playing)
    return Response(
        written_entries(playing, spreadsheet=form == "xlsx"),
        media_type=MEDIA_TYPES[form],
        headers={
            "Content-Disposition": f'attachment; filename="entries.{form}"',
            "Cache-Control": "no-cache",
        },
    )


def _at(kept: KeptHere) -> EventLog:
    return EventLog(kept.records, kept.log, kept.event_id)


def _headings(given: Typed) -> dict[str, str]:
    return {
        found[1]: value for key, value in given.items() if (found := re.fullmatch(r"heading-(\d{1,3})", key))
    }


def _read_page(request: Request, found: ListShown, faults: tuple[str, ...] = ()) -> Response:
    answer = page(
        request,
        "entries_read.html",
        title=text("field.read.title"),
        found=found,
        faults=[*found.faults, *faults],
        columns=list(Column),
        not_read=NOT_READ,
        written_index=written_index,
        tapped=new_ident(),
    )
    if found.read is None or found.read.faults or faults:
        answer.status_code = 422
    return answer


def _says(one: EntrantKept) -> EntrySays:
    playing = one.playing_handicap
    return EntrySays(
        written_index(one.handicap_index),
        one.sex or "",
        one.tees or "",
        "" if playing is None else f"+{-playing}" if playing < 0 else str(playing),
    )


def _page(
    request: Request,
    kept: KeptHere,
    *,
    faults: tuple[str, ...] = (),
    took: int | None = None,
    who: str = "",
    righted: str = "",
    says: EntrySays | None = None,
) -> Response:
    now = field_now(_at(kept))
    file = read_event_file(conditions(kept.records, kept.event_id))
    waiting = [one.person for one in now.reserves]
    shown = {one.person: one for one in now.playing}
    answer = page(
        request,
        "entries.html",
        title=text("field.entries"),
        now=now,
        called=names(kept.records, [*waiting, *now.refused, *now.withdrawn]),
        file=file,
        written_index=written_index,
        faults=list(faults),
        took=took,
        entry=shown.get(who),
        says=says or (_says(shown[who]) if who in shown else None),
        righted=shown[righted].name if righted in shown else "",
        tees=tees_of(file),
    )
    if faults:
        answer.status_code = 422
    return answer
