"""Exit codes, and how faults reach the user: one sentence each on standard error, never a traceback."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import NoReturn

from marram.errors import InputError, MarramError

DECIDED = 0
OUR_FAULT = 1
BAD_INPUT = 2
MORE_FACTS_NEEDED = 3
LEFT_OPEN = 4
"""A matter of judgement, or not covered."""


@contextmanager
def faults_as_exit_codes() -> Iterator[None]:
    """Turn marram's errors into messages and exit codes."""
    try:
        yield
    except InputError as error:
        stop(BAD_INPUT, *error.faults)
    except MarramError as error:
        stop(OUR_FAULT, str(error), "This is a fault in marram; please report it.")
    except OSError as error:
        stop(BAD_INPUT, f"{error.filename or 'A file'} cannot be used: {error.strerror}.")
    except Exception as error:  # noqa: BLE001 - a fault of ours reaches the official as a sentence too
        from pathlib import Path
        from traceback import extract_tb

        at = extract_tb(error.__traceback__)[-1]
        where = f"{Path(at.filename).name}, line {at.lineno}"
        stop(OUR_FAULT, f"marram failed: {type(error).__name__}: {error} ({where}).", "Please report it.")


def stop(code: int, *sentences: str) -> NoReturn:
    """Say why on standard error and exit with ``code``."""
    for sentence in sentences:
        print(sentence, file=sys.stderr)
    raise SystemExit(code)
