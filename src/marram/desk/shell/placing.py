"""The place of whoever asks, as middleware: times and days are written as there."""

from starlette.datastructures import Headers
from starlette.types import ASGIApp, Receive, Scope, Send

from marram.words.place import region_asked_for, write_as, writing_in


class Placing:
    """Writes times and days in every answer as the region does that the browser names in its languages.

    Args:
        app: what it stands before.
    """

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] == "http":
            write_as(writing_in(region_asked_for(Headers(scope=scope).get("accept-language", ""))))
        await self.app(scope, receive, send)
