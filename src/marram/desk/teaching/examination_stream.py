"""What candidates and the examiner hear live: that the examination began or is over, and how many answers arrived."""

from fastapi import APIRouter, Request, Response

from marram.desk.live.hub import event
from marram.desk.live.standing import stream_of
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.shell.errors import answer
from marram.desk.teaching.examination_pages import state_of
from marram.records.examinations import examination_of, how_far, sitter_of
from marram.words.texts import text

router = APIRouter()


@router.get("/examination/{code}/live")
def live(request: Request, code: str) -> Response:
    """Return the events of a paper: ``examination`` with ``state`` and ``ends``, at once and whenever they change."""
    kept = kept_here(request)
    found = sitter_of(kept.records, kept.event_id, code)
    if found is None:
        return answer(request, 404, "no_paper", [text("examining.none")])
    return stream_of(request, found[1].id, lambda here: told_of_paper(here, found[1].code))


@router.get("/examining/{ident}/live")
def live_for_examiner(request: Request, ident: str) -> Response:
    """Return the events of an examination: ``examination`` with ``state`` and ``arrived``, at once and whenever they change."""
    kept = kept_here(request)
    if examination_of(kept.records, kept.event_id, ident) is None:
        return answer(request, 404, "no_examination", [text("examining.no_such")])
    return stream_of(request, ident, lambda here: told_of_examination(here, ident))


def told_of_paper(kept: KeptHere, code: str) -> str:
    """Return how a paper stands, as an event."""
    found = sitter_of(kept.records, kept.event_id, code)
    if found is None:
        return ""
    one, sitter = found
    ends = sitter.ends_at(one)
    return event("examination", {"state": state_of(one, sitter), "ends": ends.isoformat() if ends else ""})


def told_of_examination(kept: KeptHere, ident: str) -> str:
    """Return how an examination stands, as an event."""
    one = examination_of(kept.records, kept.event_id, ident)
    if one is None:
        return ""
    return event("examination", {"state": one.state, "arrived": list(how_far(kept.records, one))})
