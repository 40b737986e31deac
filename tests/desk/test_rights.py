"""Every route and every role: what the one table allows is answered, and nothing else is, however it is asked."""

import re
from collections.abc import Iterator

import pytest
from fastapi import APIRouter, FastAPI
from fastapi.routing import iter_route_contexts
from httpx import Response
from starlette.routing import Mount

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.desk.people.rights import ROOMS, rights_of
from marram.desk.people.roles import CHIEF, PUBLIC, ROLES
from marram.desk.people.routes import declared, routes_of
from marram.desk.rooms import ROUTERS
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, signature, signed_in

SAMPLE = {
    "number": 1,
    "group": 1,
    "slug": "17.1d",
    "incident_name": "sand_touched",
    "key": "back_on_the_line",
    "place": 0,
    "tag": "0",
    "part": "overview",
    "day": "2025-06-21",
    "form": "svg",
    "secret": "nonsense",
    "digest": "0" * 64,
    "code": "NOSUCH",
    "ident": "00000000-0000-4000-8000-000000000002",
    "letter": "A",
    "sheet": "notice",
    "player": "00000000-0000-4000-8000-000000000000",
    "against": "00000000-0000-4000-8000-000000000001",
}
RIGHTS = rights_of()
CELLS = [
    pytest.param(*route.split(" "), role, id=f"{route} {role}")
    for route in RIGHTS if route != "GET /static"
    for role in ROLES
]  # fmt: skip


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    with club(tmp_path_factory.mktemp("rights")) as found:
        yield found


@pytest.fixture(scope="module")
def app(kept: KeptHere) -> FastAPI:
    return guarded(kept)


@pytest.fixture(scope="module")
def devices(app: FastAPI, kept: KeptHere) -> dict[str, TestClient]:
    return {role: signed_in(app, kept, role) for role in ROLES}


def test_the_table_holds_every_route_and_no_other(app: FastAPI) -> None:
    """What the application serves and what the table names are the same; each room's entry is one of its routes."""
    served = {f"{method} {path}" for method, path in declared(app, ROUTERS)}

    assert served == set(RIGHTS) - {"GET /static"}
    assert [one.name for one in ROOMS if one.entry and f"GET {one.entry}" not in one.rights] == []
    assert {role for roles in RIGHTS.values() for role in roles} <= set(ROLES)


def test_a_route_that_is_in_no_room_stops_the_desk_from_starting(kept: KeptHere) -> None:
    """The fault names the route and where to enter it."""
    app = create_app(kept_here=kept)
    app.add_api_route("/forgotten", lambda: "", methods=["GET", "POST"])
    with pytest.raises(ValueError, match=r"GET /forgotten, POST /forgotten.*rights\.py"):
        routes_of(app, ROUTERS)


def test_what_is_in_no_room_at_all_stops_the_desk_from_starting(kept: KeptHere) -> None:
    """A router beside those of the rooms, and what is mounted beside styles and scripts, would be guarded by nobody."""
    app = create_app(kept_here=kept)
    app.include_router(APIRouter())
    with pytest.raises(ValueError, match="none of its rooms"):
        routes_of(app, ROUTERS)
    app = create_app(kept_here=kept)
    app.mount("/elsewhere", FastAPI())
    with pytest.raises(ValueError, match="/elsewhere"):
        routes_of(app, ROUTERS)


def test_the_routes_are_those_that_fastapi_serves(app: FastAPI) -> None:
    """What is read off the routers is, in its order, what a request is matched with."""
    served = [
        (method, str(one.path))
        for one in iter_route_contexts(app.routes)
        for method in sorted(set(one.methods or ()) - {"HEAD", "OPTIONS"})
        if not isinstance(one.original_route, Mount)
    ]
    assert list(declared(app, ROUTERS)) == served


@pytest.mark.parametrize(("method", "path", "role"), CELLS)
def test_every_cell_of_the_table(devices: dict[str, TestClient], method: str, path: str, role: str) -> None:
    """A role that stands beside a route passes the doorkeeper, and no other does.

    What changes something is sent without the signature of a form: where the role is allowed, that is what it is
    refused for, so that each cell is tried and nothing is changed.
    """
    asked = "HEAD" if path == "/api/live" else method  # the stream itself never ends
    answer = devices[role].request(asked, path.format_map(SAMPLE))

    assert _passed(answer, asked) is (role in RIGHTS[f"{method} {path}"])


def _passed(answer: Response, method: str) -> bool:
    """Whether the doorkeeper let something pass, whatever became of it then."""
    status, text_ = answer.status_code, answer.text
    if status == 303 and answer.headers["location"].startswith("/sign-in?next="):
        return False
    if status == 401:
        return False
    if status == 403 and (method == "HEAD" or "does not include this" in text_):
        return False
    assert method in {"GET", "HEAD"} or status in {403, 410, 413, 415}, (status, text_[:300])
    return True


def test_head_tells_no_more_than_get(devices: dict[str, TestClient]) -> None:
    """Whoever may not get a page is told nothing of it by another method."""
    assert devices[PUBLIC].head("/log").status_code == 303
    assert devices["player"].head("/log").status_code == 403


def test_what_is_not_signed_changes_nothing(devices: dict[str, TestClient]) -> None:
    """Form and JSON, without the signature, with another device's, and with the right one."""
    chief, other = devices[CHIEF], devices["committee"]
    mine, theirs = (signature(one, "/people") for one in (chief, other))
    sent = {"role": "referee", "uses": "1", "hours": "1"}
    for wrong in ("", theirs, mine[:-1], "\u2603"):
        assert chief.post("/people/invite", data={**sent, "csrf": wrong}).status_code == 403
        saving = chief.post(
            "/api/map", json={}, headers={"X-CSRF-Token": wrong.encode("latin-1", "ignore").decode()}
        )
        assert saving.status_code == 403
    assert chief.post("/api/map", json={"csrf": mine}).status_code == 403

    assert chief.post("/people/invite", data={**sent, "csrf": mine}).status_code == 200
    assert chief.post("/api/map", json={}, headers={"X-CSRF-Token": mine}).status_code == 400


def test_every_form_that_is_posted_is_signed(devices: dict[str, TestClient]) -> None:
    """On every page with such a form, in whichever room."""
    found = 0
    for page in (
        "/people",
        "/me",
        "/now",
        "/settings",
        "/map",
        "/holes/2025-06-21",
        "/marking",
        "/?on=2025-06-21",
    ):
        text_ = devices[CHIEF].get(page).text
        for form in re.findall(r'<form\b[^>]*method="post"[^>]*>(.{0,80})', text_, re.DOTALL):
            found += 1
            assert form.startswith('<input type="hidden" name="csrf" value="'), (page, form)

    assert found > 6


def test_who_sees_what_is_personal(devices: dict[str, TestClient]) -> None:
    """Names of players on the first screen for officials; no name of anybody for the public and for players."""
    player, official = "Fenwin Dulsey", "Ottiline Brackmere"
    for role, device in devices.items():
        page = device.get("/now").text
        assert (player in page) is (role not in {PUBLIC, "player"}), role
        assert official not in page or role not in {PUBLIC, "player"}
