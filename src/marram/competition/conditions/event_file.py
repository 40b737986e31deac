"""What ``event.json`` may hold: the conditions of a competition, who plays, who officiates, who starts when."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from enum import Enum
from typing import ClassVar

from marram.competition.conditions.choices import (
    ConductPenalty,
    CountbackStrokes,
    MaximumBy,
    Score,
    Sex,
    Target,
    TeamsBy,
    TieMethod,
    Variation,
)
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.said import Said, said
from marram.schema import STRICT, give

WORDS = said("words in quotation marks")
TIME = said("a time of day such as 08:11")
DAY = said("a day as year-month-day, for example 2025-06-21")
_NAMES = said("a list of names")
_INDEX = said("a number such as 8.1")
_COUNT = said("a whole number")
_AGE = said("an age in years")
_MINUTES = said("a whole number of minutes, for example 270")
_HOLES = said("a list of hole numbers, for example [1, 2, 3]")


def _one_of(kind: Iterable[Enum]) -> Said:
    return said("one of {known}", known=", ".join(str(one.value) for one in kind))


def _some_of(kind: Iterable[Enum]) -> Said:
    return said("a list of some of {known}", known=", ".join(str(one.value) for one in kind))


@dataclass(frozen=True)
class Official:
    """An official, as the file names them."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(WORDS))
    role: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class Entrant:
    """A player, as the file names them."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(WORDS))
    handicap_index: Decimal | None = field(default=None, metadata=give(_INDEX))
    club: str = field(default="", metadata=give(WORDS))
    sex: Sex | None = field(default=None, metadata=give(_one_of(Sex)))
    born: int | None = field(default=None, metadata=give(said("a year of birth such as 1990")))
    tees: str = field(default="", metadata=give(WORDS))
    playing_handicap: int | None = field(default=None, metadata=give(_COUNT))
    side: str = field(default="", metadata=give(WORDS))
    team: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class Group:
    """A group, as the file lets it start."""

    __pydantic_config__: ClassVar = STRICT

    time: str = field(metadata=give(TIME))
    tee: int = field(metadata=give(said("the number of the hole it starts at")))
    players: tuple[str, ...] = field(metadata=give(_NAMES))


@dataclass(frozen=True)
class RoundOnDay:
    """A round, as the file names it with its day, and what differs in it.

    ``holes`` where it is not over all of the course, ``sides`` where a round of matches has others, ``minutes_of_play``
    where the policy gives it another time.
    """

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(WORDS))
    played_on: date = field(metadata=give(DAY))
    holes: tuple[int, ...] = field(default=(), metadata=give(_HOLES))
    sides: Sides | None = field(default=None, metadata=give(_one_of(Sides)))
    minutes_of_play: int | None = field(default=None, metadata=give(_MINUTES))


@dataclass(frozen=True)
class Rating:
    """How a set of tees is rated (Rules of Handicapping 6.1): for one sex, or for everybody where none is given."""

    __pydantic_config__: ClassVar = STRICT

    tees: str = field(metadata=give(WORDS))
    course_rating: Decimal = field(metadata=give(said("a Course Rating such as 71.4")))
    slope: int = field(metadata=give(said("a Slope Rating from 55 to 155")))
    par: int = field(metadata=give(said("the par of the holes played")))
    sex: Sex | None = field(default=None, metadata=give(_one_of(Sex)))
    hole_pars: tuple[int, ...] = field(
        default=(), metadata=give(said("a list with the par of each hole from these tees, from the first on"))
    )


@dataclass(frozen=True)
class Maximum:
    """The maximum for a hole (Rule 21.2a)."""

    __pydantic_config__: ClassVar = STRICT

    by: MaximumBy = field(metadata=give(_one_of(MaximumBy)))
    number: int = field(metadata=give(_COUNT))


@dataclass(frozen=True)
class Division:
    """A part of the field with a result of its own; every bound that is given must hold, both ends included."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(WORDS))
    handicap_from: Decimal | None = field(default=None, metadata=give(_INDEX))
    handicap_to: Decimal | None = field(default=None, metadata=give(_INDEX))
    age_from: int | None = field(default=None, metadata=give(_AGE))
    age_to: int | None = field(default=None, metadata=give(_AGE))
    sex: Sex | None = field(default=None, metadata=give(_one_of(Sex)))
    clubs: tuple[str, ...] = field(default=(), metadata=give(_NAMES))
    tees: str = field(default="", metadata=give(WORDS))


@dataclass(frozen=True)
class Cut:
    """Who plays on after a round: the first ``places``, or who is within some strokes (or points) of the lead."""

    __pydantic_config__: ClassVar = STRICT

    after_round: int = field(metadata=give(said("the number of a round")))
    places: int | None = field(default=None, metadata=give(_COUNT))
    ties: bool = field(default=True, metadata=give(said("true or false")))
    within: int | None = field(default=None, metadata=give(_COUNT))
    score: Score | None = field(default=None, metadata=give(_one_of(Score)))


@dataclass(frozen=True)
class Ties:
    """How ties are decided: for the first place, and for every other; in order, until one method decides."""

    __pydantic_config__: ClassVar = STRICT

    first_place: tuple[TieMethod, ...] = field(default=(), metadata=give(_some_of(TieMethod)))
    other_places: tuple[TieMethod, ...] = field(default=(), metadata=give(_some_of(TieMethod)))
    countback_strokes: CountbackStrokes | None = field(default=None, metadata=give(_one_of(CountbackStrokes)))


