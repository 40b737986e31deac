"""A competition of some records with its cards and results as they stand: what desk, shell and Python ask alike."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from functools import cached_property

from marram.course.versions.map_versions import MapVersions
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry, Kept
from marram.records.log import Log
from marram.records.maps import MapShelf
from marram.records.starting_sheet import GroupOfDay, Known, courses, groups
from marram.said import said
from marram.services.cards.card_rulings import rulings_due
from marram.services.keeping import kept_event
from marram.services.kinds.registry import checked
from marram.services.log.tap import Tap
from marram.services.results.competition_kept import CompetitionKept, competition_kept
from marram.services.results.event_results import CardKey, CardNow, EventResults, ResultsNow


@dataclass(frozen=True)
class Scored:
    """A competition with its cards and results.

    Attributes:
        records: where it is kept.
        event: the identifier of the event.
        competition: the competition, put together.
        results: its log, read on.
    """

    records: Records
    event: str
    competition: CompetitionKept
    results: EventResults

    @cached_property
    def groups(self) -> Mapping[str, list[GroupOfDay]]:
        """The groups of each round, by its identifier."""
        return {one.id: groups(self.records, one.id) for one in self.competition.rounds}

    @cached_property
    def starts(self) -> Mapping[CardKey, int]:
        """The hole that the round of each card begins at."""
        on_card = {one.number for one in self.competition.holes}
        sides = self.competition.side_of
        return {
            (sides.get(player.id, player.id), round_): group.tee
            for round_, known in self.groups.items()
            for group in known
            for player in group.players
            if group.tee in on_card
        }

    def round(self, number: int) -> Known | None:
        """Return a round by its number, from 1."""
        known = self.competition.rounds
        return known[number - 1] if 0 < number <= len(known) else None

    def card(self, key: CardKey) -> CardNow:
        """Return a card as it stands."""
        return self.results.card(self.competition, self.starts, key)

    def cards(self, round_: str) -> dict[str, CardNow]:
        """Return the cards of a round that there are entries about, by side."""
        return self.results.cards(self.competition, self.starts, round_)

    def now(self) -> ResultsNow:
        """Return the results as they stand."""
        return self.results.now(self.competition, self.starts)

    @property
    def closed(self) -> Kept | None:
        """The entry of the close that holds; ``None`` while the competition is open."""
        return self.results.closed(self.competition, self.starts)

    def add(self, entry: Entry) -> Kept:
        """Add an entry to the log, where it is as its kind wants it.

        Raises:
            InputError: it is not; every fault is listed.
        """
        return self.results.log.append(self.event, checked(entry))

    def rule(self, key: CardKey, tap: Tap) -> None:
        """Record what the Rules make of a card now."""
        entries = [
            entry
            for player in self.competition.members[key[0]]
            for entry in self.results.log.entries(self.event, player=player)
        ]
        for one in rulings_due(self.card(key), entries, tap):
            self.add(one)

    def refuse_closed(self) -> None:
        """Let nothing change a closed competition.

        Raises:
            InputError: it is closed.
        """
        if self.closed is not None:
            raise InputError(
                said(
                    "The competition is closed. What is found out now is entered as such and ruled under Rule 20.2e; "
                    "a mistake of the Committee is put right by reopening the result."
                )
            )


def scored_in(records: Records, event: str | None = None, course: str | None = None) -> Scored:
    """Return a competition out of some records, on the map in force on its first day.

    Args:
        records: where.
        event: the name of the event; ``None``: the only one.
        course: the name of the course; ``None``: the only one.

    Raises:
        InputError: there is no such event or course, several, or what is kept cannot be used.
    """
    ident, found = kept_event(records, event)
    known = [one for one in courses(records) if course is None or one.name == course]
    if len(known) != 1:
        names = ", ".join(one.name for one in courses(records)) or "–"
        raise InputError(
            said(
                "{name} holds no such course, or several. It holds: {names}.", name=records.name, names=names
            )
        )
    maps = MapVersions(None, MapShelf(records, known[0].id))
    day = found.played_on or datetime.now().astimezone().date()
    map_ = maps.course(maps.map_on(day).version.number, day)
    return Scored(records, ident, competition_kept(records, ident, map_), EventResults(Log(records), ident))
