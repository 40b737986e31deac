"""Acknowledged log entries a second with 8 callers, beside plain rows of the same size on the same disk in the same run.

The peer writes one row a transaction with the database's own driver: SQLite written ahead with full synchronisation, and
PostgreSQL with its defaults; no chain, no identifier looked up, no columns read out, one caller (SQLite) or 8.
"Alone" is one caller without group commit; "shared" is what the desk uses.

    python bench/records.py [--entries 2000] [--folder DISK]
"""

import argparse
import sqlite3
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

import psycopg

from marram.records.database import opened
from marram.records.entry import Entry
from marram.records.events import Given, new_club, new_event
from marram.records.group_commit import GroupCommit
from marram.records.log import Log
from marram.records.making import made
from marram.records.verifying import verified
from tests.records.postgresql import Server, programs

CALLERS = 8
NOW = datetime(2025, 6, 21, 12, tzinfo=UTC)
FACTS = {f"a_fact_of_the_book_{number}": "yes" for number in range(12)}
CONTENT = {
    "case": {
        "played_on": "2025-06-21",
        "hole": 7,
        "incidents": [{"incident": "ball_in_penalty_area", "facts": FACTS}],
    },
    "outcome": {"kind": "Ruling", "combined": {"penalties": [], "relief": ["lateral", "back_on_the_line"]}},
    "headline": "One penalty stroke for the relief you choose.",
}


def entry() -> Entry:
    return Entry("ruling", NOW, hole=7, alike="0" * 32, content=CONTENT)


def rate(count, work) -> float:
    before = time.perf_counter()
    work()
    return count / (time.perf_counter() - before)


def by_many(count, one) -> None:
    with ThreadPoolExecutor(CALLERS) as many:
        list(many.map(lambda _: one(), range(count), chunksize=1))


def ours(address, count) -> dict[str, float]:
    with opened(address) as records:
        event = new_event(records, new_club(records, "Club"), Given("Cup"))
        log = Log(records)
        log.append(event, entry())
        found = {"alone": rate(count // 4, lambda: [log.append(event, entry()) for _ in range(count // 4)])}
        with GroupCommit(log) as shared:
            found["shared"] = rate(count, lambda: by_many(count, lambda: shared.append(event, entry())))
        before = time.perf_counter()
        (told,) = verified(records)
        assert told.broken is None
        assert told.entries == 1 + count // 4 + count
        found["verified"] = told.entries / (time.perf_counter() - before)
    return found


def plain_sqlite(path, count) -> float:
    body = entry().body()
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("CREATE TABLE t (number INTEGER PRIMARY KEY, body TEXT)")
    found = rate(
        count, lambda: [connection.execute("INSERT INTO t (body) VALUES (?)", (body,)) for _ in range(count)]
    )
    connection.close()
    return found


def plain_postgresql(address, count) -> float:
    body = entry().body()
    with psycopg.connect(address, autocommit=True) as connection:
        connection.execute("CREATE TABLE t (number SERIAL PRIMARY KEY, body TEXT)")

    def write(times) -> None:
        with psycopg.connect(address, autocommit=True) as connection:
            for _ in range(times):
                connection.execute("INSERT INTO t (body) VALUES (%s)", (body,))

    with ThreadPoolExecutor(CALLERS) as many:
        return rate(count, lambda: list(many.map(write, [count // CALLERS] * CALLERS)))


def told(name, peer, found) -> None:
    print(
        f"{name}: {found['shared']:,.0f} entries a second with {CALLERS} callers, {found['shared'] / peer:.2f} times the "
        f"peer ({peer:,.0f} rows); alone {found['alone']:,.0f} ({found['alone'] / peer:.2f} times); "
        f"verified {found['verified']:,.0f} a second",
        flush=True,
    )


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--entries", type=int, default=2_000)
    parser.add_argument("--folder", type=Path)
    wanted = parser.parse_args()
    with tempfile.TemporaryDirectory(dir=wanted.folder) as folder:
        made(Path(folder) / "club.db").close()
        peer = plain_sqlite(Path(folder) / "plain.db", wanted.entries)
        told("SQLite", peer, ours(Path(folder) / "club.db", wanted.entries))
    if programs() is None:
        print("PostgreSQL is not installed; nothing is measured on it.")
        return
    server = Server()
    try:
        peer = plain_postgresql(server.create("plain"), wanted.entries)
        address = server.create("club")
        made(address).close()
        told("PostgreSQL", peer, ours(address, wanted.entries))
    finally:
        server.stop()


if __name__ == "__main__":
    main()
