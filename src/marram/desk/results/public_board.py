"""The leader board for everybody: names and clubs, no other person's detail; only where the conditions publish it."""

from fastapi import APIRouter, Request, Response
from fastapi.responses import RedirectResponse

from marram.desk.cards.scoring_here import scoring_here
from marram.desk.live.play import play_for_everybody
from marram.desk.people.answers import page
from marram.desk.results.board_page import Division, ScoreName
from marram.desk.results.board_view import address_of, chosen, shown
from marram.rules.facts.conditions import FormOfPlay
from marram.services.results.closing import result_words
from marram.words.texts import text

router = APIRouter()


@router.get("/board")
def board(request: Request, score: ScoreName = "", division: Division = "") -> Response:
    """Show a leader board to whoever asks, where the conditions say that results are public."""
    here = scoring_here(request)
    if here.competition.form is FormOfPlay.MATCH_PLAY:
        return RedirectResponse("/matches/board", 303)
    public = here.competition.file.results_public is True and not here.competition.why_no_cards()
    now = here.now() if public else None
    found = None if now is None else chosen(now.results, score, division) or now.results[0]
    answer = page(
        request,
        "public_board.html",
        title=text("results.board"),
        public=public,
        board=None if found is None else shown(here.competition, found),
        chosen=found,
        every=[] if now is None else [(one, result_words(one), address_of(one)) for one in now.results],
        rounds=here.competition.rounds,
        closed=None if now is None else now.closed,
        play_words=play_for_everybody(request, here.kept),
        upto=0 if now is None else now.upto,
    )
    if not public:
        answer.status_code = 404
    return answer
