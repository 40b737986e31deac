"""Running the command line in this process, as a shell would."""

import io
import sys
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from unittest.mock import patch

from marram.cli import main


@dataclass(frozen=True)
class Finished:
    """A finished command: exit code, standard output, standard error."""

    code: int
    out: str
    err: str


def marram(*arguments: str) -> Finished:
    """Run ``marram`` with these arguments."""
    out, err = io.StringIO(), io.StringIO()
    with patch.object(sys, "argv", ["marram", *arguments]), redirect_stdout(out), redirect_stderr(err):
        try:
            main()
            code = 0
        except SystemExit as end:
            code = end.code if isinstance(end.code, int) else int(end.code is not None)
    return Finished(code, out.getvalue(), err.getvalue())
