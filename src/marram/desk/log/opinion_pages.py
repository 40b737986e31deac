"""Second opinions at the desk: asked from any page of a case, listed for the chief referee, answered, brought back."""

from dataclasses import replace
from functools import partial
from typing import Annotated
from urllib.parse import parse_qsl
from uuid import UUID, uuid5

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.desk.competition.conditions import COOKIE
from marram.desk.log.begun import begun_here
from marram.desk.log.here import can_decide, device_here, moment_words, now, person_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.log.shown import shown
from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.desk.rulings.story import together
from marram.desk.rulings.story_view import consult_story
from marram.desk.shell.workplace import Workplace, show, workplace, workplace_on
from marram.errors import InputError
from marram.records.entry import ident, new_ident
from marram.records.open_cases import begin, keep_page
from marram.said import said
from marram.services.cases.address_case import address_of, case_at
from marram.services.cases.case_file import read_case
from marram.services.log.differences import differences, looked_at
from marram.services.log.opinions import answering, asking, opinions
from marram.words.texts import text

router = APIRouter()

Note = Annotated[str, Form(max_length=2000)]

MOST_OTHERS = 5
"""Earlier rulings shown beside one that differs at most (own choice): the latest."""


@router.get("/opinions")
def opinion_list(request: Request) -> HTMLResponse:
    """Show the second opinions asked in the event, the open ones first."""
    kept = kept_here(request)
    found = sorted(opinions(kept.log, kept.event_id), key=lambda one: not one.is_open)
    differing = sorted(differences(kept.log, kept.event_id), key=lambda each: bool(each.seen))
    several = [[one.ruling, *one.others[:MOST_OTHERS]] for one in differing]
    words = {
        one.entry.id: one
        for one in shown(kept, list({one.id: one for some in several for one in some}.values()))
    }
    return show(
        request,
        "opinions.html",
        None,
        title=text("log.opinions.title"),
        opinions=found,
        differences=[
            (one, words[first.id], [words[other.id] for other in others])
            for one, (first, *others) in zip(differing, several, strict=True)
        ],
        here=kept.event_id,
        names=kept.names(),
        decides=can_decide(request, kept),
        case_of=_case_url,
        moment_words=partial(moment_words, zone=kept.zone),
    )


@router.post("/opinions/difference")
def difference(
    request: Request,
    about: Annotated[str, Form()],
    stands: Annotated[bool, Form()],
    tapped: Annotated[str, Form()],
    note: Note = "",
) -> RedirectResponse:
    """Keep that a ruling that differs was looked at, and whether it stands."""
    kept = kept_here(request)
    if not can_decide(request, kept):
        raise HTTPException(403, text("log.opinions.not_yours"))
    if about not in {one.ruling.id for one in differences(kept.log, kept.event_id)}:
        raise HTTPException(404)
    kept.add_tapped(
        looked_at(
            ident(tapped, "tapped"),
            now(),
            about,
            by=person_here(request) or None,
            stands=stands,
            words=note,
        )
    )
    return RedirectResponse("/opinions", 303)


@router.get("/opinions/ask")
def ask_page(request: Request) -> HTMLResponse:
    """Show what the chief referee will get, and ask what the official thinks."""
    kept_here(request)
    desk = workplace(request)
    case = desk.read(request)
    return show(
        request,
        "ask_opinion.html",
        case,
        title=text("log.opinions.ask"),
        headline=_headline(desk, case),
        query=case.url("").removeprefix("?"),
        tapped=new_ident(),
        case_url=_page_of(case),
    )


@router.post("/opinions/ask")
def ask(
    request: Request, case: Annotated[str, Form()], tapped: Annotated[str, Form()], note: Note = ""
) -> RedirectResponse:
    """Ask for a second opinion, with everything; a case that nobody began is begun by it, so that the answer finds it."""
    kept = kept_here(request)
    address = _address(request, kept, case)
    desk = workplace_on(request, address.conditions.on)
    here = begun_here(request, address)
    me = person_here(request) or None
    if here is None or not here.case.is_open:
        address = replace(address, begun=ident(tapped, "tapped"))
        begin(kept.records, kept.event_id, address.begun, by=me, player=None, group=None)
    whole = together(address)
    headline = _headline(desk, address)
    kept.add_tapped(
        asking(
            str(uuid5(UUID(ident(tapped, "tapped")), "opinion")),
            now(),
            by=me or (here.case.by if here else None),
            about=address.begun,
            case=case_at(whole, desk.made_with) if whole.kept else None,
            headline=headline,
            thinks=note,
            player=here.case.player if here else None,
        )
    )
    keep_page(kept.records, address.begun, device_here(request), _page_of(address), headline)
    return RedirectResponse(_page_of(address), 303)


@router.post("/opinions/answer")
def answer(
    request: Request,
    *,
    asked: Annotated[str, Form()],
    agrees: Annotated[bool, Form()],
    tapped: Annotated[str, Form()],
    note: Note = "",
    case: Annotated[str, Form()] = "",
) -> RedirectResponse:
    """Answer a second opinion, with words and, where it is to be ruled otherwise, with the other ruling."""
    kept = kept_here(request)
    if not can_decide(request, kept):
        raise HTTPException(403, text("log.opinions.not_yours"))
    found = next((one for one in opinions(kept.log, kept.event_id) if one.asked.id == asked), None)
    if found is None:
        raise HTTPException(404)
    if not agrees and not case and not note.strip():
        raise InputError(said("Say in words how it is to be ruled, or answer with a ruling of the case."))
    ruled, headline = None, ""
    if case:
        address = _address(request, kept, case)
        desk = workplace_on(request, address.conditions.on)
        ruled, headline = case_at(together(address), desk.made_with), _headline(desk, address)
    kept.add_tapped(
        answering(
            ident(tapped, "tapped"),
            now(),
            found.asked,
            by=person_here(request) or None,
            agrees=agrees,
            words=note,
            case=ruled,
            headline=headline,
        )
    )
    return RedirectResponse("/opinions", 303)


def _address(request: Request, kept: KeptHere, query: str) -> CaseAddress:
    return read_address(parse_qsl(query, keep_blank_values=True), request.cookies.get(COOKIE, ""), kept.event)


def _page_of(case: CaseAddress) -> str:
    if case.what:
        return case.url("/case")
    return case.url("/together" if case.kept else "/what" if case.hole is None else "/ball", ask=None)


def _headline(desk: Workplace, case: CaseAddress) -> str:
    """Return what an official is shown of a case in one line: the ruling, the question it stands at, or nothing."""
    whole = together(case)
    if not whole.kept:
        return ""
    view = consult_story(desk.course, whole)
    sheets = [one.sheet for one in view.open_parts] + ([view.sheet] if view.sheet else [])
    sheets += [one.sheet for one in view.parts]
    first = sheets[0]
    return first.question.question if first.question else first.headline


def _case_url(document: dict[str, object] | None, about: str | None) -> str:
    """Return the address of a case that an opinion holds; empty where it holds none that can be read."""
    if document is None:
        return ""
    try:
        found = read_case(document)
    except InputError:
        return ""
    address = replace(address_of(CaseAddress, found), begun=about or "")
    return address.url("/case") if len(found.incidents) == 1 else together(address).url("/together")
