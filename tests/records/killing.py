"""Writers that are killed while they add entries, and what must be true of the log afterwards."""

import os
import signal
import subprocess
import sys
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from random import Random

from marram.records.database import opened
from marram.records.log import Log
from marram.records.verifying import unsound, verified

ROOT = Path(__file__).parents[2]


def start(address: str, event: str, name: str, numbers: range, threads: int = 4) -> subprocess.Popen[str]:
    """Start a writer in a process of its own."""
    command = [sys.executable, "-m", "tests.records.writer", address, event, name]
    return subprocess.Popen(
        [*command, str(numbers.start), str(numbers.stop), str(threads)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(ROOT / "src"), str(ROOT)])},
    )


def acknowledged(writer: subprocess.Popen[str], most: int | None = None) -> dict[int, int]:
    """Return what a writer was told is kept: the numbers it gave, with their numbers in the log; ``most`` at most."""
    assert writer.stdout is not None
    told: dict[int, int] = {}
    while most is None or len(told) < most:
        line = writer.stdout.readline()
        if not line or line == "done\n":
            break
        given, number = line.split()
        told[int(given)] = int(number)
    return told


def killed(address: str, event: str, name: str, numbers: range, dice: Random) -> dict[int, int]:
    """Let a writer work, kill it after a random number of acknowledgements, and return all that it was told."""
    writer = start(address, event, name, numbers)
    told = acknowledged(writer, dice.randint(0, len(numbers) // 2))
    for _ in range(dice.randint(0, 20_000)):  # a moment that no acknowledgement marks
        pass
    writer.send_signal(signal.SIGKILL)
    told |= acknowledged(writer)
    writer.wait()
    for stream in (writer.stdout, writer.stderr):
        assert stream is not None
        stream.close()
    return told


def look(
    address: str, event: str, name: str, told: dict[int, int], entry: Callable[..., object]
) -> Counter[str]:
    """Check that every acknowledged entry is there under its number, none twice, and the chain whole; count them."""
    with opened(address) as records:
        kept = Log(records).entries(event)
        assert [one.broken for one in verified(records)] == [None]
        assert unsound(records) == []
    ids = Counter(one.id for one in kept)
    by_id = {one.id: one.number for one in kept}
    lost = [number for number, at in told.items() if by_id.get(entry(name, number).id) != at]  # type: ignore[attr-defined]
    assert not lost, lost
    assert set(ids.values()) <= {1}
    return ids
