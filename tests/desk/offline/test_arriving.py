"""An entry that waited on a phone arrives once, however often it is sent; nobody gets what is another's."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any
from urllib.parse import urlencode

import pytest

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.records.entry import new_ident
from marram.services.log.moments import happened_at
from tests.clubs import club
from tests.desk.asking import TestClient

RED = {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no", "penalty_area_colour": "red"}


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[KeptHere]:
    folder = tmp_path_factory.mktemp("records")
    with club(folder) as found:
        yield found


@pytest.fixture
def desk(kept: KeptHere) -> TestClient:
    return TestClient(create_app(kept_here=kept), follow_redirects=False)


def waited(desk: TestClient, ident: str, **facts: str) -> dict[str, Any]:
    """Return an entry as a phone sends it."""
    conditions = desk.get("/api/offline/event").json()["conditions"]
    case = urlencode({**conditions, "hole": "9", "what": "ball_in_penalty_area", **RED, **facts})
    return {"ident": ident, "given_at": "2025-06-21T10:00:00Z", "case": case}


def test_an_entry_sent_again_is_there_once(desk: TestClient, kept: KeptHere) -> None:
    """The answer was lost, so the phone sends it again: the same number comes back, and the log holds one."""
    sent = waited(desk, "0c0ffee0-0000-4000-8000-000000000001")
    before = kept.log.head(kept.event_id)

    answers = [desk.post("/api/offline/entry", json=sent) for _ in range(3)]

    assert [one.status_code for one in answers] == [200, 200, 200]
    assert {one.json()["number"] for one in answers} == {before + 1}
    assert kept.log.head(kept.event_id) == before + 1


def test_another_entry_with_the_identifier_is_told_and_changes_nothing(
    desk: TestClient, kept: KeptHere
) -> None:
    """Both are put side by side: the phone keeps its own, the log its own."""
    ident = "0c0ffee0-0000-4000-8000-000000000002"
    first = desk.post("/api/offline/entry", json=waited(desk, ident)).json()
    before = kept.log.head(kept.event_id)

    second = desk.post("/api/offline/entry", json=waited(desk, ident, penalty_area_colour="yellow"))

    assert (second.status_code, second.json()["number"]) == (409, first["number"])
    assert second.json()["headline"] == first["headline"]
    assert kept.log.head(kept.event_id) == before


def test_what_cannot_be_recorded_is_refused_with_its_fault(desk: TestClient, kept: KeptHere) -> None:
    """A ruling that still asks something, or an answer that is none: said, and nothing added."""
    before = kept.log.head(kept.event_id)

    wrong = desk.post(
        "/api/offline/entry",
        json=waited(desk, "0c0ffee0-0000-4000-8000-000000000003", penalty_area_colour="blue"),
    )

    assert wrong.status_code == 400
    assert "penalty_area_colour" in wrong.json()["error"]["faults"][0]
    assert kept.log.head(kept.event_id) == before


def test_the_service_worker_changes_with_the_files_and_keeps_nothing_of_anybody_among_them(
    desk: TestClient,
) -> None:
    """What it keeps for all are files under their version; pages and answers are kept for one person only."""
    script = desk.get("/service-worker.js")
    from_desk = desk.get("/manifest.webmanifest").json()

    assert script.headers["content-type"].startswith("text/javascript")
    assert script.headers["cache-control"] == "no-cache"
    held = script.text.partition("\n")[0]
    assert '"/offline"' in held.partition('"data"')[2]
    assert "/api/" not in held.partition('"data"')[0]
    for icon in from_desk["icons"]:
        assert desk.get(icon["src"]).status_code == 200


@pytest.mark.parametrize("days", [-1, 1], ids=["a day behind", "a day ahead"])
def test_a_device_whose_clock_is_a_day_off_is_put_right(desk: TestClient, kept: KeptHere, days: int) -> None:
    """Both times are kept and told; pages show the desk's; two rulings stay in the order they were given in, and sent once."""
    off = timedelta(days=days)
    now = datetime.now(UTC)
    numbers = []
    for minutes in (30, 20):
        given = now - timedelta(minutes=minutes) + off
        sent = {
            **waited(desk, new_ident()),
            "given_at": given.isoformat(),
            "sent_at": (now + off).isoformat(),
        }
        again = [desk.post("/api/offline/entry", json=sent).json()["number"] for _ in range(2)]
        assert again[0] == again[1]
        numbers.append(again[0])
    first, second = (kept.log.numbered(kept.event_id, one) for one in numbers)
    assert first is not None
    assert second is not None

    assert datetime.fromisoformat(first.told["given_at"]).date() == (now - timedelta(minutes=30) + off).date()
    assert first.content["device_ahead"] == pytest.approx(off.total_seconds(), abs=60)
    assert happened_at(first) < happened_at(second) <= now
    assert abs(happened_at(first) - (now - timedelta(minutes=30))) < timedelta(minutes=1)
    assert "The clock of the device" in desk.get(f"/log/{first.number}").text


def test_a_device_whose_clock_is_right_is_left_alone(desk: TestClient, kept: KeptHere) -> None:
    """An hour out of reach is no wrong clock; what claims to be given after it arrived counts as it arrived."""
    now = datetime.now(UTC)
    hour = timedelta(hours=1)
    for given, sent_at, shown in ((now - hour, now, now - hour), (now + hour, None, now)):
        sent = {**waited(desk, new_ident()), "given_at": given.isoformat()}
        if sent_at:
            sent["sent_at"] = sent_at.isoformat()
        number = desk.post("/api/offline/entry", json=sent).json()["number"]
        entry = kept.log.numbered(kept.event_id, number)
        assert entry is not None
        assert "device_ahead" not in entry.content
        assert abs(happened_at(entry) - shown) < timedelta(minutes=2)
