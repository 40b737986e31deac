"""Versions of a course map: every edit is kept for ever, each version with the day it is in force from.

A version holds what was prepared for later days, with its own changes carried over, so that nothing saved for
today is missing tomorrow and nothing prepared for tomorrow is lost by a save today. What both changed is a
conflict that shows both; so are edits of one feature by two people. See ``docs/architecture.md``.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from enum import Enum
from functools import partial
from pathlib import Path

from marram.course.versions.course_file import FileNews
from marram.course.versions.folder import default_folder
from marram.course.versions.map_days import MapDays, MapInForce, checked
from marram.course.versions.map_edits import (
    Carried,
    Document,
    Edit,
    EditConflict,
    Side,
    apply_edits,
    carry,
    differences,
)
from marram.course.versions.shelf import Shelf
from marram.course.versions.version_files import FIRST, Later, Version
from marram.errors import BadCourse, BadPlace, InputError, told
from marram.said import joined, said

_MOST_TRIES = 20


class Overlap(Enum):
    """What to do where the other side (the prepared map; the edited map) changed the same feature."""

    ASK = "ask"
    """Save nothing and show both."""
    KEEP = "keep"
    """The other side stays."""
    REPLACE = "replace"
    """This change goes on in its place."""


class MapVersions(MapDays):
    """The versions of one course map, read and saved.

    Args:
        course_file: the map as GeoJSON; it is never written. ``None`` where the versions hold all there is.
        place: the folder that versions are kept in, or another place for them; ``None`` for a folder of the user's
            own data.
    """

    def __init__(self, course_file: Path | None, place: Path | Shelf | None = None) -> None:
        super().__init__(course_file, place)
        self._news: tuple[tuple[int, str], FileNews | None] | None = None

    def save(
        self,
        edits: Sequence[Edit],
        *,
        base: int,
        who: str,
        in_force_from: date,
        note: str = "",
        prepared: Overlap = Overlap.ASK,
        mending: bool = False,
    ) -> Version:
        """Keep a new version: edits made to the map of ``in_force_from`` as the versions up to ``base`` have it.

        They are put together with what was saved since, and carried over into what is prepared for later days.

        Args:
            edits: the edits.
            base: the newest version that was there when the edits began.
            who: who saves it.
            in_force_from: the first day of play it is used for.
            note: why.
            prepared: what to do where the map prepared for a later day changes the same features.
            mending: keep it though the map still has errors: one step of several that mend it.

        Raises:
            EditConflict: others changed the same features since ``base``, or they are prepared to change on a
                later day (``since`` names it); nothing is saved.
            BadCourse: the edited map has errors, and is not being mended; all are listed and nothing is saved.
            InputError: an edit does not fit the map, nobody is named, nothing would change, or the folder cannot
                be written.
        """
        if not edits:
            raise InputError(said("There is nothing to save: no edit was made."))
        for _ in range(_MOST_TRIES):
            known = self._known(base)
            before = self.document_on(in_force_from, base)
            documents: dict[date, Document] = {}
            for since in self._days(in_force_from):
                there = self.document_on(since)
                today = since == in_force_from
                side, how = (Side.MEANWHILE, Overlap.ASK) if today else (Side.PREPARED, prepared)
                merged = carry(edits, before, there)
                documents[since] = _merged(
                    merged, there, how, EditConflict(merged.clashes, len(known), side, since)
                )
            if all(document == self.document_on(since) for since, document in documents.items()):
                return _same(known[base:], edits)
            version = _version(len(known) + 1, in_force_from, who, note=note, base=base, edits=edits)
            if (saved := self._keep(version, documents, mending=mending)) is not None:
                return saved
        raise InputError(said("Others keep saving at the same moment; nothing was saved. Try again."))

    def restore(self, number: int, *, base: int, who: str, in_force_from: date) -> Version:
        """Go back to an earlier version, as a new one; what was prepared for later days is set aside with it.

        Raises:
            BadPlace: there is no such version.
            EditConflict: somebody saved since ``base``, which going back would undo unseen.
            InputError: nobody is named, the map is that of this version already, or the folder cannot be written.
        """
        chosen = self._numbered(number)
        known = self._known(base)
        if unseen := [edit for one in known[base:] for edit in one.edits]:
            raise EditConflict(unseen, len(known), Side.MEANWHILE, in_force_from)
        target = self.document(number, max(in_force_from, chosen.in_force_from))
        prepared = self.prepared(in_force_from)
        edits = differences(self.document_on(in_force_from), target)
        if not edits and not prepared:
            raise InputError(
                said(
                    "The map is that of version {number} on {in_force_from} already.",
                    number=number,
                    in_force_from=in_force_from,
                )
            )
        note = f"back to version {number}"
        if prepared:
            days = ", ".join(f"{one.since} (version {one.version.number})" for one in prepared)
            note += f"; what was prepared from {days} is set aside"
        version = _version(len(known) + 1, in_force_from, who, note=note, base=base, edits=edits)
        saved = self._keep(version, {in_force_from: target})
        if saved is None:
            raise InputError(said("Somebody saved at the same moment; nothing was saved. Look again."))
        return saved

    def file_news(self) -> FileNews | None:
        """Return what changed in the course file since its versions last took note of it, or ``None``."""
        if self._file is None:
            return None
        try:
            now = self._file.document()
        except InputError as error:
            return FileNews(fault=told(error))
        key = (self.latest().number, self._file.mark)
        if self._news is None or self._news[0] != key:
            before = self.noted_file()
            edits = tuple(differences(before, now))
            beside = tuple(
                one for one in sorted({*before, *now} - {"features"}) if before.get(one) != now.get(one)
            )
            self._news = (key, FileNews(edits, beside, key[1]) if edits or beside else None)
        return self._news[1]

    def settle_file(
        self, mark: str, *, take: bool, who: str, in_force_from: date, overlap: Overlap = Overlap.ASK
    ) -> Version:
        """Take the changes of the course file over as a new version, or note that they are left out.

        Args:
            mark: the file's state that was decided about, from :meth:`file_news`.
            take: take the changes over; else they stay out of the versions, and are not reported again.
            who: who decides it.
            in_force_from: the first day of play they are used for.
            overlap: what to do where a feature was also edited here.

        Raises:
            EditConflict: features were changed in the file and here; nothing is saved.
            BadCourse: the map has errors with these changes.
            InputError: the file has changed again or cannot be read, or nobody is named.
        """
        news = self.file_news()
        if self._file is None or news is None or news.fault or news.mark != mark:
            raise InputError(
                (news.fault if news else "")
                or said("The course file has changed again. Look at it once more.")
            )
        known = self.versions()
        now, before = self._file.document(), self.noted_file()
        edits = news.edits if take else ()
        documents: dict[date, Document] = {}
        for since in self._days(in_force_from):
            there = self.document_on(since)
            merged = carry(edits, before, there)
            conflict = EditConflict(merged.clashes, len(known), Side.EDITED_HERE, since)
            made = _merged(merged, there, overlap, conflict)
            documents[since] = {**now, "features": made["features"]} if take else made
        note = "changes of the course file taken over" if take else "changes of the course file left out"
        version = _version(len(known) + 1, in_force_from, who, note=note, base=len(known), edits=edits)
        saved = self._keep(replace(version, settles_file=True), documents, now)
        if saved is None:
            raise InputError(said("Somebody saved at the same moment; nothing was saved. Try again."))
        return saved

    def noted_file(self) -> Document:
        """Return the course file as it was when its versions last took note of it."""
        settled = next((one for one in reversed(self.versions()) if one.settles_file), None)
        return self.document(1) if settled is None else self._files.course_file(settled)

    def _has_lines(self, day: date) -> bool:
        """Whether the map of a day has a line of play, which no save may then take away; a map to be mended needs one."""
        here = self.map_on(day)
        try:
            return bool(self.course(here.version.number, here.since).holes)
        except BadCourse:
            return True

    def _days(self, day: date) -> list[date]:
        return [day, *(one.since for one in self.prepared(day))]

    def _known(self, base: int) -> list[Version]:
        known = self.versions()
        if not 1 <= base <= len(known):
            raise BadPlace(
                said(
                    "There is no version {base} to edit; the map has 1 to {count}.",
                    base=base,
                    count=len(known),
                )
            )
        return known

    def _keep(
        self,
        version: Version,
        documents: dict[date, Document],
        course_file: Document | None = None,
        *,
        mending: bool = False,
    ) -> Version | None:
        """Write a version whose map is given for each day on which it changes; ``None`` when its number is taken."""
        first, *later = documents
        built = {}
        for since, document in documents.items():
            try:
                built[since] = checked(document, lines_needed=partial(self._has_lines, since))
            except BadCourse as error:
                if mending:
                    continue
                prefix = "" if since == first else said("On the map prepared from {since} on: ", since=since)
                raise BadCourse(*(joined("", prefix, fault) for fault in error.faults)) from None
        stages: list[Later] = []
        for before, since in zip(documents, later, strict=False):
            stages.append(Later(since, tuple(differences(documents[before], documents[since]))))
        version = replace(version, later=tuple(one for one in stages if one.edits))
        if not self._files.has(1) and not self._files.write(FIRST, self.document(1)):
            return None
        if not self._files.write(version, documents[first], course_file):
            return None
        for since, found in built.items():
            self._built.hold((version.number, since), found, len(found[0].features))
        return version


def _merged(merged: Carried, there: Document, how: Overlap, conflict: EditConflict) -> Document:
    """Return a map with carried edits made on it.

    Raises:
        EditConflict: both sides changed a feature, and ``how`` does not say what to do.
    """
    if merged.clashes and how is Overlap.ASK:
        raise conflict
    return apply_edits(there, [*merged.edits, *(merged.forced if how is Overlap.REPLACE else ())])


def _same(since: Sequence[Version], edits: Sequence[Edit]) -> Version:
    """Return the version that was saved with these edits already, when the answer to a save was lost.

    Raises:
        InputError: no version was; the edits change nothing.
    """
    for version in since:
        if version.edits == tuple(edits):
            return version
    raise InputError(said("There is nothing to save: the map is so already."))


def _version(number: int, day: date, who: str, *, note: str, base: int, edits: Sequence[Edit]) -> Version:
    if not who.strip():
        raise InputError(said("Say who saves this version."))
    saved_at = datetime.now(UTC).isoformat(timespec="seconds")
    return Version(number, saved_at, day, who.strip(), note.strip(), base, tuple(edits))


__all__ = ["MapInForce", "MapVersions", "Overlap", "Version", "default_folder"]
