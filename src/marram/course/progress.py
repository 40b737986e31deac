"""How far long work is: told to whoever asked for it, who can also stop it by raising from the telling."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from typing import TypeVar

READING, ASSEMBLING, CHECKING = "reading", "assembling", "checking"

STEP = 500
"""After so many things of very many, progress is told (own choice)."""

Progress = Callable[[str, float], None]
"""Called with what is being done and which part of the whole is done, from 0 to 1. What it raises ends the work."""


def no_progress(what: str, part: float) -> None:
    """Tell nobody."""


_LISTENS: ContextVar[Progress] = ContextVar("listens", default=no_progress)


@contextmanager
def heard_by(progress: Progress) -> Iterator[None]:
    """Tell somebody of every map that is opened meanwhile, however deep in the work it is."""
    before = _LISTENS.set(progress)
    try:
        yield
    finally:
        _LISTENS.reset(before)


def whoever_listens(what: str, part: float) -> None:
    """Tell whoever listens to this piece of work (:func:`heard_by`); where nobody does, nobody."""
    _LISTENS.get()(what, part)


def part_of(progress: Progress, start: float, end: float) -> Progress:
    """Return a progress whose whole is a part of another's, from ``start`` to ``end``."""
    return lambda what, part: progress(what, start + (end - start) * part)


Thing = TypeVar("Thing")


def telling(things: Sequence[Thing], progress: Progress, what: str) -> Iterator[Thing]:
    """Yield things one by one, telling every so often which part of them is done."""
    for number, thing in enumerate(things):
        if number and number % STEP == 0:
            progress(what, number / len(things))
        yield thing
