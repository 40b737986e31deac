"""Versions of a course map: every edit is kept for ever, each version with the day it is in force from.

A version is one file in a folder of its own, written whole before it gets its name, and never written again.
Two people who save at once cannot overwrite each other: the file of a number is created exclusively, and
edits of different features are put together, while edits of the same feature are a conflict that shows both.
"""

import json
import os
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from datetime import UTC, date, datetime
from functools import cached_property
from hashlib import sha256
from pathlib import Path
from tempfile import NamedTemporaryFile, TemporaryDirectory
from typing import Any

from marram.course.fault import Severity
from marram.course.loading import examine, load
from marram.course.map_edits import Document, Edit, EditConflict, apply_edits, feature_ident
from marram.course.model import Course
from marram.errors import BadCourse, BadPlace, InputError

FORMAT = 1
"""Version of the file format; older formats stay readable for ever."""

_MOST_TRIES = 20


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
        edits: what changed.
    """

    number: int
    saved_at: str
    in_force_from: date
    who: str
    note: str = ""
    base: int | None = None
    edits: tuple[Edit, ...] = ()


class MapVersions:
    """The versions of one course map.

    Args:
        course_file: the map as GeoJSON; it is never written.
        folder: where versions are kept; ``None`` for a folder of the user's own data.

    Raises:
        InputError: the map is not GeoJSON, so that its features cannot be edited.
    """

    def __init__(self, course_file: Path, folder: Path | None = None) -> None:
        self.course_file = Path(course_file)
        self.folder = folder or default_folder(self.course_file)
        self._courses: dict[int, Course] = {}
        self._seen: dict[Path, tuple[tuple[int, int], Version]] = {}

    @cached_property
    def _original(self) -> Document:
        try:
            document = json.loads(self.course_file.read_bytes())
        except (OSError, ValueError) as error:
            raise InputError(
                f"{self.course_file} cannot be edited: {error}. Editing needs the map as GeoJSON."
            ) from None
        if not isinstance(document, dict) or not isinstance(document.get("features"), list):
            raise InputError(f"{self.course_file} is no GeoJSON FeatureCollection; editing needs one.")
        for index, feature in enumerate(document["features"]):
            # A feature without an identifier is named by its place in the file: kept, so that it never shifts.
            feature.setdefault("id", feature_ident(feature, index))
        return document

    def versions(self) -> list[Version]:
        """Return every version, the first first.

        Raises:
            InputError: a file of the folder is damaged, foreign or missing; it is named, and left as it is.
        """
        first = Version(1, "", date.min, "", "the map as its file holds it")
        found = [first, *(self._version(path) for path in self._files())]
        for number, version in enumerate(found, 1):
            if version.number != number:
                raise InputError(
                    f"{self._path(number)} is missing, while later versions are there. "
                    "Put it back from a copy; nothing is saved until then."
                )
        return found

    def latest(self) -> Version:
        """Return the newest version."""
        return self.versions()[-1]

    def version_on(self, day: date) -> Version:
        """Return the version in force on a day of play: the newest whose first day is not after it."""
        return max((one for one in self.versions() if one.in_force_from <= day), key=lambda one: one.number)

    def document(self, number: int) -> Document:
        """Return the GeoJSON of a version.

        Raises:
            BadPlace: there is no such version.
        """
        if number == 1:
            return self._original
        path = self._path(number)
        if not path.exists():
            raise BadPlace(f"The map has no version {number}; it has 1 to {self.latest().number}.")
        return self._read(path)[1]

    def course(self, number: int) -> Course:
        """Return the course map of a version, ready for use."""
        if number not in self._courses:
            if number == 1:
                self._courses[1] = load(self.course_file)
            else:
                self._courses[number] = _checked(self.document(number))
        return self._courses[number]

    def save(
        self, edits: Sequence[Edit], *, base: int, who: str, in_force_from: date, note: str = ""
    ) -> Version:
        """Keep a new version: ``edits`` made to version ``base``, and to what was saved since.

        Raises:
            EditConflict: somebody else changed the same features since ``base``; nothing is saved.
            BadCourse: the edited map has errors; all are listed and nothing is saved.
            InputError: an edit does not fit the map, nobody is named, there is no edit, the newest version is
                in force only from a later day, or the folder cannot be written.
        """
        return self._save(edits, base, who, in_force_from, note)

    def _save(
        self,
        edits: Sequence[Edit],
        base: int,
        who: str,
        in_force_from: date,
        note: str,
        *,
        back: bool = False,
    ) -> Version:
        if not edits:
            raise InputError("There is nothing to save: no edit was made.")
        if not who.strip():
            raise InputError("Say who saves this version.")
        for _ in range(_MOST_TRIES):
            known = self.versions()
            if not 1 <= base <= len(known):
                raise BadPlace(f"There is no version {base} to edit; the map has 1 to {len(known)}.")
            if in_force_from < known[-1].in_force_from and not back:
                raise InputError(_later_is_newest(known[-1], in_force_from))
            touched = {edit.ident for edit in edits}
            theirs = [edit for one in known[base:] for edit in one.edits if edit.ident in touched]
            if theirs:
                raise EditConflict(theirs, known[-1].number)
            document = apply_edits(self.document(known[-1].number), edits)
            course = _checked(document)
            number = known[-1].number + 1
            saved_at = datetime.now(UTC).isoformat(timespec="seconds")
            version = Version(number, saved_at, in_force_from, who.strip(), note.strip(), base, tuple(edits))
            if self._write(version, document):
                self._courses[number] = course
                return version
        raise InputError("Others keep saving at the same moment; nothing was saved. Try again.")

    def restore(self, number: int, *, base: int, who: str, in_force_from: date) -> Version:
        """Go back to an earlier version, as a new one.

        Raises:
            BadPlace: there is no such version.
            EditConflict, InputError: as for :meth:`save`; but going back may be in force before the newest version.
        """
        now = _by_ident(self.document(base))
        then = _by_ident(self.document(number))
        edits = [Edit("remove", ident) for ident in now if ident not in then]
        edits += [
            Edit("change" if ident in now else "add", ident, feature)
            for ident, feature in then.items()
            if now.get(ident) != feature
        ]
        note = f"back to version {number}"
        return self._save(edits, base, who, in_force_from, note, back=True)

    def _files(self) -> list[Path]:
        return sorted(self.folder.glob("[0-9]*.json")) if self.folder.is_dir() else []

    def _path(self, number: int) -> Path:
        return self.folder / f"{number:06d}.json"

    def _version(self, path: Path) -> Version:
        """Return the version in a file, read again only when the file is another than last time."""
        try:
            state = path.stat()
        except OSError:  # reading it says what is wrong
            return self._read(path)[0]
        mark = (state.st_mtime_ns, state.st_size)
        if path not in self._seen or self._seen[path][0] != mark:
            self._seen[path] = (mark, self._read(path)[0])
        return self._seen[path][1]

    def _read(self, path: Path) -> tuple[Version, Document]:
        try:
            kept = json.loads(path.read_bytes())
            if kept["marram_map_version"] != FORMAT:
                raise ValueError(f"format {kept['marram_map_version']!r}, this reads {FORMAT}")
            version = Version(
                int(kept["number"]),
                str(kept["saved_at"]),
                date.fromisoformat(kept["in_force_from"]),
                str(kept["who"]),
                str(kept["note"]),
                int(kept["base"]),
                tuple(Edit(**edit) for edit in kept["edits"]),
            )
            if kept["digest"] != _digest(kept["document"]) or self._path(version.number) != path:
                raise ValueError("its contents do not fit its name or digest")
        except (OSError, ValueError, KeyError, TypeError) as error:
            raise InputError(
                f"{path} is not a version of this map that can be read ({type(error).__name__}: {error}). "
                "It was left as it is: move it away, or put back a copy."
            ) from None
        return version, kept["document"]

    def _write(self, version: Version, document: Document) -> bool:
        """Write a version under its number; tell whether nobody had taken the number.

        Raises:
            InputError: the folder cannot be written; nothing was saved.
        """
        try:
            return self._written(version, document)
        except OSError as error:
            raise InputError(
                f"Nothing was saved: {self.folder} cannot be written ({error.strerror or error}). "
                "Make room or give write access, or name another folder with --maps; then save again."
            ) from None

    def _written(self, version: Version, document: Document) -> bool:
        self.folder.mkdir(parents=True, exist_ok=True)
        kept = {
            "marram_map_version": FORMAT,
            **asdict(version),
            "in_force_from": version.in_force_from.isoformat(),
            "digest": _digest(document),
            "document": document,
        }
        with NamedTemporaryFile("w", dir=self.folder, prefix=".writing-", encoding="utf-8") as draft:
            json.dump(kept, draft, ensure_ascii=False)
            draft.flush()
            os.fsync(draft.fileno())
            try:
                os.link(draft.name, self._path(version.number))  # fails when the name is taken
            except FileExistsError:
                return False
        folder = os.open(self.folder, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)
        return True


def _later_is_newest(newest: Version, wanted: date) -> str:
    """Return why a version cannot be in force earlier than the one it stands on."""
    return (
        f"Version {newest.number}, by {newest.who}, is in force only from {newest.in_force_from}; a version made "
        f"from it for {wanted} would bring its changes into force too early. Save this from "
        f"{newest.in_force_from} on, or first go back to the version in force on {wanted}."
    )


def default_folder(course_file: Path) -> Path:
    """Return where versions of a course file are kept by default, below the user's own data.

    The XDG Base Directory Specification names the place; the file's own path keeps courses apart.
    """
    data = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    mark = sha256(str(course_file.resolve()).encode()).hexdigest()[:10]
    return data / "marram" / "maps" / f"{course_file.stem}-{mark}"


def _checked(document: Document) -> Course:
    """Return the course of a map's GeoJSON.

    Raises:
        BadCourse: it has errors; all are listed.
    """
    with TemporaryDirectory() as folder:
        path = Path(folder) / "map.geojson"
        path.write_text(json.dumps(document), encoding="utf-8")
        course, faults = examine(path)
    errors = [str(fault) for fault in faults if fault.severity is Severity.ERROR]
    if errors or course is None:
        raise BadCourse(*errors)
    return course


def _by_ident(document: Document) -> dict[str, dict[str, Any]]:
    return {feature_ident(one, index): one for index, one in enumerate(document["features"])}


def _digest(document: Document) -> str:
    return sha256(json.dumps(document, sort_keys=True, ensure_ascii=False).encode()).hexdigest()
