"""Reading the conditions of a competition, every fault at once, and writing them back."""

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from datetime import date
from decimal import Decimal
from enum import Enum
from pathlib import Path
from typing import Any

from marram.competition.conditions.contradictions import contradictions
from marram.competition.conditions.event_file import TIME, EventFile
from marram.competition.conditions.faults_of_people import faults_of_days, faults_of_people
from marram.errors import InputError, shown
from marram.rules.local_rules.adoption import adopt
from marram.said import joined, said
from marram.schema import read_into, read_json


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
            for fault in (
                *faults_of_people(found),
                *faults_of_days(found),
                *contradictions(found),
                *_faults_of_start(found),
                *_faults_of_rounds(found),
            )
        ]
    if found is None or faults:
        raise InputError(*faults)
    return found


def event_document(found: EventFile) -> dict[str, Any]:
    """Return an event as JSON holds it: what is as where nothing is given is left out; reading it gives the same."""
    document: dict[str, Any] = _plain(found)
    return document


def _plain(value: Any) -> Any:
    if is_dataclass(value):
        return {
            one.name: _plain(getattr(value, one.name))
            for one in fields(value)
            if getattr(value, one.name) != one.default
        }
    if isinstance(value, tuple):
        return [_plain(one) for one in value]
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, Decimal):
        return int(value) if value == value.to_integral_value() else float(value)
    return value


def _faults_of_rounds(found: EventFile) -> Iterator[str]:
    """Yield a round that the list of rounds has by another name, and rounds of one day that nothing tells apart."""
    named: dict[date, list[str]] = {}
    for one in found.rounds:
        named.setdefault(one.played_on, []).append(one.name)
    own = named.get(found.played_on, []) if found.played_on and found.round else []
    if own and found.round not in own:
        yield said(
            "round is {before}, and rounds has its day {day} as {name}; correct one of them.",
            day=found.played_on.isoformat() if found.played_on else "",
            before=shown(found.round),
            name=", ".join(map(shown, own)),
        )
    for day, names in named.items():
        if len(set(names)) > 1 and not all(names):
            yield said(
                "rounds: {day} has several rounds, and one is without a name; give each its own.",
                day=day.isoformat(),
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
                remedy=TIME,
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
