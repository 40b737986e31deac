"""Where officials are in a round: as their duties at the event say, or as they were placed for it; proposed, kept, and what changed."""

from collections.abc import Mapping
from dataclasses import dataclass

from marram.competition.conditions.duties import duty_of
from marram.competition.conditions.event_file import Official
from marram.competition.draw.officials import GroupStarts, proposed_places
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry, Kept
from marram.records.log import Log
from marram.records.starting_sheet import DutyKept, duties, groups
from marram.said import said
from marram.services.log.tap import Tap

PLACED = "officials_placed"
USUAL_MINUTES = 300
"""What a round is taken to last where nobody said it (common practice)."""

Key = tuple[str, str]
"""An official by identifier and role."""


@dataclass(frozen=True)
class Placed:
    """An official in a round.

    Attributes:
        duty: who, in which role, with what the event says of it.
        at: where, in the words that a duty is read from; empty: nobody said.
        was: where before the last change; ``None``: it did not change.
    """

    duty: DutyKept
    at: str
    was: str | None = None

    @property
    def key(self) -> Key:
        """The official by identifier and role."""
        return self.duty.person, self.duty.role

    @property
    def official(self) -> Official:
        """The official as the event's file would say it: the place of the round, and name on the radio and telephone as ever."""
        pieces = (self.duty.role.replace("_", " "), self.at, _at_hand(self.duty.duty))
        return Official(self.duty.name, ", ".join(filter(None, pieces)))


def placed(records: Records, event: str, round_: str) -> tuple[Placed, ...]:
    """Return where everybody who officiates is in a round."""
    entries = [one for one in Log(records).entries(event, kind=PLACED) if one.told.get("round") == round_]
    now, before = _told(entries[-1:]), _told(entries[-2:-1])
    found = []
    for one in duties(records, event):
        key = one.person, one.role
        at = now.get(key, _place_of(one.duty))
        was = before.get(key, _place_of(one.duty) or at) if entries else at
        found.append(Placed(one, at, None if was == at else was))
    return tuple(found)


def _told(entries: list[Kept]) -> Mapping[Key, str]:
    return {(one["who"], one["role"]): one["at"] for entry in entries for one in entry.content["places"]}


def _pieces(duty: str) -> list[tuple[str, bool]]:
    """Return the pieces of a duty, each with whether it goes with the official wherever the place is."""
    some = [one.strip() for one in duty.replace(";", ",").split(",") if one.strip()]
    read = [(one, duty_of(Official("", f"referee, {one}"))) for one in some]
    return [(one, bool(what.radio or what.telephone)) for one, what in read]


def _place_of(duty: str) -> str:
    return ", ".join(one for one, stays in _pieces(duty) if not stays)


def _at_hand(duty: str) -> str:
    return ", ".join(one for one, stays in _pieces(duty) if stays)


def proposal(
    records: Records, event: str, round_: str, holes: list[int], *, minutes: int | None, seed: str
) -> Mapping[Key, str]:
    """Return where each official is proposed to be in a round.

    Raises:
        InputError: no seed, no starting times, or nobody officiates; every fault is listed.
    """
    starting = [
        GroupStarts(one.number, one.starts_at, one.tee)
        for one in groups(records, round_)
        if one.starts_at is not None
    ]
    known = duties(records, event)
    faults = []
    if not seed.strip():
        faults.append(said("Give a seed: with it anybody finds the same places."))
    if not starting:
        faults.append(said("No group has a starting time in this round. Draw it first."))
    if not known:
        faults.append(said("No official is named. Invite officials, or name them in event.json."))
    if faults:
        raise InputError(*faults)
    return proposed_places(
        [(one.person, one.role) for one in known],
        starting,
        holes,
        minutes=minutes or USUAL_MINUTES,
        seed=seed.strip(),
    )


def placing(places: Mapping[Key, str], round_: str, seed: str, tap: Tap) -> Entry:
    """Return the entry that places officials in a round."""
    content = {
        "seed": seed.strip(),
        "places": [{"who": who, "role": role, "at": at.strip()} for (who, role), at in places.items()],
    }
    return Entry(PLACED, tap.at, tap.ident, by=tap.by, round=round_, content=content)
