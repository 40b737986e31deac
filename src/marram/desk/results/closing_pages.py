"""A tie decided on the course, the close of the competition, and reopening a closed result as Rule 20.2 allows."""

from typing import Annotated

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.competition.conditions.choices import TieMethod
from marram.competition.results.closing import Change, Reopening
from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.shell.typed import Typed
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.rules.engine.request import fact_named
from marram.said import said
from marram.services.results.closing import closing, may_reopen, reopened, token, waits
from marram.services.results.tie_entering import METHODS, decide_tie
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
    if method not in {one.value for one in METHODS}:
        raise HTTPException(422)
    places: dict[str, int] = {}
    for person in here.competition.labels:
        typed = given.get(f"order-{person}", "").strip()
        if typed:
            places[person] = int(typed) if typed.isascii() and typed.isdecimal() and len(typed) < 4 else 0
    if sorted(places.values()) != list(range(1, len(places) + 1)) or len(places) < 2:
        raise InputError(said("Give the winner 1, the next one 2 and so on, each number once."))
    order = sorted(places, key=places.__getitem__)
    decide_tie(here, TieMethod(method), order, tap_here(request, given.get("tapped", "")))
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
        known={} if asked is None else {name: token(name, value) for name, value in asked.facts.items()},
    )


@router.post("/results/close")
def close(request: Request, tapped: Annotated[str, Form()], note: Note = "") -> RedirectResponse:
    """Close the competition, once nothing stands between."""
    here = scoring_here(request)
    here.add(closing(here, tap_here(request, tapped), note))
    return RedirectResponse("/results", 303)


@router.post("/results/reopen", response_model=None)
def reopen(request: Request, given: Typed) -> RedirectResponse | HTMLResponse:
    """Ask the Rules whether a closed result may be changed; where they allow it, and somebody says so, reopen it."""
    here = scoring_here(request)
    if given.get("change") not in {one.value for one in Change}:
        raise HTTPException(422)
    change = Change(given["change"])
    facts = {}
    for name, value in given.items():
        if name not in _NOT_FACTS:
            fact = fact_named(name)
            facts[name] = fact.parse(value)
    tap = tap_here(request, given.get("tapped", ""))
    found = may_reopen(here, change, facts, tap)
    if not found.allowed or given.get("do") != "reopen":
        return _page(request, here, found, change)
    here.add(reopened(here, change, facts, tap, given.get("note", "")))
    return RedirectResponse("/results", 303)
