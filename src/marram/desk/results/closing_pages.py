"""A tie decided on the course, the close of the competition, and reopening a closed result as Rule 20.2 allows."""

from typing import Annotated
from uuid import UUID, uuid5

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.closing import Change, Closed, Reopening, reopening
from marram.desk.cards.card_list import State, state_of
from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.results.board_view import result_words, shown
from marram.desk.shell.typed import Typed
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.records.entry import Entry, Part
from marram.rules.engine.request import fact_named
from marram.said import said
from marram.services.event_results import CLOSED, REOPENED, TIE
from marram.services.log import RULING
from marram.words.sheet import sheet
from marram.words.texts import text

router = APIRouter()

Note = Annotated[str, Form(max_length=2000)]
_NOT_FACTS = frozenset({"tapped", "change", "note", "seen", "csrf", "do"})


@router.post("/results/tie")
def tie(request: Request, given: Typed) -> RedirectResponse:
    """Enter the order that a play-off or a lot gave."""
    here = scoring_here(request)
    here.refuse_closed()
    method = given.get("method", "")
    if method not in (TieMethod.PLAY_OFF.value, TieMethod.LOT.value):
        raise HTTPException(422)
    places: dict[str, int] = {}
    for person in here.competition.labels:
        typed = given.get(f"order-{person}", "").strip()
        if typed:
            places[person] = int(typed) if typed.isascii() and typed.isdecimal() and len(typed) < 4 else 0
    if sorted(places.values()) != list(range(1, len(places) + 1)) or len(places) < 2:
        raise InputError(said("Give the winner 1, the next one 2 and so on, each number once."))
    tap = tap_here(request, given.get("tapped", ""))
    order = sorted(places, key=places.__getitem__)
    here.add(Entry(TIE, tap.at, tap.ident, by=tap.by, content={"method": method, "order": order}))
    return RedirectResponse("/results", 303)


@router.get("/results/close")
def close_page(request: Request) -> HTMLResponse:
    """Show what still stands between now and the close; or, once it is closed, what may still be changed."""
    return _page(request, scoring_here(request))


def _page(
    request: Request, here: ScoringHere, asked: Reopening | None = None, change: Change | None = None
) -> HTMLResponse:
    words = None if asked is None else sheet(asked.result, given=asked.facts)
    return show(
        request,
        "close.html",
        None,
        title=text("results.close.title"),
        closed=here.closed,
        waits=[] if here.closed is not None else waits(here),
        changes=list(Change),
        asked=asked,
        sheet=words,
        change=change,
        known={} if asked is None else {name: _token(name, value) for name, value in asked.facts.items()},
    )


def waits(here: ScoringHere) -> list[str]:
    """Return what still stands between now and the close, in words; empty where nothing does."""
    found: list[str] = []
    if why_not := here.competition.why_no_cards():
        return [why_not]
    now = here.now()
    cards = [card for one in here.competition.rounds for card in here.cards(one.id).values()]
    open_ = sorted({card.card.side for card in cards if state_of(card) in (State.OPEN, State.ENTERING)})
    if open_:
        found.append(said("Cards with something open: {names}.", names=", ".join(open_)))
    boards = [shown(here.competition, one) for one in now.results]
    unfinished = [result_words(one.result) for one in boards if not one.final and one.rows]
    if unfinished:
        found.append(
            said("Not everybody who is in has returned every card: {results}.", results=", ".join(unfinished))
        )
    for one in boards:
        for method, sides in one.to_decide:
            found.append(
                said(
                    "{result}: {names} are tied, and {how} decides. Enter how it went.",
                    result=result_words(one.result),
                    names=", ".join(sides),
                    how=text(f"results.tie.{method.value}"),
                )
            )
    return found


@router.post("/results/close")
def close(request: Request, tapped: Annotated[str, Form()], note: Note = "") -> RedirectResponse:
    """Close the competition, once nothing stands between."""
    here = scoring_here(request)
    here.refuse_closed()
    if open_ := waits(here):
        raise InputError(*open_)
    tap = tap_here(request, tapped)
    here.add(Entry(CLOSED, tap.at, tap.ident, by=tap.by, parts=_note("note", note)))
    return RedirectResponse("/results", 303)


@router.post("/results/reopen", response_model=None)
def reopen(request: Request, given: Typed) -> RedirectResponse | HTMLResponse:
    """Ask the Rules whether a closed result may be changed; where they allow it, and somebody says so, reopen it."""
    here = scoring_here(request)
    closed = here.closed
    if closed is None:
        raise InputError(said("The competition is open: any mistake is put right as it is."))
    if given.get("change") not in {one.value for one in Change}:
        raise HTTPException(422)
    change = Change(given["change"])
    facts = {}
    for name, value in given.items():
        if name not in _NOT_FACTS:
            fact = fact_named(name)
            facts[name] = fact.parse(value)
    days = [one.day for one in here.competition.rounds if one.day]
    tap = tap_here(request, given.get("tapped", ""))
    found = reopening(
        change,
        facts,
        played_on=max(days, default=tap.at.date()),
        form=here.competition.form,
        closed=Closed(tap.at),
    )
    if not found.allowed or given.get("do") != "reopen":
        return _page(request, here, found, change)
    if not given.get("note", "").strip():
        raise InputError(said("Say what is to be put right."))
    content = {"change": change.value, "facts": {name: _token(name, value) for name, value in facts.items()}}
    here.add(
        Entry(
            REOPENED,
            tap.at,
            str(uuid5(UUID(tap.ident), RULING)),
            by=tap.by,
            corrects=closed.id,
            content=content,
            parts=_note("reason", given["note"]),
        )
    )
    return RedirectResponse("/results", 303)


def _token(name: str, value: object) -> str:
    fact = fact_named(name)
    return fact.token(fact.parse(value))


def _note(what: str, words: str) -> tuple[Part, ...]:
    return (Part(what, words.strip().encode()),) if words.strip() else ()
