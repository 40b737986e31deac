"""The cards of a round by group: which are in, which are not, which have an open question."""

import unicodedata
from dataclasses import dataclass, replace
from enum import Enum
from typing import Annotated

from fastapi import APIRouter, HTTPException, Query, Request
from fastapi.responses import RedirectResponse, Response

from marram.competition.entries.names import found_by
from marram.competition.results.card import HoleScore
from marram.desk.cards.scoring_here import ScoringHere, scoring_here
from marram.desk.day.navigation import club_time
from marram.desk.shell.workplace import show
from marram.records.starting_sheet import GroupOfDay, Known
from marram.services.day.round_of_day import round_of_day
from marram.services.results.event_results import CardNow
from marram.words.texts import text

router = APIRouter()


class State(Enum):
    """How a card stands."""

    NOTHING = "nothing"
    ENTERING = "entering"
    OPEN = "open"
    RETURNED = "returned"
    OUT = "out"


@dataclass(frozen=True)
class Line:
    """A player in the list.

    Attributes:
        side: who competes: a player, or partners as one.
        players: the partners of a side that has a name of its own; else empty.
        state: how the card stands.
        holes: how many holes are known.
        total: the strokes so far; 0 where none are known.
        to_settle: how many rulings beside it are not settled.
    """

    side: Known
    state: State
    holes: int = 0
    total: int = 0
    to_settle: int = 0
    players: str = ""


@dataclass(frozen=True)
class GroupLines:
    """A group in the list."""

    group: GroupOfDay
    lines: tuple[Line, ...]

    @property
    def done(self) -> bool:
        """Whether nothing is left to do for it."""
        return all(one.state in (State.RETURNED, State.OUT) for one in self.lines)


@router.get("/cards")
def cards(
    request: Request,
    *,
    round: Annotated[int | None, Query(ge=1, le=99)] = None,
    q: Annotated[str, Query(max_length=80)] = "",
    done: Annotated[str, Query(max_length=40)] = "",
) -> Response:
    """Show the groups of a round with the state of each card; where one player is meant, go to that card."""
    here = scoring_here(request)
    chosen = here.round(round) if round is not None else _round_now(here)
    if chosen is None:
        raise HTTPException(404)
    number = here.competition.number(chosen.id)
    found = _lines(here, chosen.id, q)
    players = [line.side for group in found for line in group.lines]
    if q.strip() and len(players) == 1:
        return RedirectResponse(f"/cards/{number}/{players[0].id}", 303)
    states = [line.state for group in found for line in group.lines]
    return show(
        request,
        "cards.html",
        None,
        title=text("cards.title"),
        groups=found,
        round=chosen,
        number=number,
        rounds=list(enumerate(here.competition.rounds, start=1)),
        q=q.strip(),
        counts={state: states.count(state) for state in State if state in states},
        done=here.competition.labels.get(done, ""),
        why_not=here.competition.why_no_cards(),
        closed=here.closed is not None,
    )


def _round_now(here: ScoringHere) -> Known | None:
    """Return the round of today, else the last one that has cards, else the first."""
    now = club_time(here.kept)
    known = here.competition.rounds
    of_today = round_of_day(
        known, now.date(), lambda one: [each.starts_at for each in here.groups[one.id]], now
    )
    return of_today or next(
        (one for one in reversed(known) if here.cards(one.id)), known[0] if known else None
    )


def _lines(here: ScoringHere, round_: str, wanted: str) -> list[GroupLines]:
    cards_ = here.cards(round_)
    words = unicodedata.normalize("NFC", wanted).casefold().split()
    found = []
    for group in here.groups[round_]:
        sides = {here.competition.side_of.get(one.id, one.id): one for one in reversed(group.players)}
        lines = tuple(
            replace(
                _line(Known(side, _name(here, side, player)), cards_.get(side)),
                players=here.competition.players_named.get(here.competition.labels.get(side, ""), ""),
            )
            for side, player in reversed(sides.items())
            if all(word in _found_by(here, side, player) for word in words)
        )
        if lines:
            found.append(GroupLines(group, lines))
    return found


def _name(here: ScoringHere, side: str, player: Known) -> str:
    """Return the name of a side in the list, empty where its only player was erased."""
    return player.name if here.competition.alone else here.competition.labels.get(side, player.name)


def _found_by(here: ScoringHere, side: str, player: Known) -> str:
    """Return the words by which a side is found: its name and those of its players."""
    members = here.competition.members.get(side, ())
    players = [here.competition.players[one] for one in members] if not here.competition.alone else []
    return found_by(" ".join((_name(here, side, player), *players)))


def _line(side: Known, card: CardNow | None) -> Line:
    if card is None:
        return Line(side, State.NOTHING)
    some = [[one for one in scores if one is not None] for scores in zip(*_gross(card), strict=True)]
    known = [min((one for one in scores if isinstance(one, int)), default=0) for scores in some if scores]
    total = sum(known)
    to_settle = len(card.card.unsettled(card.beside))
    return Line(side, state_of(card), len(known), total, to_settle)


def _gross(card: CardNow) -> list[tuple[HoleScore, ...]]:
    return [row.gross for row in card.outcome.card.rows]


def state_of(card: CardNow) -> State:
    """Return how a card stands."""
    if card.kept.ended is not None:
        return State.OUT
    if card.kept.returned is None:
        return State.ENTERING if card.kept.figures else State.NOTHING
    if not card.outcome.settled:
        return State.OPEN
    return State.OUT if card.outcome.out is not None and card.outcome.out.score is None else State.RETURNED
