"""The guard before every room: who may ask, how much may be sent, and the headers every answer carries.

A browser sends its cookies whoever made it ask, and a desk without records asks nobody who they are. So a browser that
another site sends here is refused (its ``Origin`` and ``Sec-Fetch-Site`` say so: Fetch Standard, Fetch Metadata), and so
is a name that is not ours, by which another site could make itself look like the desk (DNS rebinding). The headers follow
the Content Security Policy Level 3: no script or style but the desk's own files, no page of it inside another.
"""

from collections.abc import Iterable
from ipaddress import ip_address
from typing import Any
from urllib.parse import urlsplit

from fastapi import HTTPException, Request
from starlette.datastructures import Headers, MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from marram.desk.reaching import EVERY_ADDRESS, LOOPBACK
from marram.desk.shell.errors import answer, failure
from marram.words.texts import text

MOST_BYTES = 4_000_000
"""The largest body taken (own choice: edits of a whole course are about a tenth of it)."""

WITH_PHOTOGRAPHS = frozenset({"/record"})
"""Addresses to which photographs are sent."""
MOST_WITH_PHOTOGRAPHS = 25_000_000
"""The largest body taken there (own choice: one photograph of a phone is about 3 to 12 MB)."""

READING = frozenset({"GET", "HEAD", "OPTIONS"})
"""Methods that change nothing (RFC 9110, 9.2.1)."""

HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; "
        "connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; "
        "frame-ancestors 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Referrer-Policy": "same-origin",
    "Permissions-Policy": "geolocation=(self), camera=(), microphone=(), payment=(), usb=()",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}
"""What every answer carries."""


class Guard:
    """The guard, as ASGI middleware: the outermost of the desk's own.

    Args:
        app: what it stands before.
        hosts: names and addresses the desk is reached by, beside those of this machine.
    """

    def __init__(self, app: ASGIApp, hosts: Iterable[str] = ()) -> None:
        self.app = app
        self.hosts = frozenset(host.lower().strip("[]") for host in hosts)
        self.by_address = bool(self.hosts & EVERY_ADDRESS)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        begun = False

        async def with_headers(message: Message) -> None:
            nonlocal begun
            if message["type"] == "http.response.start":
                begun = True
                headers = MutableHeaders(scope=message)
                for name, value in HEADERS.items():
                    headers[name] = value
            await send(message)

        request = Request(scope)
        if refusal := self._refusal(scope["method"], request.headers, request.url.path):
            status, code, key = refusal
            await answer(request, status, code, [text(key)])(scope, receive, with_headers)
            return
        try:
            await self.app(scope, _at_most(receive, request.url.path), with_headers)
        except Exception:
            if not begun:
                await failure(request)(scope, receive, with_headers)
            raise  # the server's log tells it

    def _refusal(self, method: str, headers: Headers, path: str) -> tuple[int, str, str] | None:
        """Return status, code and key of the text why a request is not let in; ``None`` where it is."""
        host = headers.get("host", "")
        if len(headers.getlist("host")) != 1 or not self._ours(_name(host)):
            return 421, "foreign_host", "shell.guard.host"
        if method in READING:
            return None
        if headers.get("sec-fetch-site", "none") not in ("same-origin", "none") or not self._own(
            headers.get("origin"), host
        ):
            return 403, "foreign_origin", "shell.guard.origin"
        sent = headers.get("content-length", "0")
        most, told = _most(path)
        if len(sent) > 15 or not sent.isdecimal() or int(sent) > most:
            return 413, "too_large", told
        kind = headers.get("content-type", "").partition(";")[0].strip().lower()
        body = int(sent) > 0 or "transfer-encoding" in headers
        if body and path.startswith("/api/") and kind != "application/json":
            return 415, "not_json", "shell.guard.json"
        return None

    def _ours(self, name: str) -> bool:
        return name in LOOPBACK or name in self.hosts or (self.by_address and _is_address(name))

    def _own(self, origin: str | None, host: str) -> bool:
        """Whether a page at this origin is the desk's own; programs that are no browser give none."""
        if origin is None:
            return True
        place = urlsplit(origin) if origin.startswith(("http://", "https://")) else None
        return place is not None and (
            place.netloc.lower() == host.lower() or _name(place.netloc) in self.hosts
        )


def _most(path: str) -> tuple[int, str]:
    """Return how much may be sent to an address, and the key of what is said of more."""
    if path in WITH_PHOTOGRAPHS:
        return MOST_WITH_PHOTOGRAPHS, "shell.guard.photographs"
    return MOST_BYTES, "shell.guard.size"


def _at_most(receive: Receive, path: str) -> Receive:
    """Return a ``receive`` that stops a body sent in pieces once it is too large."""
    taken = 0
    most, told = _most(path)

    async def counted() -> Message:
        nonlocal taken
        message: dict[str, Any] = dict(await receive())
        taken += len(message.get("body", b""))
        if taken > most:
            raise HTTPException(413, text(told))
        return message

    return counted


def _name(host: str) -> str:
    """Return the name or address of a ``Host`` header, without its port; empty where it is none."""
    if set(host) & set("@/\\?# "):
        return ""
    try:
        return (urlsplit(f"//{host}").hostname or "").rstrip(".")
    except ValueError:
        return ""


def _is_address(name: str) -> bool:
    try:
        ip_address(name)
    except ValueError:
        return False
    return True


__all__ = ["HEADERS", "MOST_BYTES", "MOST_WITH_PHOTOGRAPHS", "Guard"]
