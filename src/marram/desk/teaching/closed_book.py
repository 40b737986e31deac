"""While a device sits a paper, the desk shows it the paper and nothing that would answer it: with the book the Rules as well.

Whoever is signed in on it: a key is no less a key. A code on the device says that it sits; what the desk cannot see, another device or browser, is the examiner's to watch.
"""

import re

from anyio import to_thread
from fastapi import Request, Response
from starlette.responses import RedirectResponse
from starlette.types import ASGIApp, Receive, Scope, Send

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import PUBLIC
from marram.desk.people.who import who_asks
from marram.desk.shell.errors import answer
from marram.desk.shell.guard import READING
from marram.records.examinations import Sat, Sitter, sitter_of
from marram.teach.examinations.kept_paper import with_the_book
from marram.words.texts import text

COOKIE = "marram_sits"
_PAPER = re.compile(r"/(api/)?examination(/|$)|/static/|/service-worker\.js$|/sign-(in|out)$")
"""What a device needs for its paper."""
_BOOK = re.compile(r"/book(/(rule/.*|definitions|local-rules|provision/.*))?$")
"""What the Rules say; situations with their rulings are left out."""


def asks_first(request: Request, sitter: Sitter) -> bool:
    """Return whether a device is asked before it sits a paper: an official's, for whom all the rest would close unawares."""
    return who_asks(request).role != PUBLIC and request.cookies.get(COOKIE) != sitter.code


def sits_on(request: Request, found: Response, sitter: Sitter, *, sits: bool) -> None:
    """Have the device remember by its answer that it sits a paper, or forget it."""
    if sits:
        found.set_cookie(COOKIE, sitter.code, httponly=True, samesite="strict")
    elif request.cookies.get(COOKIE) == sitter.code:
        found.delete_cookie(COOKIE)


class ClosedBook:
    """What keeps the rest of the desk from a device that sits a paper, as ASGI middleware, next to the routes.

    Args:
        app: what it stands before.
    """

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        request = Request(scope) if scope["type"] == "http" else None
        code = request.cookies.get(COOKIE, "") if request else ""
        if request is None or not code or _PAPER.match(scope["path"]):
            await self.app(scope, receive, send)
            return
        found = await to_thread.run_sync(_sat, scope["app"].state.kept_here, code)
        if found is None or _may(request, found[0]):
            await self.app(scope, receive, send)
            return
        await _instead(request, found[1])(scope, receive, send)


def _sat(kept: KeptHere | None, code: str) -> tuple[Sat, Sitter] | None:
    """Return the paper of a code that is being sat; ``None`` where none is, or it was handed in."""
    found = None if kept is None else sitter_of(kept.records, kept.event_id, code[:40])
    return found if found and found[0].state == "running" and found[1].handed_in_at is None else None


def _may(request: Request, sat: Sat) -> bool:
    return bool(_BOOK.match(request.url.path)) and with_the_book(sat.papers)


def _instead(request: Request, sitter: Sitter) -> Response:
    if request.method in READING and not request.url.path.startswith("/api/"):
        return RedirectResponse(f"/examination/{sitter.code}", 303)
    return answer(request, 403, "sits_a_paper", [text("examining.nothing_else")])
