"""Joining by a link and signing in by a password: what lets in, what does not, how often one may try, and what the cookie is."""

import re
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from fastapi import FastAPI

from marram.desk.log.kept import KeptHere
from marram.desk.people.door import BY_NAME, COOKIE, COOKIE_BY_TLS, JOINING, Door
from marram.desk.people.limits import Limit
from marram.desk.people.roles import CHIEF
from marram.desk.reaching import reached_at, this_machine_alone
from marram.records.sign_ins import all_signed_in, in_role, set_password
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.signing_in import guarded, secret_of, signature, signed_in
from tests.desk.test_log import HIDDEN, RULING

PASSWORD = "dune grass holds the sand"


class Seconds:
    """A clock that stands still until it is told."""

    now = 0.0

    def __call__(self) -> float:
        return self.now


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    with club(tmp_path_factory.mktemp("joining")) as found:
        yield found


@pytest.fixture
def ticking() -> Seconds:
    return Seconds()


@pytest.fixture
def app(kept: KeptHere, ticking: Seconds) -> FastAPI:
    return guarded(kept, ticking=ticking)


@pytest.fixture
def device(app: FastAPI) -> TestClient:
    return TestClient(app, follow_redirects=False)


def joining(device: TestClient, secret: str, **filled: str) -> object:
    return device.post(f"/join/{secret}", data={"csrf": signature(device, f"/join/{secret}"), **filled})


def test_a_link_leads_in_by_a_tap(device: TestClient, kept: KeptHere) -> None:
    """Looking uses nothing up; who is chosen is signed in, by a cookie that no script reads and no other site sends."""
    secret = secret_of(kept, "referee")
    for _ in range(3):
        assert "Jorund Saltwick" in device.get(f"/join/{secret}").text
    person = {name: one for one, name in in_role(kept.records, kept.event_id, "referee")}["Jorund Saltwick"]
    answer = joining(device, secret, person=person)

    assert (answer.status_code, answer.headers["location"]) == (303, "/now")
    cookie = next(one for one in answer.headers.get_list("set-cookie") if one.startswith(COOKIE))
    assert {"HttpOnly", "SameSite=lax", "Path=/"} <= {part.strip() for part in cookie.split(";")}
    assert "Secure" not in cookie
    assert device.get("/log").status_code == 200
    assert TestClient(device.app, follow_redirects=False).get(f"/join/{secret}").status_code == 410


def test_by_tls_the_cookie_is_bound_to_the_host_and_secure(app: FastAPI, kept: KeptHere) -> None:
    """It has the name that browsers take from this host alone, and no clear line carries it."""
    device = TestClient(app, follow_redirects=False, base_url="https://localhost")
    answer = joining(device, secret_of(kept, "starter"), name="Sabine Dunlin")

    cookie = next(one for one in answer.headers.get_list("set-cookie") if one.startswith(COOKIE_BY_TLS))
    assert "Secure" in cookie
    assert device.get("/now").status_code == 200


def test_a_link_that_is_none_is_refused_and_tries_are_counted(
    device: TestClient, ticking: Seconds, kept: KeptHere
) -> None:
    """After so many failures the address waits, also with a right link; when the time is over it may try again."""
    most, seconds = JOINING
    for _ in range(most):
        assert device.get("/join/nonsense").status_code == 410
    refused = device.get("/join/nonsense")
    right = secret_of(kept, "referee")

    assert refused.status_code == 429
    assert 0 < int(refused.headers["Retry-After"]) <= seconds
    assert device.get(f"/join/{right}").status_code == 429
    ticking.now += int(refused.headers["Retry-After"])
    assert device.get(f"/join/{right}").status_code == 200


def test_a_form_of_another_device_joins_nobody(app: FastAPI, kept: KeptHere) -> None:
    """What one device was given to sign with is of no use on another, so that nobody is signed in by another page."""
    secret = secret_of(kept, "referee")
    one, other = (TestClient(app, follow_redirects=False) for _ in range(2))
    theirs = signature(other, f"/join/{secret}")
    signature(one, f"/join/{secret}")

    assert one.post(f"/join/{secret}", data={"csrf": theirs, "name": "Sabine Dunlin"}).status_code == 403
    assert one.post(f"/join/{secret}", data={"name": "Sabine Dunlin"}).status_code == 403


