"""Exit codes, and how faults reach the user: one sentence each on standard error, never a traceback."""

import os
import signal
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import NoReturn

from marram.errors import BadCourse, InputError, MarramError, UnknownLanguage
from marram.visible import visible

DECIDED = 0
OUR_FAULT = 1
BAD_INPUT = 2
MORE_FACTS_NEEDED = 3
LEFT_OPEN = 4
"""A matter of judgement, or not covered."""
STOPPED = 130
"""Stopped from the keyboard: 128 and the number of the signal, as shells have it (POSIX, SIGINT is 2)."""
UNREAD = 141
"""Nobody reads any more what is printed (``| head``): 128 and the number of the signal (POSIX, SIGPIPE is 13)."""


class Stopped(BaseException):
    """The user stopped the command; nothing that handles faults takes it for one."""


def _stop_command(_signal: int, _frame: object) -> NoReturn:
    raise Stopped


@contextmanager
def quiet_when_unread() -> Iterator[None]:
    """End quietly, as programs in a pipe do, once the program that reads what is printed has ended."""
    try:
        yield
    except SystemExit as ended:
        if not isinstance(ended.__context__, BrokenPipeError):  # typer makes an exit of it
            raise
    except BrokenPipeError:
        pass
    else:
        return
    nowhere = os.open(os.devnull, os.O_WRONLY)
    for stream in (1, 2):
        os.dup2(nowhere, stream)  # what is still held back to be printed would fail once more
    raise SystemExit(UNREAD) from None


def open_streams() -> None:
    """Open what is closed of standard input, output and error to nowhere, so that no file of a command takes its place.

    A closed standard error is not to send faults to standard output, where a program reads the answer. Where standard
    output itself is closed nothing can be told: that is said, and nothing is done.
    """
    for stream in (0, 1, 2):
        try:
            os.fstat(stream)
        except OSError:
            os.open(os.devnull, os.O_RDWR)  # takes the lowest number that is free: this one
    if sys.stdin is None:
        sys.stdin = os.fdopen(0, encoding="utf-8")
    if sys.stderr is None:
        sys.stderr = os.fdopen(2, "w", encoding="utf-8")
    if sys.stdout is None:
        stop(BAD_INPUT, _text("no_output"))


@contextmanager
def faults_as_exit_codes() -> Iterator[None]:
    """Turn marram's errors, and a stop from the keyboard, into messages and exit codes."""
    if signal.getsignal(signal.SIGINT) is signal.default_int_handler:
        signal.signal(signal.SIGINT, _stop_command)
    try:
        try:
            yield
        finally:
            print(end="", flush=True)  # Python at its end would complain in its own words
    except BrokenPipeError:
        raise  # nobody reads any more: see quiet_when_unread
    except Stopped:
        stop(STOPPED, _text("stopped"))
    except UnknownLanguage as error:
        print(visible(str(error)), file=sys.stderr)
        raise SystemExit(BAD_INPUT) from None
    except InputError as error:
        hint = (_text("mend_it"),) if isinstance(error, BadCourse) and error.mendable else ()
        stop(BAD_INPUT, *error.faults, *hint)
    except MarramError as error:
        stop(OUR_FAULT, str(error), _text("our_fault"))
    except OSError as error:
        stop(BAD_INPUT, _text("file_error", file=error.filename or _text("a_file"), fault=error.strerror))
    except Exception as error:  # noqa: BLE001 - a fault of ours reaches the official as a sentence too
        from pathlib import Path
        from traceback import extract_tb

        at = extract_tb(error.__traceback__)[-1]
        where = _text("failed.at", file=Path(at.filename).name, line=at.lineno)
        failed = _text("failed", kind=type(error).__name__, fault=error, where=where)
        stop(OUR_FAULT, failed, _text("report"))


def stop(code: int, *sentences: str) -> NoReturn:
    """Say why on standard error and exit with ``code``."""
    from marram.words.spoken import spoken

    for sentence in sentences:
        print("\n".join(map(visible, spoken(sentence).split("\n"))), file=sys.stderr)
    raise SystemExit(code)


def _text(key: str, **values: object) -> str:
    from marram.words.texts import text

    return text(f"cli.{key}", **values)
