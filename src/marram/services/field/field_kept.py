"""The field of an event: entries taken from lists, withdrawals and who moves up; the log tells how it came.

Who plays stands in the records; who waits, who was refused and who withdrew is read out of the log, which holds people by
identifier alone. Lots for places: ``ballot_kept.py``.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from marram.competition.entries.columns import Columns
from marram.competition.entries.entry import Column, Entry, EntryList
from marram.competition.entries.names import bare_letters, in_a_list, spelled_alike
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry as LogEntry
from marram.records.entry import Kept, Part
from marram.records.events import Player
from marram.records.field import EntrantKept, entrants
from marram.records.field_changes import Enters, take_in, take_out
from marram.records.log import Log
from marram.records.people import names
from marram.records.starting_sheet import events
from marram.said import said
from marram.services.log.tap import Tap

TAKEN, BALLOT, WITHDRAWN = "entries_taken", "ballot_drawn", "entry_withdrawn"
PUT_RIGHT = "entry_put_right"


@dataclass(frozen=True)
class EventLog:
    """An event with its log.

    Attributes:
        records: where it is kept.
        log: what happened.
        event: its identifier.
    """

    records: Records
    log: Log
    event: str


@dataclass(frozen=True)
class FieldNow:
    """The field as it stands.

    Attributes:
        playing: who has a place, by name.
        reserves: who waits, the next to move up first.
        refused: who may not play, by identifier.
        withdrawn: who withdrew, by identifier, in their order.
        ballot: the entry of the last ballot; ``None``: no lots were cast.
    """

    playing: tuple[EntrantKept, ...]
    reserves: tuple[Enters, ...] = ()
    refused: tuple[str, ...] = ()
    withdrawn: tuple[str, ...] = ()
    ballot: Kept | None = None


def field_now(at: EventLog) -> FieldNow:
    """Return the field as records and log have it."""
    reserves: list[Enters] = []
    refused: tuple[str, ...] = ()
    withdrawn: list[str] = []
    ballot: Kept | None = None
    kept = [
        one for kind in (TAKEN, BALLOT, WITHDRAWN, PUT_RIGHT) for one in at.log.entries(at.event, kind=kind)
    ]
    for one in sorted(kept, key=lambda each: each.number):
        told = one.content
        if one.kind == TAKEN:
            come = [_enters(each) for each in told["entries"]]
            withdrawn = [who for who in withdrawn if who not in {each.person for each in come}]
            reserves += come if told.get("waiting") else []
        elif one.kind == BALLOT:
            ballot, refused = one, tuple(told["refused"])
            reserves = [_enters(each) for each in told["order"][told["places"] :]]
        elif one.kind == PUT_RIGHT:
            says = _enters(told["now"])
            reserves = [says if each.person == says.person else each for each in reserves]
        else:
            gone = {one.told["player"], told.get("moves_up")}
            reserves = [each for each in reserves if each.person not in gone]
            withdrawn.append(one.told["player"])
    playing = tuple(sorted(entrants(at.records, at.event), key=lambda one: in_a_list(one.name)))
    there = {one.person for one in playing}
    return FieldNow(
        playing,
        tuple(one for one in reserves if one.person not in there),
        tuple(one for one in refused if one not in there),
        tuple(one for one in withdrawn if one not in there),
        ballot,
    )


def entries_kept(playing: Sequence[EntrantKept]) -> list[Entry]:
    """Return who plays as a list of entries, which reads back as the same."""
    return [
        Entry(
            one.name,
            index_of(one.handicap_index),
            one.club or "",
            one.sex or "",
            one.born,
            side=one.side_name or "",
            team=one.team or "",
            tees=one.tees or "",
        )
        for one in playing
    ]


def columns_remembered(at: EventLog) -> Columns:
    """Return which heading told what in lists that were taken, at any event; a later list goes before an earlier one."""
    taken = [one for event in events(at.records) for one in at.log.entries(event.id, kind=TAKEN)]
    found: dict[str, Column | None] = {}
    for one in sorted(taken, key=lambda each: str(each.told["given_at"])):
        found |= {
            heading: Column(tells) if tells else None for heading, tells in one.content["columns"].items()
        }
    return found


def taken(at: EventLog, read: EntryList, columns: Columns, tap: Tap) -> LogEntry:
    """Take the entries of a list, and return the entry that tells so.

    Where lots were cast already they wait for a place, behind everybody who waits.

    Raises:
        InputError: the list has faults, or somebody is entered already; every fault is listed and nobody was taken.
    """
    if read.faults:
        raise InputError(
            *(said("Line {line}: {fault}", line=one.line, fault=one.fault) for one in read.faults)
        )
    waiting = field_now(at)
    waits = {one.person for one in waiting.reserves}
    players = [_player(one) for one in read.entries]
    if len({one.name for one in players}) != len(players):
        twice = sorted({one.name for one in players if [each.name for each in players].count(one.name) > 1})
        raise InputError(
            *(
                said("{name} is entered twice. Leave one out, or tell them apart by name.", name=one)
                for one in twice
            )
        )
    with_places = waiting.ballot is None
    known = set(names(at.records, waits).values())
    if again := [one.name for one in players if one.name in known]:
        raise InputError(*(said("{name} is entered already. Strike the line.", name=one) for one in again))
    if not with_places and any(one.side for one in players):
        raise InputError(
            said("Lots were cast for players here, so no sides are taken any more. Leave their column out.")
        )
    if again := list(_spelled_otherwise(players, waiting.playing)):
        raise InputError(*again)
    people = take_in(at.records, at.event, players, with_places=with_places)
    content = {
        "entries": [{"who": people[one.name], "handicap_index": one.handicap_index} for one in players],
        "columns": {heading: "" if tells is None else tells.value for heading, tells in columns.items()},
        "waiting": not with_places,
    }
    return LogEntry(TAKEN, tap.at, tap.ident, by=tap.by, content=content)


def _spelled_otherwise(players: Sequence[Player], playing: Sequence[EntrantKept]) -> Iterator[str]:
    """Yield who is probably entered already under another spelling, and is not told apart by club or year of birth."""
    known = {spelled_alike(one.name): one for one in playing if one.name}
    for one in players:
        there = known.get(spelled_alike(one.name))
        if there is None or there.name == one.name:  # the very name is told by the records
            continue
        clubs = bare_letters(one.club or ""), bare_letters(there.club or "")
        if (all(clubs) and clubs[0] != clubs[1]) or (one.born and there.born and one.born != there.born):
            continue
        yield said(
            "{name} is probably {other}, who is entered already, spelled otherwise. Strike the line, or tell them apart by club or year of birth.",
            name=one.name,
            other=there.name,
        )


def withdrawing(at: EventLog, person: str, tap: Tap, why: str = "") -> LogEntry:
    """Take somebody out of the field, the first reserve moving up into the very place; return the entry that tells so.

    Raises:
        InputError: the person neither plays nor waits.
    """
    now = field_now(at)
    plays = any(one.person == person for one in now.playing)
    if not plays and all(one.person != person for one in now.reserves):
        raise InputError(said("This player neither plays nor waits any more. Look at the list again."))
    instead = now.reserves[0] if plays and now.reserves else None
    if plays:
        take_out(at.records, at.event, person, instead)
    parts = (Part("reason", why.strip().encode()),) if why.strip() else ()
    content = {"moves_up": None if instead is None else instead.person}
    return LogEntry(WITHDRAWN, tap.at, tap.ident, by=tap.by, player=person, content=content, parts=parts)


def index_of(written: str | None) -> Decimal | None:
    """Return a Handicap Index as the records have it; a plus one is negative."""
    return None if written is None else Decimal(written)


def _player(one: Entry) -> Player:
    return Player(
        one.name,
        None if one.handicap_index is None else str(one.handicap_index),
        one.club or None,
        one.sex or None,
        one.born,
        one.tees or None,
        side=one.side or None,
        team=one.team or None,
    )


def _enters(told: Mapping[str, Any]) -> Enters:
    return Enters(told["who"], told.get("handicap_index"), told.get("tees"), told.get("playing_handicap"))
