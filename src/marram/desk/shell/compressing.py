"""Answers compressed (gzip), for a phone on a slow network: text only, and what is not worth it goes as it is."""

from starlette.middleware.gzip import GZipMiddleware
from starlette.types import ASGIApp, Message, Receive, Scope, Send

LEVEL = 6
"""How hard answers are compressed: zlib's own default."""

OWN = "http.response.debug"
"""What Starlette tells of a page beside its answer, to whoever tries the desk within the process."""


class Compressing:
    """Starlette's compression, which lets what is told beside an answer pass.

    Args:
        app: what it compresses the answers of.
    """

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""

        async def inside(scope: Scope, receive: Receive, compressed: Send) -> None:
            async def sorted_out(message: Message) -> None:
                await (send if message["type"] == OWN else compressed)(message)

            await self.app(scope, receive, sorted_out)

        await GZipMiddleware(inside, compresslevel=LEVEL)(scope, receive, send)


__all__ = ["Compressing"]
