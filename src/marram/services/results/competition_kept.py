"""A competition as records keep it, put together for results: conditions, players with handicaps, rounds with holes."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime
from decimal import Decimal
from functools import cached_property

from marram.competition.conditions.choices import Score, Sex
from marram.competition.conditions.event_file import Entrant, EventFile
from marram.competition.conditions.handicaps import (
    Has,
    competes_alone,
    handicap_of,
    shares_ball,
    side_handicap_of,
)
from marram.competition.conditions.pars import holes_from_tees, pars_apart
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
from marram.services.cards.cards import scorings


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
    def players(self) -> Mapping[str, str]:
        """The name of each player in results, by identifier: two of one name, and who was erased, are told apart."""
        return _labels(self.entries)

    @cached_property
    def entered(self) -> Mapping[str, Entrant]:
        """What is known of each player, by the name in results."""
        return {one.name: one for one in self.file.players}

    @cached_property
    def members(self) -> Mapping[str, tuple[str, ...]]:
        """The players of each side by the identifier of the side: a player who competes alone is a side by himself."""
        found: dict[str, tuple[str, ...]] = {}
        for one in self.entries:
            side = one.person if self.alone or one.side is None else one.side
            found[side] = (*found.get(side, ()), one.person)
        return found

    @cached_property
    def side_of(self) -> Mapping[str, str]:
        """The identifier of the side that each player competes in."""
        return {person: side for side, members in self.members.items() for person in members}

    @cached_property
    def labels(self) -> Mapping[str, str]:
        """The name of each side in results, by identifier; partners whose side has no name of its own are named."""
        if self.alone:
            return self.players
        named = {one.side: one.side_name or "" for one in self.entries if one.side is not None}
        words = {
            side: named.get(side) or " / ".join(self.players[one] for one in members)
            for side, members in self.members.items()
        }
        every = list(words.values())
        return {side: one if every.count(one) == 1 else f"{one} ({side[:8]})" for side, one in words.items()}

    @cached_property
    def people(self) -> Mapping[str, str]:
        """The identifier of each side by that name."""
        return {label: side for side, label in self.labels.items()}

    @cached_property
    def partners(self) -> Mapping[str, tuple[str, ...]]:
        """The names of the players of each side, by the name of the side."""
        return {
            self.labels[side]: tuple(self.players[one] for one in members)
            for side, members in self.members.items()
        }

    @cached_property
    def players_named(self) -> Mapping[str, str]:
        """The players of each side by its name, where the side has a name of its own; empty where it is called after them."""
        return {
            label: "" if self.alone or label == " / ".join(some) else " / ".join(some)
            for label, some in self.partners.items()
        }

    @cached_property
    def clubs(self) -> Mapping[str, str]:
        """The club of each side by its name; the clubs where partners are of several; empty where none is known."""
        of = {one.person: one.club or "" for one in self.entries}
        return {
            self.labels[side]: ", ".join(dict.fromkeys(of[one] for one in members if of[one]))
            for side, members in self.members.items()
        }

    @cached_property
    def alone(self) -> bool:
        """Whether every player competes alone."""
        return competes_alone(self.file) or self.file.sides is Sides.THREE_BALL

    @cached_property
    def own_balls(self) -> bool:
        """Whether partners each play a ball of their own, so that a card shows a score of each."""
        return self.file.sides in EACH_PLAYS_OWN_BALL and not shares_ball(self.file)

    def balls(self, side: str) -> tuple[str, ...]:
        """Return whose balls have a score on the card of a side, by identifier; none where it plays one."""
        return self.members[side] if self.own_balls else ()

    def ball_names(self, side: str) -> Mapping[str, str]:
        """Return the name of each ball on the card of a side, by the identifier of the player."""
        return {one: self.players[one] for one in self.balls(side)}

    @cached_property
    def handicaps(self) -> Mapping[str, Has]:
        """The one handicap of each side by its identifier, where net scores count and the side plays one ball."""
        if Score.NET not in self.scores or self.own_balls:
            return {}
        known = self.entered
        mine = {side: [known[self.players[one]] for one in members] for side, members in self.members.items()}
        if shares_ball(self.file):
            return {side: side_handicap_of(self.file, some, self.holes) for side, some in mine.items()}
        return {side: handicap_of(self.file, some[0], self.holes) for side, some in mine.items()}

    @cached_property
    def handicaps_of_balls(self) -> Mapping[str, Has]:
        """The handicap of each player by identifier, where net scores count and partners each play a ball."""
        if Score.NET not in self.scores or not self.own_balls:
            return {}
        known = self.entered
        return {
            person: handicap_of(self.file, known[label], self.holes) for person, label in self.players.items()
        }

    def holes_of(self, side: str) -> tuple[Hole, ...]:
        """Return the holes as the card of a side shows them: with the par of its tees."""
        mine = [self.entered[self.players[one]] for one in self.members[side]]
        return holes_from_tees(self.file, mine, self.holes)

    def pars(self, side: str) -> Mapping[str, Mapping[int, int]]:
        """Return for the balls of a side whose tees have another par than its card shows the pars by the numbers of holes."""
        holes = self.holes_of(side)
        names = self.ball_names(side).values()
        apart = {name: pars_apart(self.file, self.entered[name], holes) for name in names}
        numbers = [one.number for one in holes]
        return {name: dict(zip(numbers, pars, strict=True)) for name, pars in apart.items() if pars}

    @cached_property
    def teams(self) -> Mapping[str, tuple[str, ...]]:
        """The sides of each team, all by name."""
        found: dict[str, dict[str, None]] = {}
        for one in self.entries:
            if one.team:
                found.setdefault(one.team, {})[self.labels[self.side_of[one.person]]] = None
        return {team: tuple(sides) for team, sides in found.items()}

    def strokes(self, side: str) -> Mapping[str, Mapping[int, int]]:
        """Return for each ball of a side, by its name on the card, the handicap strokes of each hole by its number."""
        names = self.ball_names(side)
        some = (
            {names[one]: self.handicaps_of_balls.get(one) for one in names}
            if names
            else {self.labels[side]: self.handicaps.get(side)}
        )
        numbers = [one.number for one in self.holes]
        return {
            ball: dict(zip(numbers, has.strokes, strict=True))
            for ball, has in some.items()
            if has is not None and has.strokes
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
        counting = (self.file.scores_counting or 1) if self.own_balls else 1
        found = scorings(self.form, self.file.maximum, net=Score.NET in self.scores)
        return tuple(replace(one, counting=counting) for one in found)

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
            return said(
                "In match play there are no cards: a match has a state. It is entered with the matches."
            )
        if not self.holes:
            return said("The course map has no par for some hole. Enter it there first.")
        if not self.entries:
            return said("Nobody is entered in this competition.")
        without = [] if self.alone else [self.players[one.person] for one in self.entries if one.side is None]
        if without:
            return said(
                "Who plays with whom is not known of {names}. Give each entry its side.",
                names=", ".join(without),
            )
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
