"""Styles, scripts and fonts of the desk: at addresses that hold for ever, each as few requests as can be.

``/static/ROOM/FILE`` is the file as it lies here, asked for anew each time. Pages name ``/static/VERSION/ROOM/FILE``,
where the version is a digest of all these files, so that a phone keeps what it has until a file changes (RFC 8246,
``immutable``). There a script comes with the modules it imports, and three sets of files come as one.
"""

import hashlib
import re
from functools import cache
from pathlib import Path

from starlette.datastructures import Headers
from starlette.responses import Response
from starlette.staticfiles import StaticFiles
from starlette.types import Scope

from marram.desk.shell.compressing import sent_to_all
from marram.desk.shell.joined_modules import joined

ROOMS = (
    "shell",
    "rulings",
    "course",
    "holes",
    "competition",
    "log",
    "people",
    "day",
    "live",
    "offline",
    "cards",
    "matches",
    "results",
    "publishing",
    "field",
    "secure",
    "teaching",
    "book",
)
"""The folders of the desk that hold templates, styles and scripts."""

DESK = Path(__file__).parents[1]

FOR_EVER = "public, max-age=31536000, immutable"
"""A year, the longest that RFC 9111 lets a sender mean."""
ASKED_ANEW = "no-cache"

SETS = {
    "shell/desk.css": (
        "shell/vendor/leaflet/leaflet.css",
        "shell/base.css",
        "shell/panel.css",
        "day/rooms.css",
        "shell/map.css",
        "rulings/said.css",
        "shell/magnified.css",
        "shell/themes.css",
    ),
    "shell/first.js": ("shell/early.js", "shell/theme.js"),
    "shell/map_library.js": ("shell/vendor/leaflet/leaflet.js",),
    "shell/page_library.js": ("shell/vendor/htmx/htmx.min.js",),
}
"""What comes as one file, in this order; what they name lies beside the set itself."""

REMARKS = {
    ".css": re.compile(r"/\*.*?\*/|^[ \t]+", re.DOTALL | re.MULTILINE),
    ".js": re.compile(r"^[ \t]*//.*\n", re.MULTILINE),
}
"""What only a reader of the source needs: in scripts, remarks with a line of their own. No text of ours looks like one."""


def source(path: str) -> str:
    """Return the text of ``ROOM/FILE``."""
    room, _, file = path.partition("/")
    return (DESK / room / "static" / file).read_text(encoding="utf-8")


@cache
def version() -> str:
    """Return the version of the desk's files: a digest of their names and what they hold."""
    found = hashlib.sha256(repr(SETS).encode())
    for room in ROOMS:
        for file in sorted((DESK / room / "static").rglob("*.*")):
            found.update(f"{file.relative_to(DESK)}\n".encode() + hashlib.sha256(file.read_bytes()).digest())
    return found.hexdigest()[:12]


def asset(path: str) -> str:
    """Return the address of ``ROOM/FILE``, or of a set, that a page names."""
    return f"/static/{version()}/{path}"


@cache
def made(path: str) -> str | None:
    """Return a set, or a script with all its modules; ``None`` for a file that is sent as it lies here."""
    if path in SETS:
        return "\n".join(_sent_text(one) for one in SETS[path])
    if path.endswith(".js") and "/vendor/" not in path:
        return joined(path, _sent_text)
    return None


def _sent_text(path: str) -> str:
    """Return the text of ``ROOM/FILE`` without the remarks in it."""
    remarks = REMARKS[path[path.rindex(".") :]]
    return source(path) if "/vendor/" in path else remarks.sub("", source(path))


class AsItLies(StaticFiles):
    """Files as they lie here, asked for anew each time."""

    async def get_response(self, path: str, scope: Scope) -> Response:
        """Return a file."""
        answer = await super().get_response(path, scope)
        answer.headers["Cache-Control"] = ASKED_ANEW
        return answer


class ForEver(StaticFiles):
    """Files of a room under their version; those of another version are sent, but not to be kept."""

    def __init__(self, room: str) -> None:
        super().__init__(directory=DESK / room / "static")
        self.room = room

    async def get_response(self, path: str, scope: Scope) -> Response:
        """Return a file, a set or a script with its modules."""
        name = f"{self.room}/{path}"
        answer = _sent(name, scope) if name in SETS else await super().get_response(path, scope)
        if answer.status_code == 200 and name not in SETS and made(name) is not None:
            answer = _sent(name, scope)
        current = scope.get("path_params", {}).get("version") == version()
        answer.headers["Cache-Control"] = FOR_EVER if current else ASKED_ANEW
        return answer


def _sent(name: str, scope: Scope) -> Response:
    """Return what was made of files, or that it has not changed."""
    tag = f'"{version()}"'
    if Headers(scope=scope).get("if-none-match") == tag:
        return Response(status_code=304, headers={"ETag": tag})
    kind = "text/css" if name.endswith(".css") else "text/javascript"
    return sent_to_all(Headers(scope=scope), _bytes_of(name), kind, {"ETag": tag})


@cache
def _bytes_of(name: str) -> bytes:
    return (made(name) or "").encode()


__all__ = ["DESK", "ROOMS", "AsItLies", "ForEver", "asset", "made", "version"]
