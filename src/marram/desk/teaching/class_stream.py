"""What the phones of a class and its teacher hear live: which question stands, whether it is explained, how many answered."""

import asyncio
from collections.abc import AsyncIterator

from anyio import to_thread
from fastapi import APIRouter, Request, Response
from fastapi.responses import StreamingResponse

from marram.desk.live.hub import END, Hub, Listener, Sight, event
from marram.desk.live.stream import BEAT, HEADERS, RETRY
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.roles import PUBLIC
from marram.desk.shell.errors import answer
from marram.desk.teaching.class_pages import state_of
from marram.records.classes import answers_of, class_of
from marram.words.texts import text

router = APIRouter()


@router.get("/class/{code}/live")
def live(request: Request, code: str) -> Response:
    """Return the events of a class: ``class`` with ``state`` and ``answered``, at once and whenever they change."""
    kept = kept_here(request)
    if class_of(kept.records, kept.event_id, code) is None:
        return answer(request, 404, "no_class", [text("classes.none")])
    return StreamingResponse(
        _events(request, code.strip().upper()), media_type="text/event-stream", headers=HEADERS
    )


def told_of_class(kept: KeptHere, code: str) -> str:
    """Return how a class stands, as an event; what was answered is not told, only how often."""
    one = class_of(kept.records, kept.event_id, code)
    if one is None:
        return ""
    answered = sum(answers_of(kept.records, one).get(one.number, {}).values())
    return event("class", {"state": state_of(one), "answered": answered})


async def _events(request: Request, code: str) -> AsyncIterator[str]:
    hub: Hub = request.app.state.live
    listener = Listener(
        Sight(PUBLIC), asyncio.get_running_loop(), about=code, standing=lambda kept: told_of_class(kept, code)
    )
    hub.join(listener)
    try:
        yield f"retry: {RETRY}\n\n"
        yield await to_thread.run_sync(told_of_class, hub.kept, code)
        while True:
            try:
                items = await asyncio.wait_for(listener.queue.get(), BEAT)
            except TimeoutError:
                yield ": still here\n\n"
                continue
            if items == END:
                return
            yield "".join(words for _, words in items)
    finally:
        hub.leave(listener)
