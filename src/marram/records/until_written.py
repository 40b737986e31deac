"""What was read from the records once and holds until anybody writes to them, in whatever process.

A file of SQLite has a number that goes up with every transaction of another connection (``PRAGMA data_version``); a
connection that only ever asks for it sees every writing there is, at some microseconds a look. PostgreSQL has nothing of the
kind that does not cost what reading costs: there nothing is held.
"""

from collections.abc import Callable, Hashable
from threading import Lock
from typing import TYPE_CHECKING, Any, TypeVar

from sqlalchemy.exc import DBAPIError

if TYPE_CHECKING:
    from marram.records.database import Records

MOST = 1000
"""How much is held at most (own choice: the devices of a large event, and what little else there is)."""

Read = TypeVar("Read")


class UntilWritten:
    """What is held of some records.

    Args:
        records: the records.
    """

    def __init__(self, records: "Records") -> None:
        self._records = records
        self._lock = Lock()
        self._watching: Any = None
        self._version: object = None
        self._held: dict[Hashable, Any] = {}

    def __call__(self, key: Hashable, read: Callable[[], Read]) -> Read:
        """Return what was read for a key and still holds, or read it.

        Args:
            key: what is read.
            read: reads it, outside of any transaction that writes; what it gives is changed by nobody.
        """
        if not self._records.is_file:
            return read()
        with self._lock:
            version = self._looked()
            if version != self._version or len(self._held) > MOST:
                self._held.clear()
                self._version = version
            if key in self._held:
                found: Read = self._held[key]
                return found
        made = read()
        with self._lock:
            if version == self._version:  # what was read is at least as new as that
                self._held[key] = made
        return made

    def close(self) -> None:
        """Let go of everything."""
        with self._lock:
            self._held.clear()
            self._version = None
            if self._watching is not None:
                self._watching.close()
                self._watching = None

    def _looked(self) -> object:
        """Return the number of the last writing; something else each time where it cannot be read."""
        try:
            if self._watching is None:
                self._watching = self._records.engine.raw_connection()
                self._watching.detach()
            (found,) = self._watching.dbapi_connection.execute("PRAGMA data_version").fetchone()
        except (DBAPIError, self._records.engine.dialect.loaded_dbapi.Error):
            return object()
        return found


__all__ = ["UntilWritten"]
