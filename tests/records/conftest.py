"""Records to try things on: the same tests on a file of SQLite and on a PostgreSQL server of their own."""

import os
import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from uuid import uuid4

import pytest

from marram.records.database import Records, connected, opened
from marram.records.entry import Entry, new_ident
from marram.records.making import made, migrate
from marram.records.tables import Club, Event
from tests.records.postgresql import MISSING, Server, programs

NOON = datetime(2025, 6, 21, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """A PostgreSQL server; without the program the tests are skipped, and where all must run (CI) they fail."""
    if programs() is None:
        assert os.environ.get("CI") != "true", MISSING
        pytest.skip(MISSING)
    found = Server()
    try:
        template = found.create("marram_template")
        with connected(template) as records, records.writing() as connection:
            migrate(connection)
        yield found
    finally:
        found.stop()


@pytest.fixture(scope="session")
def blank(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A file of records with nothing in it."""
    file = tmp_path_factory.mktemp("blank") / "club.db"
    made(file).close()
    return file


@pytest.fixture(params=["sqlite", "postgresql"])
def address(request: pytest.FixtureRequest, tmp_path: Path, blank: Path) -> Iterator[str]:
    """Where empty records are, ready for use."""
    if request.param == "sqlite":
        shutil.copyfile(blank, tmp_path / "club.db")
        yield str(tmp_path / "club.db")
        return
    running: Server = request.getfixturevalue("server")
    name = f"t{uuid4().hex}"
    yield running.create(name, "marram_template")
    running.drop(name)


@pytest.fixture
def records(address: str) -> Iterator[Records]:
    with opened(address) as found:
        yield found


@pytest.fixture
def event(records: Records) -> str:
    """An event in the records."""
    return new_event(records)


def new_event(records: Records, name: str = "Quillsand Midsummer Cup") -> str:
    club, found = new_ident(), new_ident()
    with records.changing() as session:
        session.add(Club(id=club, name=f"Club of {name}", time_zone="Europe/London"))
        session.flush()
        session.add(Event(id=found, club_id=club, name=name, conditions="{}"))
    return found


def clock(start: datetime = NOON) -> Callable[[], datetime]:
    """A clock that goes on a second each time it is looked at."""
    seconds = iter(range(10**9))
    return lambda: start + timedelta(seconds=next(seconds))


def note(words: str = "", **more: object) -> Entry:
    return Entry("note", NOON, content={"words": words}, **more)  # type: ignore[arg-type]
