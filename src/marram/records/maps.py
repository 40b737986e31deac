"""Map versions and hole locations of a course, kept byte for byte; and a folder of files taken over whole.

What a version is, and which is in force on which day, is the law of ``marram.course.versions``: this offers it a place
(its ``Shelf``) where contents are kept by name, whole, exclusively and for ever.
"""

from abc import ABC, abstractmethod
from dataclasses import dataclass
from datetime import date
from fnmatch import fnmatchcase
from pathlib import Path
from typing import Any, ClassVar

from sqlalchemy import insert, select, text

from marram.errors import InputError
from marram.records.database import Records
from marram.records.tables import HoleLocations, MapVersion
from marram.said import Said, said

_LOCK = text("SELECT pg_advisory_xact_lock(hashtextextended(:course, 1))")


class _Shelf(ABC):
    """Contents of a table, kept by the names their files would have.

    Args:
        records: where they are kept.
        course: whose they are.
    """

    table: ClassVar[type[MapVersion | HoleLocations]]

    def __init__(self, records: Records, course: str) -> None:
        self.records = records
        self.course = course

    @abstractmethod
    def key(self, name: str) -> dict[str, Any]:
        """Return the columns that a name stands for."""

    @abstractmethod
    def called(self, name: str) -> Said:
        """Return what a name is called in a message."""

    @abstractmethod
    def _name(self, row: Any) -> str:
        """Return the name of a row."""

    def names(self, pattern: str) -> list[str]:
        """Return the names that fit a shell pattern, sorted."""
        found = self.records.until_written((self.table, self.course), self._names)
        return sorted(name for name in found if fnmatchcase(name, pattern))

    def _names(self) -> tuple[str, ...]:
        wanted = select(*self.table.__table__.primary_key).where(self.table.course_id == self.course)
        with self.records.reading() as connection:
            return tuple(self._name(row) for row in connection.execute(wanted))

    def marks(self, pattern: str) -> list[tuple[str, object]]:
        """Return the names that fit a shell pattern, sorted, each with itself as its mark: a name's contents never change."""
        return [(name, name) for name in self.names(pattern)]

    def mark(self, name: str) -> str | None:
        """Return the name where something is kept under it, which never changes; else ``None``."""
        with self.records.reading() as connection:
            there = connection.scalar(select(self.table.number).filter_by(**self.key(name)))
        return None if there is None else name

    def read(self, name: str) -> bytes:
        """Return the contents of a name.

        Raises:
            InputError: there are none, or they cannot be read.
        """
        with self.records.reading() as connection:
            content = connection.scalar(select(self.table.content).filter_by(**self.key(name)))
        if content is None:
            raise InputError(said("There is no {what}. Put it back from a backup.", what=self.called(name)))
        return content

    def keep(self, name: str, content: bytes) -> bool:
        """Keep contents; tell whether nobody had taken the name.

        Raises:
            InputError: they cannot be kept; nothing was saved.
        """
        with self.records.writing() as connection:
            if not self.records.is_file:
                connection.execute(_LOCK, {"course": self.course})
            if connection.scalar(select(self.table.number).filter_by(**self.key(name))) is not None:
                return False
            connection.execute(insert(self.table), {**self.key(name), "content": content})
        return True


class MapShelf(_Shelf):
    """The map versions of a course, named ``000001.json`` and so on."""

    table = MapVersion

    def key(self, name: str) -> dict[str, Any]:
        """Return the columns that a name stands for."""
        return {"course_id": self.course, "number": int(name.removesuffix(".json"))}

    def called(self, name: str) -> Said:
        """Return what a version is called in a message."""
        number = self.key(name)["number"]
        return said("version {number} of the map in {name}", number=number, name=self.records.name)

    def _name(self, row: Any) -> str:
        return f"{row.number:06d}.json"


class HoleShelf(_Shelf):
    """The hole locations of a course, named ``2025-06-21-0001.json`` and so on."""

    table = HoleLocations

    def key(self, name: str) -> dict[str, Any]:
        """Return the columns that a name stands for."""
        number = int(name[11:].removesuffix(".json"))
        return {"course_id": self.course, "day": date.fromisoformat(name[:10]), "number": number}

    def called(self, name: str) -> Said:
        """Return what hole locations are called in a message."""
        key = self.key(name)
        return said(
            "version {number} of the hole locations of {day} in {name}",
            number=key["number"],
            day=key["day"].isoformat(),
            name=self.records.name,
        )

    def _name(self, row: Any) -> str:
        return f"{row.day.isoformat()}-{row.number:04d}.json"


@dataclass(frozen=True, slots=True)
class TakenOver:
    """What was taken over from a folder.

    Attributes:
        maps: how many map versions.
        holes: how many versions of hole locations.
    """

    maps: int
    holes: int


HOLES = "hole-locations"
"""The folder of hole locations, in that of map versions."""


def take_over(records: Records, course: str, folder: Path) -> TakenOver:
    """Take every map version and hole location of a folder over, byte for byte, in one transaction.

    What was taken over before, and is the same, is passed by; so it can be done again after more was saved there.

    Args:
        records: where they are to be kept.
        course: whose they are.
        folder: the folder of map versions, with its :data:`HOLES` in it; it is only read.

    Raises:
        InputError: a file cannot be read, or something else is kept under its name; nothing was taken over.
    """
    faults: list[str] = []
    maps: _Shelf = MapShelf(records, course)
    holes: _Shelf = HoleShelf(records, course)
    rows: dict[_Shelf, list[dict[str, Any]]] = {maps: [], holes: []}
    for shelf, inside, pattern in (
        (maps, folder, "[0-9]*.json"),
        (holes, folder / HOLES, "????-??-??-[0-9]*.json"),
    ):
        for path in sorted(inside.glob(pattern)) if inside.is_dir() else ():
            try:
                row = {**shelf.key(path.name), "content": path.read_bytes()}
            except (OSError, ValueError) as error:
                why = getattr(error, "strerror", None) or error
                faults.append(
                    said(
                        "{path} cannot be taken over: {why}. Move it away, or put back a copy.",
                        path=path,
                        why=why,
                    )
                )
                continue
            if shelf.mark(path.name) is None:
                rows[shelf].append(row)
            elif shelf.read(path.name) != row["content"]:
                faults.append(
                    said(
                        "{path} is not {kept}; nothing was taken over. Give it a course of its own.",
                        path=path,
                        kept=shelf.called(path.name),
                    )
                )
    if faults:
        raise InputError(*faults)
    with records.writing() as connection:
        for shelf, found in rows.items():
            if found:
                connection.execute(insert(shelf.table), found)
    return TakenOver(len(rows[maps]), len(rows[holes]))
