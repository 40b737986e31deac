"""Exit codes, and how faults reach the user: one sentence each on standard error, never a traceback."""

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


class Stopped(BaseException):
    """The user stopped the command; nothing that handles faults takes it for one."""


def _stop_command(_signal: int, _frame: object) -> NoReturn:
    raise Stopped


@contextmanager
def faults_as_exit_codes() -> Iterator[None]:
    """Turn marram's errors, and a stop from the keyboard, into messages and exit codes."""
    if signal.getsignal(signal.SIGINT) is signal.default_int_handler:
        signal.signal(signal.SIGINT, _stop_command)
    try:
        yield
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
