"""The records a desk works with: its event, its course, and the log that its officials add to."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime, tzinfo
from functools import cached_property

from fastapi import Request

from marram.course.versions.hole_days import HoleDays
from marram.course.versions.map_versions import MapVersions
from marram.desk.log.day_rulings import DayRulings
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry, Kept
from marram.records.group_commit import GroupCommit
from marram.records.log import Log
from marram.records.maps import HoleShelf, MapShelf
from marram.records.people import names
from marram.records.starting_sheet import GroupOfDay, Known, courses, groups, officials, rounds, time_zone
from marram.said import said
from marram.services.cases.event import Event
from marram.services.day.round_of_day import now_at, round_of_day, zone_named
from marram.services.keeping import event_by_id, kept_event
from marram.services.kinds.registry import checked
from marram.services.log.differences import put_before_chief


@dataclass(frozen=True)
class KeptHere:
    """What a desk keeps, and where.

    Attributes:
        records: where.
        event_id: whose log it adds to.
        course_id: the course its map versions and hole locations are of.
    """

    records: Records
    event_id: str
    course_id: str

    @property
    def event(self) -> Event:
        """The event as its conditions stand: once they are changed, whatever begins goes by them."""
        return self.records.until_written(
            (event_by_id, self.event_id), lambda: event_by_id(self.records, self.event_id)
        )

    @cached_property
    def shared(self) -> GroupCommit:
        """The log as all officials of this desk add to it."""
        return GroupCommit(Log(self.records))

    @property
    def log(self) -> Log:
        """The log as it is read."""
        return self.shared.log

    @cached_property
    def day_rulings(self) -> DayRulings:
        """The rulings by day, each read once."""
        return DayRulings(self.log, self.event_id, self.zone)

    @property
    def zone(self) -> tzinfo | None:
        """The zone of the club's clocks; ``None``, that of this machine, where it is not known."""
        return zone_named(time_zone(self.records, self.event_id))

    def maps(self) -> MapVersions:
        """Return the versions of the map."""
        return MapVersions(None, MapShelf(self.records, self.course_id))

    def holes(self) -> HoleDays:
        """Return the hole locations by day."""
        return HoleDays(HoleShelf(self.records, self.course_id))

    def round_on(self, day: date) -> Known | None:
        """Return the round of a day; of several the one in play by the clock of the club."""
        return round_of_day(
            rounds(self.records, self.event_id),
            day,
            lambda one: [each.starts_at for each in groups(self.records, one.id)],
            now_at(time_zone(self.records, self.event_id)),
        )

    def groups_on(self, day: date) -> list[GroupOfDay]:
        """Return the groups of a day, as they start."""
        found = self.round_on(day)
        return [] if found is None else groups(self.records, found.id)

    def all_groups(self) -> list[GroupOfDay]:
        """Return the groups of every round."""
        return [
            group for one in rounds(self.records, self.event_id) for group in groups(self.records, one.id)
        ]

    def add(self, entry: Entry) -> Kept:
        """Add an entry to the log, where it is as its kind wants it; once this returns it is on the disk.

        A ruling that went otherwise than an earlier one of the same situation is put before the chief referee.

        Raises:
            InputError: it is not, or it cannot be kept; every fault is listed.
        """
        kept = self.shared.append(self.event_id, checked(entry))
        differs = put_before_chief(kept, self.log, datetime.now(UTC))
        if differs is not None and self.log.entry(differs.id) is None:
            self.shared.append(self.event_id, checked(differs))
        return kept

    def add_tapped(self, entry: Entry) -> Kept:
        """Add an entry that one tap on a page makes; where a second tap of the same page comes later, the first counts.

        Raises:
            InputError: it is not as its kind wants it, or it cannot be kept; every fault is listed.
        """
        return self.log.entry(entry.id) or self.add(entry)

    def chiefs(self) -> list[Known]:
        """Return the chief referees, by name."""
        return officials(self.records, self.event_id, "chief_referee")

    def officials(self) -> list[Known]:
        """Return who officiates, by name."""
        return officials(self.records, self.event_id)

    def names(self) -> Mapping[str, str]:
        """Return the name of everybody in the records."""
        return names(self.records)


def keep_here(records: Records, event: str | None = None, course: str | None = None) -> KeptHere:
    """Return what a desk keeps in some records.

    Args:
        records: where.
        event: the name of the event; ``None`` for the only one.
        course: the name of the course; ``None`` for the only one.

    Raises:
        InputError: there is no such event or course, or several.
    """
    ident, _ = kept_event(records, event)
    known = courses(records)
    chosen = [one for one in known if course is None or one.name == course]
    if len(chosen) != 1:
        raise InputError(
            said(
                "{name} holds no such course, or several. It holds: {names}. Name one, or add it with 'marram records init'.",
                name=records.name,
                names=", ".join(one.name for one in known) or "–",
            )
        )
    return KeptHere(records, ident, chosen[0].id)


def kept_here(request: Request) -> KeptHere:
    """Return what the desk that got this request keeps.

    Raises:
        InputError: it keeps no records.
    """
    found: KeptHere | None = request.app.state.kept_here
    if found is None:
        raise InputError(said("This desk keeps no log. Serve it with --records to keep one."))
    return found
