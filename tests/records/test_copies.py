"""Backups and exports: what is kept can be destroyed and is there again."""

import csv
import json
import sqlite3
from collections.abc import Iterator
from pathlib import Path
from threading import Event as Flag
from threading import Thread

import pytest

from marram.errors import InputError
from marram.records.backup import backed_up, restored
from marram.records.database import Records, opened
from marram.records.exporting import exported, read_back
from marram.records.log import Log
from marram.records.making import made
from marram.records.tables import EXPORTED
from marram.records.verifying import verified
from tests.records.conftest import note
from tests.records.full import everything, fill
from tests.records.postgresql import Server
from tests.records.test_chain import without_guards

ON_FILE = pytest.mark.parametrize("address", ["sqlite"], indirect=True)


@pytest.fixture(params=["to sqlite", "to postgresql"])
def empty(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Records]:
    """Other records, with nothing in them: on either database, whichever the first are on."""
    if request.param == "to sqlite":
        with made(tmp_path / "elsewhere.db") as found:
            yield found
        return
    running: Server = request.getfixturevalue("server")
    with opened(running.create("elsewhere", "marram_template")) as found:
        yield found
    running.drop("elsewhere")


@ON_FILE
def test_a_backup_brings_everything_back(records: Records, tmp_path: Path) -> None:
    """The file and all beside it are destroyed; the backup, put back, holds every row, and the log goes on."""
    event = fill(records, tmp_path / "maps")
    before = everything(records)
    told = backed_up(records, tmp_path / "backup.db")
    records.close()
    for path in records.file.parent.glob(f"{records.file.name}*"):
        path.write_bytes(b"destroyed")
        path.unlink()
    again = restored(tmp_path / "backup.db", records.file)

    assert again == told
    assert [one.broken for one in told] == [None]
    with opened(records.file) as there:
        assert everything(there) == before
        assert Log(there).append(event, note()).number == 6


@ON_FILE
def test_a_backup_while_others_write_is_one_state(records: Records, tmp_path: Path) -> None:
    """Entries are added all the while: every backup is whole, and holds all that was acknowledged before it began."""
    event, stop, log = fill(records, tmp_path / "maps"), Flag(), Log(records)

    def write() -> None:
        while not stop.is_set():
            log.append(event, note())

    writer = Thread(target=write)
    writer.start()
    try:
        for turn in range(4):
            known = len(Log(records).entries(event))
            (told,) = backed_up(records, tmp_path / f"{turn}.db")
            assert told.broken is None
            assert told.entries >= known
    finally:
        stop.set()
        writer.join()


@ON_FILE
def test_a_backup_goes_over_nothing(records: Records, tmp_path: Path) -> None:
    """Neither a backup nor a restore takes the place of what is there, and nothing half-made stays."""
    fill(records, tmp_path / "maps")
    backed_up(records, tmp_path / "backup.db")
    before = (tmp_path / "backup.db").read_bytes(), everything(records)
    for deed in (
        lambda: backed_up(records, tmp_path / "backup.db"),
        lambda: restored(tmp_path / "backup.db", records.file),
    ):
        with pytest.raises(InputError, match="is there already"):
            deed()
    with pytest.raises(InputError, match="could not be copied"):
        backed_up(records, tmp_path / "no folder" / "backup.db")

    assert ((tmp_path / "backup.db").read_bytes(), everything(records)) == before
    assert not list(tmp_path.glob(".writing*"))


@ON_FILE
@pytest.mark.parametrize("place", [0, 20_000, 60_000])
def test_a_damaged_backup_is_refused(records: Records, tmp_path: Path, place: int) -> None:
    """A backup whose bytes were overwritten is not put back as if it were whole."""
    fill(records, tmp_path / "maps")
    backup = tmp_path / "backup.db"
    backed_up(records, backup)
    content = bytearray(backup.read_bytes())
    content[place : place + 3000] = b"\xa5" * 3000
    backup.write_bytes(content)
    with pytest.raises(InputError):
        restored(backup, tmp_path / "again.db")

    assert not (tmp_path / "again.db").exists()


@ON_FILE
def test_a_forged_file_is_not_backed_up_as_whole(records: Records, tmp_path: Path) -> None:
    """Records whose chain is broken make no backup that would later be taken for good."""
    fill(records, tmp_path / "maps")
    without_guards(records, "UPDATE log SET recorded_at = '' WHERE number = 2")
    with pytest.raises(InputError, match="is not whole, so no copy was made"):
        backed_up(records, tmp_path / "backup.db")

    assert not (tmp_path / "backup.db").exists()


