"""The competition that a desk scores: put together from its records for each request, its log read on from where it was."""

from dataclasses import dataclass

from fastapi import Request

from marram.desk.cards.held import event_results
from marram.desk.log.here import now, person_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.shell.workplace import workplace_on
from marram.records.entry import Entry, Kept, ident
from marram.services.log.tap import Tap
from marram.services.results.competition_kept import competition_kept
from marram.services.results.scored import Scored


@dataclass(frozen=True)
class ScoringHere(Scored):
    """The competition of a request, with its cards and results.

    Attributes:
        kept: what the desk keeps, and adds to.
    """

    kept: KeptHere

    def add(self, entry: Entry) -> Kept:
        """Add an entry that a tap makes."""
        return self.kept.add_tapped(entry)


def scoring_here(request: Request) -> ScoringHere:
    """Return the competition of a request.

    Raises:
        InputError: the desk keeps no records, or what they hold of the competition cannot be used.
    """
    kept = kept_here(request)
    day = kept.event.played_on or now().date()
    competition = competition_kept(kept.records, kept.event_id, workplace_on(request, day).course)
    return ScoringHere(kept.records, kept.event_id, competition, event_results(request.app, kept), kept)


def tap_here(request: Request, tapped: str, seen: int = 0) -> Tap:
    """Return what somebody sends from a page.

    Raises:
        InputError: it carries no identifier.
    """
    return Tap(ident(tapped, "tapped"), now(), person_here(request) or None, seen)
