"""The desk as a web app: its manifest, its service worker, the page without the desk, and the data a phone keeps for it.

What is kept on a phone is kept for whoever is signed in there, and forgotten at sign-out (``static/worker.js``).
"""

import gzip
import json
from datetime import UTC, datetime
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from marram.desk.log.kept import KeptHere
from marram.desk.offline.held_book import Held, held_book
from marram.desk.offline.held_map import held_map
from marram.desk.people.answers import NO_STORE
from marram.desk.people.who import may, may_see, who_asks
from marram.desk.shell.assets import asset, source, version
from marram.desk.shell.templating import templates
from marram.desk.shell.workplace import workplace, workplace_on
from marram.services.cases.conditions import Conditions, conditions_of_event
from marram.words.language import language
from marram.words.texts import clock_words, text, texts_of

router = APIRouter()

DATA = (
    "/offline",
    "/api/offline/book",
    "/api/offline/event",
    "/api/finding/model",
    "/api/offline/map",
    "/quiz/learn",
    "/api/quiz/kept",
)
"""What a phone keeps for whoever is signed in there."""
FILES = (
    "offline/out_of_reach.js",
    "offline/book.css",
    "offline/map_here.css",
    "teaching/learn.js",
    "shell/mark.svg",
    "shell/vendor/atkinson/atkinson-hyperlegible-next-latin-wght-normal.woff2",
)
"""What a phone keeps for anybody: it holds nothing of anybody."""
ICONS = {192: "offline/icon-192.png", 512: "offline/icon-512.png"}
"""Pictures of the app by their side in pixels, drawn by ``scripts/draw_icons.py``."""


@router.get("/manifest.webmanifest")
def manifest() -> Response:
    """The manifest of the web app (W3C Web Application Manifest)."""
    told = {
        "name": text("offline.page.short"),
        "short_name": text("offline.page.short"),
        "description": text("offline.page.about"),
        "lang": language().code,
        "id": "/",
        "start_url": "/",
        "scope": "/",
        "display": "standalone",
        "background_color": "#fbf8ef",
        "theme_color": "#ece4cc",
        "icons": [
            {"src": asset("shell/mark.svg"), "sizes": "any", "type": "image/svg+xml"},
            *(
                {"src": asset(path), "sizes": f"{side}x{side}", "type": "image/png", "purpose": purpose}
                for side, path in ICONS.items()
                for purpose in ("any", "maskable")
            ),
        ],
    }
    return Response(
        json.dumps(told), media_type="application/manifest+json", headers={"Cache-Control": "no-cache"}
    )


@router.get("/service-worker.js")
def worker() -> Response:
    """The service worker: it changes whenever a file of the desk does, which is how a browser learns of it."""
    told = {"version": version(), "files": [asset(one) for one in FILES], "data": DATA}
    script = f"const HELD = {json.dumps(told)};\n{source('offline/worker.js')}"
    return Response(script, media_type="text/javascript", headers={"Cache-Control": "no-cache"})


@router.get("/offline")
def out_of_reach(request: Request) -> HTMLResponse:
    """The page that works without the desk."""
    answer = templates().TemplateResponse(
        request,
        "out_of_reach.html",
        {
            "words": texts_of("offline_script") | texts_of("offline_map_script") | texts_of("definitions"),
            "event": workplace(request).event,
            "language": language,
        },
    )
    answer.headers.update(NO_STORE)
    return answer


@router.get("/api/offline/book")
def book(request: Request) -> Response:
    """The book under the conditions of the event; sent again only when it has changed."""
    return _sent(request, held_book(_conditions(request)))


@router.get("/api/offline/map")
def course_map(request: Request) -> Response:
    """The course map in force on the day of the event, with its holes as they are cut; sent again only when it has changed."""
    day = _conditions(request).on
    return _sent(request, held_map(workplace_on(request, day), day))


def _sent(request: Request, held: Held) -> Response:
    headers = {"ETag": held.tag, "Cache-Control": "private, no-cache", "Vary": "Accept-Encoding"}
    if request.headers.get("if-none-match") == held.tag:
        return Response(status_code=304, headers=headers)
    if "gzip" in request.headers.get("accept-encoding", ""):
        headers["Content-Encoding"] = "gzip"
        return Response(held.compressed, media_type="application/json", headers=headers)
    return Response(gzip.decompress(held.compressed), media_type="application/json", headers=headers)


@router.get("/api/offline/event")
def event(request: Request, response: Response) -> dict[str, Any]:
    """The event as whoever asks may see it: conditions, groups, officials, and whether they may record."""
    response.headers.update(NO_STORE)
    conditions, kept = _conditions(request), _kept(request)
    who = who_asks(request)
    groups = kept.groups_on(conditions.on) if kept and may_see(request, "player_name") else []
    officials = kept.officials() if kept and who.person is None and may_see(request, "official_name") else []
    return {
        "marram": 1,
        "person": who.person,
        "records": kept is not None and may(request, "POST /api/offline/entry"),
        "conditions": dict(conditions.of_competition().pairs()),
        "groups": [
            {
                "number": one.number,
                "starts_at": clock_words(one.starts_at) if one.starts_at else "",
                "players": [{"id": player.id, "name": player.name} for player in one.players if player.name],
            }
            for one in groups
        ],
        "officials": [{"id": one.id, "name": one.name} for one in officials],
        "at": datetime.now(UTC).isoformat(timespec="seconds"),
    }


def _conditions(request: Request) -> Conditions:
    return conditions_of_event(workplace(request).event)


def _kept(request: Request) -> KeptHere | None:
    found: KeptHere | None = request.app.state.kept_here
    return found
