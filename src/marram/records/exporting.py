"""Everything that is kept, written in open formats into a folder, and read back from it into new records.

``manifest.json`` says what the export is, with a digest of every file and the receipt of every log. Each table is a file
of JSON lines; what is bytes stands in a file of its own, byte for byte. Beside them stand, for people and
spreadsheets, each course's newest map as GeoJSON and each log as CSV; these are not read back. What lets people in
(invitations, sign-ins, passwords) is in no export: whoever reads one back invites anew.
"""

import csv
import json
import os
import shutil
from collections.abc import Iterator
from datetime import UTC, date, datetime, time
from hashlib import sha256
from io import StringIO
from pathlib import Path
from secrets import token_hex
from typing import Any

from sqlalchemy import Column, Connection, LargeBinary, insert, select, text
from sqlalchemy import Table as TableData

from marram import __version__
from marram.errors import InputError
from marram.records.canonical import canonical
from marram.records.database import SCHEMA, Records
from marram.records.entry import instant
from marram.records.tables import EXPORTED
from marram.records.verifying import Verified, verified
from marram.said import said

FORMAT = 1
"""Version of the format; older ones stay readable for ever."""

MANIFEST = "manifest.json"
_ENDINGS = {"image/jpeg": ".jpg", "image/png": ".png", "image/webp": ".webp", "text/plain": ".txt"}
_SHORT = 64
"""Bytes up to which a value stands in its line, as hexadecimal digits (own choice)."""


def exported(records: Records, folder: Path) -> list[Verified]:
    """Write everything into a new folder, as it is at one moment; return the logs.

    Raises:
        InputError: something is there already, or it cannot be written; nothing is left half-written.
    """
    if os.path.lexists(folder):
        raise InputError(said("{path} is there already. Move it away, or give another name.", path=folder))
    draft = folder.parent / f".writing-{token_hex(8)}"
    logs = verified(records)
    try:
        draft.mkdir()
        with records.reading() as connection:
            tables = {one.name: _write_table(connection, one, draft) for one in EXPORTED}
            _write_views(connection, draft)
        files = {
            path.relative_to(draft).as_posix(): sha256(path.read_bytes()).hexdigest()
            for path in sorted(draft.rglob("*"))
            if path.is_file()
        }
        manifest = {
            "marram_export": FORMAT,
            "schema": SCHEMA,
            "program": __version__,
            "made_at": instant(datetime.now(UTC)),
            "tables": tables,
            "receipts": {one.event: one.receipt for one in logs},
            "files": files,
        }
        (draft / MANIFEST).write_text(json.dumps(manifest, indent=1, ensure_ascii=False), encoding="utf-8")
        draft.rename(folder)
    except OSError as error:
        raise InputError(
            said("{path} cannot be written: {why}. Name another place.", path=folder, why=error.strerror)
        ) from None
    finally:
        shutil.rmtree(draft, ignore_errors=True)
    return logs


def read_back(folder: Path, records: Records) -> list[Verified]:
    """Read an export into records that hold nothing yet; return the logs, compared with the receipts of the export.

    Raises:
        InputError: the export is not whole, of another format or schema, or the records hold something; nothing
            was read back.
    """
    manifest = _manifest(folder)
    faults = list(_faults(folder, manifest))
    if faults:
        raise InputError(*faults)
    with records.writing() as connection:
        if connection.scalar(text("SELECT count(*) FROM clubs")) or connection.scalar(
            text("SELECT count(*) FROM people")
        ):
            raise InputError(
                said(
                    "{name} holds something already. Read an export back into new records.", name=records.name
                )
            )
        for one in EXPORTED:
            rows = list(_read_table(one, folder))
            if rows:
                connection.execute(insert(one), rows)
    receipts = {
        event: {int(number): digits}
        for event, (number, _, digits) in (
            (one, told.partition(":")) for one, told in manifest["receipts"].items()
        )
        if digits
    }
    return verified(records, receipts)


def _kept_columns(table: TableData) -> list[Column[Any]]:
    return [column for column in table.columns if column.computed is None]


def _write_table(connection: Connection, table: TableData, folder: Path) -> int:
    columns = _kept_columns(table)
    count = 0
    with (
        (folder / f"{table.name}.jsonl").open("w", encoding="utf-8") as file,
        connection.execute(
            select(*columns).order_by(*table.primary_key), execution_options={"yield_per": 200}
        ) as rows,
    ):
        for row in rows:
            count += 1
            key = "-".join(str(_plain(getattr(row, one.name))) for one in table.primary_key)
            line = {
                column.name: _written(getattr(row, column.name), column, folder, key, row)
                for column in columns
            }
            file.write(canonical(line) + "\n")
    return count


