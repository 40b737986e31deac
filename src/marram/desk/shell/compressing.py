"""Answers compressed (gzip), for a phone on a slow network: text only, and what is not worth it goes as it is.

What is the same for everybody (scripts, styles, the drawing of the course) is compressed once, as well as can be: fifty
phones that come at once then cost what one does.
"""

import gzip
from collections.abc import Mapping
from functools import lru_cache

from starlette.datastructures import Headers
from starlette.middleware.gzip import GZipMiddleware
from starlette.responses import Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

LEVEL = 6
"""How hard answers are compressed: zlib's own default."""

MOST_HELD = 64
"""Contents held compressed (own choice): every script and style, and the parts of some maps."""

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


@lru_cache(maxsize=MOST_HELD)
def _compressed(content: bytes) -> bytes:
    return gzip.compress(content, 9, mtime=0)


def sent_to_all(asked: Headers, content: bytes, kind: str, headers: Mapping[str, str]) -> Response:
    """Return an answer whose contents are the same for everybody, compressed once where the asker takes that.

    Args:
        asked: the headers of the request.
        content: what is sent.
        kind: its media type.
        headers: the headers of the answer.
    """
    held = {**headers, "Vary": "Accept-Encoding"}
    if "gzip" in asked.get("accept-encoding", ""):
        return Response(_compressed(content), media_type=kind, headers={**held, "Content-Encoding": "gzip"})
    return Response(content, media_type=kind, headers=held)


__all__ = ["Compressing", "sent_to_all"]
