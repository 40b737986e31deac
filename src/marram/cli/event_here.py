"""What the commands of ``marram event`` share: the event in its records, who is meant, and what was entered."""

import unicodedata
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from enum import Enum
from typing import TypeVar

from marram.cli import long_work
from marram.cli.event_options import Where
from marram.cli.show import Line, show_lines
from marram.errors import InputError, did_you_mean, shown
from marram.records.database import opened
from marram.records.entry import new_ident
from marram.records.log import Log
from marram.records.starting_sheet import Known, officials
from marram.said import one_of, said, sentences
from marram.services.field.field_kept import EventLog
from marram.services.keeping import kept_event
from marram.services.log.tap import Tap
from marram.services.results.event_results import CardKey
from marram.services.results.scored import Scored, scored_in
from marram.words.texts import text

E = TypeVar("E", bound=Enum)


@dataclass(frozen=True)
class Here:
    """An event that records keep.

    Attributes:
        scored: its competition, with cards and results.
        tap: what is entered now: who, when, and what was seen, which is all.
        name: what the event is called.
    """

    scored: Scored
    tap: Tap
    name: str

    @property
    def log(self) -> Log:
        """The log of the records."""
        return self.scored.results.log

    @property
    def at(self) -> EventLog:
        """The event with its log."""
        return EventLog(self.scored.records, self.log, self.scored.event)

    def round(self, number: int) -> Known:
        """Return a round by its number.

        Raises:
            InputError: there is none.
        """
        found = self.scored.round(number)
        if found is None:
            count = len(self.scored.competition.rounds)
            raise InputError(
                said("There is no round {number}. Give 1 to {count}.", number=number, count=count)
            )
        return found

    def side(self, name: str) -> str:
        """Return the side of this name, or of a player of this name, by identifier.

        Raises:
            InputError: nobody, or several, are called so.
        """
        competition = self.scored.competition
        known = {_plain(one): side for side, one in competition.labels.items()}
        known |= {
            _plain(one): competition.side_of[who]
            for who, one in competition.players.items()
            if who in competition.side_of
        }
        wanted = _plain(name)
        alike = {side for called, side in known.items() if wanted and wanted in called}
        if wanted in known:
            return known[wanted]
        if len(alike) == 1:
            return alike.pop()
        if alike:
            names = ", ".join(sorted(competition.labels[one] for one in alike)[:8])
            raise InputError(said("{name} can be several: {names}.", name=shown(name), names=names))
        raise InputError(
            sentences(
                said("{name} does not play.", name=shown(name)),
                did_you_mean(name, dict.fromkeys(competition.players.values())),
            )
        )

    def card(self, name: str, number: int) -> CardKey:
        """Return which card is meant.

        Raises:
            InputError: there is no such round or player, or there are no cards in this competition.
        """
        if why_not := self.scored.competition.why_no_cards():
            raise InputError(why_not)
        return self.side(name), self.round(number).id

    def ball(self, key: CardKey, name: str) -> str:
        """Return whose ball on a card is meant, by identifier; empty where the card shows one ball.

        Raises:
            InputError: the card shows balls of partners, and none of this name.
        """
        known = self.scored.competition.ball_names(key[0])
        found = [who for who, called in known.items() if _plain(name) and _plain(name) in _plain(called)]
        if not known and not name:
            return ""
        if len(found) != 1:
            names = ", ".join(known.values()) or "–"
            raise InputError(said("Say whose ball with --ball: {names}.", names=names))
        return found[0]


@contextmanager
def event_here(where: Where) -> Iterator[Here]:
    """Open records, and give the event that is meant; what is entered meanwhile is printed at the end.

    Raises:
        InputError: the records, the event or the official cannot be found.
    """
    with opened(where.records) as there:
        with long_work.shown():
            scored = scored_in(there, where.event, where.course)
        by = None
        if where.by is not None:
            known = {_plain(one.name): one.id for one in officials(there, scored.event)}
            by = known.get(_plain(where.by))
            if by is None:
                names = ", ".join(one.name for one in officials(there, scored.event)) or "–"
                raise InputError(
                    said("--by is {name}; give one of {names}.", name=shown(where.by), names=names)
                )
        before = scored.results.log.head(scored.event)
        yield Here(
            scored, Tap(new_ident(), datetime.now(UTC), by, before), kept_event(there, where.event)[1].name
        )
        added = scored.results.log.entries(scored.event, after=before)
        if added:
            show_lines(
                ("quiet", text("event_kept.entered", number=one.number, kind=text(f"log.kind.{one.kind}")))
                for one in added
            )


def list_lines(title: str, lines: Iterator[Line] | list[Line], none: str) -> None:
    """Print a list under its title, or that it is empty."""
    some = list(lines)
    show_lines([("title", title), *(some or [("text", none)])])


def named(kind: type[E], given: str, option: str) -> E:
    """Return a choice as typed.

    Raises:
        InputError: there is no such one; all are named.
    """
    known = [str(one.value) for one in kind]
    if given not in known:
        raise InputError(
            said("{option} is {given}; give {known}.", option=option, given=shown(given), known=one_of(known))
        )
    return kind(given)


def day_of(given: str) -> date:
    """Return the day typed as ``--day``.

    Raises:
        InputError: it is none.
    """
    try:
        return date.fromisoformat(given)
    except ValueError:
        raise InputError(
            said("--day is {given}; give a day such as 2025-06-21.", given=shown(given))
        ) from None


def clock(given: str) -> time:
    """Return a time of day as typed.

    Raises:
        InputError: it is none.
    """
    try:
        return time.fromisoformat(given.strip().zfill(5))
    except ValueError:
        raise InputError(text("draw.time", given=repr(given))) from None


def _plain(name: str) -> str:
    """Return a name without capitals, accents and spare room, as it is looked for."""
    apart = unicodedata.normalize("NFKD", name)
    return " ".join("".join(one for one in apart if not unicodedata.combining(one)).casefold().split())