@dataclass(frozen=True)
class Teams:
    """Teams whose best scores count; ``rounds`` where not all rounds count for them, but the first so many."""

    __pydantic_config__: ClassVar = STRICT

    size: int = field(metadata=give(_COUNT))
    counting: int = field(metadata=give(_COUNT))
    by: TeamsBy = field(default=TeamsBy.ROUND, metadata=give(_one_of(TeamsBy)))
    rounds: int | None = field(default=None, metadata=give(_COUNT))


@dataclass(frozen=True)
class Conduct:
    """A part of the Code of Conduct (Rule 1.2b): what is not to be done, and what each further time brings."""

    __pydantic_config__: ClassVar = STRICT

    about: str = field(metadata=give(WORDS))
    penalties: tuple[ConductPenalty, ...] = field(metadata=give(_some_of(ConductPenalty)))


@dataclass(frozen=True)
class EventFile:
    """What ``event.json`` may hold; all of it may be left out."""

    __pydantic_config__: ClassVar = STRICT

    about: str = field(default="", metadata=give(WORDS))
    name: str = field(default="", metadata=give(WORDS))
    club: str = field(default="", metadata=give(WORDS))
    round: str = field(default="", metadata=give(WORDS))
    played_on: date | None = field(default=None, metadata=give(DAY))
    rounds: tuple[RoundOnDay, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "played_on"'))
    )
    holes: tuple[int, ...] = field(default=(), metadata=give(_HOLES))
    form_of_play: FormOfPlay | None = field(default=None, metadata=give(_one_of(FormOfPlay)))
    sides: Sides | None = field(default=None, metadata=give(_one_of(Sides)))
    variation: Variation | None = field(default=None, metadata=give(_one_of(Variation)))
    side_size: int | None = field(default=None, metadata=give(_COUNT))
    scores_counting: int | None = field(default=None, metadata=give(_COUNT))
    scores: tuple[Score, ...] = field(default=(), metadata=give(_some_of(Score)))
    allowance: Decimal | None = field(default=None, metadata=give(said("per cent of the Course Handicap")))
    handicap_limit: Decimal | None = field(default=None, metadata=give(_INDEX))
    field_size: int | None = field(default=None, metadata=give(_COUNT))
    maximum: Maximum | None = field(default=None, metadata=give(said('an object with "by" and "number"')))
    target: Target | None = field(default=None, metadata=give(_one_of(Target)))
    tees: str = field(default="", metadata=give(WORDS))
    ratings: tuple[Rating, ...] = field(
        default=(), metadata=give(said('a list of objects with "tees", "course_rating", "slope" and "par"'))
    )
    divisions: tuple[Division, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and bounds'))
    )
    cut: Cut | None = field(default=None, metadata=give(said('an object with "after_round" and "places"')))
    ties: Ties | None = field(
        default=None, metadata=give(said('an object with "first_place" and "other_places"'))
    )
    match_may_end_tied: bool | None = field(default=None, metadata=give(said("true or false")))
    teams: Teams | None = field(default=None, metadata=give(said('an object with "size" and "counting"')))
    local_rules: tuple[str, ...] | None = field(
        default=None, metadata=give(said('a list of codes, for example ["E-5"]; [] for none'))
    )
    notice_to_players: tuple[str, ...] = field(
        default=(), metadata=give(said("a list of sentences, each in quotation marks"))
    )
    pace_policy: str = field(default="", metadata=give(WORDS))
    minutes_of_play: int | None = field(default=None, metadata=give(_MINUTES))
    code_of_conduct: tuple[Conduct, ...] = field(
        default=(), metadata=give(said('a list of objects with "about" and "penalties"'))
    )
    closes: str = field(default="", metadata=give(WORDS))
    results_public: bool | None = field(default=None, metadata=give(said("true or false")))
    officials: tuple[Official, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "role"'))
    )
    players: tuple[Entrant, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "handicap_index"'))
    )
    starting_times: tuple[Group, ...] = field(
        default=(), metadata=give(said('a list of objects with "time", "tee" and "players"'))
    )

    def every_round(self) -> tuple[tuple[date, str], ...]:
        """Return the day and the name of every round, in the order of the days, those of one day as they are listed."""
        known = dict.fromkeys((one.played_on, one.name) for one in self.rounds)
        if self.played_on and all(one.played_on != self.played_on for one in self.rounds):
            known[self.played_on, self.round] = None
        return tuple(sorted(known, key=lambda one: one[0]))

    def days(self) -> dict[date, str]:
        """Return the name of the round of every day, in the order of the days; of several on a day all of them."""
        known: dict[date, list[str]] = {}
        for day, name in self.every_round():
            known.setdefault(day, []).append(name)
        return {day: " / ".join(names) for day, names in known.items()}

    def minutes_of(self, day: date | None, name: str) -> int | None:
        """Return the minutes that a group is given for a round, by its day and name; ``None`` where nobody said."""
        that_day = [one for one in self.rounds if one.played_on == day and one.minutes_of_play is not None]
        named = [one for one in that_day if one.name == name]
        alone = that_day if len({one.name for one in self.rounds if one.played_on == day}) < 2 else []
        return next((one.minutes_of_play for one in (*named, *alone)), self.minutes_of_play)

    def sides_in(self, round_: int) -> Sides | None:
        """Return the sides of a round by its number from 1: its own, or those of the competition."""
        known = self.every_round()
        wanted = known[round_ - 1] if 1 <= round_ <= len(known) else None
        return next(
            (one.sides for one in self.rounds if one.sides and (one.played_on, one.name) == wanted),
            self.sides,
        )

    def minutes_in(self, round_: int) -> int | None:
        """Return the minutes that a group is given for a round, by its number from 1; ``None`` where nobody said."""
        known = self.every_round()
        return self.minutes_of(*known[round_ - 1]) if 1 <= round_ <= len(known) else self.minutes_of_play
