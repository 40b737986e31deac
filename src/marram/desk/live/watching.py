"""Waiting until somebody, in whatever process, added something to the records: without asking for it row by row."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from time import sleep

from sqlalchemy import text

from marram.records.database import Records

EVERY = 0.1
"""Seconds between two looks at a file (own choice: a tenth of the second in which others are to see it)."""

CHANNEL = "marram_changes"
"""What PostgreSQL tells of changes by; the triggers of the migration name it too."""


@contextmanager
def changes(records: Records) -> Iterator[Callable[[], bool]]:
    """Give what waits a moment and returns whether something was added meanwhile.

    A file of SQLite has a number that goes up with every transaction of another connection (``PRAGMA data_version``):
    reading it costs some microseconds. PostgreSQL tells by itself.
    """
    with records.engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        raw = connection.connection.driver_connection
        assert raw is not None
        if not records.is_file:
            connection.execute(text(f"LISTEN {CHANNEL}"))
            yield lambda: any(True for _ in raw.notifies(timeout=EVERY, stop_after=1))
            return

        def version() -> int:
            return int(raw.execute("PRAGMA data_version").fetchone()[0])

        last = version()

        def changed() -> bool:
            nonlocal last
            sleep(EVERY)
            before, last = last, version()
            return before != last

        yield changed
