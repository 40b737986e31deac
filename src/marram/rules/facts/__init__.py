"""The vocabulary: every fact declared once, one file per theme.

Each module holds enums (the answers) and facts (the questions). Importing a module makes its facts
known; :func:`vocabulary` imports them all.
"""

from functools import cache
from importlib import import_module
from pkgutil import iter_modules
from typing import Any

from marram.rules.engine.fact import FACTS, Fact


def vocabulary() -> dict[str, Fact[Any]]:
    """Return every fact of the vocabulary by name, importing all of its modules."""
    _read_all()
    return FACTS


@cache
def _read_all() -> None:
    for module in iter_modules(__path__):
        import_module(f"{__name__}.{module.name}")
