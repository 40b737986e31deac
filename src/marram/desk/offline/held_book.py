"""The book under some conditions, compressed as it is sent: made once, in a process of its own, so that the desk goes on."""

import gzip
import hashlib
import subprocess
import sys
from dataclasses import dataclass
from threading import Lock
from urllib.parse import urlencode

from marram.services.conditions import Conditions
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
    return Held(gzip.compress(made, 9, mtime=0), f'"{hashlib.sha256(made).hexdigest()[:32]}"')


_HELD: dict[str, Held] = {}
_LOCK = Lock()


def held_book(conditions: Conditions) -> Held:
    """Return the book under some conditions; the first to ask waits until it is made."""
    key = f"{language().code}?{urlencode(conditions.of_competition().pairs())}"
    with _LOCK:
        found = _HELD.get(key)
        if found is None:
            made = subprocess.run(  # noqa: S603 - this program's own module
                [sys.executable, "-m", "marram.services.offline", key.partition("?")[2]],
                check=True,
                stdout=subprocess.PIPE,
            ).stdout
            while len(_HELD) >= MOST:
                del _HELD[next(iter(_HELD))]
            found = _HELD[key] = compressed(made)
    return found


__all__ = ["Held", "compressed", "held_book"]
