"""The doorkeeper: who asks, and whether the one table lets them. It stands before every route; what is not allowed is refused."""

from urllib.parse import urlencode

from anyio import to_thread
from fastapi import HTTPException, Request
from starlette.responses import RedirectResponse, Response
from starlette.types import ASGIApp, Receive, Scope, Send

from marram.desk.people.door import Door, secret_in
from marram.desk.people.roles import PUBLIC
from marram.desk.people.routes import STATIC, Routes
from marram.desk.people.who import OPEN, SIGNED_BY, SIGNED_BY_HEADER, Who, who_asks
from marram.desk.shell.errors import answer
from marram.desk.shell.guard import READING
from marram.errors import InputError
from marram.words.texts import text


class Doorkeeper:
    """The doorkeeper, as ASGI middleware, next to the routes.

    Args:
        app: what it stands before.
    """

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        request = Request(scope)
        state = scope["app"].state
        door: Door | None = state.door
        if door is None:
            scope["marram_who"] = OPEN
            await self.app(scope, receive, send)
            return
        routes: Routes = state.routes
        path: str = scope["path"]
        route = scope["marram_route"] = routes.asked(scope["method"], path)
        if path.startswith(f"{STATIC}/"):
            await self.app(scope, receive, send)
            return
        try:
            who = await to_thread.run_sync(door.who, secret_in(request))
        except InputError as error:
            await answer(request, 503, "records", list(error.faults))(scope, receive, send)
            return
        scope["marram_who"] = who
        if route is not None and who.role not in routes.rights[route]:
            await _refused(request, who)(scope, receive, send)
            return
        await self.app(scope, receive, send)


async def signed(request: Request) -> None:
    """Let through what changes something only where it carries the signature of the device; for every route.

    Raises:
        HTTPException: it does not, or it came to another route than the one that was asked about.
    """
    form = request.method not in READING and not request.url.path.startswith("/api/")
    sent = (
        (await request.form()).get(SIGNED_BY) if form else None
    )  # read whole, also where a route needs none of it
    if request.app.state.door is None:
        return
    declared = getattr(request.scope.get("route"), "path", None)
    asked: str | None = request.scope.get("marram_route")
    if asked is None or asked.partition(" ")[2] != declared:
        raise HTTPException(403, text("people.refused.route"))
    if request.method in READING:
        return
    if not who_asks(request).signed(request.headers.get(SIGNED_BY_HEADER, sent)):
        await request.close()  # a file that was sent with it is let go of
        raise HTTPException(403, text("people.refused.signature"))


def _refused(request: Request, who: Who) -> Response:
    """Return the answer to whoever may not: the way to sign in, or why not."""
    if who.role == PUBLIC:
        if request.url.path.startswith("/api/") or request.method not in READING:
            return answer(request, 401, "not_signed_in", [text("people.refused.not_signed_in")])
        here = request.url.path + (f"?{request.url.query}" if request.url.query else "")
        return RedirectResponse("/sign-in?" + urlencode({"next": here[:2000]}), 303)
    return answer(
        request, 403, "not_allowed", [text("people.refused.role", role=text(f"people.role.{who.role}"))]
    )
