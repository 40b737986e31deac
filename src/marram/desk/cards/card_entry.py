"""What is entered of a card: figures, what became of rulings beside it, the return, answers, what was found out."""

from typing import Annotated
from uuid import UUID

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import RedirectResponse

from marram.competition.cards.acts import SettledAs
from marram.competition.results.card import OutKind
from marram.desk.cards.card_page import Number, card_here
from marram.desk.cards.scoring_here import tap_here
from marram.desk.cards.typed_card import read_handicaps, read_moment, read_scores
from marram.desk.shell.typed import Typed
from marram.errors import InputError
from marram.rules.result import NeedFacts
from marram.services.cards.card_entering import (
    ReturnGiven,
    answer_finding,
    end_round,
    enter_figures,
    find_out,
    settle_ruling,
)
from marram.services.cards.card_entering import return_card as bring_in
from marram.services.cards.card_entering import take_back as withdraw
from marram.services.cards.figures_typed import read_handicap, read_score

router = APIRouter()
Note = Annotated[str, Form(max_length=2000)]
Tapped = Annotated[str, Form()]


@router.post("/cards/{number}/{player}/figures")
def figures(request: Request, number: Number, player: UUID, given: Typed) -> RedirectResponse:
    """Enter figures: only what differs from what the page showed becomes an entry."""
    here, key = card_here(request, number, player)
    here.refuse_closed()
    seen = given.get("seen", "")
    tap = tap_here(
        request,
        given.get("tapped", ""),
        int(seen) if seen.isascii() and seen.isdecimal() and len(seen) < 10 else 0,
    )
    scores, faults = read_scores(here, key, given)
    if faults:
        raise InputError(*faults)
    enter_figures(here, key, scores, tap)
    return _back(number, player)


@router.post("/cards/{number}/{player}/settle")
def settle(
    request: Request,
    *,
    number: Number,
    player: UUID,
    ruling: Annotated[str, Form()],
    how: Annotated[SettledAs, Form()],
    tapped: Tapped,
) -> RedirectResponse:
    """Say whether the penalty of a ruling beside the card is in the scores."""
    here, key = card_here(request, number, player)
    here.refuse_closed()
    if ruling not in {one.ruling for one in here.card(key).beside}:
        raise HTTPException(404)
    settle_ruling(here, key, ruling, how, tap_here(request, tapped))
    return _back(number, player)


@router.post("/cards/{number}/{player}/return")
def return_card(
    request: Request,
    *,
    number: Number,
    player: UUID,
    tapped: Tapped,
    player_certified: Annotated[bool, Form()],
    marker_certified: Annotated[bool, Form()],
    at: Annotated[str, Form(max_length=20)] = "",
    promptly: Annotated[str, Form(max_length=5)] = "",
    handicap: Annotated[str, Form(max_length=6)] = "",
    as_it_is: Annotated[bool, Form()] = False,
    note: Note = "",
    given: Typed,
) -> RedirectResponse:
    """Enter the return. Rulings beside the card are settled first; what else is open is confirmed."""
    here, key = card_here(request, number, player)
    given_ = ReturnGiven(
        player_certified,
        marker_certified,
        read_moment(here, key, at) if at.strip() else None,
        {"yes": True, "no": False}.get(promptly),
        read_handicap(handicap),
        read_handicaps(here.card(key).kept.balls, given),
        as_it_is,
    )
    bring_in(here, key, given_, tap_here(request, tapped), note)
    if here.card(key).outcome.settled:
        return RedirectResponse(f"/cards?round={number}&done={player}", 303)
    return _back(number, player)


@router.post("/cards/{number}/{player}/answer")
def answer(request: Request, number: Number, player: UUID, given: Typed) -> RedirectResponse:
    """Answer what the Rules ask about something wrong with the card."""
    here, key = card_here(request, number, player)
    tap = tap_here(request, given.get("tapped", ""))
    finding = next((one for one in here.card(key).outcome.findings if one.name == given.get("finding")), None)
    if finding is None or not isinstance(finding.result, NeedFacts):
        raise HTTPException(404)
    answer_finding(here, key, finding.name, given.get(finding.result.fact, ""), tap)
    return _back(number, player)


@router.post("/cards/{number}/{player}/found-out")
def found_out(
    request: Request,
    *,
    number: Number,
    player: UUID,
    hole: Annotated[int, Form(ge=1, le=99)],
    score: Annotated[str, Form(max_length=4)],
    tapped: Tapped,
    ball: Annotated[str, Form(max_length=40)] = "",
    note: Note = "",
) -> RedirectResponse:
    """Enter the actual score of a hole, found out after the return; also after the close, as Rule 20.2e decides then."""
    here, key = card_here(request, number, player)
    find_out(here, key, (ball, hole), read_score(score), tap_here(request, tapped), note=note)
    return _back(number, player)


@router.post("/cards/{number}/{player}/end")
def end(
    request: Request,
    *,
    number: Number,
    player: UUID,
    how: Annotated[OutKind, Form()],
    tapped: Tapped,
    citation: Annotated[str, Form(max_length=20)] = "",
    note: Note = "",
) -> RedirectResponse:
    """End a round without a card that counts."""
    here, key = card_here(request, number, player)
    end_round(here, key, how, tap_here(request, tapped), citation=citation, note=note)
    return _back(number, player)


@router.post("/cards/{number}/{player}/take-back")
def take_back(
    request: Request,
    *,
    number: Number,
    player: UUID,
    entry: Annotated[str, Form()],
    tapped: Tapped,
    note: Note = "",
) -> RedirectResponse:
    """Withdraw the entry of a return, or of an end, that was entered by mistake; the entry itself stays in the log."""
    here, key = card_here(request, number, player)
    here.refuse_closed()
    card = here.card(key).kept
    if entry not in {one.id for one in (card.returned, card.ended) if one is not None}:
        raise HTTPException(404)
    withdraw(here, key, entry, note, tap_here(request, tapped))
    return _back(number, player)


def _back(number: int, player: UUID) -> RedirectResponse:
    return RedirectResponse(f"/cards/{number}/{player}", 303)
