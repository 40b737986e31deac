"""Making records, and bringing those of an earlier schema up to date. Alembic is loaded only here."""

from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection, text

from marram.errors import InputError
from marram.records.copying import copied
from marram.records.database import APPLICATION, SCHEMA, Records, connected, opened, schema_of
from marram.said import said

MIGRATIONS = Path(__file__).parent / "migrations"


def made(given: str | Path) -> Records:
    """Make records where there are none, and return them opened.

    Raises:
        InputError: something is there already that is not ours, or it cannot be written.
    """
    found = connected(given, new=True)
    try:
        if schema_of(found) is None:
            with found.writing() as connection:
                _refuse_foreign(found, connection)
                if found.is_file:
                    connection.execute(text(f"PRAGMA application_id = {APPLICATION}"))
                migrate(connection)
    finally:
        found.close()
    return opened(given)


def brought_up_to_date(given: str | Path) -> str | None:
    """Bring records of an earlier schema up to date; a file is copied first.

    All migrations run in one transaction: where one fails, the records are as they were.

    Returns:
        The name of the copy; empty for a database, of which none is made; ``None`` where there was nothing to do.

    Raises:
        InputError: there are none, or they or the copy cannot be written.
    """
    with connected(given) as found:
        schema = schema_of(found)
        if schema is None or schema >= SCHEMA:
            return None
        copy = found.file.with_name(f"{found.file.name}.schema-{schema}") if found.is_file else None
        if copy is not None:
            copied(found.file, copy)
        with found.writing() as connection:
            migrate(connection)
    return "" if copy is None else str(copy)


def migrate(connection: Connection, to: str = "head") -> None:
    """Run the migrations that are missing, in the transaction of the connection."""
    command.upgrade(config(connection), to)


def config(connection: Connection) -> Config:
    """Return what Alembic needs to know."""
    settings = Config()
    settings.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    settings.attributes["connection"] = connection
    return settings


def _refuse_foreign(records: Records, connection: Connection) -> None:
    tables = text(
        "SELECT count(*) FROM sqlite_master"
        if records.is_file
        else "SELECT count(*) FROM pg_tables WHERE schemaname = current_schema()"
    )
    if connection.scalar(tables):
        raise InputError(
            said(
                "{name} holds something else already; it was left as it is. Give another name.",
                name=records.name,
            )
        )