@pytest.fixture(scope="module")
def password(kept: KeptHere) -> str:
    """Ottiline Brackmere, the chief referee, wanted a password."""
    ((person, _),) = in_role(kept.records, kept.event_id, CHIEF)
    set_password(kept.records, person, Door(kept.records, kept.event_id).hashed(PASSWORD), datetime.now(UTC))
    return PASSWORD


def signing_in(device: TestClient, name: str, password: str, next_: str = "/log") -> object:
    sent = {"csrf": signature(device, "/sign-in"), "name": name, "password": password, "next": next_}
    return device.post("/sign-in", data=sent)


def test_a_password_signs_in_and_leads_on(device: TestClient, password: str) -> None:
    """To the page that was asked for, and never to another site."""
    answer = signing_in(device, "Ottiline Brackmere", password)
    assert (answer.status_code, answer.headers["location"]) == (303, "/log")
    assert device.get("/people").status_code == 200
    again = signing_in(device, "Ottiline Brackmere", password, "//elsewhere.example/")
    assert again.headers["location"] == "/"


def test_a_wrong_password_and_nobodys_name_are_answered_alike(
    device: TestClient, password: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """In the same words, and each after one password was worked out, so that neither tells whether a name is there."""
    from argon2 import PasswordHasher

    worked: list[str] = []
    verify = PasswordHasher.verify
    monkeypatch.setattr(
        PasswordHasher, "verify", lambda self, kept, given: worked.append(kept) or verify(self, kept, given)
    )
    wrong = signing_in(device, "Ottiline Brackmere", password + "?")
    nobody = signing_in(device, "Nobody Atall", password)

    assert wrong.status_code == nobody.status_code == 200
    assert wrong.text.replace("Ottiline Brackmere", "") == nobody.text.replace("Nobody Atall", "")
    assert len(worked) == 2
    assert all(one.startswith("$argon2id$") for one in worked)


def test_a_name_may_fail_so_often(app: FastAPI, password: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Beyond that not even the right password is looked at, from whichever device."""
    monkeypatch.setattr(Door, "fits", lambda _door, given, _kept: given == password)
    for _ in range(BY_NAME[0]):
        signing_in(TestClient(app, follow_redirects=False), "Ottiline Brackmere", "wrong")

    refused = signing_in(TestClient(app, follow_redirects=False), "ottiline brackmere", password)
    assert refused.status_code == 429


def test_a_password_is_set_and_given_up(app: FastAPI, kept: KeptHere) -> None:
    """Too short a one is refused with nothing kept; with one the official signs in elsewhere, without it no more."""
    mine, elsewhere = (
        signed_in(app, kept, "scorer", "Avis Sanderling"),
        TestClient(app, follow_redirects=False),
    )
    sign = signature(mine, "/me")
    short = mine.post("/me/password", data={"csrf": sign, "password": "dunes"})
    assert "at least 10" in short.text
    assert signing_in(elsewhere, "Avis Sanderling", "dunes").status_code == 200
    mine.post("/me/password", data={"csrf": sign, "password": PASSWORD})
    assert signing_in(elsewhere, "Avis Sanderling", PASSWORD).status_code == 303
    mine.post("/me/password", data={"csrf": sign, "password": ""})
    other = TestClient(app, follow_redirects=False)
    assert signing_in(other, "Avis Sanderling", PASSWORD).status_code == 200


def test_the_chief_ends_a_sign_in_from_elsewhere(app: FastAPI, kept: KeptHere) -> None:
    """With the next request the device is nobody's; its own signing out ends it as well; the Committee ends no chief's."""
    chief, referee = (
        signed_in(app, kept, CHIEF, "Cora Curlew"),
        signed_in(app, kept, "referee", "Ruben Turnstone"),
    )
    committee = signed_in(app, kept, "committee", "Ines Avocet")
    known = {one.person: one.id for one in all_signed_in(kept.records, kept.event_id, datetime.now(UTC))}
    theirs = known[referee.get("/api/me").json()["person"]]
    chiefs = known[chief.get("/api/me").json()["person"]]
    refused = committee.post("/people/end", data={"csrf": signature(committee, "/people"), "id": chiefs})
    assert refused.status_code == 400
    assert (
        chief.post("/people/end", data={"csrf": signature(chief, "/people"), "id": theirs}).status_code == 303
    )

    assert referee.get("/api/me").json()["role"] == "public"
    assert referee.get("/log").headers["location"] == "/sign-in?next=%2Flog"
    assert chief.post("/sign-out", data={"csrf": signature(chief, "/me")}).status_code == 303
    assert chief.get("/people").status_code == 303


def test_the_committee_invites_no_chief_referee(app: FastAPI, kept: KeptHere) -> None:
    """A role gives no more than it may."""
    committee = signed_in(app, kept, "committee", "Piers Godwit")
    sent = {"csrf": signature(committee, "/people"), "role": CHIEF, "uses": "1", "hours": "1"}

    assert committee.post("/people/invite", data=sent).status_code == 400
    page = committee.post("/people/invite", data={**sent, "role": "referee"}).text
    assert "/join/" in page
    assert 'src="data:image/svg+xml' in page


def test_a_ruling_is_recorded_by_whoever_is_signed_in(app: FastAPI, kept: KeptHere) -> None:
    """Whatever name a form sends along; and nobody is asked who it is."""
    referee = signed_in(app, kept, "referee", "Greta Whimbrel")
    page = referee.get(RULING).text
    assert 'name="by"' not in page
    section = page.split('<section class="record', 1)[1].split("</section>")[0]
    sent = {name: value.replace("&amp;", "&") for name, value in HIDDEN.findall(section)}
    (chief,) = (
        one for one, name in in_role(kept.records, kept.event_id, CHIEF) if name == "Ottiline Brackmere"
    )
    answer = referee.post("/record", data={**sent, "by": chief, "csrf": signature(referee, RULING)})

    assert answer.status_code == 303
    entry = kept.log.entries(kept.event_id)[-1]
    assert entry.told["by"] == referee.get("/api/me").json()["person"] != chief


def test_the_first_link_is_made_until_a_chief_referee_is_signed_in(tmp_path: Path) -> None:
    """Each start takes back the one before; once a chief referee is signed in there is none."""
    with club(tmp_path) as kept:
        door = Door(kept.records, kept.event_id)
        first, second = door.first_link(), door.first_link()
        device = TestClient(guarded(kept), follow_redirects=False)
        assert first
        assert second
        assert device.get(f"/join/{first}").status_code == 410
        assert joining(device, second, name="Cora Curlew").status_code == 303

        assert door.first_link() is None
        assert device.get(f"/join/{second}").status_code == 410


def test_a_limit_lets_through_as_time_goes_by() -> None:
    """Three in a minute: the fourth waits twenty seconds, another key not at all."""
    now = Seconds()
    limit = Limit(3, 60.0, now)
    for _ in range(3):
        assert limit.wait("a") == 0
        limit.failed("a")

    assert limit.wait("a") == pytest.approx(20)
    assert limit.wait("b") == 0
    now.now += 20
    assert limit.wait("a") == pytest.approx(0)


@pytest.mark.parametrize(
    ("host", "hosts", "alone", "at"),
    [
        ("127.0.0.1", (), True, None),
        ("127.0.0.1", ("localhost",), True, None),
        ("127.0.0.1", ("desk.example",), False, "http://desk.example:8123/"),
        ("10.0.0.7", (), False, "http://10.0.0.7:8123/"),
        ("fd00::7", (), False, "http://[fd00::7]:8123/"),
    ],
)
def test_a_desk_knows_whether_others_reach_it(
    host: str, hosts: tuple[str, ...], alone: bool, at: str | None
) -> None:
    """By the address it listens on and by the names it goes by."""
    assert this_machine_alone(host, hosts) is alone
    assert reached_at(host, 8123, hosts) == at


def test_who_is_signed_in_need_not_say_who_saves(kept: KeptHere) -> None:
    """Their name stands in the form of the holes and of the map; another name given once is offered from then on."""
    desk = signed_in(guarded(kept), kept, "committee", name="Wimbrel Tace")
    for page in ("/holes/2025-06-21", "/map"):
        assert 'value="Wimbrel Tace"' in desk.get(page).text, page
    desk.cookies.set("marram_saver", "W.T.")

    assert re.search(r'id="who"[^>]*value="W\.T\."', desk.get("/holes/2025-06-21").text)
