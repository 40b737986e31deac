"""The versions of a map as they are kept: each whole under its number, and never written again."""

import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from datetime import date
from pathlib import Path
from typing import Any

from marram.course.versions.held import Held
from marram.course.versions.map_edits import Document, Edit, apply_edits
from marram.course.versions.numbered_files import NumberedFiles, sealed, unsealed
from marram.course.versions.shelf import Shelf
from marram.errors import InputError, told
from marram.said import said

FORMAT = 2
"""Version of the file format (format 1 was never released); older formats stay readable for ever."""

_IN_MEMORY = 4


@dataclass(frozen=True, slots=True)
class Later:
    """The map of a version from a later day on, where changes were prepared for that day.

    Attributes:
        since: the first day of play it is used for.
        edits: what changes on that day, compared with the map of the day before.
    """

    since: date
    edits: tuple[Edit, ...]


@dataclass(frozen=True, slots=True)
class Version:
    """One version of a map.

    Attributes:
        number: 1 for the map as its file holds it, then 2, 3, …
        saved_at: when it was saved, ISO 8601, UTC.
        in_force_from: the first day of play it is used for.
        who: who saved it.
        note: why, in their words.
        base: the version it was made from; ``None`` for the first.
        edits: what changed on its first day.
        later: what was prepared for later days, with this version's changes carried over into it.
        settles_file: whether it says what became of changes in the course file.
    """

    number: int
    saved_at: str
    in_force_from: date
    who: str
    note: str = ""
    base: int | None = None
    edits: tuple[Edit, ...] = ()
    later: tuple[Later, ...] = ()
    settles_file: bool = False

    def since(self, day: date) -> date:
        """Return the first day of the map that this version has on a day of play."""
        return max((one.since for one in self.later if one.since <= day), default=self.in_force_from)


FIRST = Version(1, "", date.min, "", said("the map as its file holds it"))


class VersionFiles:
    """Where the versions of one map are kept.

    Args:
        place: the folder, which is made when the first version is kept; or another place for them.
    """

    def __init__(self, place: Path | Shelf) -> None:
        self.shelf: Shelf = (
            NumberedFiles(place, said(", or name another folder with --maps"))
            if isinstance(place, Path)
            else place
        )
        self._seen: dict[str, tuple[object, Version]] = {}
        self._read_last: Held[tuple[str, object], dict[str, Any]] = Held(_IN_MEMORY)

    def has(self, number: int) -> bool:
        """Tell whether a version is kept."""
        return self.shelf.mark(name_of(number)) is not None

    def versions(self) -> list[Version]:
        """Return every version kept, the first first; empty when none is.

        Raises:
            InputError: a file of the folder is damaged, foreign or missing; it is named, and left as it is.
        """
        found = [self._version(name, mark) for name, mark in self.shelf.marks("[0-9]*.json")]
        for number, version in enumerate(found, 1):
            if version.number != number:
                raise InputError(
                    said(
                        "{path} is missing, while later versions are there. "
                        "Put it back from a copy; nothing is saved until then.",
                        path=self.shelf.called(name_of(number)),
                    )
                )
        return found

    def document(self, version: Version, since: date) -> Document:
        """Return the map that a version has from ``since`` on."""
        kept = self._kept(name_of(version.number))
        document: Document = kept["document"]
        for one in version.later:
            if one.since <= since:
                document = apply_edits(document, one.edits)
        return document

    def course_file(self, version: Version) -> Document:
        """Return the course file as it was when a version settled its changes."""
        found: Document = self._kept(name_of(version.number))["course_file"]
        return found

    def write(self, version: Version, document: Document, course_file: Document | None = None) -> bool:
        """Write a version under its number; tell whether nobody had taken the number.

        Args:
            version: what it is.
            document: its map on its first day.
            course_file: the course file whose changes it settles.

        Raises:
            InputError: the folder cannot be written; nothing was saved.
        """
        contents = {"document": document, "course_file": course_file}
        return self.shelf.keep(name_of(version.number), sealed({**_plain(version), **contents}))

    def _version(self, name: str, mark: object) -> Version:
        """Return the version of a name, read again only when it is another than last time."""
        if mark is None or name not in self._seen or self._seen[name][0] != mark:
            version, kept = self._read(name)
            self._seen[name] = (mark, version)
            self._remember(name, mark, kept)
        return self._seen[name][1]

    def _kept(self, name: str) -> dict[str, Any]:
        """Return what is kept under a name; the last few read stay in memory."""
        mark = self.shelf.mark(name)
        found = None if mark is None else self._read_last.get((name, mark))
        return found or self._remember(name, mark, self._read(name)[1])

    def _remember(self, name: str, mark: object, kept: dict[str, Any]) -> dict[str, Any]:
        return self._read_last.hold((name, mark), kept, len(kept["document"]["features"]))

    def _read(self, name: str) -> tuple[Version, dict[str, Any]]:
        try:
            kept = json.loads(self.shelf.read(name))
            if kept["marram_map_version"] != FORMAT:
                raise ValueError(
                    said(
                        "format {given!r}, this reads {known}", given=kept["marram_map_version"], known=FORMAT
                    )
                )
            version = Version(
                int(kept["number"]),
                str(kept["saved_at"]),
                date.fromisoformat(kept["in_force_from"]),
                str(kept["who"]),
                str(kept["note"]),
                None if kept["base"] is None else int(kept["base"]),
                tuple(_edits(kept["edits"])),
                tuple(
                    Later(date.fromisoformat(one["since"]), tuple(_edits(one["edits"])))
                    for one in kept["later"]
                ),
                kept["course_file"] is not None,
            )
            unsealed(kept)
            if name_of(version.number) != name:
                raise ValueError(said("its contents do not fit its name"))
        except (OSError, ValueError, KeyError, TypeError) as error:
            raise InputError(
                said(
                    "{path} is not a version of this map that can be read ({kind}: {error}). "
                    "It was left as it is: move it away, or put back a copy.",
                    path=self.shelf.called(name),
                    kind=type(error).__name__,
                    error=told(error),
                )
            ) from None
        return version, kept


def name_of(number: int) -> str:
    """Return the name that a version is kept under."""
    return f"{number:06d}.json"


def _edits(given: list[dict[str, Any]]) -> Iterator[Edit]:
    return (Edit(**one) for one in given)


def _plain(version: Version) -> dict[str, Any]:
    return {
        "marram_map_version": FORMAT,
        **{key: value for key, value in asdict(version).items() if key != "settles_file"},
        "in_force_from": version.in_force_from.isoformat(),
        "later": [{**asdict(one), "since": one.since.isoformat()} for one in version.later],
    }
