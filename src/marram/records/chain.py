"""The chain of a log: each entry is sealed together with the digest of the one before, so that a change shows.

The digest of an entry is the SHA-256 of this canonical JSON (RFC 8785)::

    {"body":{…},"event":"…","id":"…","number":14,"previous":"…","recorded_at":"…"}

Whoever can write the whole database can also seal a forged log anew; what he cannot change is a *receipt* (number and
digest of an entry) that somebody wrote down, printed or backed up before. :func:`first_broken` compares them.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from enum import Enum

from marram.records.canonical import digest
from marram.records.entry import Kept

START = "0" * 64
"""What stands for the digest of the entry before the first."""


def sealed(link: Kept) -> Kept:
    """Return an entry with the digest that its place in the chain gives it."""
    return replace(link, digest=link_digest(link))


def link_digest(link: Kept) -> str:
    """Return the digest of a link; identifiers, digests and times hold no letter that JSON would escape."""
    return digest(
        f'{{"body":{link.body},"event":"{link.event}","id":"{link.id}","number":{link.number},'
        f'"previous":"{link.previous}","recorded_at":"{link.recorded_at}"}}'
    )


class Break(Enum):
    """How a chain is broken."""

    CHANGED = "changed"
    """The entry is not what was sealed."""
    EXCHANGED = "exchanged"
    """The entry is whole by itself, but the next was sealed on another one."""
    MISSING = "missing"
    """There is no entry of this number, while later ones are there, or a receipt names it."""
    PART = "part"
    """A part of the entry is missing, or is not what was sealed."""
    RECEIPT = "receipt"
    """The entry is not the one that a receipt names: it, or one before it, was forged and sealed anew."""


@dataclass(frozen=True, slots=True)
class Broken:
    """The first entry of a log that is not as it was.

    Attributes:
        event: whose log it is.
        number: the entry.
        how: what is wrong with it.
    """

    event: str
    number: int
    how: Break


def first_broken(
    event: str, entries: Iterable[Kept], receipts: Mapping[int, str] | None = None
) -> Broken | None:
    """Return the first broken entry of a log, or ``None`` where the chain is whole.

    Args:
        event: whose log it is.
        entries: all of its entries, by number.
        receipts: digests, or their first digits, that somebody wrote down, by number.
    """
    wanted = dict(receipts or {})
    previous, number = START, 0
    for one in entries:
        number += 1
        if one.number != number:
            return Broken(event, number, Break.MISSING)
        if one.event != event or link_digest(one) != one.digest:
            return Broken(event, number, Break.CHANGED)
        if one.previous != previous:
            return Broken(event, max(number - 1, 1), Break.EXCHANGED)
        if not one.digest.startswith(wanted.pop(number, "")):
            return Broken(event, number, Break.RECEIPT)
        previous = one.digest
    return Broken(event, number + 1, Break.MISSING) if wanted else None
