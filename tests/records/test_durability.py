"""What was acknowledged is never lost, whatever dies: the writer, the server, the room on the disk."""

import subprocess
import sys
from pathlib import Path
from random import Random

import pytest
from sqlalchemy import text

from marram.errors import InputError
from marram.records.database import Records, opened
from marram.records.log import Log
from marram.records.verifying import unsound, verified
from tests.records.conftest import note
from tests.records.killing import acknowledged, killed, look, start
from tests.records.postgresql import Server
from tests.records.writer import entry

KILLS = 4


def test_nothing_acknowledged_is_lost_when_the_writer_is_killed(address: str, event: str) -> None:
    """Killed at random moments and started anew, a writer that gives all it has again doubles nothing."""
    dice, told = Random(20250621), {}
    for _ in range(KILLS):
        told |= killed(address, event, "phone", range(120), dice)
        look(address, event, "phone", told, entry)
    last = start(address, event, "phone", range(120))
    told |= acknowledged(last)
    _, faults = last.communicate()

    assert (last.returncode, faults) == (0, "")
    assert len(look(address, event, "phone", told, entry)) == 120 == len(told)


def test_two_writers_of_which_one_is_killed(address: str, event: str) -> None:
    """The other goes on, and both have all that they were told."""
    other = start(address, event, "laptop", range(80))
    told = killed(address, event, "phone", range(80), Random(7))
    theirs = acknowledged(other)
    _, faults = other.communicate()

    assert (other.returncode, faults) == (0, "")
    look(address, event, "phone", told, entry)
    assert len(theirs) == 80
    look(address, event, "laptop", theirs, entry)


@pytest.mark.parametrize("address", ["postgresql"], indirect=True)
def test_nothing_acknowledged_is_lost_when_the_server_is_killed(
    server: Server, address: str, event: str
) -> None:
    """Every process of PostgreSQL killed at once, and started anew: what it had acknowledged is there, once."""
    told: dict[int, int] = {}
    for turn in range(2):
        writer = start(address, event, "phone", range(400))
        told |= acknowledged(writer, 20 + 30 * turn)
        server.kill()
        told |= acknowledged(writer)
        writer.communicate()
        server.start()
        look(address, event, "phone", told, entry)
    last = start(address, event, "phone", range(400))
    told |= acknowledged(last)
    last.communicate()

    assert len(look(address, event, "phone", told, entry)) == 400


@pytest.mark.parametrize("address", ["sqlite"], indirect=True)
def test_a_full_disk_is_told_and_loses_nothing(records: Records, event: str) -> None:
    """When the file can grow no more, the fault says so; what was there is whole, and with room again it goes on."""
    log = Log(records)
    kept = [log.append(event, note("before"))]
    with records.writer.connect() as connection:
        pages = connection.scalar(text("PRAGMA page_count"))
        connection.execute(text(f"PRAGMA max_page_count = {pages + 6}"))
        connection.rollback()

    def fill() -> None:
        for turn in range(200):
            kept.append(log.append(event, note(f"{turn} " + "x" * 400)))  # noqa: PERF401 - those before the fault count

    with pytest.raises(InputError, match=r"The disk of .* is full; nothing was saved") as fault:
        fill()

    assert records.name in str(fault.value)
    assert log.entries(event) == kept
    assert len(kept) > 1
    assert verified(records)[0].broken is None
    with records.writer.connect() as connection:
        connection.execute(text("PRAGMA max_page_count = 1000000"))
        connection.rollback()
    assert log.append(event, note("after")).number == len(kept) + 1


FILL = """
import resource, sys
from marram.errors import InputError
from marram.records.database import opened
from marram.records.log import Log
from tests.records.writer import entry
import signal
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
with opened(sys.argv[1]) as records:
    log = Log(records)
    resource.setrlimit(resource.RLIMIT_FSIZE, (int(sys.argv[3]),) * 2)
    for number in range(4000):
        try:
            log.append(sys.argv[2], entry("phone", number))
        except InputError as fault:
            print(number, fault)
            break
"""


@pytest.mark.parametrize("address", ["sqlite"], indirect=True)
def test_a_file_that_the_system_lets_grow_no_further(records: Records, event: str) -> None:
    """The system itself refuses to write: told in a sentence, and all that was acknowledged is there."""
    room = records.file.stat().st_size + 200_000
    root = Path(__file__).parents[2]
    told = subprocess.run(
        [sys.executable, "-c", FILL, str(records.file), event, str(room)],
        cwd=root,
        env={"PYTHONPATH": f"{root / 'src'}:{root}"},
        capture_output=True,
        text=True,
        check=False,
    )
    assert told.returncode == 0, told.stderr
    number, _, fault = told.stdout.partition(" ")

    assert "nothing was saved" in fault
    assert "Traceback" not in told.stderr
    with opened(records.file) as again:
        assert len(Log(again).entries(event)) == int(number) > 10
        assert verified(again)[0].broken is None
        assert unsound(again) == []
