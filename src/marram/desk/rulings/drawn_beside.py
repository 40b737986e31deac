"""Drawings made by a process beside the desk: one process works on one thing at a time, and whoever waits for words waits for nothing else.

The process is this module, started for as long as the desk serves. It is told a map once and then cases on it, and answers
with the drawings of their options. It ends with the desk, however that ends: what it listens to is closed then. Where it is
not there, or does not answer, the desk draws by itself.
"""

import os
import pickle
import subprocess
import sys
from collections import OrderedDict
from collections.abc import Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import suppress
from dataclasses import replace
from itertools import count
from threading import Timer
from typing import IO, Any

from marram.course.model import Course
from marram.desk.rulings.case_address import CaseAddress
from marram.errors import MarramError

MAPS = 4
"""Maps that the process keeps (own choice: today's and tomorrow's, each with and without the holes as they are cut)."""
LONGEST = 20.0
"""Seconds after which a drawing is not waited for any longer (own choice: a thousand times what one takes)."""
STARTS = 5
"""How often a process is started at most (own choice): what ended each of them will end the next."""

Figures = Mapping[str, str]
"""Drawings as SVG, by the letter of their option."""

_NUMBERS = count(1)


class DrawnBeside:
    """The process beside the desk, as the desk sees it; a thread of its own asks one thing after the other."""

    def __init__(self) -> None:
        self._asking = ThreadPoolExecutor(1, "drawn-beside")
        self._process: subprocess.Popen[bytes] | None = None
        self._told: OrderedDict[int, None] = OrderedDict()
        self._starts = 0

    def start(self) -> None:
        """Start the process, which is ready a moment later."""
        self._asking.submit(self._start).result()

    def stop(self) -> None:
        """End the process, and what is still asked of it."""
        self._starts = STARTS
        self._asking.shutdown(wait=False, cancel_futures=True)
        self._end()

    @property
    def pid(self) -> int | None:
        """The number of the process; ``None`` where there is none."""
        process = self._process
        return process.pid if process else None

    def begin(self, course: Course, case: CaseAddress) -> "Future[Figures | None] | None":
        """Have the drawings of the options of a case made; ``None`` where there is no process to make them.

        What is given in time holds ``None`` where the process ended over it: they are to be made without it.
        """
        if self._process is None:
            return None
        try:
            return self._asking.submit(self._asked, course, case)
        except RuntimeError:  # the desk is being stopped
            return None

    def _asked(self, course: Course, case: CaseAddress) -> Figures | None:
        process = self._process
        if process is None:
            return None
        try:
            return self._answer(process, course, case)
        except (OSError, EOFError, ValueError, pickle.UnpicklingError):  # it ended, or was ended
            self._end()
            self._start()
            return None

    def _answer(
        self, process: "subprocess.Popen[bytes]", course: Course, case: CaseAddress
    ) -> Figures | None:
        assert process.stdin is not None
        assert process.stdout is not None
        number: int = course.kept.setdefault(DrawnBeside, next(_NUMBERS))
        fresh = None if _used(self._told, number) else replace(course)  # without what was worked out from it
        late = Timer(LONGEST, process.kill)
        late.daemon = True
        late.start()
        try:
            _send(process.stdin, (number, fresh, case))
            answer: Figures | None = pickle.load(process.stdout)  # noqa: S301 - from our own process
        finally:
            late.cancel()
        return answer

    def _start(self) -> None:
        if self._starts >= STARTS:
            return
        self._starts += 1
        apart: dict[str, Any] = (
            {"creationflags": subprocess.CREATE_NEW_PROCESS_GROUP}  # type: ignore[attr-defined,unused-ignore]
            if sys.platform == "win32"
            else {"process_group": 0}
        )  # whoever stops the desk by a key stops the desk, which then stops the process
        with suppress(OSError):
            self._process = subprocess.Popen(  # noqa: S603 - this very program
                [sys.executable, "-m", __name__], stdin=subprocess.PIPE, stdout=subprocess.PIPE, **apart
            )

    def _end(self) -> None:
        process, self._process = self._process, None
        self._told.clear()
        if process is None:
            return
        process.kill()  # it keeps nothing
        process.wait()
        for pipe in (process.stdin, process.stdout):
            with suppress(OSError):
                assert pipe is not None
                pipe.close()


def _send(to: IO[bytes], what: object) -> None:
    to.write(pickle.dumps(what, pickle.HIGHEST_PROTOCOL))
    to.flush()


def _used(told: OrderedDict[int, Any], number: int, held: Any = None) -> bool:
    """Put a map last in what the process keeps, where the first then falls out; return whether it was kept before."""
    known = number in told
    told[number] = told.pop(number) if known else held
    while len(told) > MAPS:
        told.popitem(last=False)
    return known


def _answer_until_closed(asked: IO[bytes], answers: IO[bytes]) -> None:
    """Draw what is asked for until nobody can ask any more."""
    from marram.desk.rulings.consultation import consult  # noqa: PLC0415 - the desk starts without it
    from marram.desk.rulings.relief_view import figures_of  # noqa: PLC0415 - the same

    kept: OrderedDict[int, Course] = OrderedDict()
    while True:
        try:
            number, fresh, case = pickle.load(asked)  # noqa: S301 - from the desk itself
        except (EOFError, pickle.UnpicklingError):
            return
        _used(kept, number, fresh)
        try:
            drawn = figures_of(kept[number], consult(kept[number], case))
        except MarramError:  # the desk meets it as well, and says so
            drawn = None
        try:
            _send(answers, drawn)
        except OSError:
            return


if __name__ == "__main__":
    with os.fdopen(os.dup(1), "wb") as answers:
        os.dup2(2, 1)  # what anything prints is no answer
        _answer_until_closed(sys.stdin.buffer, answers)
