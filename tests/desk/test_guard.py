"""The desk is safe as it starts: nobody else's page may use it, and no page of it runs what is not its own."""

import json
from collections.abc import Callable
from inspect import iscoroutinefunction
from typing import Any

import pytest
from fastapi import FastAPI
from fastapi.routing import APIRoute
from hypothesis import given
from hypothesis import strategies as st
from starlette.routing import Mount

from marram.desk.app import create_app
from marram.desk.rooms import ROUTERS
from marram.desk.shell.back import within
from marram.desk.shell.guard import HEADERS, MOST_BYTES, MOST_WITH_PHOTOGRAPHS, WITH_PHOTOGRAPHS
from tests.desk.asking import TestClient

SAMPLE = {
    "number": 1,
    "place": 1,
    "tag": "0",
    "part": "overview",
    "day": "2025-06-21",
    "form": "svg",
    "secret": "nonsense",
    "code": "NOSUCH",
    "ident": "00000000-0000-4000-8000-000000000002",
    "letter": "A",
    "group": 1,
    "player": "00000000-0000-4000-8000-000000000000",
    "against": "00000000-0000-4000-8000-000000000001",
    "digest": "0" * 64,
    "incident_name": "ball_not_found",
    "sheet": "notice",
    "slug": "16.1",
    "key": "back_on_the_line",
}
ROUTES = [
    (method, route.path.format_map(SAMPLE))
    for router in ROUTERS for route in router.routes if isinstance(route, APIRoute)
    for method in sorted(route.methods)
]  # fmt: skip
"""Every address of every room, and how it is asked."""

WRITING = [one for one in ROUTES if one[0] != "GET"]
SAVE = {"base": 1, "who": "A.", "in_force_from": "2025-06-21", "edits": []}


@pytest.fixture(scope="module")
def desk(tmp_path_factory: pytest.TempPathFactory) -> TestClient:
    """A desk at which nothing is ever saved here, so that the tests may share it."""
    app = create_app(maps=tmp_path_factory.mktemp("guard") / "maps")
    return TestClient(app, follow_redirects=False, raise_server_exceptions=False)


def test_there_are_addresses_to_try() -> None:
    """The lists below are not empty, and the addresses that save are among them."""
    assert len(ROUTES) > 15
    assert {"/map", "/map/restore", "/map/file", "/api/map", "/settings"} <= {path for _, path in WRITING}


@pytest.mark.parametrize(("method", "path"), [*ROUTES, ("GET", "/nowhere"), ("GET", "/api/nowhere"), ("GET", "/static/shell/desk.js"), ("GET", "/api/openapi.json")])  # fmt: skip
def test_every_answer_carries_the_headers(desk: TestClient, method: str, path: str) -> None:
    """Whatever is asked, found or not: no foreign script, no frame, no guess of a type, no address told to others."""
    answer = desk.request(method, path)

    assert {name: answer.headers.get(name) for name in HEADERS} == HEADERS
    assert "access-control-allow-origin" not in answer.headers


def test_the_policy_lets_run_only_what_the_desk_serves() -> None:
    """No inline script or style, no foreign address, no frame."""
    policy = {
        name: rest for name, _, rest in (part.strip().partition(" ") for part in HEADERS["Content-Security-Policy"].split(";"))
    }  # fmt: skip

    assert policy["default-src"] == policy["frame-ancestors"] == policy["base-uri"] == "'none'"
    assert {policy[name] for name in ("script-src", "style-src", "connect-src", "form-action")} == {"'self'"}


def test_a_failure_of_ours_carries_them_too(app: FastAPI, monkeypatch: pytest.MonkeyPatch) -> None:
    """The page of a failure is an answer like any other."""
    monkeypatch.setattr("marram.desk.rulings.case.consult", lambda *_: 1 / 0)
    answer = TestClient(app, raise_server_exceptions=False).get("/case?what=unplayable_ball")

    assert answer.status_code == 500
    assert {name: answer.headers.get(name) for name in HEADERS} == HEADERS


