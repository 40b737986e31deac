"""An entry as a page shows it: in words, with names, and with what corrects it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo

from marram.desk.log.here import moment_words
from marram.desk.log.kept import KeptHere
from marram.desk.log.titles import title_of
from marram.desk.rulings.case_address import CaseAddress
from marram.errors import InputError
from marram.records.entry import Kept
from marram.services.cases.address_case import address_of
from marram.services.cases.case_file import read_case
from marram.services.log.moments import DEVICE_AHEAD, SAME_TIME, happened_at


@dataclass(frozen=True)
class Shown:
    """An entry as a page shows it.

    Attributes:
        entry: the entry.
        title: what happened, in words.
        player: the name of the player; empty where it is not known or was erased.
        by: the name of the official; likewise.
        corrected_by: the numbers of entries that correct it.
        corrects: the number of the entry it corrects; 0 for none.
        withdrawn: whether one of those that correct it withdraws it.
        rivals: the numbers of entries that correct the same one, both standing: two people did so at once.
        zone: of the club's clocks; ``None``: that of this machine.
    """

    entry: Kept
    title: str
    player: str
    by: str
    corrected_by: tuple[int, ...] = ()
    corrects: int = 0
    withdrawn: bool = False
    rivals: tuple[int, ...] = ()
    zone: tzinfo | None = None

    @property
    def given_at(self) -> datetime:
        """When it happened, by the desk's clock as far as it is known."""
        return happened_at(self.entry).astimezone(self.zone)

    @property
    def at(self) -> str:
        """The same in words: the time, with the day where it is not today."""
        return moment_words(self.given_at.isoformat(), self.zone)

    @property
    def by_device(self) -> datetime:
        """When it happened by the clock of the device."""
        return datetime.fromisoformat(self.entry.told["given_at"]).astimezone(self.zone)

    @property
    def kept_at(self) -> datetime:
        """When it reached the log, by the clock of the desk."""
        return datetime.fromisoformat(self.entry.recorded_at).astimezone(self.zone)

    @property
    def came(self) -> str:
        """How the device's clock and the desk's go together; empty where they do.

        ``off`` was measured as it arrived, ``ahead`` cannot be, ``late`` is a device out of reach or behind.
        """
        if DEVICE_AHEAD in self.entry.content:
            return "off"
        late = self.kept_at - self.by_device
        return "ahead" if late < -SAME_TIME else "late" if late > SAME_TIME else ""

    @property
    def headline(self) -> str:
        """What was ruled, in one line."""
        return str(self.entry.content.get("headline", ""))

    @property
    def instead(self) -> str:
        """What was given in place of what was computed, as the form says it; empty where it was not said."""
        given = self.entry.content.get("instead") or {}
        words = [one for one in ("disqualified", "hole_lost") if given.get(one)]
        strokes = given.get("penalty_strokes")
        return words[0] if words else "" if strokes is None else str(strokes)


def shown(kept: KeptHere, entries: Sequence[Kept], names: Mapping[str, str] | None = None) -> list[Shown]:
    """Return entries as a page shows them; only what these entries point at is looked up."""
    known = kept.names() if names is None else names
    corrections_of = kept.log.corrections_of(one.id for one in entries)
    rivals_of, zone = _rivals(kept, entries), kept.zone
    corrected_ones = kept.log.entries_of(one.corrects for one in entries if one.corrects)
    found = []
    for one in entries:
        corrections = corrections_of.get(one.id, [])
        corrected = corrected_ones.get(one.corrects or "")
        found.append(
            Shown(
                one,
                title_of(one),
                known.get(one.told.get("player", ""), ""),
                known.get(one.told.get("by", ""), ""),
                tuple(other.number for other in corrections),
                corrected.number if corrected else 0,
                any(other.kind == "withdrawn" for other in corrections),
                tuple(rivals_of.get(one.id, ())),
                zone,
            )
        )
    return found


def _rivals(kept: KeptHere, entries: Sequence[Kept]) -> dict[str, list[int]]:
    """Return by entry the numbers of those that correct the same as it does, where neither they nor it were corrected since."""
    together = kept.log.corrections_of(one.corrects for one in entries if one.corrects)
    several = [every for every in together.values() if len(every) > 1]
    since = kept.log.corrections_of(one.id for every in several for one in every)
    found = {}
    for every in several:
        standing = [one for one in every if one.kind != "withdrawn" and one.id not in since]
        for one in standing:
            found[one.id] = [
                other.number for other in standing if other.id != one.id and other.kind == one.kind
            ]
    return found


def case_url(entry: Kept) -> str:
    """Return the address of a recorded case at this desk; empty where it can no longer be read."""
    try:
        case = read_case(entry.content["case"])
    except (InputError, KeyError):
        return ""
    return address_of(CaseAddress, case).url("/case")
