"""The book under some conditions, compressed as it is sent: made once, in a process of its own, so that the desk goes on.

What was made is kept on the disk as well (``book_on_disk.py``).
"""

import gzip
import hashlib
import subprocess
import sys
from dataclasses import dataclass
from threading import Lock
from urllib.parse import urlencode

from marram.desk.offline import book_on_disk
from marram.services.cases.conditions import Conditions
from marram.words.language import language

MOST = 4
"""Conditions whose book is held at once (own choice): those of a day, and of whoever looks at others."""


@dataclass(frozen=True)
class Held:
    """A document as it is sent: compressed, with the tag that tells it apart."""

    compressed: bytes
    tag: str


def compressed(made: bytes) -> Held:
    """Return a document as it is sent."""
    return held(gzip.compress(made, 9, mtime=0))


def held(sent: bytes) -> Held:
    """Return what is sent, with its tag."""
    return Held(sent, f'"{hashlib.sha256(sent).hexdigest()[:32]}"')


_HELD: dict[str, Held] = {}
_LOCK = Lock()


def held_book(conditions: Conditions) -> Held:
    """Return the book under some conditions; the first to ask waits until it is made."""
    key = f"{language().code}?{urlencode(conditions.of_competition().pairs())}"
    with _LOCK:
        found = _HELD.get(key)
        if found is None:
            found = _kept_or_made(key.partition("?")[2])
            while len(_HELD) >= MOST:
                del _HELD[next(iter(_HELD))]
            _HELD[key] = found
    return found


def _kept_or_made(conditions: str) -> Held:
    kept = book_on_disk.read(conditions)
    if kept is not None:
        return held(kept)
    made = subprocess.run(  # noqa: S603 - this program's own module
        [sys.executable, "-m", "marram.services.offline", conditions],
        check=True,
        stdout=subprocess.PIPE,
    ).stdout
    found = compressed(made)
    book_on_disk.keep(conditions, found.compressed)
    return found


__all__ = ["Held", "compressed", "held_book"]
