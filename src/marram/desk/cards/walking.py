"""A walking scorer with a group of stroke play: the score of each ball, hole by hole, one tap each; it certifies nothing."""

from dataclasses import dataclass, replace
from typing import Annotated, Any
from uuid import UUID, uuid5

from fastapi import APIRouter, HTTPException, Path, Query, Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from marram.competition.cards.acts import By
from marram.competition.results.card import NO_SCORE, Hole, HoleScore
from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.shell.typed import Typed
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.records.starting_sheet import GroupOfDay, Known
from marram.said import said
from marram.services.cards.card_log import entering
from marram.services.cards.figures_typed import read_score
from marram.words.texts import text

router = APIRouter()

Number = Annotated[int, Path(ge=1, le=99)]
GroupNumber = Annotated[int, Path(ge=1, le=999)]

ABOVE_PAR = 5
"""How many strokes above par have a button of their own (own choice); more are typed."""


@dataclass(frozen=True)
class Ball:
    """A ball of the group.

    Attributes:
        name: whose.
        side: whose card it stands on, by identifier.
        ball: the player, where partners each play one; else empty.
        field: its name in the form.
        scores: what was told so far, by hole.
        pars: the par of each hole from its tees.
    """

    name: str
    side: str
    ball: str
    field: str
    scores: dict[int, HoleScore]
    pars: dict[int, int]


@router.get("/walk")
def walks(request: Request, round: Annotated[int, Query(ge=1, le=99)] = 1) -> Response:
    """Show the groups of a round: the scorer chooses the one walked with."""
    here = scoring_here(request)
    this = here.round(round)
    if this is None:
        raise HTTPException(404)
    return show(
        request,
        "walks.html",
        None,
        title=text("cards.walk.title"),
        rounds=list(enumerate(here.competition.rounds, start=1)),
        number=round,
        groups=here.groups[this.id],
        why_not=here.competition.why_no_cards(),
    )


@router.get("/walk/{number}/{group}")
def walk(
    request: Request,
    number: Number,
    group: GroupNumber,
    hole: Annotated[int | None, Query(ge=1, le=99)] = None,
) -> Response:
    """Show a hole of a group; without one, the first that has no score of everybody yet, from where the group started."""
    here, this, found = _group(request, number, group)
    balls = _balls(here, this, found)
    order = _in_order(here, found)
    nothing: list[Hole] = [one for one in order if any(ball.scores.get(one.number) is None for ball in balls)]
    chosen = next((one for one in order if one.number == hole), (nothing or order[-1:])[0])
    return show(
        request,
        "walk.html",
        None,
        title=text("cards.walk.group", number=group),
        number=number,
        group=found,
        holes=order,
        chosen=chosen,
        balls=balls,
        done={one.number for one in order} - {one.number for one in nothing},
        most={one.number: range(1, one.par + ABOVE_PAR + 1) for one in order},
        no_score=NO_SCORE,
        seen=here.kept.log.head(here.event),
        closed=here.closed is not None,
    )


@router.post("/walk/{number}/{group}")
def told(request: Request, number: Number, group: GroupNumber, given: Typed) -> Response:
    """Take the scores of a hole; a ball without one is left as it is. A program is told the number of the last entry."""
    here, this, found = _group(request, number, group)
    here.refuse_closed()
    seen, hole = given.get("seen", ""), given.get("hole", "")
    order = [one.number for one in _in_order(here, found)]
    if not _is_number(seen) or not _is_number(hole) or int(hole) not in order:
        raise HTTPException(422)
    tap = tap_here(request, given.get("tapped", ""), int(seen))
    faults: list[str] = []
    scores: list[tuple[Ball, HoleScore]] = []
    for ball in _balls(here, this, found):
        try:
            score = read_score(given.get(f"more-{ball.field}", "") or given.get(ball.field, ""))
        except InputError as error:
            faults += [said("{name}: {fault}", name=ball.name, fault=one) for one in error.faults]
            continue
        if score is not None:
            scores.append((ball, score))
    if faults:
        raise InputError(*faults)
    for ball, score in scores:
        card = here.card((ball.side, this.id)).kept
        if card.returned is None and card.score(By.SCORER, int(hole), ball.ball) != score:
            own = replace(tap, ident=str(uuid5(UUID(tap.ident), ball.side)))
            for one in entering(card, By.SCORER, {int(hole): score}, own, ball.ball):
                here.add(one)
    if "application/json" in request.headers.get("accept", ""):
        return JSONResponse({"marram": 1, "upto": here.kept.log.head(here.event)})
    at = order.index(int(hole))
    following = order[(at + 1) % len(order)]
    return RedirectResponse(f"/walk/{number}/{group}?hole={following}", 303)


def _is_number(given: str) -> bool:
    return given.isascii() and given.isdecimal() and len(given) < 10


def _group(request: Request, number: int, group: int) -> tuple[ScoringHere, Known, GroupOfDay]:
    """Return the competition, the round and the group of a request.

    Raises:
        HTTPException: there is no such group.
        InputError: there are no cards in this competition.
    """
    here = scoring_here(request)
    this = here.round(number)
    found = None if this is None else next((one for one in here.groups[this.id] if one.number == group), None)
    if this is None or found is None:
        raise HTTPException(404)
    if why_not := here.competition.why_no_cards():
        raise InputError(why_not)
    return here, this, found


def _in_order(here: ScoringHere, group: GroupOfDay) -> list[Hole]:
    """Return the holes in the order in which a group plays them."""
    holes = list(here.competition.holes)
    at = next((place for place, one in enumerate(holes) if one.number == group.tee), 0)
    return holes[at:] + holes[:at]


def _balls(here: ScoringHere, this: Known, group: GroupOfDay) -> list[Ball]:
    """Return the balls of a group: one of each player, or one of a side whose partners share it."""
    competition = here.competition
    known: list[Any] = []
    for player in group.players:
        side = competition.side_of.get(player.id)
        if side is None:
            continue
        ball = player.id if competition.own_balls else ""
        if (side, ball) not in known:
            known.append((side, ball))
    found = []
    for place, (side, ball) in enumerate(known, start=1):
        card = here.card((side, this.id)).kept
        name = competition.players[ball] if ball else competition.labels[side]
        scores = {one.number: card.score(By.SCORER, one.number, ball) for one in competition.holes}
        apart = competition.pars(side).get(name, {})
        pars = {one.number: apart.get(one.number, one.par) for one in competition.holes_of(side)}
        found.append(Ball(name, side, ball, f"ball-{place}", scores, pars))
    return found
