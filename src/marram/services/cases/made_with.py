"""What a case was written by: the program's version, a digest of the book, the version of the map."""

import hashlib
from datetime import date
from functools import cache
from pathlib import Path

import marram.rules
from marram import __version__
from marram.services.cases.case import MadeWith


@cache
def book_digest() -> str:
    """Return a digest of the Rules as encoded: equal digests rule alike. SHA-256 over the sources, first 16 digits."""
    folder = Path(marram.rules.__file__).parent
    digest = hashlib.sha256()
    for path in sorted(folder.rglob("*.py")):
        digest.update(path.relative_to(folder).as_posix().encode() + b"\0")
        digest.update(path.read_bytes())
    return digest.hexdigest()[:16]


def made_with(map_version: int | None = None, map_in_force_from: date | None = None) -> MadeWith:
    """Return what a case is written by here and now."""
    return MadeWith(__version__, book_digest(), map_version, map_in_force_from)
