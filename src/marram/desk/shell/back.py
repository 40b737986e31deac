"""Back where one was: the case from which the editor, the holes or the marking were opened, never another site.

The address is given as ``back`` and kept in a cookie of the browser's session, so that what is saved there in between,
with a script or without, loses nothing.
"""

from urllib.parse import quote, unquote, urlsplit

from fastapi import Request
from starlette.responses import Response

COOKIE = "marram_back"
LONGEST = 3000
"""Letters of an address that is kept: a cookie holds 4096 bytes in all (RFC 6265, 6.1)."""
OF_A_CASE = frozenset({"/ball", "/what", "/case", "/together", "/may"})
"""Paths that show a case."""


def within(back: str) -> str:
    """Return where to go back to: a path of this desk, never another site.

    Browsers read a backslash as a slash and leave control characters out (URL Standard, 4.4), so neither may stand in it.
    """
    plain = all(character > " " and character not in "\\\x7f" for character in back)
    try:
        parts = urlsplit(back)
    except ValueError:
        return "/"
    inside = (
        plain and back.startswith("/") and not back.startswith("//") and not parts.scheme and not parts.netloc
    )
    return back if inside else "/"


def back_of(request: Request) -> str:
    """Return where a page leads back to: as its address says, else as was said before."""
    return within(request.query_params.get("back") or unquote(request.cookies.get(COOKIE, "")))


def to_a_case(back: str) -> bool:
    """Whether one goes back to a case, rather than to the course."""
    return urlsplit(back).path in OF_A_CASE


def keep_back(request: Request, answer: Response) -> None:
    """Keep where the address of a page says to go back to."""
    kept = quote(back_of(request), safe="/?=,;")
    if "back" in request.query_params and len(kept) <= LONGEST:
        answer.set_cookie(COOKIE, kept, httponly=True, samesite="lax")


__all__ = ["back_of", "keep_back", "to_a_case", "within"]