def _written(value: Any, column: Column[Any], folder: Path, key: str, row: Any) -> Any:
    if not isinstance(value, bytes):
        return _plain(value)
    if len(value) <= _SHORT and column.name == "salt":
        return {"hex": value.hex()}
    ending = _ENDINGS.get(getattr(row, "media_type", ""), ".json")
    name = f"{column.table.name}/{key}{ending}"
    (folder / column.table.name).mkdir(exist_ok=True)
    (folder / name).write_bytes(value)
    return {"file": name}


def _plain(value: Any) -> Any:
    return value.isoformat() if isinstance(value, date | time) else value


def _read_table(table: TableData, folder: Path) -> Iterator[dict[str, Any]]:
    with (folder / f"{table.name}.jsonl").open(encoding="utf-8") as lines:
        for line in lines:
            given = json.loads(line)
            yield {
                column.name: _read(given.get(column.name), column, folder) for column in _kept_columns(table)
            }


def _read(value: Any, column: Column[Any], folder: Path) -> Any:
    if value is None:
        return None
    if isinstance(column.type, LargeBinary):
        return bytes.fromhex(value["hex"]) if "hex" in value else (folder / value["file"]).read_bytes()
    kind = column.type.python_type
    return kind.fromisoformat(value) if kind in {date, time} else value


def _manifest(folder: Path) -> dict[str, Any]:
    try:
        found: dict[str, Any] = json.loads((folder / MANIFEST).read_bytes())
        known = (found["marram_export"], found["schema"])
        files = found["files"]
        if not isinstance(files, dict):
            raise TypeError
    except OSError as error:
        raise InputError(
            said(
                "{path} is no export that can be read: {why}. Check the path.",
                path=folder,
                why=error.strerror,
            )
        ) from None
    except (ValueError, KeyError, TypeError):
        raise InputError(
            said("{path} is no manifest of an export. Put back a copy.", path=folder / MANIFEST)
        ) from None
    if known != (FORMAT, SCHEMA):
        raise InputError(
            said(
                "{path} is an export of another marram (format {format}, schema {schema}). Read it with that one.",
                path=folder,
                format=known[0],
                schema=known[1],
            )
        )
    return found


def _faults(folder: Path, manifest: dict[str, Any]) -> Iterator[str]:
    """Yield what of an export is not as it was written."""
    needed = {f"{one.name}.jsonl" for one in EXPORTED}
    for name in sorted(needed | set(manifest["files"])):
        path = folder / name
        if not path.resolve().is_relative_to(folder.resolve()):
            yield said("{path} lies outside of the export.", path=path)
        elif not path.is_file():
            yield said("{path} is missing. Put back a copy of the export.", path=path)
        elif sha256(path.read_bytes()).hexdigest() != manifest["files"].get(name):
            yield said("{path} is not as it was exported. Put back a copy of the export.", path=path)


def _write_views(connection: Connection, folder: Path) -> None:
    """Write what people open: maps as GeoJSON, logs as CSV."""
    newest = text(
        "SELECT c.id, m.content FROM courses c JOIN map_versions m ON m.course_id = c.id "
        "WHERE m.number = (SELECT max(number) FROM map_versions WHERE course_id = c.id)"
    )
    (folder / "views").mkdir()
    for row in connection.execute(newest):
        document = json.loads(bytes(row.content)).get("document")
        path = folder / "views" / f"map-{row.id}.geojson"
        path.write_text(json.dumps(document, ensure_ascii=False), encoding="utf-8")
    names = dict(
        tuple(row) for row in connection.execute(text("SELECT person_id, name FROM personal_details"))
    )
    for event in connection.scalars(text("SELECT id FROM events")).all():
        table = StringIO(newline="")
        writer = csv.writer(table)
        writer.writerow(
            ["number", "recorded_at", "kind", "hole", "player", "by", "corrects", "id", "digest", "content"]
        )
        log = text(
            "SELECT number, recorded_at, body, id, digest FROM log WHERE event_id = :event ORDER BY number"
        )
        for row in connection.execute(log, {"event": event}):
            body = json.loads(row.body)
            who = [names.get(body.get(one), body.get(one, "")) for one in ("player", "by")]
            told = [body["kind"], body.get("hole", ""), *who, body.get("corrects", ""), row.id, row.digest]
            content = json.dumps(body.get("content", {}), ensure_ascii=False)
            writer.writerow([row.number, row.recorded_at, *map(_harmless, map(str, told)), content])
        (folder / "views" / f"log-{event}.csv").write_text(table.getvalue(), encoding="utf-8-sig", newline="")


def _harmless(value: str) -> str:
    """Return a value that no spreadsheet takes for a formula."""
    return f"'{value}" if value[:1] in {"=", "+", "-", "@", "\t", "\r"} else value
