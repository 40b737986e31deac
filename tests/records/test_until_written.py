"""What was read once holds until anybody writes, from here or from elsewhere, and no longer; on PostgreSQL nothing is held."""

from pathlib import Path

import pytest
from sqlalchemy import select, update

from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.log import Log
from marram.records.tables import Club
from tests.records.conftest import note
from tests.records.full import fill


def zones(records: Records, asked: list[str]) -> str | None:
    """Return the zone of the club as it is held; each reading is noted."""

    def read() -> str | None:
        asked.append("read")
        with records.reading() as connection:
            return connection.scalar(select(Club.time_zone))

    return records.until_written("zone", read)


def set_zone(records: Records, name: str) -> None:
    with records.writing() as connection:
        connection.execute(update(Club).values(time_zone=name))


def test_each_writing_is_seen_at_once(records: Records, address: str, tmp_path: Path) -> None:
    """By the same program and by another; between two of them a file is read once."""
    event = fill(records, tmp_path / "maps")
    asked: list[str] = []
    with opened(address) as elsewhere:
        for by, name in ((records, "Europe/Dublin"), (elsewhere, "Europe/Oslo"), (records, "Asia/Tokyo")):
            set_zone(by, name)
            asked.clear()
            assert [zones(records, asked) for _ in range(3)] == [name] * 3
            assert len(asked) == (1 if records.is_file else 3)
        Log(elsewhere).append(event, note())
        asked.clear()
        zones(records, asked)
        assert asked


def test_what_was_written_while_it_was_read_is_not_missed(records: Records, tmp_path: Path) -> None:
    """A reading that began before a writing may give what was before it: it is not held beyond it."""
    fill(records, tmp_path / "maps")
    set_zone(records, "Europe/Dublin")

    def read_slowly() -> str | None:
        found = zones(records, [])
        set_zone(records, "Europe/Oslo")
        return found

    assert records.until_written("slow", read_slowly) == "Europe/Dublin"
    assert records.until_written("slow", lambda: zones(records, [])) == "Europe/Oslo"


def test_what_cannot_be_read_is_not_held(records: Records) -> None:
    """Whoever asks next tries again."""

    def fails() -> str:
        raise InputError("not now")

    with pytest.raises(InputError):
        records.until_written("once", fails)
    assert records.until_written("once", lambda: "read") == "read"


def test_records_that_were_closed_are_read_again(records: Records, tmp_path: Path) -> None:
    fill(records, tmp_path / "maps")
    set_zone(records, "Europe/Dublin")
    assert zones(records, []) == "Europe/Dublin"
    records.close()
    asked: list[str] = []
    assert zones(records, asked) == "Europe/Dublin"
    assert asked
