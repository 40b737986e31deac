"""Briefings kept at the desk: drawn up, put into the teacher's own words, ruled anew with what is decided otherwise flagged."""

from datetime import UTC, datetime
from secrets import randbelow
from typing import Annotated, Literal
from urllib.parse import urlencode

from fastapi import APIRouter, Form, Query, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, Field, field_validator

from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.answers import NO_STORE, page
from marram.desk.people.moments import moments_of
from marram.desk.shell.errors import answer
from marram.desk.shell.workplace import workplace
from marram.desk.teaching.briefing_page import MOST_PAGES, WAY, slide
from marram.errors import InputError
from marram.paper.paper_size import PaperSize
from marram.records.briefings import Kept, briefing_of, briefings, change_briefing, keep_briefing
from marram.said import said
from marram.services.log.ruled_cases import cases_of
from marram.teach.briefings.deck import PARTS, WORDS_A_MINUTE, Deck, Topic
from marram.teach.briefings.deck_file import read, written
from marram.teach.briefings.drawing_up import KINDS, drawn_up
from marram.teach.briefings.printing import deck_pdf, flag_of
from marram.teach.briefings.renewing import confirmed, renewed
from marram.words.texts import text

router = APIRouter()

MOST_WORDS = 4000
SAMPLED = frozenset({"topics", "beginners", "local_rules"})
"""Kinds whose situations are drawn by lot."""
SEEDS = 10_000
"""A selection of situations that nobody asked for is drawn below this, so that its number can be read out and typed."""


class Wanted(BaseModel):
    """What a briefing is to be about."""

    kind: str = Field("beginners", max_length=20)
    topics: str = Field("", max_length=400)
    title: str = Field("", max_length=120)
    count: int = Field(20, ge=1, le=MOST_PAGES)
    seed: int | None = Field(None, ge=0, lt=SEEDS)

    @field_validator("seed", mode="before")
    @classmethod
    def _not_given(cls, given: object) -> object:
        return None if given == "" else given


class Step(BaseModel):
    """What is done with a briefing, and the version it is done to."""

    step: Literal["edit", "as_made", "confirm", "renew"]
    version: int = Field(ge=1)
    number: int = Field(1, ge=1, le=MOST_PAGES * 2)
    title: str = Field("", max_length=MOST_WORDS)
    told: str = Field("", max_length=MOST_WORDS)
    question: str = Field("", max_length=MOST_WORDS)
    ruling: str = Field("", max_length=MOST_WORDS)
    why: str = Field("", max_length=MOST_WORDS)


@router.get("/briefings")
def listed(request: Request) -> Response:
    """Show the briefings of the event, and offer to draw one up."""
    kept = kept_here(request)
    found, moment = briefings(kept.records, kept.event_id), moments_of(kept.records, kept.event_id)
    return page(
        request,
        "briefings.html",
        title=text("briefings.kept"),
        listed=[(one, moment(one.changed_at)) for one in found],
        kinds=KINDS,
    )


@router.post("/briefings")
def draw_up(request: Request, wanted: Annotated[Wanted, Form()]) -> Response:
    """Draw up a briefing, keep it, and show its pages."""
    kept = kept_here(request)
    given = tuple(wanted.topics.replace(",", " ").split())
    seed = randbelow(SEEDS) if wanted.seed is None else wanted.seed
    deck = _drawn_up(request, kept, Topic(wanted.kind, given, seed, wanted.count), wanted.title.strip())
    ident = keep_briefing(kept.records, kept.event_id, deck.title, written(deck).decode(), datetime.now(UTC))
    return RedirectResponse(f"/briefings/{ident}", 303)


@router.get("/briefings/{ident}")
def pages(request: Request, ident: str) -> Response:
    """Show the pages of a briefing, each to be put into words of one's own."""
    one = _kept(request, ident)
    if one is None:
        return _none(request)
    deck = read(one.document)
    shown = [
        {
            "number": number,
            "parts": [(name, each.part(name), name in each.edited) for name in PARTS],
            "title": each.part("title"),
            "edited": bool(each.edited),
            "flag": flag_of(each),
        }
        for number, each in enumerate(deck.pages, start=1)
    ]
    flagged = sum(bool(each.was) for each in deck.pages)
    edited = sum(bool(each.edited) for each in deck.pages)
    counts = text(
        "briefings.version", version=one.version, count=len(deck.pages), edited=edited, flagged=flagged
    )
    aloud = text("briefings.aloud", pace=WORDS_A_MINUTE, minutes=deck.minutes)
    return page(
        request,
        "briefing_pages.html",
        title=deck.title,
        one=one,
        pages=shown,
        counts=counts,
        aloud=aloud,
        selection=text("briefings.selection", seed=deck.topic.seed) if deck.topic.kind in SAMPLED else "",
    )


