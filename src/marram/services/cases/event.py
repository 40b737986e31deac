"""The competition: its name, day, form of play and the Local Rules in force, read strictly from ``event.json``."""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import Any

from marram.competition.conditions.event_file import Entrant, EventFile, Group
from marram.competition.conditions.reading import read_event_file
from marram.errors import shown
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.local_rules.adoption import adopt
from marram.said import joined, said


@dataclass(frozen=True, slots=True)
class Event:
    """A competition.

    Attributes:
        name: its name.
        round: the round, e.g. "First round".
        played_on: the day of the round; ``None`` means today.
        form_of_play: the form of play, or ``None`` when the Terms of the Competition are not known here.
        sides: who plays together, or ``None``.
        local_rules: codes of the Model Local Rules in force, or ``None`` when not known here.
        adopted: every code that the event adopts, those that only define an area among them.
        rounds: every round by its day, that of ``played_on`` among them.
        notice: the notice to players, sentence by sentence.
        remarks: what is given and not used, in words.
    """

    name: str = ""
    round: str = ""
    played_on: date | None = None
    form_of_play: FormOfPlay | None = None
    sides: Sides | None = None
    local_rules: tuple[str, ...] | None = None
    notice: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    rounds: Mapping[date, str] = field(default_factory=dict)
    adopted: tuple[str, ...] = ()

    def round_on(self, day: date) -> str:
        """Return the round that is played on a day; empty where none is known to be."""
        return self.rounds.get(day, "" if self.played_on else self.round)


def read_event(source: Path | Mapping[str, Any] | Event | None) -> Event:
    """Return the event a JSON file (or what it holds) describes; ``None`` gives an event without a name.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    if isinstance(source, Event):
        return source
    if source is None:
        return Event()
    where = source.name if isinstance(source, Path) else said("the event")
    found = read_event_file(source)
    return Event(
        name=found.name,
        round=found.round,
        rounds=found.days(),
        played_on=found.played_on,
        form_of_play=found.form_of_play,
        sides=found.sides,
        adopted=adopt(found.local_rules or (), found.played_on).codes,
        local_rules=None
        if found.local_rules is None
        else adopt(found.local_rules, found.played_on).in_rulings,
        notice=found.notice_to_players,
        remarks=tuple(joined(": ", where, remark) for remark in _remarks(found)),
    )


def _remarks(found: EventFile) -> Iterator[str]:
    """Yield what is given and not used, or given in a way that may be a slip."""
    starts = Counter(name for group in found.starting_times for name in group.players)
    idle = [one.name for one in found.players if found.starting_times and one.name not in starts]
    if idle:
        yield said("{idle} stand in no starting time.", idle=", ".join(map(shown, idle)))
    often = [name for name, times in starts.items() if times > 1]
    if often:
        yield said("{often} stand in several starting times.", often=", ".join(map(shown, often)))
    unused = [
        name
        for name, given in (
            ("players", found.players),
            ("officials", found.officials),
            ("starting_times", found.starting_times),
        )
        if given
    ]
    if unused:
        yield said("{unused}: read and checked; the desk does not use them yet.", unused=", ".join(unused))


__all__ = ["Entrant", "Event", "EventFile", "Group", "read_event", "read_event_file"]
