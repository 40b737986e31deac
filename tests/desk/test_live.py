"""The stream of events: nothing is missed or told twice, across a cut and from another process; each role hears what it may."""

import json
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

import httpx
import pytest
from fastapi import FastAPI

from marram.desk.live import hub, stream
from marram.desk.live.watching import changes
from marram.desk.log.kept import KeptHere
from marram.desk.people.door import COOKIE
from marram.records.database import Records, opened
from marram.records.entry import Entry, new_ident
from marram.records.log import Log
from marram.records.sign_ins import all_signed_in, end, in_role
from marram.records.whereabouts import report
from marram.services.day.suspension import suspending
from marram.services.kinds.suspension import Cause, Suspension
from tests.clubs import club
from tests.desk.serving import served
from tests.desk.settled import PATIENCE
from tests.desk.signing_in import guarded, signed_in

NOON = datetime(2025, 6, 21, 12, tzinfo=UTC)
STILL = 8
"""Signs of life of a stream that tells nothing, at one in fifteen seconds, after which a test gives up."""


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


@pytest.fixture
def app(kept: KeptHere) -> FastAPI:
    return guarded(kept)


@pytest.fixture
def address(app: FastAPI) -> Iterator[str]:
    with served(app) as running:
        yield running
        app.state.live.leaving = lambda: True


Event = tuple[str, str, object]
"""The identifier, the name and the data of an event."""


@contextmanager
def listening(address: str, device: httpx.Client, **headers: str) -> Iterator[Callable[[], Event]]:
    """Give what returns the next event of a stream; comments are passed over."""
    cookie = f"{COOKIE}={device.cookies[COOKIE]}"
    with httpx.stream(
        "GET", f"{address}/api/live", headers={"Cookie": cookie, **headers}, timeout=PATIENCE / 1000
    ) as answer:
        assert answer.status_code == 200
        assert answer.headers["content-type"].startswith("text/event-stream")
        lines = answer.iter_lines()

        def following() -> Event:
            told = {"id": "", "event": "", "data": "null"}
            beats = 0
            for line in lines:
                beats += line.startswith(": still here")
                assert beats < STILL, "Nothing was told for minutes."
                if not line and told["event"]:
                    return told["id"], told["event"], json.loads(told["data"])
                if not line:
                    told = {"id": "", "event": "", "data": "null"}
                name, _, value = line.partition(": ")
                if name in told:
                    told[name] = value
            return "", "end", None

        yield following


def until(following: Callable[[], Event], name: str) -> Event:
    """The next event of a name."""
    while (found := following())[1] != name:
        assert found[1] != "end"
    return found


def ruling(kept: KeptHere, hole: int, log: Log | None = None) -> int:
    entry = Entry("ruling", NOON, hole=hole, content={"headline": f"hole {hole}"})
    return (log or kept.log).append(kept.event_id, entry).number


def test_what_is_recorded_is_told_to_those_who_may_hear_it(
    address: str, app: FastAPI, kept: KeptHere
) -> None:
    """A referee hears of a ruling and of where somebody is, also from another process; a starter of the place alone."""
    with (
        listening(address, signed_in(app, kept, "referee")) as referee,
        listening(address, signed_in(app, kept, "starter")) as starter,
    ):
        assert until(referee, "head")[2] == 0
        until(referee, "where")
        until(starter, "play")
        with opened(kept.records.file) as elsewhere:
            number = ruling(kept, 7, Log(elsewhere))
        told = until(referee, "entry")
        assert (told[0], told[2]["number"], told[2]["hole"]) == (str(number), number, 7)  # type: ignore[index]
        (person, name), *_ = in_role(kept.records, kept.event_id, "referee")
        report(kept.records, kept.event_id, person, hole=4, words="tee", now=NOON)

        heard = [starter()]
        while heard[-1][1] != "where" or not heard[-1][2]:
            heard.append(starter())
        (place,) = heard[-1][2]  # type: ignore[misc]
        assert (place["name"], place["hole"], place["words"]) == (name, 4, "tee")
        assert {one for _, one, _ in heard} <= {"where", "play"}


def test_a_cut_connection_is_taken_up_without_loss(address: str, app: FastAPI, kept: KeptHere) -> None:
    """What was recorded meanwhile is told once and in order, then what comes."""
    device = signed_in(app, kept, "referee")
    ruling(kept, 1)
    with listening(address, device, **{"Last-Event-ID": "0"}) as following:
        last = until(following, "entry")[0]
    for hole in (2, 3, 4):
        ruling(kept, hole)
    with listening(address, device, **{"Last-Event-ID": last}) as following:
        missed = [until(following, "entry")[2]["hole"] for _ in range(3)]  # type: ignore[index]
        until(following, "cases")
        ruling(kept, 5)

        assert [*missed, until(following, "entry")[2]["hole"]] == [2, 3, 4, 5]  # type: ignore[index]


