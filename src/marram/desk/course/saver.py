"""Who saves: the name or initials last given on this device, offered for the next save."""

from typing import TypeVar
from urllib.parse import quote, unquote

from fastapi import Request
from fastapi.responses import Response

COOKIE = "marram_saver"
YEAR = 366 * 24 * 3600
LONGEST = 60


def saver(request: Request) -> str:
    """Return the name or initials given at the last save on this device, or nothing."""
    return unquote(request.cookies.get(COOKIE, ""))[:LONGEST]


R = TypeVar("R", bound=Response)


def keep_saver(response: R, who: str) -> R:
    """Keep a name for the next save on this device."""
    response.set_cookie(
        COOKIE, quote(who.strip()[:LONGEST], safe=""), max_age=YEAR, httponly=True, samesite="lax"
    )
    return response
