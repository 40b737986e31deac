"""Which route of the table a request asks for, matched as the application matches it."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from fastapi import FastAPI
from fastapi.routing import iter_route_contexts
from starlette.routing import Mount, compile_path

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


def declared(app: FastAPI) -> Iterator[tuple[str, str]]:
    """Yield every route of an application: method, and the path as it is declared.

    Raises:
        ValueError: something is mounted elsewhere than with the styles and scripts, where nothing would guard it.
    """
    for route in iter_route_contexts(app.routes):
        path = route.path or ""
        if isinstance(route.original_route, Mount):
            if not path.startswith(STATIC):
                raise ValueError(f"{path} is mounted outside of {STATIC}, where no role is asked for.")
            continue
        for method in sorted((route.methods or set()) - LIKE_GET):
            yield method, path


def routes_of(app: FastAPI) -> Routes:
    """Return the routes of an application with their rights.

    Raises:
        ValueError: a route stands in no room of the table: nobody could use it, or everybody.
    """
    rights = rights_of()
    found, missing = [], []
    for method, path in declared(app):
        if f"{method} {path}" not in rights:
            missing.append(f"{method} {path}")
        found.append((compile_path(path)[0], frozenset({method}), path))
    if missing:
        raise ValueError(
            f"No role may use {', '.join(missing)}: enter each in its room of marram/desk/people/rights.py."
        )
    return Routes(tuple(found), rights)
