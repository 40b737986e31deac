"""Records of every earlier schema, with something in every table it had, are brought up to date without losing a row."""

from collections.abc import Iterator, Mapping
from pathlib import Path
from uuid import uuid4

import pytest
from alembic.config import Config
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, insert, inspect, text

from marram.errors import InputError
from marram.records import making
from marram.records.database import APPLICATION, SCHEMA, connected, opened, schema_of
from marram.records.log import Log
from marram.records.making import brought_up_to_date, made, migrate
from marram.records.tables import LogWords, Table
from marram.records.verifying import unsound, verified
from marram.services.log.searching import Search, search
from tests.records.conftest import note
from tests.records.full import everything, fill
from tests.records.postgresql import Server

Rows = Mapping[str, list[Mapping[str, object]]]


def earlier() -> list[str]:
    """Every schema there was before the one of this program, the first first."""
    settings = Config()
    settings.set_main_option("script_location", str(making.MIGRATIONS).replace("%", "%%"))
    found = [one.revision for one in ScriptDirectory.from_config(settings).walk_revisions()]
    return sorted(found)[:-1]


@pytest.fixture(params=["sqlite", "postgresql"])
def empty(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """Where nothing is yet, not even a table."""
    if request.param == "sqlite":
        yield str(tmp_path / "old.db")
        return
    running: Server = request.getfixturevalue("server")
    name = f"t{uuid4().hex}"
    yield running.create(name)
    running.drop(name)


@pytest.fixture(scope="module")
def full(tmp_path_factory: pytest.TempPathFactory) -> tuple[str, Rows]:
    """An event, and every row of records that have something in every table; words to search by are made anew."""
    folder = tmp_path_factory.mktemp("full")
    with made(folder / "club.db") as records:
        event = fill(records, folder / "maps")
        rows = everything(records)
    tables = [one for one in Table.metadata.sorted_tables if one.name != LogWords.__tablename__]
    return event, {
        one.name: [dict(zip(one.columns.keys(), row, strict=True)) for row in rows[one.name]]
        for one in tables
    }


def as_it_was(connection: Connection, schema: str, rows: Rows) -> Rows:
    """Make the tables of a schema, put in what of the rows it had room for, and return that."""
    migrate(connection, schema)
    found, kept = inspect(connection), {}
    for table in Table.metadata.sorted_tables:
        if table.name not in rows or not found.has_table(table.name):
            continue
        there = {one["name"] for one in found.get_columns(table.name)}
        kept[table.name] = [{key: row[key] for key in row if key in there} for row in rows[table.name]]
        given = [key for key in there if table.columns[key].computed is None]
        connection.execute(insert(table), [{key: row[key] for key in given} for row in kept[table.name]])
    return kept


@pytest.mark.parametrize("schema", earlier())
def test_records_of_an_earlier_schema_lose_nothing(empty: str, schema: str, full: tuple[str, Rows]) -> None:
    """Every row is there with every value it had, what is new is empty, the log is whole, found by words, and goes on."""
    event, rows = full
    with connected(empty, new=True) as records, records.writing() as connection:
        if records.is_file:
            connection.execute(text(f"PRAGMA application_id = {APPLICATION}"))
        kept = as_it_was(connection, schema, rows)
    with pytest.raises(InputError, match="made by an earlier marram"):
        opened(empty)
    brought_up_to_date(empty)

    with opened(empty) as records:
        after = everything(records)
        for table in Table.metadata.sorted_tables:
            names = table.columns.keys()
            now = [dict(zip(names, row, strict=True)) for row in after[table.name]]
            before = [{name: row.get(name) for name in names} for row in kept.get(table.name, [])]
            assert now == before or table.name == LogWords.__tablename__, table.name
        assert schema_of(records) == SCHEMA
        assert [(one.entries, one.broken) for one in verified(records)] == [(5, None)]
        assert unsound(records) == []
        assert Log(records).append(event, note(hole=3)).number == 6
        assert search(records, event, Search("Dulsey")).count == 5


def test_there_are_earlier_schemas() -> None:
    """The test above tries as many as there are migrations but one; the first made the log."""
    assert earlier()[0] == "0001"
    assert len(earlier()) == int(SCHEMA) - 1
