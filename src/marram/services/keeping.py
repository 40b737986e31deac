"""A club's records from what a club has: its course map, the folder of its versions, an event file; and back for the desk.

The roles of an event file are words; in the records they are few, and each known: ``chief referee`` … ``starter``.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import time
from functools import lru_cache
from pathlib import Path
from typing import Any

from marram.competition.conditions.event_file import RoundOnDay
from marram.competition.conditions.reading import event_document
from marram.course.loading import load
from marram.course.versions.folder import default_folder
from marram.course.versions.map_versions import MapVersions
from marram.course.versions.version_files import FIRST, VersionFiles
from marram.errors import InputError, shown
from marram.records.database import Records
from marram.records.events import Given, Official, OtherRound, Player, Start, new_club, new_course, new_event
from marram.records.maps import MapShelf, TakenOver, take_over
from marram.records.starting_sheet import conditions, events, rounds
from marram.said import joined, said
from marram.services.cases.event import Event, EventFile, read_event, read_event_file

KEPT_APART = frozenset({"name", "round", "played_on", "rounds", "players", "officials", "starting_times"})
"""What records keep in tables of its own; all else are conditions of the competition."""

ROLES = ("chief_referee", "referee", "committee", "scorer", "starter")


@dataclass(frozen=True, slots=True)
class Started:
    """What was put into records.

    Attributes:
        course: the course; ``None`` where none was given.
        event: the name of the event; ``None`` where none was given.
        taken: what was taken over from the folder of versions.
    """

    course: str | None = None
    event: str | None = None
    taken: TakenOver | None = None


def start(
    records: Records,
    club: str,
    *,
    time_zone: str | None = None,
    course_file: Path | None = None,
    maps: Path | None = None,
    event: Path | Mapping[str, Any] | None = None,
) -> Started:
    """Put a club, its course with every version of its map, and an event into records.

    Args:
        records: where they are kept.
        club: the name of the club.
        time_zone: the IANA name of the zone its clocks show.
        course_file: the course map, which becomes version 1 where no versions are kept yet.
        maps: the folder of versions; ``None`` for that of the user's own data.
        event: the event: a JSON file or what it holds.

    Raises:
        InputError: something given cannot be used; every fault is listed and the event is not made.
    """
    given = None if event is None else read_event_file(event)
    if given is not None:
        _officials(given)  # says now what it cannot take
    map_ = None if course_file is None else load(course_file)
    club_id = new_club(records, club, time_zone)
    course: str | None = None
    taken: TakenOver | None = None
    if map_ is not None and course_file is not None:
        course = new_course(records, club_id, map_.name or course_file.stem, course_file.name)
        taken = take_over(records, course, maps or default_folder(course_file))
        kept = VersionFiles(MapShelf(records, course))
        if not kept.has(1):
            kept.write(FIRST, MapVersions(course_file, MapShelf(records, course)).document(1))
    if given is None:
        return Started(course, None, taken)
    event_ = given_event(given, course)
    new_event(records, club_id, event_)
    return Started(course, event_.name, taken)


def given_event(found: EventFile, course: str | None = None) -> Given:
    """Return an event file as records take it.

    Raises:
        InputError: an official's role is not known.
    """
    of_day = [one for one in found.rounds if one.played_on == found.played_on]
    own = next((one for one in of_day if not found.round or one.name == found.round), None)
    return Given(
        name=found.name or str(said("Event")),
        conditions={key: value for key, value in event_document(found).items() if key not in KEPT_APART},
        round_name=found.round,
        played_on=found.played_on,
        course=course,
        players=[
            Player(
                one.name,
                None if one.handicap_index is None else str(one.handicap_index),
                one.club or None,
                one.sex.value if one.sex else None,
                one.born,
                one.tees or None,
                one.playing_handicap,
                one.side or None,
                one.team or None,
            )
            for one in found.players
        ],
        officials=_officials(found),
        other_rounds=[
            OtherRound(one.name, one.played_on, conditions=_differs(one))
            for one in found.rounds
            if one is not own
        ],
        own_at=0 if own is None else found.rounds.index(own),
        differs={} if own is None else _differs(own),
        starts=[Start(time.fromisoformat(one.time), one.tee, one.players) for one in found.starting_times],
    )


def kept_event(records: Records, name: str | None = None) -> tuple[str, Event]:
    """Return an event of some records, with its identifier: the one of this name, or the only one.

    Raises:
        InputError: there is none, several without a name to choose by, or what is kept cannot be used.
    """
    known = events(records)
    chosen = [one for one in known if name is None or one.name == name]
    if len(chosen) != 1:
        names = ", ".join(shown(one.name) for one in known)
        raise InputError(
            said("{name} holds no event of that name. It holds: {names}.", name=records.name, names=names)
            if known and not chosen
            else said(
                "{name} holds several events; name one of them: {names}.", name=records.name, names=names
            )
            if known
            else said("{name} holds no event. Add one with 'marram records init --event'.", name=records.name)
        )
    return chosen[0].id, event_by_id(records, chosen[0].id)


def event_by_id(records: Records, event: str) -> Event:
    """Return an event of some records.

    Raises:
        InputError: what is kept cannot be used.
    """
    known_rounds = rounds(records, event)
    first = known_rounds[0]
    document: dict[str, Any] = {
        "name": next(one.name for one in events(records) if one.id == event),
        "round": first.name,
        "rounds": [{"name": one.name, "played_on": one.day.isoformat()} for one in known_rounds if one.day],
        **({"played_on": first.day.isoformat()} if first.day else {}),
        **conditions(records, event),
    }
    return _read(json.dumps(document))


@lru_cache(maxsize=8)
def _read(document: str) -> Event:
    """Return the event of a document; one that is asked for again is not read again."""
    return read_event(json.loads(document))


def _differs(one: RoundOnDay) -> dict[str, Any]:
    """Return what differs in a round, as plain data."""
    return {
        **({} if one.sides is None else {"sides": one.sides.value}),
        **({} if one.minutes_of_play is None else {"minutes_of_play": one.minutes_of_play}),
    }


def _officials(found: EventFile) -> list[Official]:
    officials, faults = [], []
    for number, one in enumerate(found.officials, start=1):
        words, _, duty = one.role.partition(",")
        role = words.strip().casefold().replace(" ", "_")
        if role in ROLES:
            officials.append(Official(one.name, role, duty.strip()))
            continue
        known = ", ".join(role.replace("_", " ") for role in ROLES)
        faults.append(
            joined(
                " ",
                said("officials {number}, role is {given};", number=number, given=shown(one.role)),
                said("give one of {known}, and after a comma what of it.", known=known),
            )
        )
    if faults:
        raise InputError(*faults)
    return officials
