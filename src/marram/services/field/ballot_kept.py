"""Lots cast for the places of an event, kept in its log, and the file from which anybody can cast them again.

The ballot is the one of :mod:`marram.competition.entries.ballot`, over keys of name and club.
"""

from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from marram.competition.entries.ballot import Choosing, Field, chosen_field
from marram.competition.entries.entry import Entry
from marram.errors import InputError
from marram.records.database import Records
from marram.records.entry import Entry as LogEntry
from marram.records.field import EntrantKept, details
from marram.records.field_changes import Enters, give_places
from marram.said import said
from marram.services.field.field_kept import BALLOT, EventLog, FieldNow, field_now, index_of
from marram.services.log.tap import Tap
from marram.services.publishing.ballot import ballot_document
from marram.services.publishing.documents import Document


@dataclass(frozen=True)
class Lots:
    """What a ballot goes by.

    Attributes:
        seed: as it is published.
        places: how many play.
        handicap_limit: the highest Handicap Index that may play; ``None``: there is none.
        choosing: who has a place before others.
    """

    seed: str
    places: int
    handicap_limit: Decimal | None = None
    choosing: Choosing = Choosing.BALLOT


def lots_cast(at: EventLog, lots: Lots, tap: Tap) -> LogEntry:
    """Cast lots for the places among everybody who is entered and did not withdraw; return the entry that tells so.

    Raises:
        InputError: no seed, no place, partners who compete as sides, groups drawn already; nothing was changed.
    """
    now = field_now(at)
    if now.ballot is not None:
        raise InputError(
            said(
                "Lots were cast already, and are not cast again. Who withdraws is followed by the first reserve."
            )
        )
    if any(one.side for one in now.playing):
        raise InputError(
            said(
                "Partners compete as sides here, and lots are cast for players. Cast them before sides are made."
            )
        )
    by_key = {one.key: (one, who) for one, who in ((_entry(each), _who(each)) for each in now.playing)}
    drawn = chosen_field(
        [_entry(one) for one in now.playing],
        seed=lots.seed,
        places=lots.places,
        handicap_limit=lots.handicap_limit,
        choosing=lots.choosing,
    )
    order = [by_key[one.key][1] for one in (*drawn.playing, *drawn.reserves)]
    give_places(at.records, at.event, order[: lots.places])
    content = {
        "seed": lots.seed,
        "places": lots.places,
        "lowest_handicaps_first": lots.choosing is Choosing.LOWEST_HANDICAPS,
        "handicap_limit": None if lots.handicap_limit is None else str(lots.handicap_limit),
        "order": [_told(one) for one in order],
        "refused": [by_key[one.key][1].person for one in drawn.refused],
    }
    return LogEntry(BALLOT, tap.at, tap.ident, by=tap.by, content=content)


def ballot_file(records: Records, name: str, now: FieldNow) -> Document:
    """Return the ballot as it is published, from which alone anybody can draw it again.

    Raises:
        InputError: no lots were cast, or a name was erased since, so that they cannot be cast again from names.
    """
    if now.ballot is None:
        raise InputError(said("No lots were cast."))
    told = now.ballot.content
    who = [*(one["who"] for one in told["order"]), *told["refused"]]
    known = details(records, who)
    if len(known) != len(who):
        raise InputError(said("A name of this ballot was erased since, so it cannot be shown any more."))
    indexes = {one["who"]: one["handicap_index"] for one in told["order"]}
    entries = {one: Entry(known[one].name, index_of(indexes.get(one)), known[one].club or "") for one in who}
    order = [entries[one["who"]] for one in told["order"]]
    drawn = Field(
        tuple(order[: told["places"]]),
        tuple(order[told["places"] :]),
        tuple(entries[one] for one in told["refused"]),
    )
    choosing = Choosing.LOWEST_HANDICAPS if told["lowest_handicaps_first"] else Choosing.BALLOT
    return ballot_document(
        name, list(entries.values()), drawn, seed=told["seed"], places=told["places"], choosing=choosing
    )


def _entry(one: EntrantKept) -> Entry:
    return Entry(one.name or one.person, index_of(one.handicap_index), one.club or "")


def _who(one: EntrantKept) -> Enters:
    return Enters(one.person, one.handicap_index, one.tees, one.playing_handicap)


def _told(one: Enters) -> dict[str, Any]:
    return {
        "who": one.person,
        "handicap_index": one.handicap_index,
        "tees": one.tees,
        "playing_handicap": one.playing_handicap,
    }
