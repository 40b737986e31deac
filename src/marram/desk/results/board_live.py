"""The leader board as it changes, for everybody: that something did, and nothing of what it was."""

from typing import Annotated

from fastapi import APIRouter, Header, HTTPException, Request, Response

from marram.desk.cards.scoring_here import scoring_here
from marram.desk.live.stream import stream_to
from marram.desk.people.roles import PUBLIC

router = APIRouter()


@router.get("/board/live")
def live(
    request: Request, after: int | None = None, last_event_id: Annotated[str | None, Header()] = None
) -> Response:
    """Return an event for every entry that moves the board, where the conditions publish it; who comes too many polls."""
    if scoring_here(request).competition.file.results_public is not True:
        raise HTTPException(404)
    return stream_to(request, PUBLIC, after, last_event_id)
