"""What is entered of a card: figures, what became of rulings beside it, the return, answers, what was found out."""

from typing import Annotated, Any
from uuid import UUID, uuid5

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import RedirectResponse

from marram.competition.cards.acts import By, SettledAs
from marram.competition.results.card import OutKind
from marram.desk.cards.card_page import Number, card_here
from marram.desk.cards.scoring_here import ScoringHere, tap_here
from marram.desk.cards.typed_card import read_handicap, read_handicaps, read_moment, read_score, read_scores
from marram.desk.shell.typed import Typed
from marram.errors import InputError
from marram.records.entry import Entry, Part
from marram.rules.engine.request import fact_named
from marram.rules.result import NeedFacts
from marram.said import said
from marram.services.cards.card_log import (
    ANSWERED,
    ENDED,
    FOUND_OUT,
    RETURNED,
    SETTLED,
    CardKept,
    Tap,
    entering,
)
from marram.services.results.event_results import CardKey

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
    card = here.card(key).kept
    if card.returned is not None:
        raise InputError(
            said(
                "The card is returned, and nothing on it may be changed (Rule 3.3b(2)). Enter what was found out."
            )
        )
    for (ball, by), mine in scores.items():
        for one in entering(card, by, mine, tap, ball):
            here.add(one)
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
    tap = tap_here(request, tapped)
    here.add(_entry(SETTLED, here.card(key).kept, tap, {"ruling": ruling, "how": how.value}))
    here.rule(key, tap)
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
    here.refuse_closed()
    _ready(here, key, as_it_is)
    content: dict[str, Any] = {"player_certified": player_certified, "marker_certified": marker_certified}
    if at.strip():
        content["at"] = read_moment(here, key, at).isoformat()
    if promptly in ("yes", "no"):
        content["promptly"] = promptly == "yes"
    if (shows := read_handicap(handicap)) is not None:
        content["handicap"] = shows
    if handicaps := read_handicaps(here.card(key).kept.balls, given):
        content["handicaps"] = handicaps
    tap = tap_here(request, tapped)
    here.add(_entry(RETURNED, here.card(key).kept, tap, content, note=note))
    here.rule(key, tap)
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
    name = finding.result.fact
    fact = fact_named(name)
    token = fact.token(fact.parse(given.get(name, "")))
    here.add(_entry(ANSWERED, here.card(key).kept, tap, {"finding": finding.name, "facts": {name: token}}))
    here.rule(key, tap)
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
    now = here.card(key)
    if now.kept.returned is None:
        raise InputError(said("The card is not returned yet. Enter the figures of player and marker."))
    if ball not in (now.kept.balls or ("",)):
        raise InputError(said("Say whose score it is: the card shows a ball of each partner."))
    if hole not in {one.number for one in here.competition.holes}:
        raise InputError(said("There is no hole {hole} on this card. Choose one of its holes.", hole=hole))
    found = read_score(score)
    if found is None:
        raise InputError(said("Say what the actual score of the hole was."))
    tap = tap_here(request, tapped)
    here.add(_entry(FOUND_OUT, now.kept, tap, {"score": found}, hole=hole, note=note, ball=ball))
    here.rule(key, tap)
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
    here.refuse_closed()
    if how is OutKind.DISQUALIFIED and not citation.strip():
        raise InputError(said("Say under which Rule the player is disqualified, such as 1.2b."))
    content = {"how": how.value, **({"citation": citation.strip()} if citation.strip() else {})}
    here.add(_entry(ENDED, here.card(key).kept, tap_here(request, tapped), content, note=note))
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
    if not note.strip():
        raise InputError(said("Say why it is taken back."))
    tap = tap_here(request, tapped)
    parts = (Part("reason", note.strip().encode()),)
    here.add(
        Entry(
            "withdrawn",
            tap.at,
            tap.ident,
            by=tap.by,
            player=card.player,
            round=card.round,
            corrects=entry,
            parts=parts,
        )
    )
    here.rule(key, tap)
    return _back(number, player)


def _entry(
    kind: str,
    card: CardKept,
    tap: Tap,
    content: dict[str, Any],
    *,
    hole: int | None = None,
    note: str = "",
    ball: str = "",
) -> Entry:
    parts = (Part("note", note.strip().encode()),) if note.strip() else ()
    return Entry(
        kind,
        tap.at,
        str(uuid5(UUID(tap.ident), kind)),
        by=tap.by,
        player=ball or card.player,
        round=card.round,
        hole=hole,
        content=content,
        parts=parts,
    )


def _back(number: int, player: UUID) -> RedirectResponse:
    return RedirectResponse(f"/cards/{number}/{player}", 303)


def _ready(here: ScoringHere, key: CardKey, as_it_is: bool) -> None:
    """Let a card be returned only with every ruling beside it settled, and what is open on it confirmed.

    Raises:
        InputError: it is not ready; every fault is listed.
    """
    now = here.card(key)
    faults: list[str] = []
    if now.kept.returned is not None or now.kept.ended is not None:
        faults.append(said("The card is returned already, or the round ended without one."))
    faults += [
        said("Hole {hole}: two figures were entered at once. Say which is right.", hole=one.hole)
        for one in now.kept.at_once
    ]
    faults += [
        said(
            "A ruling lies beside the card: {words}. Say whether its penalty is included.",
            words=one.words or one.ruling,
        )
        for one in now.card.unsettled(now.beside)
    ]
    if (now.card.differences() or now.card.missing(By.MARKER)) and not as_it_is:
        faults.append(
            said(
                "Figures differ or are missing. Ask player and marker; where the card has left the scoring area as it is, say so."
            )
        )
    if faults:
        raise InputError(*faults)