def test_an_export_brings_everything_back(records: Records, empty: Records, tmp_path: Path) -> None:
    """From either database into either: every row of every table, byte for byte, and the chain whole by its receipts.

    What lets people in stays behind: whoever reads an export back invites anew.
    """
    fill(records, tmp_path / "maps")
    told = exported(records, tmp_path / "export")
    again = read_back(tmp_path / "export", empty)

    before, after = everything(records), everything(empty)
    doors = {"invitations", "sign_ins", "passwords", "whereabouts"}
    assert {name: after[name] for name in set(after) - doors} == {
        name: before[name] for name in set(after) - doors
    }
    assert [one.name for one in EXPORTED if not after[one.name]] == []
    assert all(before[name] and not after[name] for name in doors)
    assert again == told
    assert [one.broken for one in again] == [None]


def test_an_export_is_in_open_formats(records: Records, tmp_path: Path) -> None:
    """JSON lines, GeoJSON and CSV, readable without this program; no cell that a spreadsheet would compute."""
    event = fill(records, tmp_path / "maps")
    exported(records, tmp_path / "export")
    lines = (tmp_path / "export" / "log.jsonl").read_text(encoding="utf-8").splitlines()
    (geojson,) = (tmp_path / "export" / "views").glob("map-*.geojson")
    with (tmp_path / "export" / "views" / f"log-{event}.csv").open(encoding="utf-8-sig", newline="") as file:
        rows = list(csv.DictReader(file))

    assert [json.loads(line)["number"] for line in lines] == [1, 2, 3, 4, 5]
    document = json.loads(geojson.read_text(encoding="utf-8"))
    assert document["type"] == "FeatureCollection"
    assert {"t/1", "t/2"} & {one.get("id") for one in document["features"]}
    assert [row["hole"] for row in rows] == ["7"] * 5
    assert not [cell for row in rows for cell in row.values() if cell[:1] in tuple("=+-@")]


@ON_FILE
@pytest.mark.parametrize(
    "deed",
    [
        "change a line",
        "lose a file",
        "change a photograph",
        "lose the manifest",
        "other format",
        "no manifest",
    ],
)
def test_an_export_that_is_not_whole_is_refused(records: Records, tmp_path: Path, deed: str) -> None:
    """Each file that is not as it was written is named, and nothing is read back."""
    fill(records, tmp_path / "maps")
    folder = tmp_path / "export"
    exported(records, folder)
    manifest = folder / "manifest.json"
    if deed == "change a line":
        path = folder / "log.jsonl"
        path.write_text(
            path.read_text(encoding="utf-8").replace('"n":2', '"n":3', 1).replace('n\\":2', 'n\\":3', 1),
            encoding="utf-8",
        )
    elif deed == "lose a file":
        (folder / "people.jsonl").unlink()
    elif deed == "change a photograph":
        next((folder / "sealed_parts").glob("*.jpg")).write_bytes(b"other")
    elif deed == "lose the manifest":
        manifest.unlink()
    elif deed == "no manifest":
        manifest.write_text("[]")
    else:
        manifest.write_text(json.dumps({**json.loads(manifest.read_text()), "marram_export": 99}))
    with made(tmp_path / "again.db") as again:
        with pytest.raises(InputError):
            read_back(folder, again)

        assert not any(everything(again).values())


@ON_FILE
def test_an_export_is_read_only_into_empty_records(records: Records, tmp_path: Path) -> None:
    """What is there is neither mixed nor replaced."""
    fill(records, tmp_path / "maps")
    exported(records, tmp_path / "export")
    with pytest.raises(InputError, match="holds something already"):
        read_back(tmp_path / "export", records)
    with pytest.raises(InputError, match="is there already"):
        exported(records, tmp_path / "export")


@ON_FILE
def test_another_program_reads_the_file(records: Records, tmp_path: Path) -> None:
    """The file is plain SQLite: its log can be read and checked without this program."""
    fill(records, tmp_path / "maps")
    records.close()
    with sqlite3.connect(records.file) as plain:
        found = plain.execute("SELECT number, kind, hole FROM log ORDER BY number").fetchall()
    plain.close()

    assert found == [(number, "ruling", 7) for number in range(1, 6)]
    with opened(records.file) as again:
        assert verified(again)[0].entries == 5
