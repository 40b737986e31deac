"""The one table of the desk: every room with its routes, who may use each, and where it stands at which hour.

Plain data, checked on every request and written out as ``docs/rights.md``. A route that the desk serves and that is not
here stops the desk from starting; a role that does not stand beside a route is refused. A new room, or a route more,
is entered here and nowhere else.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from marram.desk.people.hours import AFTER, BEFORE, PLAY, SCORING
from marram.desk.people.roles import EVERYBODY, LEADING, OFFICIALS, RULING, SIGNED_IN, Roles


@dataclass(frozen=True)
class Room:
    """A room of the desk.

    Attributes:
        name: its name; what it is called stands under ``day.room.NAME`` of the texts.
        rights: who may use each of its routes, by method and path as they are declared.
        entry: the path of its first page; empty where it has no place in the navigation.
        order: its place there by hour, the first first; an hour that is missing: after all that have one.
    """

    name: str
    rights: Mapping[str, Roles]
    entry: str = ""
    order: Mapping[str, int] = field(default_factory=dict)

    def for_role(self, role: str) -> bool:
        """Whether somebody in this role finds the room in the navigation."""
        return bool(self.entry) and role in self.rights.get(f"GET {self.entry}", frozenset())


ROOMS: tuple[Room, ...] = (
    Room(
        "now",
        {
            "GET /now": EVERYBODY,
            "POST /now/where": OFFICIALS,
            "GET /api/live": OFFICIALS,
        },
        entry="/now",
        order={BEFORE: 0, PLAY: 0, SCORING: 0, AFTER: 0},
    ),
    Room(
        "ready",
        {
            "GET /ready": LEADING,
        },
        entry="/ready",
        order={BEFORE: 1, AFTER: 8},
    ),
    Room(
        "conditions",
        {
            "GET /conditions": LEADING,
            "POST /conditions": LEADING,
        },
        entry="/conditions",
        order={BEFORE: 6},
    ),
    Room(
        "officials",
        {
            "GET /officials": OFFICIALS,
            "POST /officials": LEADING,
            "POST /officials/propose": LEADING,
        },
        entry="/officials",
        order={BEFORE: 4, PLAY: 8},
    ),
    Room(
        "begin",
        {
            "GET /begin": RULING,
            "POST /begin": RULING,
            "GET /open-cases": RULING,
            "POST /open-cases/aside": RULING,
            "POST /open-cases/hand-over": RULING,
            "GET /player": RULING,
        },
        entry="/begin",
        order={PLAY: 1, SCORING: 2, BEFORE: 2, AFTER: 2},  # always side by side (`navigation.SHOWN`)
    ),
    Room(
        "rulings",
        {
            "GET /": SIGNED_IN,
            "GET /ball": SIGNED_IN,
            "GET /flag": SIGNED_IN,
            "GET /what": SIGNED_IN,
            "GET /case": SIGNED_IN,
            "GET /drawings": SIGNED_IN,
            "GET /together": SIGNED_IN,
            "GET /may": SIGNED_IN,
            "GET /explained": SIGNED_IN,
            "GET /settings": SIGNED_IN,
            "POST /settings": SIGNED_IN,
            "GET /api/course": SIGNED_IN,
            "GET /api/course/{tag}/{part}": SIGNED_IN,
            "GET /api/incidents": SIGNED_IN,
            "GET /api/facts": SIGNED_IN,
            "GET /api/area": SIGNED_IN,
            "GET /api/rule": SIGNED_IN,
            "POST /api/rule": SIGNED_IN,
            "GET /api/relief": SIGNED_IN,
            "GET /api/finding/model": SIGNED_IN,
            "GET /api/finding/incidents": SIGNED_IN,
            "GET /api/situation": SIGNED_IN,
            "POST /api/situation": SIGNED_IN,
            "GET /api/openapi.json": OFFICIALS,
        },
        entry="/",
        order={PLAY: 4, SCORING: 3, BEFORE: 4, AFTER: 3},
    ),
    Room(
        "log",
        {
            "GET /log": RULING | {"scorer"},
            "GET /log/{number}": RULING | {"scorer"},
            "GET /log/{number}/photograph/{place}": RULING,
            "POST /log/{number}/withdraw": RULING,
            "GET /day": RULING | {"scorer"},
            "POST /record": RULING,
        },
        entry="/log",
        order={PLAY: 2, SCORING: 1, BEFORE: 5, AFTER: 1},
    ),
    Room(
        "suspension",
        {
            "GET /suspension": OFFICIALS,
            "POST /suspension": LEADING,
            "POST /suspension/position": RULING,
            "POST /suspension/resume": LEADING,
        },
        entry="/suspension",
        order={PLAY: 4, SCORING: 5, BEFORE: 8, AFTER: 6},
    ),
    Room(
        "cards",
        {
            "GET /cards": LEADING | {"scorer"},
            "GET /cards/{number}/{player}": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/figures": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/settle": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/return": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/answer": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/found-out": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/end": LEADING | {"scorer"},
            "POST /cards/{number}/{player}/take-back": LEADING | {"scorer"},
        },
        entry="/cards",
        order={SCORING: 0, PLAY: 3, AFTER: 2},
    ),
    Room(
        "walk",
        {
            "GET /walk": RULING | {"scorer"},
            "GET /walk/{number}/{group}": RULING | {"scorer"},
            "POST /walk/{number}/{group}": RULING | {"scorer"},
        },
        entry="/walk",
        order={PLAY: 8},
    ),
    Room(
        "matches",
        {
            "GET /matches": OFFICIALS,
            "GET /matches/bracket": OFFICIALS,
            "POST /matches/bracket/draw": LEADING,
            "POST /matches/bracket/result": LEADING,
            "POST /matches/bracket/starts": LEADING,
            "GET /matches/{number}/{player}/{against}": RULING | {"scorer"},
            "POST /matches/{number}/{player}/{against}/hole": RULING | {"scorer"},
            "POST /matches/{number}/{player}/{against}/end": RULING | {"scorer"},
            "POST /matches/{number}/{player}/{against}/take-back": RULING | {"scorer"},
            "POST /matches/{number}/{player}/{against}/asked": RULING,
        },
        entry="/matches",
        order={PLAY: 9, SCORING: 9, AFTER: 9},
    ),
    Room(
        "results",
        {
            "GET /results": OFFICIALS,
            "GET /results/why": OFFICIALS,
            "POST /results/tie": LEADING,
            "GET /results/close": LEADING,
            "POST /results/close": LEADING,
            "POST /results/reopen": LEADING,
        },
        entry="/results",
        order={AFTER: 1, SCORING: 2, PLAY: 4},
    ),
    Room(
        "board",
        {"GET /board": EVERYBODY, "GET /matches/board": EVERYBODY, "GET /board/live": EVERYBODY},
        entry="/board",
        order={AFTER: 3, SCORING: 3, PLAY: 4},
    ),
    Room(
        "entries",
        {
            "GET /entries": LEADING,
            "GET /entries/ballot.json": LEADING,
            "GET /entries/list.{form}": LEADING,
            "POST /entries/read": LEADING,
            "POST /entries/take": LEADING,
            "POST /entries/ballot": LEADING,
            "POST /entries/withdraw": LEADING,
            "POST /entries/put-right": LEADING,
        },
        entry="/entries",
        order={BEFORE: 2},
    ),
    Room(
        "draw",
        {
            "GET /draw": LEADING,
            "POST /draw": LEADING,
            "POST /draw/keep": LEADING,
        },
        entry="/draw",
        order={BEFORE: 3},
    ),
    Room(
        "papers",
        {
            "GET /papers": LEADING,
            "GET /papers/{number}/{sheet}.{form}": LEADING,
        },
        entry="/papers",
        order={BEFORE: 5, SCORING: 6, AFTER: 3},
    ),
    Room(
        "published",
        {
            "GET /published": EVERYBODY,
            "GET /published/sheet.css": EVERYBODY,
            "GET /published/{digest}.{form}": EVERYBODY,
            "POST /published": LEADING,
        },
        entry="/published",
        order={BEFORE: 5, AFTER: 3},
    ),
    Room(
        "opinions",
        {
            "GET /opinions": RULING,
            "GET /opinions/ask": RULING,
            "POST /opinions/ask": RULING,
            "POST /opinions/answer": LEADING,
            "POST /opinions/difference": LEADING,
        },
        entry="/opinions",
        order={PLAY: 3, SCORING: 2, AFTER: 5},
    ),
    Room(
        "holes",
        {
            "GET /holes": OFFICIALS,
            "GET /holes/{day}": OFFICIALS,
            "POST /holes/{day}": LEADING,
            "GET /holes/{day}/sheet": SIGNED_IN,
            "GET /holes/{day}/sheet.{form}": SIGNED_IN,
            "GET /api/holes/{day}": OFFICIALS,
            "GET /api/holes/{day}/look": OFFICIALS,
            "POST /api/holes/{day}": LEADING,
        },
        entry="/holes",
        order={BEFORE: 1, PLAY: 6},
    ),
    Room(
        "course",
        {
            "GET /map": RULING,
            "POST /map": RULING,
            "POST /map/restore": LEADING,
            "POST /map/file": LEADING,
            "GET /map/mend": LEADING,
            "POST /map/mend": LEADING,
            "GET /api/map": RULING,
            "POST /api/map": RULING,
            "GET /api/map/draft": LEADING,
        },
        entry="/map",
        order={BEFORE: 2, PLAY: 5},
    ),
    Room(
        "marking",
        {
            "GET /marking": RULING,
            "GET /api/marking": RULING,
            "GET /marking/sheet.pdf": RULING,
        },
        entry="/marking",
        order={BEFORE: 3},
    ),
    Room(
        "people",
        {
            "GET /people": LEADING,
            "POST /people/invite": LEADING,
            "POST /people/take-back": LEADING,
            "POST /people/end": LEADING,
        },
        entry="/people",
        order={BEFORE: 6, PLAY: 7, SCORING: 6, AFTER: 2},
    ),
    Room(
        "me",
        {
            "GET /me": SIGNED_IN,
            "POST /me/password": OFFICIALS,
            "POST /me/end": SIGNED_IN,
            "POST /sign-out": SIGNED_IN,
            "GET /api/me": EVERYBODY,
        },
    ),
    Room(
        "teaching",
        {
            "GET /briefing": SIGNED_IN,
            "GET /quiz": SIGNED_IN,
            "GET /quiz/strokes": SIGNED_IN,
            "GET /quiz/learn": SIGNED_IN,
            "GET /api/quiz/question": SIGNED_IN,
            "GET /api/quiz/reviewed": SIGNED_IN,
            "GET /api/quiz/kept": SIGNED_IN,
            "GET /quiz/drawing": SIGNED_IN,
            "GET /quiz/drawing.svg": SIGNED_IN,
        },
        entry="/quiz",
    ),
    Room(
        "class",
        {
            "GET /class": EVERYBODY,
            "POST /class": RULING,
            "GET /class/{code}": EVERYBODY,
            "POST /class/{code}": EVERYBODY,
            "GET /class/{code}/live": EVERYBODY,
            "GET /class/{code}/teacher": RULING,
            "POST /class/{code}/teacher": RULING,
        },
    ),
    Room(
        "briefings",
        {
            "GET /briefings": RULING,
            "POST /briefings": RULING,
            "GET /briefings/{ident}": RULING,
            "POST /briefings/{ident}": RULING,
            "GET /briefings/{ident}/slides": RULING,
            "GET /briefings/{ident}/pdf": RULING,
        },
        entry="/briefings",
    ),
    Room(
        "examination",
        {
            "GET /examination": EVERYBODY,
            "POST /examination": RULING,
            "GET /examination/{code}": EVERYBODY,
            "POST /examination/{code}": EVERYBODY,
            "POST /api/examination/{code}": EVERYBODY,
            "GET /examination/{code}/live": EVERYBODY,
            "GET /examining/{ident}": RULING,
            "POST /examining/{ident}": RULING,
            "GET /examining/{ident}/live": RULING,
            "GET /examining/{ident}/slips": RULING,
            "GET /examining/{ident}/paper/{letter}": RULING,
        },
    ),
    Room(
        "book",
        {
            "GET /book": EVERYBODY,
            "GET /book/rule/{number}": EVERYBODY,
            "GET /book/definitions": EVERYBODY,
            "GET /book/local-rules": EVERYBODY,
            "GET /book/provision/{slug}": EVERYBODY,
            "GET /book/incident/{incident_name}": EVERYBODY,
            "GET /book/situation/{incident_name}": EVERYBODY,
            "GET /book/changes": EVERYBODY,
            "GET /book/changes/since": EVERYBODY,
            "GET /book/changes/since/{key}": EVERYBODY,
            "GET /book/changes/local-rule/{code}": EVERYBODY,
        },
        entry="/book",
    ),
    Room(
        "offline",
        {
            "GET /offline": SIGNED_IN,
            "GET /api/offline/book": SIGNED_IN,
            "GET /api/offline/event": SIGNED_IN,
            "GET /api/offline/map": SIGNED_IN,
            "POST /api/offline/entry": RULING,
            "GET /service-worker.js": EVERYBODY,
            "GET /manifest.webmanifest": EVERYBODY,
        },
    ),
    Room(
        "door",
        {
            "GET /join/{secret}": EVERYBODY,
            "POST /join/{secret}": EVERYBODY,
            "GET /sign-in": EVERYBODY,
            "POST /sign-in": EVERYBODY,
            "GET /static": EVERYBODY,
        },
    ),
)
"""Every room. ``GET /static`` stands for styles, scripts and fonts, which hold nothing of anybody."""


def rights_of(rooms: tuple[Room, ...] = ROOMS) -> dict[str, Roles]:
    """Return who may use each route, of all rooms.

    Raises:
        ValueError: a route stands in two rooms.
    """
    found: dict[str, Roles] = {}
    for room in rooms:
        for route, roles in room.rights.items():
            if route in found:
                raise ValueError(f"{route} stands twice in {__name__}. Leave it in one room.")
            found[route] = roles
    return found
