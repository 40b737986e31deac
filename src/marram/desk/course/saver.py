"""Who saves: the name or initials last given on this device, else of whoever is signed in, offered for the next save."""

from typing import TypeVar
from urllib.parse import quote, unquote

from fastapi import Request
from fastapi.responses import Response

from marram.desk.log.kept import KeptHere
from marram.desk.people.who import who_asks

COOKIE = "marram_saver"
YEAR = 366 * 24 * 3600
LONGEST = 60


def saver(request: Request) -> str:
    """Return the name or initials given at the last save on this device, else the name of whoever is signed in, or nothing."""
    given = unquote(request.cookies.get(COOKIE, ""))[:LONGEST]
    kept: KeptHere | None = request.app.state.kept_here
    person = who_asks(request).person
    if given or kept is None or person is None:
        return given
    return kept.names().get(person, "")[:LONGEST]


R = TypeVar("R", bound=Response)


def keep_saver(response: R, who: str) -> R:
    """Keep a name for the next save on this device."""
    response.set_cookie(
        COOKIE, quote(who.strip()[:LONGEST], safe=""), max_age=YEAR, httponly=True, samesite="lax"
    )
    return response
