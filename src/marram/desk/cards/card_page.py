"""A player's card of a round: the figures side by side, the rulings beside it, the return, and what the Rules make of it."""

from dataclasses import dataclass
from typing import Annotated, Any
from uuid import UUID

from fastapi import APIRouter, HTTPException, Path, Request
from fastapi.responses import HTMLResponse

from marram.competition.cards.acts import By, SettledAs
from marram.competition.cards.findings import Finding
from marram.competition.conditions.choices import Score
from marram.competition.results.card import OutKind
from marram.desk.cards.card_list import state_of
from marram.desk.cards.scoring_here import ScoringHere, scoring_here
from marram.desk.day.navigation import club_time
from marram.desk.shell.workplace import show
from marram.rules.result import NeedFacts
from marram.rules.ruling import Judgement
from marram.services.event_results import CardKey, CardNow
from marram.words.sheet import Sheet, sheet
from marram.words.texts import text

router = APIRouter()

Number = Annotated[int, Path(ge=1, le=99)]
ENDS = (OutKind.WITHDRAWN, OutKind.NO_RETURN, OutKind.DISQUALIFIED)
"""How a round can end without a card; a match alone is conceded."""


@dataclass(frozen=True)
class FindingShown:
    """Something about a card that the Rules were asked about."""

    finding: Finding
    sheet: Sheet
    asks: bool
    judged: bool


@router.get("/cards/{number}/{player}")
def card_page(request: Request, number: Number, player: UUID) -> HTMLResponse:
    """Show a card."""
    here, key = card_here(request, number, player)
    now = here.card(key)
    return show(request, "card.html", None, **_shown(here, key, now))


def card_here(request: Request, number: int, player: UUID) -> tuple[ScoringHere, CardKey]:
    """Return the competition of a request, and which card is meant.

    Raises:
        HTTPException: there is no such round or player.
    """
    here = scoring_here(request)
    round_ = here.round(number)
    if round_ is None or str(player) not in here.competition.labels:
        raise HTTPException(404)
    return here, (str(player), round_.id)


def _shown(here: ScoringHere, key: CardKey, now: CardNow) -> dict[str, Any]:
    competition = here.competition
    label = competition.labels[key[0]]
    number = competition.number(key[1])
    has = competition.handicaps.get(key[0])
    group = next((one for one in here.groups[key[1]] if key[0] in {each.id for each in one.players}), None)
    zone = club_time(here.kept).tzinfo
    beside = {one.ruling: here.kept.log.entry(one.ruling) for one in now.beside}
    at_once = {(one.by, one.hole): one.given for one in now.kept.at_once}
    return {
        "title": text("cards.card.title", name=label),
        "name": label,
        "number": number,
        "round": here.round(number),
        "url": f"/cards/{number}/{key[0]}",
        "player": key[0],
        "group": group,
        "others": [one for one in group.players if one.id != key[0] and one.name] if group else [],
        "handicap": has.playing if has else None,
        "net": Score.NET in competition.scores,
        "why_not": competition.why_no_cards(),
        "closed": here.closed is not None,
        "now": now,
        "state": state_of(now).value,
        "holes": competition.holes,
        "strokes": now.under.strokes.get(label, {}),
        "score": now.kept.score,
        "giver": (By.PLAYER, By.MARKER),
        "scorer": By.SCORER,
        "added": {hole: strokes for (_, hole), strokes in now.outcome.added.items()},
        "at_once": at_once,
        "entered_by": here.kept.names(),
        "beside": [(one, beside[one.ruling], now.card.settled.get(one.ruling)) for one in now.beside],
        "hows": list(SettledAs),
        "findings": [_finding(now, one) for one in now.outcome.findings],
        "ends": ENDS,
        "seen": here.kept.log.head(here.kept.event_id),
        "returned_at": now.kept.returned_at.astimezone(zone) if now.kept.returned_at else None,
        "clock": club_time(here.kept).strftime("%H:%M"),
    }


def _finding(now: CardNow, one: Finding) -> FindingShown:
    words = sheet(one.result, form_of_play=now.under.form, given=one.facts)
    return FindingShown(one, words, isinstance(one.result, NeedFacts), isinstance(one.result, Judgement))
