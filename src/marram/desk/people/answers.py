"""What the pages of people share: the door of the desk, answers that nobody keeps, and the answer to too many tries."""

from math import ceil
from secrets import token_urlsafe
from typing import Any

from fastapi import Request, Response

from marram.desk.people.door import Door, before
from marram.desk.people.who import Who, who_asks
from marram.desk.shell.errors import answer
from marram.desk.shell.workplace import show
from marram.errors import InputError
from marram.said import said
from marram.words.texts import text

NO_STORE = {"Cache-Control": "no-store"}
"""What nobody may keep a copy of (RFC 9111, 5.2.2.5)."""


def door_of(request: Request) -> Door:
    """Return the door of the desk.

    Raises:
        InputError: the desk lets in everybody who reaches it.
    """
    found: Door | None = request.app.state.door
    if found is None:
        raise InputError(
            said(
                "Nobody signs in at this desk: it serves this machine alone, or keeps no records. "
                "Serve it with --records and --host to have officials join."
            )
        )
    return found


def page(request: Request, template: str, **context: Any) -> Response:
    """Return a page of people, which nobody keeps; its forms are signed, also before anybody is signed in."""
    who, fresh = who_asks(request), ""
    if not who.open and not who.secret:
        fresh = token_urlsafe(16)
        request.scope["marram_who"] = Who(who.role, secret=fresh)
    found = show(request, template, None, **context)
    found.headers.update(NO_STORE)
    if fresh:
        before(request, found, fresh)
    return found


def too_often(request: Request, door: Door, name: str | None = None) -> Response | None:
    """Return the answer to an address, or a name, that failed too often; ``None`` where it may try."""
    wait = door.by_address.wait(request.client.host if request.client else "")
    if name is not None:
        wait = max(wait, door.by_name.wait(name.casefold()))
    if not wait:
        return None
    found = answer(request, 429, "too_often", [text("people.too_often", seconds=ceil(wait))])
    found.headers["Retry-After"] = str(ceil(wait))
    return found


def device_of(request: Request) -> str:
    """Return what the browser of a device calls itself."""
    return request.headers.get("user-agent", "")
