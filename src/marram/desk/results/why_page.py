"""Why a place is what it is: every comparison with the one before, down to the hole, and the player's own rounds."""

from typing import Annotated

from fastapi import APIRouter, HTTPException, Query, Request
from fastapi.responses import HTMLResponse

from marram.competition.results.scoring import rows_counting
from marram.competition.results.why import why
from marram.competition.results.why_team import why_team
from marram.desk.cards.scoring_here import ScoringHere, scoring_here
from marram.desk.people.who import may
from marram.desk.results.board_page import Division, ScoreName
from marram.desk.results.board_view import address_of, chosen
from marram.desk.shell.workplace import show
from marram.services.results.closing import result_words
from marram.words.texts import text

router = APIRouter()


@router.get("/results/why")
def why_page(
    request: Request,
    side: Annotated[str, Query(max_length=40)] = "",
    team: Annotated[str, Query(max_length=200)] = "",
    score: ScoreName = "",
    division: Division = "",
) -> HTMLResponse:
    """Show why somebody, or a team, has a place."""
    here = scoring_here(request)
    if not here.competition.why_no_cards() and team and not side:
        return _of_team(request, here, team, score)
    if here.competition.why_no_cards() or side not in here.competition.labels:
        raise HTTPException(404)
    result = chosen(here.now().results, score, division)
    label = here.competition.labels[side]
    if result is None or label not in result.board.scores:
        raise HTTPException(404)
    found = why(result.board, label)
    cards = {one.id: here.card((side, one.id)) for one in here.competition.rounds}
    return show(
        request,
        "why.html",
        None,
        title=text("results.why.title", name=label),
        found=found,
        name=label,
        players=here.competition.players_named.get(label, ""),
        result=result,
        result_name=result_words(result),
        address=address_of(result),
        rounds=[
            (number, one, cards[one.id])
            for number, one in enumerate(here.competition.rounds, start=1)
            if cards[one.id].begun
        ],
        counting={
            number: rows_counting(result.board.terms.scoring, cards[one.id].outcome.card)
            for number, one in enumerate(here.competition.rounds, start=1)
        },
        scores={one.round: one for one in found.place.score.rounds},
        holes=here.competition.holes,
        opens_cards=may(request, "GET /cards/{number}/{player}"),
        side=side,
    )


def _of_team(request: Request, here: ScoringHere, team: str, score: str) -> HTMLResponse:
    result = chosen(here.now().results, score, "")
    if result is None or team not in {one.team for one in result.teams}:
        raise HTTPException(404)
    return show(
        request,
        "why_team.html",
        None,
        title=text("results.why.title", name=team),
        found=why_team(result.teams, team),
        name=team,
        result=result,
        result_name=result_words(result),
        address=address_of(result),
        rounds=here.competition.rounds,
        people=here.competition.people,
    )
