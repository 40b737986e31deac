"""The matches of an event by round, and what they come to for teams; also for everybody, where results are public."""

from dataclasses import dataclass, replace

from fastapi import APIRouter, Request, Response
from fastapi.responses import HTMLResponse

from marram.desk.cards.scoring_here import scoring_here
from marram.desk.live.play import play_for_everybody
from marram.desk.people.answers import page
from marram.desk.people.who import may
from marram.desk.shell.workplace import show
from marram.records.starting_sheet import Known
from marram.services.matches.bracket_kept import BracketNow, bracket_now, decided_without_holes
from marram.services.matches.bracket_words import points_words, stage_words
from marram.services.matches.matches_kept import MatchNow, matches
from marram.services.matches.team_matches import TeamStanding, team_standings
from marram.services.results.scored import Scored
from marram.words.texts import text

router = APIRouter()


@dataclass(frozen=True)
class RoundShown:
    """The matches of a round."""

    number: int
    round: Known
    matches: tuple[MatchNow, ...]


def every_match(scored: Scored) -> tuple[list[RoundShown], tuple[TeamStanding, ...]]:
    """Return the matches of each round that has any, and what all of them come to for teams."""
    known = enumerate(scored.competition.rounds, start=1)
    found = [RoundShown(number, one, matches(scored, one.id)) for number, one in known]
    shown = [one for one in found if one.matches]
    return shown, team_standings(each for one in shown for each in one.matches)


@router.get("/matches")
def match_list(request: Request) -> HTMLResponse:
    """Show every match, and the team match that they make."""
    here = scoring_here(request)
    found, teams = every_match(here)
    bracket = bracket_now(here)
    return show(
        request,
        "matches.html",
        None,
        title=text("matches.title"),
        rounds=found,
        teams=teams,
        closed=here.closed is not None,
        opens=may(request, "POST /matches/{number}/{player}/{against}/hole"),
        decides=may(request, "POST /results/close"),
        bracket=bracket,
        entered=decided_without_holes(bracket),
    )


def _beside(found: list[RoundShown], bracket: BracketNow) -> list[RoundShown]:
    """Return the matches of each round that do not belong to a bracket."""
    its = {frozenset((one.first, one.second)) for stage in bracket.stages for one in stage}
    left = [
        replace(one, matches=tuple(each for each in one.matches if frozenset(each.meeting.key) not in its))
        for one in found
    ]
    return [one for one in left if one.matches]


@router.get("/matches/board")
def match_board(request: Request) -> Response:
    """Show every match to whoever asks, where the conditions say that results are public."""
    here = scoring_here(request)
    public = here.competition.file.results_public is True
    upto = here.kept.log.head(here.event)  # before the matches are read: what comes meanwhile is told again
    found, teams = every_match(here) if public else ([], ())
    bracket = bracket_now(here) if public else None
    if bracket is not None:  # its matches are told there
        found = _beside(found, bracket)
    answer = page(
        request,
        "matches_board.html",
        title=text("matches.title"),
        public=public,
        rounds=found,
        teams=teams,
        closed=here.closed is not None,
        upto=upto,
        play_words=play_for_everybody(request, here.kept),
        opens=False,
        now=bracket,
        entered={},
        stage_words=stage_words,
        points_words=points_words,
    )
    if not public:
        answer.status_code = 404
    return answer