@router.post("/briefings/{ident}")
def change(request: Request, ident: str, taken: Annotated[Step, Form()]) -> Response:
    """Keep a page in the teacher's words or as it was made, take a flag off, or rule everything anew."""
    one, kept = _kept(request, ident), kept_here(request)
    if one is None:
        return _none(request)
    if taken.version != one.version:
        raise InputError(
            said("Somebody else changed this briefing meanwhile. Open it again and repeat your change.")
        )
    deck = read(one.document)
    place = f"#page-{taken.number}"
    if taken.step == "renew":
        deck, place = (
            renewed(deck, _drawn_up(request, kept, deck.topic, deck.title), workplace(request).course),
            "",
        )
    else:
        if taken.number > len(deck.pages):
            raise InputError(said("There is no page {number}: the briefing has {count}.", number=taken.number, count=len(deck.pages)))  # fmt: skip
        found = deck.pages[taken.number - 1]
        if taken.step == "edit":
            found = found.put_otherwise({name: getattr(taken, name).replace("\r\n", "\n") for name in PARTS})
        elif taken.step == "as_made":
            found = found.put_otherwise({name: found.made[name] for name in PARTS})
        else:
            found = confirmed(found)
        deck = deck.with_page(taken.number, found)
    change_briefing(kept.records, one, written(deck).decode(), datetime.now(UTC))
    return RedirectResponse(f"/briefings/{one.id}{place}", 303, headers=NO_STORE)


@router.get("/briefings/{ident}/slides")
def slides(  # noqa: PLR0917 - an address
    request: Request,
    ident: str,
    number: Annotated[int, Query(ge=1, le=MOST_PAGES * 2)] = 1,
    shown: Annotated[int, Query(ge=0, le=WAY)] = 0,
    presenter: Annotated[int, Query(ge=0, le=1)] = 0,
    begun: Annotated[int | None, Query(ge=0)] = None,
) -> Response:
    """Show one page of a briefing that is kept, as a slide."""
    one = _kept(request, ident)
    if one is None:
        return _none(request)
    start = int(datetime.now(UTC).timestamp()) if begun is None else begun
    same: dict[str, object] = {"presenter": 1, "begun": start} if presenter else {}

    def address(at: int, **more: object) -> str:
        return f"/briefings/{one.id}/slides?{urlencode({**same, 'number': at, **more})}"

    def room(at: int, **more: object) -> str:
        return f"/briefings/{one.id}/slides?{urlencode({'number': at, **more})}"

    return slide(
        request,
        read(one.document),
        number,
        address,
        shown=shown,
        presenter=bool(presenter),
        begun=start,
        room=room,
        briefing=str(one.id),
        back_url=f"/briefings/{one.id}" if presenter else "",
    )


@router.get("/briefings/{ident}/pdf")
def printed(request: Request, ident: str, handout: bool = False, paper: PaperSize = PaperSize.A4) -> Response:
    """Return a briefing that is kept as PDF, or its handout, on A4 or Letter."""
    one = _kept(request, ident)
    if one is None:
        return _none(request)
    made = deck_pdf(read(one.document), workplace(request).course, handout=handout, paper=paper)
    return Response(made, media_type="application/pdf", headers=NO_STORE)


def _drawn_up(request: Request, kept: KeptHere, topic: Topic, title: str) -> Deck:
    here = workplace(request)
    if topic.kind == "local_rules" and not topic.given:
        topic = Topic(topic.kind, tuple(sorted(here.event.local_rules or ())), topic.seed, topic.count)
    cases = cases_of(kept.log, kept.event_id) if topic.kind == "event" else ()
    return drawn_up(topic, here.course, cases=cases, title=title)


def _kept(request: Request, ident: str) -> Kept | None:
    kept = kept_here(request)
    return briefing_of(kept.records, kept.event_id, ident)


def _none(request: Request) -> Response:
    return answer(request, 404, "no_briefing", [text("briefings.no_such")])
