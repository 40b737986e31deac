"""The competition: its name, day, form of play and the Local Rules in force, read strictly from ``event.json``."""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any, ClassVar

from marram.errors import BadAnswer, InputError, shown
from marram.rules.engine.conditions import check_sides
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.local_rules.adoption import adopt
from marram.said import joined, said
from marram.services.schema import STRICT, give, read_into, read_json

_WORDS = said("words in quotation marks")
_TIME = said("a time of day such as 08:11")
_DAY = said("a day as year-month-day, for example 2025-06-21")
_NAMES = said("a list of names")


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


@dataclass(frozen=True)
class Official:
    """An official, as the file names them."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(_WORDS))
    role: str = field(default="", metadata=give(_WORDS))


@dataclass(frozen=True)
class Entrant:
    """A player, as the file names them."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(_WORDS))
    handicap_index: Decimal | None = field(default=None, metadata=give(said("a number such as 8.1")))


@dataclass(frozen=True)
class Group:
    """A group, as the file lets it start."""

    __pydantic_config__: ClassVar = STRICT

    time: str = field(metadata=give(_TIME))
    tee: int = field(metadata=give(said("the number of the hole it starts at")))
    players: tuple[str, ...] = field(metadata=give(_NAMES))


@dataclass(frozen=True)
class RoundOnDay:
    """A round, as the file names it with its day."""

    __pydantic_config__: ClassVar = STRICT

    name: str = field(metadata=give(_WORDS))
    played_on: date = field(metadata=give(_DAY))


@dataclass(frozen=True)
class EventFile:
    """What ``event.json`` may hold; all of it may be left out."""

    __pydantic_config__: ClassVar = STRICT

    about: str = field(default="", metadata=give(_WORDS))
    name: str = field(default="", metadata=give(_WORDS))
    club: str = field(default="", metadata=give(_WORDS))
    round: str = field(default="", metadata=give(_WORDS))
    played_on: date | None = field(default=None, metadata=give(_DAY))
    rounds: tuple[RoundOnDay, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "played_on"'))
    )
    form_of_play: FormOfPlay | None = field(
        default=None,
        metadata=give(said("one of {known}", known=", ".join(one.value for one in FormOfPlay))),
    )
    sides: Sides | None = field(
        default=None, metadata=give(said("one of {known}", known=", ".join(one.value for one in Sides)))
    )
    local_rules: tuple[str, ...] | None = field(
        default=None, metadata=give(said('a list of codes, for example ["E-5"]; [] for none'))
    )
    notice_to_players: tuple[str, ...] = field(
        default=(), metadata=give(said("a list of sentences, each in quotation marks"))
    )
    officials: tuple[Official, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "role"'))
    )
    players: tuple[Entrant, ...] = field(
        default=(), metadata=give(said('a list of objects with "name" and "handicap_index"'))
    )
    starting_times: tuple[Group, ...] = field(
        default=(), metadata=give(said('a list of objects with "time", "tee" and "players"'))
    )


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
        rounds={
            **{one.played_on: one.name for one in found.rounds},
            **({found.played_on: found.round} if found.played_on and found.round else {}),
        },
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


def read_event_file(source: Path | Mapping[str, Any]) -> EventFile:
    """Return all that a JSON file (or what it holds) says of an event.

    Raises:
        InputError: it cannot be used; every fault is listed, with its place and what to give.
    """
    where = source.name if isinstance(source, Path) else said("the event")
    document = read_json(source, where) if isinstance(source, Path) else source
    if not isinstance(document, Mapping):
        raise InputError(
            said("{where} is not a JSON object. See demo/event.json for one that is.", where=where)
        )
    faults: list[str] = []
    found = read_into(EventFile, dict(document), where, faults)
    codes = document.get("local_rules")
    played_on = found.played_on if found else None
    adopted = adopt(
        [one for one in codes or () if isinstance(one, str)] if isinstance(codes, list | tuple) else [],
        played_on,
    )
    faults += [joined(": ", where, fault) for fault in adopted.faults]
    if found:
        faults += [
            joined(": ", where, fault)
            for fault in (*_faults_of_sides(found), *_faults_of_start(found), *_faults_of_rounds(found))
        ]
    if found is None or faults:
        raise InputError(*faults)
    return found


def _faults_of_sides(found: EventFile) -> tuple[str, ...]:
    """Return what is wrong with who plays together in this form of play."""
    try:
        check_sides(found.sides, found.form_of_play)
    except BadAnswer as error:
        return error.faults
    return ()


def _faults_of_rounds(found: EventFile) -> Iterator[str]:
    """Yield each day that is given two rounds of different names."""
    named: dict[date, str] = {found.played_on: found.round} if found.played_on and found.round else {}
    for number, one in enumerate(found.rounds, start=1):
        before = named.setdefault(one.played_on, one.name)
        if before != one.name:
            yield said(
                "rounds {number}: {day} is the day of {before} and of {name}; correct one of them.",
                number=number,
                day=one.played_on.isoformat(),
                before=shown(before),
                name=shown(one.name),
            )


def _faults_of_start(found: EventFile) -> Iterator[str]:
    """Yield what cannot be in the starting times: a time that is none, a hole that is none, a player nobody knows."""
    known = {one.name for one in found.players}
    for number, group in enumerate(found.starting_times, start=1):
        hours, colon, minutes = group.time.partition(":")
        if not (colon and _below(hours, 24) and _below(minutes, 60)):
            yield said(
                "starting_times {number}, time is {time}; give {remedy}.",
                number=number,
                time=shown(group.time),
                remedy=_TIME,
            )
        if group.tee < 1:
            yield said(
                "starting_times {number}, tee is {tee}; give the number of the hole it starts at.",
                number=number,
                tee=shown(group.tee),
            )
        yield from (
            said(
                "starting_times {number} names {name}, who is not among the players; correct one of them.",
                number=number,
                name=shown(name),
            )
            for name in group.players
            if known and name not in known
        )


def _below(text: str, limit: int) -> bool:
    return len(text) == 2 and text.isascii() and text.isdecimal() and int(text) < limit


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
