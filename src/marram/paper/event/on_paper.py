"""What the sheets of a round are made of."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date, time
from functools import cached_property

from marram.competition.conditions.choices import Score
from marram.competition.conditions.event_file import Entrant, EventFile, Group
from marram.competition.conditions.handicaps import Has, handicap_of
from marram.competition.conditions.pars import holes_from_tees
from marram.competition.results.card import Hole
from marram.errors import InputError
from marram.said import said
from marram.words.texts import long_day_words, text


@dataclass(frozen=True)
class OnPaper:
    """A round of an event, as the sheets need it.

    Attributes:
        found: the conditions, with the players.
        round: its number, from 1.
        holes: the holes as a card shows them, in the order of their numbers; empty where they are not known.
        course: the name of the course; empty where it is not known.
        drawn: the groups of the round; ``None``: those of the conditions, which are the groups of the first round.
        gone: who is out or missed the cut, by name or by the name of the side: they wait for no start.
    """

    found: EventFile
    round: int = 1
    holes: tuple[Hole, ...] = ()
    course: str = ""
    drawn: tuple[Group, ...] | None = None
    gone: frozenset[str] = frozenset()
    handicaps: Mapping[str, Has] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        """Check that there is such a round, and that its groups are groups of its players.

        Raises:
            InputError: every fault is listed.
        """
        if (sides := self.found.sides_in(self.round)) is not self.found.sides:
            object.__setattr__(self, "found", replace(self.found, sides=sides))
        faults = []
        rounds = max(1, len(self.found.every_round()))
        if not 1 <= self.round <= rounds:
            faults.append(
                said("There is no round {round}; give one from 1 to {last}.", round=self.round, last=rounds)
            )
        seen: dict[str, int] = {}
        for group in self.groups:
            for name in group.players:
                seen[name] = seen.get(name, 0) + 1
        known = {one.name for one in self.found.players}
        faults += [
            said("{name} is in {count} groups of one round. Keep one of them.", name=repr(name), count=count)
            for name, count in seen.items()
            if count > 1
        ]
        faults += [
            said(
                "{name} is in a group, and not among the players. Enter the player, or correct the name.",
                name=repr(name),
            )
            for name in seen
            if known and name not in known
        ]
        if faults:
            raise InputError(*faults)

    @property
    def name(self) -> str:
        """The name of the event."""
        return self.found.name or text("paper.no_name")

    @property
    def day(self) -> date | None:
        """The day of the round."""
        days = self.found.every_round()
        return days[self.round - 1][0] if days else None

    @property
    def day_words(self) -> str:
        """The day of the round in words; empty where it is not known."""
        return long_day_words(self.day) if self.day else ""

    @property
    def about(self) -> str:
        """The round and the course, in words."""
        names = self.found.every_round()
        name = names[self.round - 1][1] if names else self.found.round
        known = [one for one in (name, self.course) if one]
        return text("paper.about", first=known[0], second=known[1]) if len(known) == 2 else "".join(known)

    @cached_property
    def groups(self) -> tuple[Group, ...]:
        """The groups of the round, in the order of their times, then tees."""
        given = self.drawn if self.drawn is not None else self.found.starting_times if self.round == 1 else ()
        return tuple(sorted(given, key=lambda one: (time.fromisoformat(one.time), one.tee)))

    @cached_property
    def players(self) -> tuple[Entrant, ...]:
        """Everybody who plays: those entered, or, where nobody is, those of the groups."""
        return self.found.players or tuple(
            Entrant(name) for group in self.groups for name in group.players if name
        )

    @cached_property
    def by_name(self) -> Mapping[str, Entrant]:
        """Everybody who plays, by name."""
        return {one.name: one for one in self.players}

    @cached_property
    def waiting(self) -> tuple[Entrant, ...]:
        """Who plays on and is in no group of the round."""
        placed = {name for group in self.groups for name in group.players}
        return tuple(
            one for one in self.players if one.name not in placed and not {one.name, one.side} & self.gone
        )

    @property
    def net(self) -> bool:
        """Whether net scores count."""
        return Score.NET in self.found.scores

    def holes_of(self, *names: str) -> tuple[Hole, ...]:
        """Return the holes with the par of the tees that these play from, where it is known and the same."""
        return holes_from_tees(self.found, [self.by_name.get(one, Entrant(one)) for one in names], self.holes)

    def has(self, name: str) -> Has:
        """Return a player's handicap in the competition."""
        if name not in self.handicaps:
            entrant = self.by_name.get(name, Entrant(name))
            known = dict(self.handicaps)
            known[name] = handicap_of(self.found, entrant, self.holes)
            object.__setattr__(self, "handicaps", known)
        return self.handicaps[name]
