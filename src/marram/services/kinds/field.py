"""Who plays: entries taken from a list, a ballot, a withdrawal, groups drawn. People stand by identifier alone."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import time
from typing import ClassVar

from marram.competition.entries.entry import Column
from marram.said import said
from marram.schema import STRICT, give
from marram.services.kinds.kind import WORDS, Kind, is_ident

A_PERSON = said("the identifier of a person, a UUID")
_ENTRIES = said('a list of objects with "who"')
_ENTRY = said('an object with "who"')
_PEOPLE = said("a list of identifiers of people")
_COUNT = said("a whole number")
_YES_OR_NO = said("true or false")


@dataclass(frozen=True)
class EntryTaken:
    """An entry: who, and what the list told of it."""

    __pydantic_config__: ClassVar = STRICT

    who: str = field(metadata=give(A_PERSON))
    handicap_index: str | None = field(default=None, metadata=give(WORDS))
    tees: str | None = field(default=None, metadata=give(WORDS))
    playing_handicap: int | None = field(default=None, metadata=give(_COUNT))


@dataclass(frozen=True)
class EntriesTaken:
    """What the entry of a list that was taken holds.

    Attributes:
        entries: in the order of the list.
        columns: which heading told what; empty for a heading that was not read. The next list is read by them.
        waiting: whether they wait for a place behind everybody who waits, as lots were cast already.
    """

    __pydantic_config__: ClassVar = STRICT

    entries: tuple[EntryTaken, ...] = field(metadata=give(_ENTRIES))
    columns: Mapping[str, str] = field(metadata=give(said("an object from headings to what they tell")))
    waiting: bool = field(default=False, metadata=give(_YES_OR_NO))


@dataclass(frozen=True)
class BallotDrawn:
    """What the entry of a ballot holds, so that it can be drawn again.

    Attributes:
        seed: as it is published.
        places: how many play.
        lowest_handicaps_first: whether lots only decide between equal Handicap Indexes.
        handicap_limit: a decimal as it is written; ``None``: there is none.
        order: everybody in the order drawn; the first have places, the others wait.
        refused: over the limit, or without a handicap where there is one.
    """

    __pydantic_config__: ClassVar = STRICT

    seed: str = field(metadata=give(WORDS))
    places: int = field(metadata=give(_COUNT))
    lowest_handicaps_first: bool = field(metadata=give(_YES_OR_NO))
    handicap_limit: str | None = field(metadata=give(WORDS))
    order: tuple[EntryTaken, ...] = field(metadata=give(_ENTRIES))
    refused: tuple[str, ...] = field(metadata=give(_PEOPLE))


@dataclass(frozen=True)
class EntryWithdrawn:
    """What the entry of a withdrawal holds: who moves up; ``None``: nobody waits."""

    __pydantic_config__: ClassVar = STRICT

    moves_up: str | None = field(default=None, metadata=give(A_PERSON))


@dataclass(frozen=True)
class EntryPutRight:
    """What the entry of an entry put right holds: what it said, and what it says now."""

    __pydantic_config__: ClassVar = STRICT

    was: EntryTaken = field(metadata=give(_ENTRY))
    now: EntryTaken = field(metadata=give(_ENTRY))


@dataclass(frozen=True)
class GroupDrawn:
    """A group of a draw, its players by identifier."""

    __pydantic_config__: ClassVar = STRICT

    time: str = field(metadata=give(said("a time of day such as 08:11")))
    tee: int = field(metadata=give(said("the number of the hole it starts at")))
    players: tuple[str, ...] = field(metadata=give(_PEOPLE))


@dataclass(frozen=True)
class DrawMade:
    """What the entry of a draw holds: its seed, and the groups of the round as they are from then on."""

    __pydantic_config__: ClassVar = STRICT

    seed: str = field(metadata=give(WORDS))
    groups: tuple[GroupDrawn, ...] = field(metadata=give(said("a list of groups")))


def _people(kind: str, people: list[str]) -> Iterator[str]:
    if wrong := [one for one in people if not is_ident(one)]:
        yield said("{kind}: {who} is nobody; give {what}.", kind=kind, who=repr(wrong[0]), what=A_PERSON)
    if len(set(people)) != len(people):
        yield said("{kind}: somebody stands in it twice; give each once.", kind=kind)


def _taken(found: EntriesTaken) -> Iterator[str]:
    yield from _people("entries_taken", [one.who for one in found.entries])
    known = {one.value for one in Column} | {""}
    if wrong := sorted(set(found.columns.values()) - known):
        yield said(
            "entries_taken: no column tells {what}; give one of {known}.",
            what=repr(wrong[0]),
            known=", ".join(sorted(known)),
        )


def _ballot(found: BallotDrawn) -> Iterator[str]:
    yield from _people("ballot_drawn", [*(one.who for one in found.order), *found.refused])
    if found.places < 1:
        yield said("ballot_drawn: a field has one place at least, not {places}.", places=found.places)


def _withdrawn(found: EntryWithdrawn) -> Iterator[str]:
    yield from _people("entry_withdrawn", [] if found.moves_up is None else [found.moves_up])


def _put_right(found: EntryPutRight) -> Iterator[str]:
    yield from _people("entry_put_right", [found.now.who])


def _draw(found: DrawMade) -> Iterator[str]:
    yield from _people("draw_made", [who for one in found.groups for who in one.players])
    for one in found.groups:
        try:
            time.fromisoformat(one.time)
        except ValueError:
            yield said("draw_made: {time} is no time of day; give one such as 08:11.", time=repr(one.time))


KINDS = (
    Kind("entries_taken", EntriesTaken, parts=(), faults=_taken),
    Kind("ballot_drawn", BallotDrawn, parts=(), faults=_ballot),
    Kind("entry_withdrawn", EntryWithdrawn, needs=("player",), parts=("reason",), faults=_withdrawn),
    Kind("entry_put_right", EntryPutRight, needs=("player",), parts=(), faults=_put_right),
    Kind("draw_made", DrawMade, needs=("round",), parts=(), faults=_draw),
)
