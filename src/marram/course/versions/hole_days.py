"""Hole locations kept by day of play: every save is a version that stays, and two people cannot overwrite each other.

A version is one file, written whole before it gets its name and never written again; the file of a number is
created exclusively. Saves that move different holes are put together; the same hole moved by two people to different
places is a conflict that shows both.
"""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

from marram.course.versions.numbered_files import NumberedFiles, sealed, unsealed
from marram.course.versions.shelf import Shelf
from marram.errors import BadPlace, InputError, told
from marram.said import counted, said

FORMAT = 1
"""Version of the file format; older formats stay readable for ever."""

SAME = 5e-8
"""Places nearer to each other than this in degrees, half a centimetre, are one (own choice)."""

_MOST_TRIES = 20

Places = Mapping[int, tuple[float, float]]
"""Where holes are cut, by hole: longitude and latitude in degrees."""


@dataclass(frozen=True, slots=True)
class HoleVersion:
    """The hole locations of a day as somebody saved them.

    Attributes:
        day: the day of play.
        number: 1, 2, 3 … for each day.
        saved_at: when it was saved, ISO 8601, UTC.
        who: who saved it.
        note: why, in their words.
        places: where each hole is cut.
    """

    day: date
    number: int
    saved_at: str
    who: str
    note: str
    places: Places


class HoleConflict(InputError):
    """Somebody else moved the same holes meanwhile; nothing was saved.

    Attributes:
        latest: the newest version of the day.
        holes: the holes that both moved.
    """

    def __init__(self, latest: HoleVersion, holes: tuple[int, ...]) -> None:
        self.latest = latest
        self.holes = holes
        super().__init__(
            counted(
                "{who} meanwhile saved version {latest}, which also moves hole {holes}. "
                "Look at both, then save on top of that version.",
                "{who} meanwhile saved version {latest}, which also moves holes {holes}. "
                "Look at both, then save on top of that version.",
                len(holes),
                who=latest.who,
                latest=latest.number,
                holes=", ".join(map(str, holes)),
            )
        )


class HoleDays:
    """The hole locations of one course, by day.

    Args:
        place: the folder they are kept in, which is made when the first is saved; or another place for them.
    """

    def __init__(self, place: Path | Shelf) -> None:
        self.place = place
        self.shelf: Shelf = NumberedFiles(place) if isinstance(place, Path) else place
        self._seen: dict[str, tuple[object, HoleVersion]] = {}

    def days(self) -> list[date]:
        """Return the days of which hole locations are kept, the earliest first."""
        return sorted({date.fromisoformat(name[:10]) for name in self.shelf.names("????-??-??-*.json")})

    def versions(self, day: date) -> list[HoleVersion]:
        """Return the versions of a day, the first first.

        Raises:
            InputError: a file is damaged or missing; it is named, and left as it is.
        """
        found = [
            self._version(name, mark, day) for name, mark in self.shelf.marks(f"{day.isoformat()}-*.json")
        ]
        for number, version in enumerate(found, 1):
            if version.number != number:
                raise InputError(
                    said(
                        "{path} is missing, while later versions are there. Put it back from a copy.",
                        path=self.shelf.called(_name(day, number)),
                    )
                )
        return found

    def latest(self, day: date) -> HoleVersion | None:
        """Return the newest version of a day, or ``None`` where nothing is kept."""
        found = self.versions(day)
        return found[-1] if found else None

    def recent(self, before: date, most: int = 5) -> list[HoleVersion]:
        """Return what was in use on the last days before a day, the latest first.

        Args:
            before: the day.
            most: how many days back at most.
        """
        days = [day for day in self.days() if day < before][-most:]
        return [self.versions(day)[-1] for day in reversed(days)]

    def save(self, day: date, moved: Places, *, base: int, who: str, note: str = "") -> HoleVersion:
        """Keep a new version of a day: ``moved`` holes put into version ``base``, and into what was saved since.

        Raises:
            HoleConflict: somebody else moved the same holes to other places since ``base``; nothing is saved.
            BadPlace: there is no such version.
            InputError: nobody is named, no hole is moved, or the folder cannot be written.
        """
        if not who.strip():
            raise InputError(said("Say who saves these hole locations."))
        if not moved:
            raise InputError(said("There is nothing to save: no hole was moved."))
        for _ in range(_MOST_TRIES):
            known = self.versions(day)
            if not 0 <= base <= len(known):
                raise BadPlace(
                    said(
                        "There is no version {base} of {day}; there are {count}.",
                        base=base,
                        day=day,
                        count=len(known),
                    )
                )
            newest = known[-1].places if known else {}
            before = known[base - 1].places if base else {}
            both = tuple(
                hole
                for hole, place in sorted(moved.items())
                if not _same(newest.get(hole), before.get(hole)) and not _same(newest.get(hole), place)
            )
            if both and known:
                raise HoleConflict(known[-1], both)
            version = HoleVersion(
                day,
                len(known) + 1,
                datetime.now(UTC).isoformat(timespec="seconds"),
                who.strip(),
                note.strip(),
                dict(sorted({**newest, **moved}.items())),
            )
            if self._write(version):
                return version
        raise InputError(said("Others keep saving at the same moment; nothing was saved. Try again."))

    def _write(self, version: HoleVersion) -> bool:
        """Write a version under its number; tell whether nobody had taken the number."""
        kept = {**asdict(version), "marram_hole_locations": FORMAT, "day": version.day.isoformat()}
        kept["places"] = {str(hole): list(place) for hole, place in version.places.items()}
        return self.shelf.keep(_name(version.day, version.number), sealed(kept))

    def _version(self, name: str, mark: object, day: date) -> HoleVersion:
        """Return the version of a name, read again only when it is another than last time."""
        if mark is None or name not in self._seen or self._seen[name][0] != mark:
            self._seen[name] = (mark, self._read(name, day))
        return self._seen[name][1]

    def _read(self, name: str, day: date) -> HoleVersion:
        try:
            kept: dict[str, Any] = json.loads(self.shelf.read(name))
            if kept["marram_hole_locations"] != FORMAT:
                raise ValueError(
                    said(
                        "format {given!r}, this reads {known}",
                        given=kept["marram_hole_locations"],
                        known=FORMAT,
                    )
                )
            unsealed(kept)
            version = HoleVersion(
                date.fromisoformat(kept["day"]),
                int(kept["number"]),
                str(kept["saved_at"]),
                str(kept["who"]),
                str(kept["note"]),
                {int(hole): (float(place[0]), float(place[1])) for hole, place in kept["places"].items()},
            )
            if version.day != day or name != _name(day, version.number):
                raise ValueError(said("its contents do not fit its name"))
        except (OSError, ValueError, KeyError, TypeError, IndexError, AttributeError) as error:
            raise InputError(
                said(
                    "{path} holds no hole locations that can be read ({kind}: {error}). "
                    "It was left as it is: move it away, or put back a copy.",
                    path=self.shelf.called(name),
                    kind=type(error).__name__,
                    error=told(error),
                )
            ) from None
        return version


def _name(day: date, number: int) -> str:
    return f"{day.isoformat()}-{number:04d}.json"


def _same(one: tuple[float, float] | None, other: tuple[float, float] | None) -> bool:
    if one is None or other is None:
        return one is other
    return max(abs(one[0] - other[0]), abs(one[1] - other[1])) <= SAME
