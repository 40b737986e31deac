"""A competition as records keep it, put together for results: conditions, players with handicaps, rounds with holes."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from decimal import Decimal
from functools import cached_property

from marram.competition.conditions.choices import Score, Sex
from marram.competition.conditions.event_file import Entrant, EventFile
from marram.competition.conditions.handicaps import Has, handicap_of
from marram.competition.conditions.reading import read_event_file
from marram.competition.results.card import Hole
from marram.competition.results.scoring import Scoring
from marram.course.model import Course
from marram.errors import InputError
from marram.records.database import Records
from marram.records.field import EntrantKept, entrants
from marram.records.starting_sheet import Known, conditions, rounds
from marram.rules.facts.conditions import EACH_PLAYS_OWN_BALL, FormOfPlay, Sides
from marram.said import said
from marram.services.cards import scorings


@dataclass(frozen=True)
class CompetitionKept:
    """A competition, put together; two are equal where everything that results rest on is.

    Attributes:
        file: its conditions, with the players under the names that results use.
        entries: who plays, each with all that is kept.
        rounds: its rounds, the first first.
        holes: the holes of a round, in the order of their numbers.
    """

    file: EventFile
    entries: tuple[EntrantKept, ...]
    rounds: tuple[Known, ...]
    holes: tuple[Hole, ...]

    @cached_property
    def labels(self) -> Mapping[str, str]:
        """The name of each player in results, by identifier: two of one name, and who was erased, are told apart."""
        return _labels(self.entries)

    @cached_property
    def people(self) -> Mapping[str, str]:
        """The identifier of each player by that name."""
        return {label: person for person, label in self.labels.items()}

    @cached_property
    def clubs(self) -> Mapping[str, str]:
        """The club of each player by that name; empty where it is not known."""
        return {self.labels[one.person]: one.club or "" for one in self.entries}

    @cached_property
    def handicaps(self) -> Mapping[str, Has]:
        """The handicap of each player by identifier, where net scores count."""
        if Score.NET not in self.scores:
            return {}
        known = {one.name: one for one in self.file.players}
        return {
            person: handicap_of(self.file, known[label], self.holes) for person, label in self.labels.items()
        }

    @property
    def scores(self) -> tuple[Score, ...]:
        """What counts: gross, net, or both."""
        return self.file.scores or (Score.GROSS,)

    @property
    def form(self) -> FormOfPlay:
        """The form of play."""
        return self.file.form_of_play or FormOfPlay.STROKE_PLAY

    @property
    def scorings(self) -> tuple[Scoring, ...]:
        """How scores count."""
        return scorings(self.form, self.file.maximum, net=Score.NET in self.scores)

    def number(self, round_: str) -> int:
        """Return the number of a round, from 1."""
        return next(number for number, one in enumerate(self.rounds, start=1) if one.id == round_)

    def day(self, round_: str) -> date:
        """Return the day of a round; today where it is not set."""
        found = next(one.day for one in self.rounds if one.id == round_)
        return found or datetime.now().astimezone().date()

    def why_no_cards(self) -> str:
        """Return why cards cannot be entered here, in words; empty where they can."""
        if self.file.form_of_play is None:
            return said("The form of play is not known. Give it in the conditions of the competition.")
        if self.form is FormOfPlay.MATCH_PLAY:
            return said("In match play there are no cards: a match has a state.")
        if self.file.sides not in (None, Sides.INDIVIDUAL) or self.file.sides in EACH_PLAYS_OWN_BALL:
            return said(
                "Cards of partners are not entered here yet; 'marram card rule' and 'marram results' take them as files."
            )
        if not self.holes:
            return said("The course map has no par for some hole. Enter it there first.")
        if not self.entries:
            return said("Nobody is entered in this competition.")
        return ""


def competition_kept(records: Records, event: str, course: Course) -> CompetitionKept:
    """Return a competition as records keep it.

    Args:
        records: where.
        event: the event.
        course: the map of the course, for par and stroke index of its holes.

    Raises:
        InputError: what is kept of its conditions cannot be used.
    """
    entries = entrants(records, event)
    known = tuple(rounds(records, event))
    file = read_event_file(conditions(records, event))
    labels = _labels(entries)
    file = replace(file, players=tuple(_entrant(one, labels[one.person]) for one in entries))
    return CompetitionKept(file, entries, known, holes_of(course, file.holes))


def holes_of(course: Course, only: Sequence[int] = ()) -> tuple[Hole, ...]:
    """Return the holes as a card shows them, in the order of their numbers; none where a par is not known."""
    wanted = [one for number, one in sorted(course.holes.items()) if not only or number in only]
    found = [Hole(one.number, one.par, one.stroke_index) for one in wanted if one.par is not None]
    return tuple(found) if len(found) == len(wanted) else ()


def _labels(entries: Sequence[EntrantKept]) -> dict[str, str]:
    names = [one.name for one in entries]
    return {
        one.person: one.name
        if one.name and names.count(one.name) == 1
        else f"{one.name or '–'} ({one.person[:8]})"
        for one in entries
    }


def _entrant(one: EntrantKept, label: str) -> Entrant:
    try:
        return Entrant(
            label,
            None if one.handicap_index is None else Decimal(one.handicap_index),
            one.club or "",
            None if one.sex is None else Sex(one.sex),
            one.born,
            one.tees or "",
            one.playing_handicap,
        )
    except (ArithmeticError, ValueError):
        raise InputError(said("What is kept of the entry of {name} cannot be used.", name=label)) from None
