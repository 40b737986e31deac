"""Back where one was: the case from which the editor, the holes or the marking were opened, never another site.

The address is given as ``back``, or is that of the case from which the browser says a link was followed (``Referer``,
RFC 9110, 10.1.3), as the list of rooms beside a case knows no case. It is kept in a cookie of the browser's session, so
that what is saved there in between, with a script or without, loses nothing.
"""

from urllib.parse import quote, unquote, urlsplit

from fastapi import Request
from starlette.responses import Response

COOKIE = "marram_back"
LONGEST = 3000
"""Letters of an address that is kept: a cookie holds 4096 bytes in all (RFC 6265, 6.1)."""
OF_A_CASE = frozenset({"/ball", "/what", "/case", "/together", "/may"})
"""Paths that show a case."""
LEADING_BACK = ("/map", "/holes", "/marking")
"""Where paths begin that lead back to a case they were opened from."""


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
    """Return where a page leads back to: as its address says, else the case one came from, else as was said before."""
    said_now = request.query_params.get("back") or case_come_from(request)
    return within(said_now or unquote(request.cookies.get(COOKIE, "")))


def case_come_from(request: Request) -> str | None:
    """Return the case of this desk from which a link to a page that leads back was followed; ``None`` where it was none."""
    if not request.url.path.startswith(LEADING_BACK):
        return None
    try:
        came = urlsplit(request.headers.get("referer", ""))
    except ValueError:
        return None
    if came.netloc != request.headers.get("host") or came.path not in OF_A_CASE:
        return None
    return came.path + (f"?{came.query}" if came.query else "")


def to_a_case(back: str) -> bool:
    """Whether one goes back to a case, rather than to the course."""
    return urlsplit(back).path in OF_A_CASE


def keep_back(request: Request, answer: Response) -> None:
    """Keep where a page is said to go back to."""
    kept = quote(back_of(request), safe="/?=,;")
    said_now = "back" in request.query_params or case_come_from(request) is not None
    if said_now and len(kept) <= LONGEST:
        answer.set_cookie(COOKIE, kept, httponly=True, samesite="lax")


__all__ = ["back_of", "keep_back", "to_a_case", "within"]
