"""The entries of the event: all of them, the latest first, and each on a page of its own."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from fastapi import APIRouter, HTTPException, Request
from fastapi.responses import HTMLResponse, Response

from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.who import may_see
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.records.entry import Kept
from marram.rules.incidents import incident
from marram.services.address_case import address_of
from marram.services.case_file import read_case
from marram.services.kinds.registry import kinds
from marram.services.log import RULING, earlier_of
from marram.words.language import translate
from marram.words.texts import text

router = APIRouter()


@dataclass(frozen=True)
class Shown:
    """An entry as a page shows it.

    Attributes:
        entry: the entry.
        title: what happened, in words.
        player: the name of the player; empty where it is not known or was erased.
        by: the name of the official; likewise.
        corrected_by: the numbers of entries that correct it.
        corrects: the number of the entry it corrects; 0 for none.
    """

    entry: Kept
    title: str
    player: str
    by: str
    corrected_by: tuple[int, ...] = ()
    corrects: int = 0

    @property
    def given_at(self) -> datetime:
        """When it happened."""
        return datetime.fromisoformat(self.entry.told["given_at"]).astimezone()

    @property
    def headline(self) -> str:
        """What was ruled, in one line."""
        return str(self.entry.content.get("headline", ""))

    @property
    def instead(self) -> str:
        """What was given in place of what was computed, as the form says it; empty where it was not said."""
        given = self.entry.content.get("instead") or {}
        words = [one for one in ("disqualified", "hole_lost") if given.get(one)]
        strokes = given.get("penalty_strokes")
        return words[0] if words else "" if strokes is None else str(strokes)


@router.get("/log")
def log(request: Request) -> HTMLResponse:
    """Show the entries of the event, the latest first."""
    kept = kept_here(request)
    entries = _shown(kept, kept.log.entries(kept.event_id))
    return show(request, "log.html", None, title=text("log.title"), entries=entries[::-1])


@router.get("/log/{number}/photograph/{place}")
def one_photograph(request: Request, number: int, place: int) -> Response:
    """Give a photograph of an entry, by its place among what is sealed beside it, from 0."""
    kept = kept_here(request)
    found = kept.log.numbered(kept.event_id, number) if 0 < number < 10**9 else None
    parts = kept.log.parts(found.id) if found else []
    part = parts[place] if 0 <= place < len(parts) else None
    if part is None or part.what != "photograph":
        raise HTTPException(404)
    return Response(part.content, media_type=part.media_type, headers={"Cache-Control": "private, no-store"})


@router.get("/log/{number}")
def entry(request: Request, number: int) -> HTMLResponse:
    """Show one entry, with earlier rulings about the same situation."""
    kept = kept_here(request)
    entries = _shown(kept, kept.log.entries(kept.event_id))
    if not 1 <= number <= len(entries):
        raise HTTPException(404)
    one = entries[number - 1]
    mine = {other.entry.id: other for other in entries}
    before = [
        (mine[other.entry.id], other.same)
        for other in earlier_of(kept.log, one.entry)
        if other.entry.id in mine
    ]
    parts = kept.log.parts(one.entry.id)
    return show(
        request,
        "entry.html",
        None,
        title=text("log.entry", number=number),
        one=one,
        notes=[
            (part.what, part.content.decode(errors="replace"))
            for part in parts
            if may_see(request, "note")
            if part and part.media_type == "text/plain"
        ],
        photographs=[place for place, part in enumerate(parts) if part and part.what == "photograph"],
        erased=None in parts,
        again=_case_url(one.entry),
        before=before,
    )


def _shown(kept: KeptHere, entries: Sequence[Kept]) -> list[Shown]:
    known, numbers = kept.names(), {one.id: one.number for one in entries}
    corrections: dict[str, list[int]] = {}
    for one in entries:
        if one.corrects:
            corrections.setdefault(one.corrects, []).append(one.number)
    return [
        Shown(
            one,
            _title(one),
            known.get(one.told.get("player", ""), ""),
            known.get(one.told.get("by", ""), ""),
            tuple(corrections.get(one.id, ())),
            numbers.get(one.corrects or "", 0),
        )
        for one in entries
    ]


def _title(entry: Kept) -> str:
    """Return what an entry is about, in words."""
    if entry.kind != RULING:
        return text(f"log.kind.{entry.kind}") if entry.kind in kinds() else entry.kind
    try:
        acts = entry.content["case"]["incidents"]
        return " · ".join(translate()(incident(act["incident"]).title) for act in acts)
    except (InputError, KeyError, TypeError):
        return text("log.kind.ruling")


def _case_url(entry: Kept) -> str:
    """Return the address of a recorded case at this desk; empty where it can no longer be read."""
    try:
        case = read_case(entry.content["case"])
    except (InputError, KeyError):
        return ""
    return address_of(CaseAddress, case).url("/case")
