"""The leader board for officials: every result that the conditions ask for, as it stands."""

from typing import Annotated

from fastapi import APIRouter, HTTPException, Query, Request
from fastapi.responses import HTMLResponse, RedirectResponse

from marram.desk.cards.scoring_here import scoring_here
from marram.desk.people.who import may
from marram.desk.results.board_view import address_of, chosen, shown
from marram.desk.shell.workplace import show
from marram.rules.facts.conditions import FormOfPlay
from marram.services.results.closing import result_words
from marram.words.texts import text

router = APIRouter()

Division = Annotated[str, Query(max_length=200)]
ScoreName = Annotated[str, Query(max_length=10)]


@router.get("/results", response_model=None)
def results(
    request: Request, score: ScoreName = "", division: Division = ""
) -> HTMLResponse | RedirectResponse:
    """Show a leader board."""
    here = scoring_here(request)
    if here.competition.form is FormOfPlay.MATCH_PLAY:
        return RedirectResponse("/matches", 303)
    why_not = here.competition.why_no_cards()
    now = None if why_not else here.now()
    found = None if now is None else chosen(now.results, score, division)
    if now is not None and found is None:
        raise HTTPException(404)
    return show(
        request,
        "results.html",
        None,
        title=text("results.title"),
        why_not=why_not,
        board=None if found is None else shown(here.competition, found),
        chosen=found,
        every=[] if now is None else [(one, result_words(one), address_of(one)) for one in now.results],
        rounds=here.competition.rounds,
        closed=None if now is None else now.closed,
        decides=may(request, "POST /results/close"),
        people=here.competition.people,
        upto=0 if now is None else now.upto,
        public=here.competition.file.results_public is True,
    )
