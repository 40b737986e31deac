"""What was published, for everybody; and publishing, for the Committee."""

from typing import Annotated, Literal

from fastapi import APIRouter, Form, HTTPException, Request, Response
from fastapi.responses import RedirectResponse

from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.live.play import play_for_everybody
from marram.desk.log.kept import kept_here
from marram.desk.people.answers import page
from marram.desk.people.who import may
from marram.paper.paper_size import PaperSize
from marram.paper.sheet_html import event_sheet_style
from marram.records.entry import new_ident
from marram.records.field import details
from marram.services.day.conditions_touched import changes_told
from marram.services.publishing.change_words import changed_words
from marram.services.publishing.document_now import publishing_now
from marram.services.publishing.documents import named
from marram.services.publishing.formats import MEDIA_TYPES, formats_of, in_format
from marram.services.publishing.published import Published, published
from marram.words.texts import text

router = APIRouter()


@router.get("/published")
def every_list(request: Request) -> Response:
    """Show every list that was published, the latest first."""
    here = scoring_here(request)
    found = _published(here)
    return page(
        request,
        "published.html",
        title=text("publishing.title"),
        lists=[(one, formats_of(one.document) if one.whole else ()) for one in found],
        rounds=here.competition.rounds,
        decides=may(request, "POST /published"),
        results=not here.competition.why_no_cards(),
        changed_words=changed_words,
        zone=here.kept.zone,
        play_words=play_for_everybody(request, here.kept),
        tapped=new_ident(),
        conditions_told=changes_told(here),
    )


@router.post("/published")
def publish(
    request: Request,
    what: Annotated[Literal["starting_times", "results", "bracket"], Form()],
    tapped: Annotated[str, Form()],
    round_: Annotated[int, Form(alias="round", ge=1, le=99)] = 1,
) -> RedirectResponse:
    """Publish a list as it now stands."""
    here = scoring_here(request)
    entry = publishing_now(here, here.kept.event.name, what, round_, tap_here(request, tapped))
    here.kept.add_tapped(entry)
    return RedirectResponse("/published", 303)


@router.get("/published/sheet.css")
def style(paper: PaperSize = PaperSize.A4) -> Response:
    """Give the style of every sheet: the desk's pages hold none inside themselves."""
    return Response(event_sheet_style(paper), media_type="text/css", headers={"Cache-Control": "no-cache"})


def style_of_sheets(paper: PaperSize = PaperSize.A4) -> str:
    """Return the address of the style of a sheet on a paper."""
    return f"/published/sheet.css?paper={paper.value}"


@router.get("/published/{digest}.{form}")
def one_list(request: Request, digest: str, form: str) -> Response:
    """Give a published list in a format; it never changes at its address."""
    kept_here(request)
    found = next((one for one in _published(scoring_here(request)) if one.digest == digest), None)
    if found is None or form not in MEDIA_TYPES or (found.whole and form not in formats_of(found.document)):
        raise HTTPException(404)
    if not found.whole:
        raise HTTPException(410, text("publishing.gone"))
    return Response(
        in_format(found.document, form, found.at, style_of_sheets(), found.number),
        media_type=MEDIA_TYPES[form],
        headers={
            "ETag": f'"{digest}-{form}"',
            "Cache-Control": "no-cache",  # a name may be erased: nobody keeps the list without asking
            "Content-Disposition": f'inline; filename="{found.document["kind"]}-{digest[:12]}.{form}"',
        },
    )


def _published(here: ScoringHere) -> list[Published]:
    return published(here.kept.log, here.kept.event_id, named(here.competition, details(here.records)))
