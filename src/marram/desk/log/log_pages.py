"""The entries of the event: searched, a page at a time, the latest first; each on a page of its own; one withdrawn."""

from typing import Annotated

from fastapi import APIRouter, Form, HTTPException, Query, Request, Response
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.desk.log.here import now, person_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.log.shown import case_url, shown
from marram.desk.people.who import may_see
from marram.desk.shell.workplace import show
from marram.records.entry import Entry, Kept, Part, ident
from marram.services.kinds.registry import kinds
from marram.services.log.log import RULING, earlier_of
from marram.services.log.log import again as ruled_again
from marram.services.log.searching import OUTCOMES, Search, search
from marram.words.texts import text

router = APIRouter()


@router.get("/log")
def log(
    request: Request,
    *,
    q: Annotated[str, Query(max_length=200)] = "",
    kind: str = "",
    hole: str = "",
    outcome: str = "",
    page: Annotated[int, Query(ge=1, le=10**6)] = 1,
) -> HTMLResponse:
    """Show a page of the entries of the event that hold what is looked for, the latest first."""
    kept = kept_here(request)
    wanted = Search(
        q,
        kind if kind in kinds() else "",
        int(hole) if hole.isascii() and hole.isdecimal() and len(hole) < 3 else None,
        outcome if outcome in OUTCOMES else "",
    )
    found = search(kept.records, kept.event_id, wanted, page)
    return show(
        request,
        "log.html",
        None,
        title=text("log.title"),
        entries=shown(kept, found.entries),
        found=found,
        wanted=wanted,
        asked=bool(wanted.words or wanted.kind or wanted.hole or wanted.outcome),
        kinds=list(kinds()),
        outcomes=OUTCOMES,
        turned={
            step: str(request.url.include_query_params(page=found.number + step).query)
            for step in (-1, 1)
            if 1 <= found.number + step <= found.pages
        },
    )


@router.get("/log/{number}/photograph/{place}")
def one_photograph(request: Request, number: int, place: int) -> Response:
    """Give a photograph of an entry, by its place among what is sealed beside it, from 0."""
    kept = kept_here(request)
    parts = kept.log.parts(_numbered(kept, number).id)
    part = parts[place] if 0 <= place < len(parts) else None
    if part is None or part.what != "photograph":
        raise HTTPException(404)
    return Response(part.content, media_type=part.media_type, headers={"Cache-Control": "private, no-store"})


@router.get("/log/{number}")
def entry(request: Request, number: int) -> HTMLResponse:
    """Show one entry, with earlier rulings about the same situation, and what would be ruled today where that differs."""
    kept = kept_here(request)
    found = _numbered(kept, number)
    today = ruled_again(found) if found.kind == RULING else None
    (one,) = shown(kept, [found])
    before = earlier_of(kept.log, found)
    parts = kept.log.parts(found.id)
    return show(
        request,
        "entry.html",
        None,
        title=text("log.entry", number=number),
        one=one,
        notes=[
            (part.what, part.content.decode(errors="replace"))
            for part in parts
            if may_see(request, "note") and part and part.media_type == "text/plain"
        ],
        photographs=[
            place
            for place, part in enumerate(parts)
            if may_see(request, "photograph") and part and part.what == "photograph"
        ],
        erased=None in parts,
        again=case_url(found),
        today=today.headline if today and today.differs else "",
        before=list(
            zip(
                shown(kept, [other.entry for other in before]),
                [other.same for other in before],
                strict=True,
            )
        ),
        here=kept.event_id,
        can_withdraw=found.kind == RULING and not one.withdrawn,
    )


@router.post("/log/{number}/withdraw")
def withdraw(
    request: Request,
    number: int,
    tapped: Annotated[str, Form()],
    reason: Annotated[str, Form(max_length=2000)] = "",
) -> RedirectResponse:
    """Withdraw a ruling, by an entry that says so; the ruling itself stays as it was recorded."""
    kept = kept_here(request)
    found = _numbered(kept, number)
    if found.kind != RULING:
        raise HTTPException(404)
    kept.add_tapped(
        Entry(
            "withdrawn",
            now(),
            ident(tapped, "tapped"),
            by=person_here(request) or None,
            player=found.told.get("player"),
            hole=found.told.get("hole"),
            corrects=found.id,
            parts=(Part("reason", reason.strip().encode()),) if reason.strip() else (),
        )
    )
    return RedirectResponse(f"/log/{number}", 303)


def _numbered(kept: KeptHere, number: int) -> Kept:
    found = kept.log.numbered(kept.event_id, number) if 0 < number < 10**9 else None
    if found is None:
        raise HTTPException(404)
    return found
