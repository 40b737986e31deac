"""Why a place is what it is: every comparison with the one before, down to the hole, and the player's own rounds."""

from typing import Annotated

from fastapi import APIRouter, HTTPException, Query, Request
from fastapi.responses import HTMLResponse

from marram.competition.results.why import in_figures, why
from marram.desk.cards.scoring_here import scoring_here
from marram.desk.people.who import may
from marram.desk.results.board_page import Division, ScoreName
from marram.desk.results.board_view import address_of, chosen
from marram.desk.shell.workplace import show
from marram.services.closing import result_words
from marram.words.texts import text

router = APIRouter()


@router.get("/results/why")
def why_page(
    request: Request,
    side: Annotated[str, Query(max_length=40)],
    score: ScoreName = "",
    division: Division = "",
) -> HTMLResponse:
    """Show why somebody has a place."""
    here = scoring_here(request)
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
        result=result,
        result_name=result_words(result),
        address=address_of(result),
        in_figures=in_figures,
        rounds=[
            (number, one, cards[one.id])
            for number, one in enumerate(here.competition.rounds, start=1)
            if cards[one.id].begun
        ],
        scores={one.round: one for one in found.place.score.rounds},
        holes=here.competition.holes,
        opens_cards=may(request, "GET /cards/{number}/{player}"),
        side=side,
    )