def test_entries_recorded_while_a_device_connects_are_told_once(
    address: str, app: FastAPI, kept: KeptHere
) -> None:
    """However the moment falls between what was missed and what happens: each of a hundred, once, in order."""
    device = signed_in(app, kept, "referee")
    recording = threading.Thread(target=lambda: [ruling(kept, 1 + n % 18) for n in range(100)])
    recording.start()
    with listening(address, device, **{"Last-Event-ID": "0"}) as following:
        heard = [int(until(following, "entry")[0]) for _ in range(100)]
    recording.join()

    assert heard == list(range(1, 101))


def test_what_is_recorded_before_anything_is_watched_is_told(
    address: str, app: FastAPI, kept: KeptHere, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A device that has been told where the log stands hears of every entry after that, however late the watch begins."""
    begin = threading.Event()

    @contextmanager
    def late(records: Records) -> Iterator[Callable[[], bool]]:
        begin.wait()
        with changes(records) as changed:
            yield changed

    monkeypatch.setattr(hub, "changes", late)
    with listening(address, signed_in(app, kept, "referee")) as following:
        try:
            assert until(following, "head")[2] == 0
            number = ruling(kept, 7)
        finally:
            begin.set()
        assert until(following, "entry")[0] == str(number)


@pytest.mark.parametrize("given", ["x", "-1", "9" * 30, "99", "1e3"])
def test_a_number_that_is_none_begins_anew(address: str, app: FastAPI, kept: KeptHere, given: str) -> None:
    """What a device cannot have heard: it is told where the log stands, and loads the page anew where it named an entry to come."""
    with listening(address, signed_in(app, kept, "referee"), **{"Last-Event-ID": given}) as following:
        assert following()[1:] == ("again" if given == "99" else "head", 0)


def test_a_sign_in_that_was_ended_ends_its_stream(
    address: str, app: FastAPI, kept: KeptHere, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With the next beat, not with the end of the day."""
    monkeypatch.setattr(stream, "BEAT", 0.05)
    with listening(address, signed_in(app, kept, "referee")) as following:
        until(following, "where")
        (mine,) = all_signed_in(kept.records, kept.event_id, datetime.now(UTC))
        end(kept.records, kept.event_id, mine.id, datetime.now(UTC))
        until(following, "play")
        assert following()[1] == "end"


def test_the_thread_that_watches_ends_with_the_last_who_listens(
    address: str, app: FastAPI, kept: KeptHere
) -> None:
    """A desk that nobody listens to looks at nothing."""
    with listening(address, signed_in(app, kept, "referee")) as following:
        until(following, "where")
        thread = app.state.live._thread
        assert thread.is_alive()
    thread.join(PATIENCE / 1000)

    assert not thread.is_alive()
    assert app.state.live._listeners == set()


def test_names_of_players_are_told_to_officials(address: str, app: FastAPI, kept: KeptHere) -> None:
    """And a player hears nothing at all."""
    player = kept.groups_on(kept.event.played_on)[0].players[0]  # type: ignore[arg-type]
    kept.log.append(kept.event_id, Entry("ruling", NOON, player=player.id, content={}))
    with listening(address, signed_in(app, kept, "scorer"), **{"Last-Event-ID": "0"}) as following:
        assert until(following, "entry")[2]["player"] == player.name  # type: ignore[index]
    assert signed_in(app, kept, "player").get("/api/live").status_code == 403


def test_the_state_of_play_is_told_at_once_and_to_whoever_comes_later(
    address: str, app: FastAPI, kept: KeptHere
) -> None:
    """A starter who listens hears that play is stopped; a page asked for afterwards says so; the public hears nothing."""
    starter = signed_in(app, kept, "starter")
    with listening(address, starter) as following:
        assert until(following, "play")[2] == {"words": "", "until": ""}
        kept.add(suspending(new_ident(), NOON, Suspension.IMMEDIATE, Cause.LIGHTNING))
        told = until(following, "play")[2]
    assert "stop at once" in told["words"]  # type: ignore[index]
    with listening(address, starter) as following:
        assert until(following, "play")[2] == told
    banner = '<p id="play" class="play not-printed" data-until="" role="alert"><a'
    assert banner in starter.get("/now").text
    assert 'id="play"' not in signed_in(app, kept, "public").get("/now").text
