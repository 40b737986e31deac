"""The English message catalogue, one file per Rule plus what is common to all.

Each module holds up to three dictionaries: ``PROVISIONS`` (citation → what the provision says, in our
own words), ``NOTES`` (note, caution, correction and criterion keys → sentence) and, in ``common``,
the words of every enum member. English sentences are the gettext message ids.
"""

from functools import cache
from importlib import import_module
from pkgutil import iter_modules


@cache
def catalogue(kind: str) -> dict[str, str]:
    """Return every message of one kind: ``"PROVISIONS"``, ``"NOTES"`` or ``"TERMS"``."""
    messages: dict[str, str] = {}
    for module in iter_modules(__path__):
        part = getattr(import_module(f"{__name__}.{module.name}"), kind, {})
        repeated = messages.keys() & part.keys()
        if repeated:
            raise ValueError(f"{module.name}.{kind} repeats {', '.join(sorted(repeated))}; keep one of them.")
        messages |= part
    return messages
