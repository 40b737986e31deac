"""A command whose reader has ended (``| head``) ends as usual programs do: quietly, with the code of a closed pipe."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from marram.words.texts import text

MARRAM = [sys.executable, "-c", "from marram.cli import main; main()"]


def unread(*command: str, with_errors: bool = False) -> subprocess.CompletedProcess[str]:
    """Run a command into a pipe that nobody reads."""
    read, write = os.pipe()
    os.close(read)
    errors = write if with_errors else subprocess.PIPE
    try:
        return subprocess.run([*MARRAM, *command], stdout=write, stderr=errors, text=True, check=False)
    finally:
        os.close(write)


@pytest.mark.parametrize(
    "command",
    [
        "--help",
        "rule --help",
        "facts",  # more than is held back to be printed at once
        "quiz 1 --seed 7 --json",  # less: it fails only when the command has ended
        "changes --json",
        "course check --help",
    ],
)
def test_nobody_reads_what_is_printed(command: str) -> None:
    """Exit code 141 (POSIX: 128 and SIGPIPE), and nothing on standard error."""
    ended = unread(*command.split())

    assert (ended.returncode, ended.stderr) == (141, "")


@pytest.mark.parametrize("command", ["rule nonsense", "rule --nonsense", "course check /nowhere"])
def test_nobody_reads_a_fault(command: str) -> None:
    """Nor does a fault make noise where standard error is the same pipe (``2>&1 | head``)."""
    assert unread(*command.split(), with_errors=True).returncode == 141


def test_nobody_reads_a_file_that_is_a_pipe() -> None:
    """A file of a command may be the pipe itself."""
    ended = unread("pocket", "/dev/stdout")

    assert (ended.returncode, ended.stderr) == (141, "")


def test_a_full_disk_is_said_in_a_sentence() -> None:
    """What is printed has no place: exit code 2, one sentence, no complaint of Python's own."""
    with Path("/dev/full").open("w", encoding="utf8") as full:
        ended = subprocess.run(
            [*MARRAM, "facts"], stdout=full, stderr=subprocess.PIPE, text=True, check=False
        )

    assert ended.returncode == 2
    assert len(ended.stderr.strip().splitlines()) == 1
    assert "Traceback" not in ended.stderr
    assert "Exception" not in ended.stderr


def closed(stream: int, *command: str) -> subprocess.CompletedProcess[str]:
    """Run a command with one of its standard streams closed (``>&-``)."""
    shell = f'exec "$@" {stream}>&-'
    return subprocess.run(
        ["sh", "-c", shell, "sh", *MARRAM, *command], capture_output=True, text=True, check=False
    )


def test_a_closed_output_is_said_and_nothing_is_done(tmp_path: Path) -> None:
    """Exit code 2 and one sentence, as with a full disk; what the command would have written is not there."""
    asked = closed(1, "facts")
    written = closed(1, "pocket", str(tmp_path / "pocket.html"))

    for ended in (asked, written):
        assert ended.returncode == 2
        assert ended.stderr.splitlines() == [text("cli.no_output")]
    assert list(tmp_path.iterdir()) == []


def test_a_closed_error_sends_no_fault_to_the_output() -> None:
    """Who reads the answer reads no fault in its place; the exit code still tells of it."""
    ended = closed(2, "rule", "nonsense")

    assert (ended.returncode, ended.stdout) == (2, "")


def test_a_closed_input_asks_nothing() -> None:
    """A ruling that would be asked for at a terminal says what it still needs to know."""
    ended = closed(0, "rule", "unplayable_ball")

    assert (ended.returncode, ended.stderr) == (3, "")
    assert ended.stdout
