"""One match: how it stands, the next hole with one tap, and how it ends; by whoever walks with it or sits at the desk."""

from typing import Annotated, Any
from uuid import UUID

from fastapi import APIRouter, HTTPException, Path, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.competition.results.card import HoleScore
from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.people.who import may
from marram.desk.shell.typed import Typed
from marram.desk.shell.workplace import show
from marram.services.cards.figures_typed import read_score
from marram.services.kinds.matches import EndHow, HoleHow, Side
from marram.services.matches.bracket_kept import bracket_now, decided_without_holes
from marram.services.matches.match_entering import (
    HoleEnded,
    end_match,
    enter_hole,
    entries_of,
    take_back_of_match,
)
from marram.services.matches.matches_kept import MatchNow, matches
from marram.words.texts import text

router = APIRouter()

Number = Annotated[int, Path(ge=1, le=99)]
Address = tuple[int, UUID, UUID]


@router.get("/matches/{number}/{player}/{against}")
def match_page(
    request: Request, number: Number, player: UUID, against: UUID, place: int | None = None
) -> HTMLResponse:
    """Show a match, with the hole that is entered next, or the one that is to be put right."""
    here, now = match_here(request, (number, player, against))
    played = sorted(now.holes)
    chosen = place if place in now.holes else None
    at = chosen or now.next_place
    before = now.holes[at][-1].id if at in now.holes else ""
    names = here.competition.players
    return show(
        request,
        "match.html",
        None,
        entered=decided_without_holes(bracket_now(here)).get(now.meeting.key),
        title=text("matches.match.title", first=now.meeting.match.first, second=now.meeting.match.second),
        now=now,
        number=number,
        url=f"/matches/{number}/{player}/{against}",
        place=at,
        chosen=chosen,
        corrects=before,
        hole=now.meeting.match.hole_at(at - 1),
        played=played,
        closed=here.closed is not None,
        balls=_balls(now, names),
        asked_about=_asked_about(now),
        may_be_asked=may(request, "POST /matches/{number}/{player}/{against}/asked"),
        sides=((Side.FIRST, now.meeting.match.first), (Side.SECOND, now.meeting.match.second)),
    )


def _asked_about(now: MatchNow) -> list[int]:
    """Return the holes that a ruling can be asked about: the one in play first, then those played, the last first."""
    played = [one.hole for one in reversed(now.state.holes)]
    in_play = [] if now.state.next_hole is None else [now.state.next_hole]
    return list(dict.fromkeys((*in_play, *played)))


def _balls(now: MatchNow, names: Any) -> list[tuple[str, Any]]:
    """Return the name of each ball with its strokes by hole, those of the first side first."""
    meeting = now.meeting
    called = (
        [names[one] for side in meeting.sides for one in side]
        if meeting.own_balls
        else [meeting.match.first, meeting.match.second]
    )
    return list(zip(called, meeting.strokes, strict=True))


def match_here(request: Request, at: Address) -> tuple[ScoringHere, MatchNow]:
    """Return the competition of a request, and the match of a round whose first-named players these are.

    Raises:
        HTTPException: there is no such match.
    """
    here = scoring_here(request)
    number, player, against = at
    round_ = here.round(number)
    found = () if round_ is None else matches(here, round_.id)
    wanted = (str(player), str(against))
    for one in found:
        if one.meeting.key == wanted:
            return here, one
    raise HTTPException(404)


@router.post("/matches/{number}/{player}/{against}/hole")
def hole(request: Request, number: Number, player: UUID, against: UUID, given: Typed) -> RedirectResponse:
    """Enter how a hole ended; where it was entered before, the entry seen is corrected."""
    here, now = match_here(request, (number, player, against))
    here.refuse_closed()
    tap = tap_here(request, given.get("tapped", ""))
    how, place = given.get("how", ""), given.get("place", "")
    words, _, side = how.partition("-")
    if (
        words not in {one.value for one in HoleHow}
        or not (place.isascii() and place.isdecimal())
        or len(place) > 3
    ):
        raise HTTPException(422)
    how_ = HoleHow(words)
    winner = Side(side) if side in {one.value for one in Side} else None
    scores = _scores(now, given) if how_ is HoleHow.SCORES else ()
    enter_hole(here, now, HoleEnded(int(place), how_, winner, scores, given.get("corrects", "")), tap)
    return RedirectResponse(f"/matches/{number}/{player}/{against}#next", 303)  # the keyboard stays there


def _scores(now: MatchNow, given: Any) -> list[HoleScore]:
    """Return the scores of a form, those of the first side first.

    Raises:
        InputError: one is none.
    """
    return [read_score(given.get(f"score-{at}", "")) for at in range(1, len(now.meeting.strokes) + 1)]


@router.post("/matches/{number}/{player}/{against}/end")
def end(request: Request, number: Number, player: UUID, against: UUID, given: Typed) -> RedirectResponse:
    """Enter that a side concedes the match or is disqualified, or that the result is final."""
    here, now = match_here(request, (number, player, against))
    here.refuse_closed()
    words, _, side = given.get("how", "").partition("-")
    if words not in {one.value for one in EndHow}:
        raise HTTPException(422)
    tap = tap_here(request, given.get("tapped", ""))
    end_match(here, now, EndHow(words), tap, side=side, citation=given.get("citation", ""))
    return RedirectResponse(f"/matches/{number}/{player}/{against}", 303)


@router.post("/matches/{number}/{player}/{against}/take-back")
def take_back(
    request: Request, number: Number, player: UUID, against: UUID, given: Typed
) -> RedirectResponse:
    """Withdraw an entry of a hole, or of the end, that was made by mistake; the entry itself stays in the log."""
    here, now = match_here(request, (number, player, against))
    here.refuse_closed()
    tap = tap_here(request, given.get("tapped", ""))
    if given.get("entry", "") not in entries_of(now):
        raise HTTPException(404)
    take_back_of_match(here, now, given["entry"], given.get("note", ""), tap)
    return RedirectResponse(f"/matches/{number}/{player}/{against}", 303)
