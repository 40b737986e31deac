"""The stream of events: what was missed, what stands, and then whatever happens, until the device goes away."""

import asyncio
from collections.abc import AsyncIterator
from typing import Annotated

from anyio import to_thread
from fastapi import APIRouter, Header, HTTPException, Request, Response
from fastapi.responses import StreamingResponse

from marram.desk.live.hub import END, Hub, Listener, Sight, event
from marram.desk.log.kept import kept_here
from marram.desk.people.door import Door, secret_in
from marram.desk.people.roles import PUBLIC
from marram.desk.people.who import who_asks
from marram.words.place import writing

router = APIRouter()

BEAT = 15.0
"""Seconds after which something is sent though nothing happened (own choice: proxies cut a connection that is still for 30 to 60)."""

RETRY = 2000
"""Milliseconds until a device asks again whose connection was cut (own choice)."""

MOST_MISSED = 500
"""Entries that are sent after one another; who missed more loads the page anew (own choice)."""

MOST_PUBLIC = 300
"""How many of the public listen at once at most (own choice); who comes later asks from time to time."""

HEADERS = {"Cache-Control": "no-store", "X-Accel-Buffering": "no"}
"""Nothing on the way may keep it back: the second is how a widespread proxy is told."""


@router.get("/api/live")
def live(
    request: Request,
    after: int | None = None,
    last_event_id: Annotated[str | None, Header()] = None,
) -> Response:
    """Return the events after an entry of the log; without one, from now on.

    A device that was cut asks with ``Last-Event-ID`` by itself, and misses nothing.
    """
    return stream_to(request, who_asks(request).role, after, last_event_id)


def stream_to(request: Request, role: str, after: int | None, last_event_id: str | None) -> Response:
    """Return the stream of events that a role hears.

    Raises:
        HTTPException: too many of the public listen already.
    """
    kept_here(request)
    hub: Hub = request.app.state.live
    if role == PUBLIC and hub.count(PUBLIC) >= MOST_PUBLIC:
        raise HTTPException(503)
    given = last_event_id if last_event_id is not None else "" if after is None else str(after)
    number = int(given) if given.isascii() and given.isdecimal() and len(given) < 10 else None
    return StreamingResponse(_events(request, number, role), media_type="text/event-stream", headers=HEADERS)


async def _events(request: Request, number: int | None, role: str) -> AsyncIterator[str]:
    hub: Hub = request.app.state.live
    listener = Listener(Sight(role, writing()), asyncio.get_running_loop())
    try:
        await to_thread.run_sync(hub.join, listener)
        sent = await to_thread.run_sync(hub.head)
        yield f"retry: {RETRY}\n\n"
        if number is None or not sent - MOST_MISSED <= number <= sent:
            yield event("head" if number is None else "again", sent, sent)
        elif number < sent:
            missed = await to_thread.run_sync(hub.since, number, listener.sight)
            sent = missed[-1][0]
            yield "".join(words for _, words in missed)
        yield await to_thread.run_sync(hub.standing, listener.sight)
        while True:
            try:
                items = await asyncio.wait_for(listener.queue.get(), BEAT)
            except TimeoutError:
                if not await to_thread.run_sync(_still_signed_in, request):
                    return
                yield ": still here\n\n"
                continue
            if items == END:
                return
            words = "".join(words for entry, words in items if entry == 0 or entry > sent)
            sent = max(sent, *(entry for entry, _ in items))
            if words:
                yield words
    finally:
        hub.leave(listener)


def _still_signed_in(request: Request) -> bool:
    """Whether the sign-in that the stream was opened with still holds, in the same role."""
    door: Door | None = request.app.state.door
    return door is None or door.who(secret_in(request)).role == who_asks(request).role
