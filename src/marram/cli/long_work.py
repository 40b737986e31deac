"""How far long work is, as a bar on the terminal; nothing where the work is short or nobody looks on."""

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Lock, Timer
from typing import TYPE_CHECKING

from marram.course.progress import Progress, heard_by, no_progress
from marram.words.texts import text

if TYPE_CHECKING:
    from rich.progress import Progress as Bar

PATIENCE = 0.7
"""Seconds: work that is done sooner shows no bar (own choice)."""


@contextmanager
def shown(what: str = "") -> Iterator[Progress]:
    """Yield what is told how far the work is; a bar appears on standard error once it takes a while.

    Maps that are opened meanwhile tell it by themselves. Stopping from the keyboard ends the work; the bar goes with it.

    Args:
        what: work that does not tell how far it is, by the key of its words: a bar without an end appears for it.
    """
    if not sys.stderr.isatty():
        yield no_progress
        return
    begun = time.monotonic()
    bars: list[Bar] = []
    lock = Lock()
    over = False

    def bar() -> "Bar | None":
        with lock:
            if not bars and not over:
                bars.append(_bar())
            return None if over else bars[0]

    def tell(named: str, part: float) -> None:
        if (bars or time.monotonic() - begun > PATIENCE) and (one := bar()) is not None:
            one.update(one.task_ids[0], total=1.0, completed=part, description=text(f"cli.progress.{named}"))

    def appear() -> None:
        if not bars and (one := bar()) is not None:
            one.update(one.task_ids[0], total=None, description=text(f"cli.progress.{what}"))

    timer = Timer(PATIENCE, appear)
    timer.daemon = True
    if what:
        timer.start()
    try:
        with heard_by(tell):
            yield tell
    finally:
        timer.cancel()
        with lock:
            over = True
        for one in bars:
            one.stop()


def _bar() -> "Bar":
    from rich.console import Console
    from rich.progress import BarColumn, TaskProgressColumn, TextColumn
    from rich.progress import Progress as Bar

    columns = TextColumn("{task.description}"), BarColumn(), TaskProgressColumn()
    bar = Bar(*columns, console=Console(stderr=True), transient=True)
    bar.add_task("", total=None)
    bar.start()
    return bar
