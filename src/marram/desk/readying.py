"""What a desk makes ready while nobody waits for it: trees of the book, words of the log, map and book for phones, who draws.

All of it is made anyway when it is first asked for, and only then is it slow. A step at a time, and after each as long a
rest as it took, so that whoever asks for a page meanwhile gets at least half of the machine's time.
"""

import gc
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from itertools import chain
from threading import Event, Thread

from fastapi import FastAPI

from marram.desk.log.kept import KeptHere
from marram.desk.offline.held_book import held_book
from marram.desk.offline.held_map import held_map
from marram.desk.rulings.drawn_beside import DrawnBeside
from marram.desk.shell.map_parts import OVERVIEW, WHOLE
from marram.desk.shell.workplace import Workplace, workplace_of
from marram.desk.teaching.learn_page import kept_today
from marram.errors import InputError
from marram.services.cases.conditions import conditions_of_event

FIRST = 2.0
"""Seconds after the start until the first step (own choice): the first pages go first."""
AGAIN = 20.0
"""Seconds until what was recorded meanwhile is made ready (own choice)."""
ENTRIES = 25
"""Entries whose words are made in one step (own choice): whoever records meanwhile waits no longer than that takes."""

Step = Callable[[], object]


@contextmanager
def readied(app: FastAPI) -> Iterator[None]:
    """Make ready what a desk needs, beside it, for as long as it serves."""
    stop = Event()
    beside = app.state.drawn_beside = DrawnBeside()
    thread = Thread(target=_ready, args=(app, stop), daemon=True, name="readying")
    kept_for_good()
    thread.start()
    try:
        yield
    finally:
        stop.set()
        thread.join(timeout=5)
        beside.stop()


def _ready(app: FastAPI, stop: Event) -> None:
    kept: KeptHere | None = app.state.kept_here
    if stop.wait(FIRST):
        return
    for step in steps(app):
        if _done(step, stop):
            return
    kept_for_good()
    while kept is not None and not stop.wait(AGAIN):
        for step in chain(map_steps(app), log_steps(kept)):
            if _done(step, stop):
                return


def kept_for_good() -> None:
    """Leave what stands now out of the collector's rounds.

    Each of the great rounds went through all of it: 160 ms about every tenth second, for which every page waited.
    """
    gc.collect()
    gc.freeze()


def _done(step: Step, stop: Event) -> bool:
    """Do a step and rest; return whether the desk is to end."""
    began = time.monotonic()
    with suppress(InputError):  # whoever asks for it is told what is wrong
        step()
    return stop.wait(time.monotonic() - began)


def steps(app: FastAPI) -> Iterator[Step]:
    """Yield what is made ready once, what is asked for soonest first."""
    kept: KeptHere | None = app.state.kept_here
    if app.state.drawn_beside is not None:
        yield app.state.drawn_beside.start
    yield from map_steps(app)
    if kept is not None:
        yield from log_steps(kept)
        yield lambda: held_book(conditions_of_event(kept.event))
    yield from book_steps()
    if kept is not None:
        yield lambda: kept_today(app.state.workplace.course.name)


def map_steps(app: FastAPI) -> Iterator[Step]:
    """Yield what is made ready of the map of the event's day, as it stands: what a first screen draws, then what phones keep."""
    workplace: Workplace = app.state.workplace
    day = conditions_of_event(workplace.event).on
    for part in (OVERVIEW, WHOLE):
        yield lambda part=part: workplace_of(app, day).map_parts.part(part)  # type: ignore[misc]
    yield lambda: held_map(workplace_of(app, day), day)


def log_steps(kept: KeptHere) -> Iterator[Step]:
    """Yield what is made ready of entries that were added: a few at a time."""
    from marram.records.searching import index_some  # noqa: PLC0415 - the desk starts without it
    from marram.services.log.searching import words_of  # noqa: PLC0415 - the same

    yield lambda: kept.day_rulings.on(conditions_of_event(kept.event).on)
    more = [ENTRIES]

    def some() -> None:
        more[0] = index_some(kept.records, words_of, ENTRIES)

    while more[0] == ENTRIES:
        yield some


def book_steps() -> Iterator[Step]:
    """Yield the tree of each incident, then the situations of each provision."""
    from marram.rules.engine.export import graph_of  # noqa: PLC0415 - the same
    from marram.teach.book.contents import entries  # noqa: PLC0415 - the same
    from marram.teach.book.reading import of_incident, page_of  # noqa: PLC0415 - the same
    from marram.teach.situations.reaching import TODAY, taught  # noqa: PLC0415 - the same

    for one in taught():
        yield lambda one=one: graph_of(one.name, TODAY)  # type: ignore[misc]
    for entry in entries().values():
        yield lambda entry=entry: page_of(entry)  # type: ignore[misc]
    for one in taught():
        yield lambda one=one: of_incident(one.name)  # type: ignore[misc]


__all__ = ["book_steps", "log_steps", "map_steps", "readied", "steps"]
