"""What all tables share: names of constraints, identifiers, and columns that the database reads out of a JSON text."""

from typing import Annotated, Any

from sqlalchemy import Computed, MetaData, String, Text
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.orm import DeclarativeBase, mapped_column
from sqlalchemy.sql.elements import ColumnElement

NAMES = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_N_name)s",
    "pk": "pk_%(table_name)s",
}
"""Every constraint has a name of its own, so that a later migration can speak of it."""

Ident = Annotated[str, mapped_column(String(36))]
"""A UUID in its usual written form."""

Words = Annotated[str, mapped_column(Text)]


class Table(DeclarativeBase):
    """The root of all tables."""

    metadata = MetaData(naming_convention=NAMES)


class Inside(ColumnElement[Any]):
    """A value inside the JSON text of a column.

    Args:
        column: the column that holds the text.
        key: the key at the top of its object.
        whole_number: whether it is a whole number; else a text.
    """

    inherit_cache = True

    def __init__(self, column: str, key: str, *, whole_number: bool = False) -> None:
        self.column, self.key, self.whole_number = column, key, whole_number


@compiles(Inside, "sqlite")  # type: ignore[untyped-decorator, unused-ignore]
def _in_sqlite(inside: Inside, _compiler: Any, **_: Any) -> str:
    return f"json_extract({inside.column}, '$.{inside.key}')"


@compiles(Inside, "postgresql")  # type: ignore[untyped-decorator, unused-ignore]
def _in_postgresql(inside: Inside, _compiler: Any, **_: Any) -> str:
    cast = "::integer" if inside.whole_number else ""
    return f"({inside.column}::json ->> '{inside.key}'){cast}"


def read_out_of(column: str, key: str, *, whole_number: bool = False) -> Computed:
    """Return a column that the database reads out of the JSON text of another one."""
    return Computed(Inside(column, key, whole_number=whole_number), persisted=True)
