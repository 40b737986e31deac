"""Which route of the table a request asks for, matched as the application matches it."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fastapi import APIRouter, FastAPI
from starlette.routing import Mount, Route, compile_path

from marram.desk.people.rights import rights_of
from marram.desk.people.roles import Roles

STATIC = "/static"
LIKE_GET = frozenset({"HEAD", "OPTIONS"})
"""Methods that tell of a GET (RFC 9110, 9.3.2 and 9.3.7); whoever may not get it is told nothing of it."""


@dataclass(frozen=True)
class Routes:
    """The routes of an application, in the order in which they are tried.

    Attributes:
        patterns: the pattern of a path, its methods, and the path as it is declared.
        rights: who may use each.
    """

    patterns: tuple[tuple[re.Pattern[str], frozenset[str], str], ...]
    rights: dict[str, Roles]

    def asked(self, method: str, path: str) -> str | None:
        """Return the route of the table that is asked for; ``None`` where there is none to be had."""
        if path.startswith(f"{STATIC}/"):
            return f"GET {STATIC}"
        wanted = "GET" if method in LIKE_GET else method
        for pattern, methods, declared in self.patterns:
            if wanted in methods and pattern.match(path):
                return f"{wanted} {declared}"
        return None


def declared(app: FastAPI, rooms: Sequence[APIRouter]) -> Iterator[tuple[str, str]]:
    """Yield every route of an application: method, and the path as it is declared.

    The routers are asked, not what FastAPI makes of them once they are in the application: that is made when the first
    request comes, and takes longer than all else of making the application.

    Args:
        app: the application.
        rooms: the routers in it, in their order, each taken in as it is.

    Raises:
        ValueError: something is mounted elsewhere than with the styles and scripts, or is in the application beside
            the routers, where nothing would guard it.
    """
    own = [route for route in app.routes if isinstance(route, (Mount, Route))]
    if len(app.routes) != len(own) + len(rooms):
        raise ValueError(
            "Something is in the application that is none of its rooms, where no role is asked for."
        )
    for route in (*own, *(route for room in rooms for route in room.routes)):
        if isinstance(route, Mount):
            if not route.path.startswith(STATIC):
                raise ValueError(f"{route.path} is mounted outside of {STATIC}, where no role is asked for.")
        elif isinstance(route, Route):
            for method in sorted((route.methods or set()) - LIKE_GET):
                yield method, route.path


def routes_of(app: FastAPI, rooms: Sequence[APIRouter]) -> Routes:
    """Return the routes of an application with their rights.

    Raises:
        ValueError: a route stands in no room of the table: nobody could use it, or everybody.
    """
    rights = rights_of()
    found, missing = [], []
    for method, path in declared(app, rooms):
        if f"{method} {path}" not in rights:
            missing.append(f"{method} {path}")
        found.append((compile_path(path)[0], frozenset({method}), path))
    if missing:
        raise ValueError(
            f"No role may use {', '.join(missing)}: enter each in its room of marram/desk/people/rights.py."
        )
    return Routes(tuple(found), rights)
