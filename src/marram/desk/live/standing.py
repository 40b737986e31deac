"""How one thing stands, told live to whoever looks at it: a class, a paper, an examination."""

import asyncio
from collections.abc import AsyncIterator, Callable

from anyio import to_thread
from fastapi import Request, Response
from fastapi.responses import StreamingResponse

from marram.desk.live.hub import END, Hub, Listener, Sight
from marram.desk.live.stream import BEAT, HEADERS, RETRY
from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import PUBLIC


def stream_of(request: Request, about: str, standing: Callable[[KeptHere], str]) -> Response:
    """Return the events of how something stands, at once and whenever it changes.

    Args:
        request: who asks.
        about: the identifier of the thing.
        standing: how it stands, as an event.
    """
    return StreamingResponse(
        _events(request, about, standing), media_type="text/event-stream", headers=HEADERS
    )


async def _events(request: Request, about: str, standing: Callable[[KeptHere], str]) -> AsyncIterator[str]:
    hub: Hub = request.app.state.live
    listener = Listener(Sight(PUBLIC), asyncio.get_running_loop(), about=about, standing=standing)
    try:
        await to_thread.run_sync(hub.join, listener)
        yield f"retry: {RETRY}\n\n"
        yield await to_thread.run_sync(standing, hub.kept)
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
