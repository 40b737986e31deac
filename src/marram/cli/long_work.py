"""How far long work is, as a bar on the terminal; nothing where the work is short or nobody looks on."""

import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from marram.course.progress import Progress, heard_by, no_progress
from marram.words.texts import text

if TYPE_CHECKING:
    from rich.progress import Progress as Bar

PATIENCE = 0.7
"""Seconds: work that is done sooner shows no bar (own choice)."""


@contextmanager
def shown() -> Iterator[Progress]:
    """Yield what is told how far the work is; a bar appears on standard error once it takes a while.

    Maps that are opened meanwhile tell it by themselves. Stopping from the keyboard ends the work; the bar goes with it.
    """
    if not sys.stderr.isatty():
        yield no_progress
        return
    begun = time.monotonic()
    bars: list[Bar] = []

    def tell(what: str, part: float) -> None:
        if not bars and time.monotonic() - begun > PATIENCE:
            bars.append(_bar())
        if bars:
            bars[0].update(bars[0].task_ids[0], completed=part, description=text(f"cli.progress.{what}"))

    try:
        with heard_by(tell):
            yield tell
    finally:
        for bar in bars:
            bar.stop()


def _bar() -> "Bar":
    from rich.console import Console
    from rich.progress import BarColumn, TaskProgressColumn, TextColumn
    from rich.progress import Progress as Bar

    columns = TextColumn("{task.description}"), BarColumn(), TaskProgressColumn()
    bar = Bar(*columns, console=Console(stderr=True), transient=True)
    bar.add_task("", total=1.0)
    bar.start()
    return bar
