"""The competition that a desk scores: put together from its records for each request, its log read on from where it was."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from fastapi import Request

from marram.desk.cards.held import event_results
from marram.desk.log.here import now, person_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.shell.workplace import workplace_on
from marram.errors import InputError
from marram.records.entry import Entry, Kept, ident
from marram.records.starting_sheet import GroupOfDay, Known, groups
from marram.said import said
from marram.services.card_log import Tap
from marram.services.card_rulings import rulings_due
from marram.services.competition_kept import CompetitionKept, competition_kept
from marram.services.event_results import CardKey, CardNow, EventResults, ResultsNow


@dataclass(frozen=True)
class ScoringHere:
    """The competition of a request, with its cards and results.

    Attributes:
        kept: the records.
        competition: the competition.
        results: its log, read on.
    """

    kept: KeptHere
    competition: CompetitionKept
    results: EventResults

    @cached_property
    def groups(self) -> Mapping[str, list[GroupOfDay]]:
        """The groups of each round, by its identifier."""
        return {one.id: groups(self.kept.records, one.id) for one in self.competition.rounds}

    @cached_property
    def starts(self) -> Mapping[CardKey, int]:
        """The hole that each player's round begins at."""
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
        """Return the cards of a round that there are entries about, by player."""
        return self.results.cards(self.competition, self.starts, round_)

    def now(self) -> ResultsNow:
        """Return the results as they stand."""
        return self.results.now(self.competition, self.starts)

    @property
    def closed(self) -> Kept | None:
        """The entry of the close that holds; ``None`` while the competition is open."""
        return self.results.closed(self.competition, self.starts)

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

    def add(self, entry: Entry) -> Kept:
        """Add an entry that a tap makes."""
        return self.kept.add_tapped(entry)

    def rule(self, key: CardKey, tap: Tap) -> None:
        """Record what the Rules make of a card now."""
        entries = [
            entry
            for player in self.competition.members[key[0]]
            for entry in self.kept.log.entries(self.kept.event_id, player=player)
        ]
        for one in rulings_due(self.card(key), entries, tap):
            self.add(one)


def scoring_here(request: Request) -> ScoringHere:
    """Return the competition of a request.

    Raises:
        InputError: the desk keeps no records, or what they hold of the competition cannot be used.
    """
    kept = kept_here(request)
    day = kept.event.played_on or now().date()
    competition = competition_kept(kept.records, kept.event_id, workplace_on(request, day).course)
    return ScoringHere(kept, competition, event_results(request.app, kept))


def tap_here(request: Request, tapped: str, seen: int = 0) -> Tap:
    """Return what somebody sends from a page.

    Raises:
        InputError: it carries no identifier.
    """
    return Tap(ident(tapped, "tapped"), now(), person_here(request) or None, seen)