def test_something_is_said_when_not_even_the_page_of_a_failure_can_be_made(
    app: FastAPI, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Plain text then, with the headers, and no word of what failed."""
    monkeypatch.setattr("marram.desk.rulings.case.consult", lambda *_: 1 / 0)
    monkeypatch.setattr("marram.desk.shell.errors.templates", lambda: 1 / 0)
    answer = TestClient(app, raise_server_exceptions=False).get("/case?what=unplayable_ball")

    assert answer.status_code == 500
    assert answer.headers["content-type"].startswith("text/plain")
    assert "The referee decides" in answer.text
    assert "ZeroDivision" not in answer.text


FOREIGN = [
    {"Origin": "https://elsewhere.example"},
    {"Origin": "null"},
    {"Origin": ""},
    {"Origin": "http://localhost:9999"},
    {"Origin": "http://localhost.elsewhere.example"},
    {"Origin": "file://localhost"},
    {"Sec-Fetch-Site": "cross-site"},
    {"Sec-Fetch-Site": "same-site"},
    {"Sec-Fetch-Site": "cross-site", "Origin": "http://localhost"},
]


@pytest.mark.parametrize("headers", FOREIGN, ids=str)
@pytest.mark.parametrize(("method", "path"), WRITING)
def test_what_saves_is_refused_to_another_site(
    desk: TestClient, method: str, path: str, headers: dict[str, str]
) -> None:
    """A form or script of another site cannot save anything here, whatever it sends."""
    for body in ({"json": SAVE}, {"data": {"who": "A.", "base": "1"}}):
        answer = desk.request(method, path, headers=headers, **body)

        assert answer.status_code == 403
    assert not list(desk.app.state.maps.place.glob("*"))  # type: ignore[attr-defined]


@pytest.mark.parametrize(
    "headers",
    [{}, {"Origin": "http://localhost"}, {"Origin": "http://localhost", "Sec-Fetch-Site": "same-origin"}],
)
def test_the_desks_own_pages_and_programs_may_save(desk: TestClient, headers: dict[str, str]) -> None:
    """A page of the desk says its own origin; a program that is no browser says none."""
    answer = desk.post("/settings", data={"on": "2025-06-21"}, headers=headers)

    assert answer.status_code == 303


NAMES: list[tuple[str, tuple[str, ...], bool]] = [
    ("localhost", (), True),
    ("localhost:8123", (), True),
    ("LOCALHOST.", (), True),
    ("127.0.0.1:8123", (), True),
    ("[::1]:8123", (), True),
    ("elsewhere.example", (), False),
    ("localhost.elsewhere.example", (), False),
    ("127.0.0.1.elsewhere.example", (), False),
    ("192.168.1.5:8123", (), False),
    ("192.168.1.5:8123", ("192.168.1.5",), True),
    ("192.168.1.5:8123", ("0.0.0.0",), True),  # noqa: S104 - told, not bound
    ("[fe80::1]:8123", ("::",), True),
    ("elsewhere.example", ("0.0.0.0",), False),  # noqa: S104 - told, not bound
    ("desk.club.example", ("127.0.0.1", "desk.club.example"), True),
    ("Desk.Club.example:80", ("desk.club.example",), True),
    ("a b", (), False),
    ("[", (), False),
    ("", (), False),
    ("elsewhere.example@localhost", (), False),
]  # fmt: skip


@pytest.mark.parametrize(("name", "hosts", "taken"), NAMES)
@pytest.mark.parametrize("path", ["/", "/api/course", "/static/shell/desk.js", "/nowhere"])
def test_only_names_that_are_ours_are_answered(
    name: str, hosts: tuple[str, ...], taken: bool, path: str
) -> None:
    """This machine's names, what the desk was told to serve on, and names given: nothing a stranger can point here."""
    answer = TestClient(app_of(hosts)).get(path, headers={"Host": name})

    assert (answer.status_code != 421) is taken
    assert answer.headers["X-Frame-Options"] == "DENY"


_apps: dict[tuple[str, ...], FastAPI] = {}


def app_of(hosts: tuple[str, ...]) -> FastAPI:
    if hosts not in _apps:
        _apps[hosts] = create_app(hosts=hosts)
    return _apps[hosts]


@pytest.mark.parametrize(
    "kind", ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data", ""]
)
@pytest.mark.parametrize(("method", "path"), [one for one in WRITING if one[1].startswith("/api/")])
def test_programs_send_json_and_say_so(desk: TestClient, method: str, path: str, kind: str) -> None:
    """What a form of another site can send without asking first is never taken for JSON."""
    answer = desk.request(method, path, content=json.dumps(SAVE), headers={"Content-Type": kind})

    assert answer.status_code == 415
    assert answer.json()["error"]["code"] == "not_json"


@pytest.mark.parametrize(("method", "path"), WRITING)
def test_too_large_a_body_is_refused(desk: TestClient, method: str, path: str) -> None:
    """Told by its length, or found out while it comes in pieces."""
    kind = "application/json" if path.startswith("/api/") else "application/x-www-form-urlencoded"
    sent = b"x" * ((MOST_WITH_PHOTOGRAPHS if path in WITH_PHOTOGRAPHS else MOST_BYTES) + 1)
    pieces = (sent[start : start + 500_000] for start in range(0, len(sent), 500_000))

    assert desk.request(method, path, content=sent, headers={"Content-Type": kind}).status_code == 413
    assert desk.request(method, path, content=pieces, headers={"Content-Type": kind}).status_code == 413


@pytest.mark.parametrize(
    "address",
    [
        "/case?what=unplayable_ball&hole={0}", "/?hole={0}", "/ball?hole={0}", "/case?{0}.what=unplayable_ball",
        "/case?number={0}&what=unplayable_ball", "/case?what={0}", "/case?what=unplayable_ball&{0}=yes",
        "/case?what=unplayable_ball&area_of_ball={0}", "/case?what=unplayable_ball&club={0}", "/case?what=ball_lost&search_minutes={0}",
        "/case?on={0}", "/api/rule?what=unplayable_ball&hole={0}", "/holes/{0}", "/holes/2025-06-21?saved={0}", "/map?saved={0}",
        "/api/map?version={0}", "/settings?back=/case?hole={0}", "/nowhere/{0}", "/case?hole=²", "/holes/2025-06-21?speed={0}",
    ],
)  # fmt: skip
def test_numbers_of_thousands_of_digits_fail_nothing(desk: TestClient, address: str) -> None:
    """They are refused, or passed over, with a page that says so; nothing comes back empty."""
    answer = desk.get(address.format("9" * 5000))

    assert answer.status_code < 500
    assert len(answer.content) > 100 or answer.status_code in (303, 307)


def test_no_endpoint_holds_up_the_others() -> None:
    """Every endpoint runs beside the event loop: reading and writing files in it would stop every other request."""
    waiting = [
        route.path for router in ROUTERS for route in router.routes
        if isinstance(route, APIRoute) and iscoroutinefunction(route.endpoint)
    ]  # fmt: skip

    assert not waiting


def test_every_address_belongs_to_a_room(app: FastAPI) -> None:
    """What the tests above walk is all there is, beside files and the description of the JSON."""
    rest = {
        getattr(route, "path", "")
        for route in app.routes
        if not isinstance(route, Mount) and type(route).__name__ not in ("APIRoute", "_IncludedRouter")
    }

    assert rest <= {"/api/openapi.json", ""}


BACK = ["//elsewhere.example", "https://elsewhere.example", "/\\elsewhere.example", "\\\\elsewhere.example", "/\t/elsewhere.example",
        "javascript:alert(1)", "", "elsewhere", "/ok\n", "http:/elsewhere.example", "//[", "/a\\b"]  # fmt: skip


@pytest.mark.parametrize("back", BACK)
def test_back_leads_only_to_a_page_of_the_desk(client: TestClient, back: str) -> None:
    """Anything that could lead elsewhere leads to the first page."""
    answer = client.post("/settings", data={"on": "2025-06-21", "back": back})

    assert answer.headers["location"].startswith("/?")


@given(st.text(st.sampled_from("/\\:?#@.a\t\n []%"), max_size=12))
def test_back_stays_inside_however_it_is_written(back: str) -> None:
    """It begins with one slash, and holds nothing that a browser reads as a second one, or leaves out."""
    found = within(back)

    assert found.startswith("/")
    assert not found.startswith("//")
    assert not set(found) & set("\\\t\n ")


Page = Callable[..., Any]


@pytest.mark.browser
def test_no_page_breaks_its_own_policy(address: str, chromium: Any) -> None:
    """A browser that holds the desk to its policy finds nothing to refuse, on any page."""
    context = chromium.new_context(base_url=address)
    page = context.new_page()
    refused: list[str] = []
    page.on(
        "console", lambda said: refused.append(said.text) if "Content Security Policy" in said.text else None
    )
    for path in (
        "/",
        "/ball?hole=7&ball=55.0041,4.00015",
        "/what",
        "/case?what=unplayable_ball",
        "/settings",
        "/map",
        "/holes",
        "/marking",
        "/nowhere",
    ):
        page.goto(path)
        page.locator("h1").first.wait_for()
        page.wait_for_load_state("networkidle")
    context.close()

    assert not refused
