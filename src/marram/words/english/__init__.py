"""The English message catalogue, one file per Rule plus what is common to all.

Each module holds up to three dictionaries: ``PROVISIONS`` (citation → what the provision says, in our
own words), ``NOTES`` (note, caution, correction and criterion keys → sentence) and, in ``common``, ``findings`` and ``former``,
``TERMS``, the words of every enum member. English sentences are the gettext message ids.
"""

import re
from collections.abc import Iterator
from functools import cache, lru_cache
from importlib import import_module
from pathlib import Path


@cache
def catalogue(kind: str) -> dict[str, str]:
    """Return every message of one kind: ``"PROVISIONS"``, ``"NOTES"`` or ``"TERMS"``.

    Raises:
        ValueError: two modules give the same key.
    """
    messages: dict[str, str] = {}
    for module in _modules():
        part = _part(module, kind)
        repeated = messages.keys() & part.keys()
        if repeated:
            raise ValueError(f"{module}.{kind} repeats {', '.join(sorted(repeated))}; keep one of them.")
        messages |= part
    return messages


@lru_cache(maxsize=4096)
def find(kind: str, key: str) -> str | None:
    """Return one message, or ``None``; reads no more of the catalogue than it takes to find it."""
    for module in _likely_first(kind, key):
        part = _part(module, kind)
        if key in part:
            return part[key]
    return None


_WITH_TERMS = ("common", "findings", "former")
"""The modules with the words of result enums; a number or size without a word of its own is not sought elsewhere."""

_read: dict[str, object] = {}
"""The modules read so far, by name."""


@cache
def _modules() -> tuple[str, ...]:
    """Return the names of the modules; pkgutil would tell them too, but takes longer to load than all of these."""
    here = Path(__file__)
    return tuple(sorted(one.stem for one in here.parent.iterdir() if one.suffix == ".py" and one != here))


def _part(module: str, kind: str) -> dict[str, str]:
    if module not in _read:
        _read[module] = import_module(f"{__name__}.{module}")
    found: dict[str, str] = getattr(_read[module], kind, {})
    return found


def _likely_first(kind: str, key: str) -> Iterator[str]:
    """Yield modules: the one a key most likely stands in, those read already, then the rest."""
    if kind == "TERMS":
        yield from _WITH_TERMS
        return
    likely: list[str] = []
    rule = re.match(r"(?:Clarification )?(\d+)\.", key) if kind == "PROVISIONS" else None
    if rule:
        likely = [name for name in _modules() if name.startswith(f"rule_{int(rule[1]):02d}")]
    yield from likely
    yield from tuple(_read)
    yield from _modules()
