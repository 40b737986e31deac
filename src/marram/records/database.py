"""Records, opened: a file of SQLite or a database of PostgreSQL, with every write on the disk before it is acknowledged."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, Self

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url, text
from sqlalchemy.exc import ArgumentError, DBAPIError
from sqlalchemy.orm import Session
from sqlalchemy.orm.exc import StaleDataError

from marram.errors import InputError
from marram.records.faults import fault_of
from marram.records.until_written import UntilWritten
from marram.said import said

SCHEMA = "0007"
"""The schema this program reads and writes: the newest migration (a test compares them)."""

APPLICATION = 0x4D415252
"""What SQLite's header names the program by that a file belongs to: "MARR" (own choice)."""

PATIENCE = 30
"""Seconds to wait for another who writes (own choice): longer than any writing of ours takes."""

_WRITES = "marram_writes"


class Records:
    """What a club keeps, opened.

    Args:
        engine: how it is reached.
        name: what it is called in messages: the file, or the address without its password.
    """

    def __init__(self, engine: Engine, name: str) -> None:
        self.engine = engine
        self.name = name
        self.writer = engine.execution_options(**{_WRITES: True})
        self.until_written = UntilWritten(self)

    @property
    def is_file(self) -> bool:
        """Whether this is a file of SQLite."""
        return self.engine.dialect.name == "sqlite"

    @property
    def file(self) -> Path:
        """The file; only where there is one."""
        assert self.engine.url.database is not None
        return Path(self.engine.url.database)

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """Give a connection that sees one state of everything until it is given back.

        Raises:
            InputError: the records cannot be read; what to do is said.
        """
        with self._faults(), self.engine.connect() as connection:
            if not self.is_file:
                connection.execute(text("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY"))
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """Give a connection whose changes are all kept at the end, or none of them where anything fails.

        Raises:
            InputError: they cannot be kept; what to do is said.
        """
        with self._faults(), self.writer.begin() as connection:
            yield connection

    @contextmanager
    def changing(self) -> Iterator[Session]:
        """Give a session of :mod:`marram.records.tables`; all is kept at the end, or nothing.

        Raises:
            InputError: somebody else changed the same thing meanwhile, or it cannot be kept.
        """
        with self._faults(), Session(self.writer) as session, session.begin():
            yield session

    @contextmanager
    def _faults(self) -> Iterator[None]:
        try:
            yield
        except StaleDataError:
            raise InputError(
                said("Somebody else changed the same thing meanwhile; nothing was saved. Look at it again.")
            ) from None
        except DBAPIError as error:
            raise fault_of(error, self.name) from error

    def close(self) -> None:
        """Let go of every connection."""
        self.until_written.close()
        self.engine.dispose()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()


def address(given: str | Path) -> URL:
    """Return where records are, from a path or an address as it is typed.

    Raises:
        InputError: the address is none, or of another kind of database.
    """
    words = str(given)
    if "://" not in words:
        return URL.create("sqlite", database=str(Path(words).absolute()))
    try:
        url = make_url(words)
    except (ArgumentError, ValueError):
        raise InputError(
            said(
                "{given} is no address of records; give a file, or postgresql://USER@HOST/DATABASE.",
                given=words,
            )
        ) from None
    if url.get_backend_name() == "postgresql" and url.database:
        return url.set(drivername="postgresql+psycopg")
    raise InputError(
        said(
            "{given} is no address of records; give a file, or postgresql://USER@HOST/DATABASE.",
            given=url.render_as_string(hide_password=True),
        )
    )


def connected(given: str | Path, *, new: bool = False) -> Records:
    """Return records whether or not they hold our tables yet.

    Args:
        given: a path or an address.
        new: whether a file that is not there may be made.

    Raises:
        InputError: there is no such file.
    """
    url = address(given)
    if url.get_backend_name() == "postgresql":
        engine = create_engine(url, pool_pre_ping=True)
        return Records(engine, url.set(drivername="postgresql").render_as_string(hide_password=True))
    path = Path(url.database or "")
    if not new and not path.is_file():
        raise InputError(
            said(
                "There are no records at {path}. Check the path, or make them with 'marram records init'.",
                path=path,
            )
        )
    engine = create_engine(url, connect_args={"timeout": PATIENCE, "check_same_thread": False})
    _keep_everything(engine)
    return Records(engine, str(path))


def opened(given: str | Path) -> Records:
    """Return records, ready for use.

    Raises:
        InputError: they are not there, cannot be read, are not ours, or are of another schema.
    """
    found = connected(given)
    try:
        schema = schema_of(found)
    except BaseException:
        found.close()
        raise
    if schema == SCHEMA:
        return found
    found.close()
    if schema is None:
        raise InputError(
            said(
                "{name} holds no records of marram. Check the name, or make them with 'marram records init'.",
                name=found.name,
            )
        )
    if schema < SCHEMA:
        raise InputError(
            said(
                "{name} was made by an earlier marram. Bring it up to date with 'marram records init'; "
                "a file is copied first.",
                name=found.name,
            )
        )
    raise InputError(
        said(
            "{name} was made by a later marram (schema {schema}, this reads {known}). Update marram.",
            name=found.name,
            schema=schema,
            known=SCHEMA,
        )
    )


def schema_of(records: Records) -> str | None:
    """Return the schema of what is kept there; ``None`` where nothing of ours is."""
    with records.reading() as connection:
        if records.is_file:
            there = text("SELECT 1 FROM sqlite_master WHERE name = 'alembic_version'")
            if connection.scalar(text("PRAGMA application_id")) != APPLICATION:
                return None
        else:
            there = text("SELECT 1 WHERE to_regclass('alembic_version') IS NOT NULL")
        if connection.scalar(there) is None:
            return None
        found: str | None = connection.scalar(text("SELECT version_num FROM alembic_version"))
        return found


def _keep_everything(engine: Engine) -> None:
    """Have SQLite write ahead and synchronise fully, check references, wait for others, and begin when told to.

    ``recursive_triggers`` lets the triggers also see a row that REPLACE would remove; ``secure_delete`` overwrites
    what is erased.
    """

    @event.listens_for(engine, "connect")
    def _settle(connection: Any, _record: object) -> None:
        connection.isolation_level = (
            None  # so that SQLite begins a transaction when we say so, not when Python guesses
        )
        for setting in (
            "journal_mode = WAL",
            "synchronous = FULL",
            "foreign_keys = ON",
            "recursive_triggers = ON",
            "secure_delete = ON",
        ):
            connection.execute(f"PRAGMA {setting}")

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        writes = connection.get_execution_options().get(_WRITES)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


__all__ = ["SCHEMA", "Records", "address", "connected", "opened", "schema_of"]
