"""A player's card of a round: the figures side by side, the rulings beside it, the return, and what the Rules make of it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Annotated, Any
from uuid import UUID

from fastapi import APIRouter, HTTPException, Path, Request
from fastapi.responses import HTMLResponse

from marram.competition.cards.acts import By, SettledAs
from marram.competition.cards.findings import Finding
from marram.competition.cards.outcome import certified_too_low
from marram.competition.conditions.choices import Score
from marram.competition.results.card import OutKind
from marram.desk.cards.card_list import state_of
from marram.desk.cards.scoring_here import ScoringHere, scoring_here
from marram.desk.day.navigation import club_time
from marram.desk.results.board_view import against
from marram.desk.shell.workplace import show
from marram.records.starting_sheet import GroupOfDay
from marram.rules.result import NeedFacts
from marram.rules.ruling import Judgement
from marram.services.cards.handicap_told import handicaps_told
from marram.services.results.event_results import CardKey, CardNow
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


@dataclass(frozen=True)
class Ball:
    """A ball on a card.

    Attributes:
        number: its place on the card, from 1.
        player: the identifier of its player; empty where the card shows one ball.
        name: its name on the card.
        strokes: the handicap strokes of each hole by its number.
        pars: the par of each hole by its number, where it is not that of the card.
    """

    number: int
    player: str
    name: str
    strokes: Mapping[int, int]
    pars: Mapping[int, int]

    def field(self, by: By, hole: int) -> str:
        """Return the name of the field of a hole."""
        return field_name(by, hole, self.number)


def field_name(by: By, hole: int, number: int) -> str:
    """Return the name of the field of a hole on the page of a card, for the ball of this number."""
    return f"{by.value}-{hole}" if number == 1 else f"{by.value}-{hole}-{number}"


@router.get("/cards/{number}/{player}")
def card_page(request: Request, number: Number, player: UUID) -> HTMLResponse:
    """Show a card."""
    here, key = card_here(request, number, player)
    now = here.card(key)
    return show(request, "card.html", None, **_shown(here, key, now))


def card_here(request: Request, number: int, player: UUID) -> tuple[ScoringHere, CardKey]:
    """Return the competition of a request, and which card is meant: that of a side, or of the side a player is in.

    Raises:
        HTTPException: there is no such round or player.
    """
    here = scoring_here(request)
    round_ = here.round(number)
    side = here.competition.side_of.get(str(player), str(player))
    if round_ is None or side not in here.competition.labels:
        raise HTTPException(404)
    return here, (side, round_.id)


def _shown(here: ScoringHere, key: CardKey, now: CardNow) -> dict[str, Any]:
    competition = here.competition
    label = competition.labels[key[0]]
    number = competition.number(key[1])
    has = competition.handicaps.get(key[0])
    members = competition.members[key[0]]
    group = next(
        (one for one in here.groups[key[1]] if any(each.id in members for each in one.players)), None
    )
    names = competition.ball_names(key[0]) or {"": label}
    strokes = now.under.strokes
    zone = club_time(here.kept).tzinfo
    beside = {one.ruling: here.kept.log.entry(one.ruling) for one in now.beside}
    at_once = {(one.ball, one.by, one.hole): one.given for one in now.kept.at_once}
    return {
        "title": text("cards.card.title", name=label),
        "name": label,
        "number": number,
        "round": here.round(number),
        "url": f"/cards/{number}/{key[0]}",
        "player": key[0],
        "group": group,
        "others": _others(here, key[0], group),
        "comes_to": list(_comes_to(here, label, number)) if now.kept.returned is not None else [],
        "handicap": has.playing if has else None,
        "net": Score.NET in competition.scores,
        "worked": handicaps_told(competition, key[0]),
        "why_not": competition.why_no_cards(),
        "closed": here.closed is not None,
        "now": now,
        "state": state_of(now).value,
        "holes": now.card.holes,
        "balls": [
            Ball(number, one, name, strokes.get(name, {}), now.under.pars.get(name, {}))
            for number, (one, name) in enumerate(names.items(), 1)
        ],
        "partners": [] if competition.alone else [competition.players[one] for one in members],
        "score": now.kept.score,
        "giver": (By.PLAYER, By.MARKER),
        "scorer": By.SCORER,
        "added": {(ball, hole): more for (ball, hole), more in now.outcome.added.items()},
        "at_once": at_once,
        "entered_by": here.kept.names(),
        "beside": [(one, beside[one.ruling], now.card.settled.get(one.ruling)) for one in now.beside],
        "hows": list(SettledAs),
        "doubted": certified_too_low(now.card) if now.kept.returned is not None else (),
        "findings": [_finding(now, one) for one in now.outcome.findings],
        "ends": ENDS,
        "seen": here.kept.log.head(here.kept.event_id),
        "returned_at": now.kept.returned_at.astimezone(zone) if now.kept.returned_at else None,
        "clock": club_time(here.kept).strftime("%H:%M"),
    }


def _others(here: ScoringHere, side: str, group: GroupOfDay | None) -> list[tuple[str, str]]:
    """Return the other sides of a group, each once, by identifier and name."""
    side_of, labels = here.competition.side_of, here.competition.labels
    there = dict.fromkeys(side_of[one.id] for one in group.players if one.id in side_of) if group else {}
    return [(one, labels[one]) for one in there if one != side]


def _comes_to(here: ScoringHere, label: str, round_: int) -> Iterator[tuple[str, str]]:
    """Yield what a returned card comes to in every result: strokes, points, or holes against the target with their sign."""
    if here.competition.why_no_cards():
        return
    for one in here.now().results:
        score = one.board.scores.get(label) if one.division is None else None
        mine = next((each for each in score.rounds if each.round == round_), None) if score else None
        if mine is not None and mine.complete:
            signed = one.board.terms.scoring.counts_against_target
            yield text(f"results.score.{one.score.value}"), against(mine.total) if signed else str(mine.total)


def _finding(now: CardNow, one: Finding) -> FindingShown:
    words = sheet(one.result, form_of_play=now.under.form, given=one.facts)
    return FindingShown(one, words, isinstance(one.result, NeedFacts), isinstance(one.result, Judgement))
