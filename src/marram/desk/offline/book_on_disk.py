"""The book for phones kept on this machine's disk, so that a desk that starts again has it at once.

A book is the same where everything it is made of is: the program's own sources and the words of the language. Their digest
is part of its name, so that nothing here grows old; what cannot be read or kept is made anew.
"""

import gzip
import hashlib
import os
import sys
import zlib
from contextlib import suppress
from functools import cache
from pathlib import Path
from tempfile import NamedTemporaryFile

import marram
from marram.words.language import DOMAIN, language

MOST = 6
"""Books kept at once (own choice): some days of an event, under two programs."""


def folder() -> Path:
    """Return where books are kept: what the system gives programs for what can be made anew (XDG Base Directory)."""
    given = os.environ.get("XDG_CACHE_HOME", "")
    return (Path(given) if Path(given).is_absolute() else Path.home() / ".cache") / "marram" / "books"


@cache
def _sources() -> bytes:
    """Return a digest of all that a book is made of: the program, its data, the language of its words."""
    package = Path(marram.__file__).parent
    found = hashlib.sha256(f"{sys.version} {language().code}".encode())
    for path in sorted(one for one in package.rglob("*") if one.suffix in {".py", ".json", ".txt"}):
        if path.relative_to(package).parts[0] not in {"desk", "cli"}:
            found.update(
                f"{path.relative_to(package)}\n".encode() + hashlib.sha256(path.read_bytes()).digest()
            )
    for above in (os.environ.get("MARRAM_LOCALES", ""), package / "words" / "locale"):
        with suppress(OSError):
            found.update((Path(above) / language().code / "LC_MESSAGES" / f"{DOMAIN}.mo").read_bytes())
    return found.digest()


def _place(conditions: str) -> Path:
    digest = hashlib.sha256(_sources() + conditions.encode()).hexdigest()
    return folder() / f"{digest[:40]}.json.gz"


def read(conditions: str) -> bytes | None:
    """Return the book under conditions as it was kept, compressed; ``None`` where there is none that is whole."""
    try:
        place = _place(conditions)
        kept = place.read_bytes()
        whole = gzip.decompress(kept) != b""
        os.utime(place)
    except (OSError, EOFError, zlib.error, RuntimeError):
        return None
    return kept if whole else None


def keep(conditions: str, compressed: bytes) -> None:
    """Keep the book under conditions, and forget those that nobody read for longest; where that fails, nothing is kept."""
    with suppress(OSError, RuntimeError):
        place = _place(conditions)
        place.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        with NamedTemporaryFile(dir=place.parent, suffix=".part", delete=False) as file:
            part = Path(file.name)
            try:
                file.write(compressed)
                file.flush()
                part.replace(place)
            finally:
                part.unlink(missing_ok=True)
        by_use = sorted(place.parent.glob("*.json.gz"), key=lambda one: one.stat().st_mtime)
        for old in by_use[:-MOST]:
            old.unlink(missing_ok=True)


__all__ = ["folder", "keep", "read"]
