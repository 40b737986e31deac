r"""The ballot: who plays when more enter than there are places, by a seed that is published and that anybody can repeat.

For each entry the SHA-256 digest of ``SEED``, a line feed and the entry's key (its number, or name and club with a bar
between, in small letters) is taken of the UTF-8 text and written in hexadecimal. Entries are put in the ascending
order of these digests: the first have places, the others are reserves in that order. On a shell:
``printf 'SEED\nKEY' | sha256sum``. The seed is to be fixed after entries close, of something nobody chooses.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from hashlib import sha256

from marram.competition.entries.entry import Entry
from marram.errors import InputError
from marram.said import said


class Choosing(Enum):
    """Who has a place before others."""

    BALLOT = "ballot"
    LOWEST_HANDICAPS = "lowest_handicaps"
    """Lowest Handicap Index first; those without one last; equal ones by ballot."""


@dataclass(frozen=True, slots=True)
class Field:
    """Who plays, who is waiting in which order, and who may not play; each entry stands once.

    Attributes:
        playing: in the order they were chosen in.
        reserves: the next to move up first.
        refused: over the handicap limit, or without a handicap where there is a limit.
        withdrawn: in the order their withdrawals were given.
    """

    playing: tuple[Entry, ...]
    reserves: tuple[Entry, ...]
    refused: tuple[Entry, ...] = ()
    withdrawn: tuple[Entry, ...] = ()


def digest(seed: str, entry: Entry) -> str:
    """Return the digest that an entry is put in order by, in hexadecimal."""
    return sha256(f"{seed}\n{entry.key}".encode()).hexdigest()


def chosen_field(
    entries: Sequence[Entry],
    *,
    seed: str,
    places: int,
    handicap_limit: Decimal | None = None,
    choosing: Choosing = Choosing.BALLOT,
) -> Field:
    """Return who plays; the order of the entries does not matter.

    Raises:
        InputError: no seed, no place, or two entries of one key; every fault at once.
    """
    faults = []
    if not seed.strip():
        faults.append(said("A ballot needs a seed. Give one that nobody chooses, and publish it."))
    if places < 1:
        faults.append(said("A field has one place at least, not {places}.", places=places))
    keys = [one.key for one in entries]
    faults.extend(
        said("{key} is the key of two entries. Tell them apart by number or club.", key=repr(key))
        for key in sorted({key for key in keys if keys.count(key) > 1})
    )
    if faults:
        raise InputError(*faults)
    refused = [one for one in entries if handicap_limit is not None and _over(one, handicap_limit)]
    able = [one for one in entries if one not in refused]
    able.sort(key=lambda one: digest(seed, one))
    if choosing is Choosing.LOWEST_HANDICAPS:
        able.sort(key=lambda one: (one.handicap_index is None, one.handicap_index or Decimal(0)))
    return Field(tuple(able[:places]), tuple(able[places:]), tuple(sorted(refused, key=lambda one: one.key)))


def after_withdrawals(field: Field, keys: Sequence[str]) -> Field:
    """Return the field after players withdrew, in that order; the first reserve moves up into the place of each.

    A reserve takes the very place of the one who withdrew, so that a draw already made stays as it is for all others.

    Raises:
        InputError: somebody is not in the field, or withdrew already; every fault at once.
    """
    known = {one.key: one for one in (*field.playing, *field.reserves)}
    gone = [key.casefold() for key in keys]
    faults = [
        said("{key} is neither playing nor waiting; look at the list of entries.", key=repr(key))
        for key in gone
        if key not in known
    ]
    faults += [
        said("{key} is named twice.", key=repr(key))
        for key in sorted({key for key in gone if gone.count(key) > 1})
    ]
    if faults:
        raise InputError(*faults)
    playing: list[Entry] = list(field.playing)
    reserves = [one for one in field.reserves if one.key not in gone]
    for key in gone:
        if known[key] in playing:
            place = playing.index(known[key])
            playing[place : place + 1] = [reserves.pop(0)] if reserves else []
    return Field(
        tuple(playing), tuple(reserves), field.refused, (*field.withdrawn, *(known[key] for key in gone))
    )


def moved_up(before: Field, after: Field) -> tuple[Entry, ...]:
    """Return who plays now and did not before."""
    had: Collection[Entry] = before.playing
    return tuple(one for one in after.playing if one not in had)


def _over(entry: Entry, limit: Decimal) -> bool:
    return entry.handicap_index is None or entry.handicap_index > limit
