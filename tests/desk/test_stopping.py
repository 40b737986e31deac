"""A desk that is stopped while pages are open: it ends, says nothing, and whatever was recorded is kept."""

import http.client
import os
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.clubs import club

ROOT = Path(__file__).parents[2]


@pytest.fixture
def port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


@pytest.fixture
def desk(tmp_path: Path, port: int) -> Iterator[subprocess.Popen[str]]:
    """A desk with records in a process of its own, which has answered once."""
    with club(tmp_path):
        pass
    program = "from marram.cli import main; main()"
    command = [sys.executable, "-c", program, "serve", "--records", str(tmp_path / "club.db")]
    process = subprocess.Popen(
        [*command, "--port", str(port)],
        cwd=tmp_path,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT / "src")},
    )
    try:
        answered(process, port)
        yield process
    finally:
        process.kill()
        process.communicate()


def answered(process: subprocess.Popen[str], port: int) -> None:
    """Ask until the desk listens; one that has ended never will."""
    while process.poll() is None:
        try:
            socket.create_connection(("127.0.0.1", port)).close()
        except ConnectionRefusedError:
            continue
        return
    pytest.fail(f"The desk ended before it answered: {process.communicate()[1]}")


@pytest.mark.parametrize("stop", [signal.SIGINT, signal.SIGTERM], ids=["Ctrl-C", "the machine's own stop"])
def test_a_desk_ends_with_a_page_open(desk: subprocess.Popen[str], port: int, stop: signal.Signals) -> None:
    """Two open pages hear what happens live, a third was only reached; the desk ends by itself and as one that was asked to."""
    listening = [http.client.HTTPConnection("127.0.0.1", port) for _ in range(2)]
    streams = []
    for one in listening:
        one.request("GET", "/api/live")
        streams.append(one.getresponse())
    assert [one.status for one in streams] == [200, 200]
    assert all(one.readline().startswith(b"retry:") for one in streams)
    with socket.create_connection(("127.0.0.1", port)):
        desk.send_signal(stop)
        # Far more than it may take: a desk that hangs fails, a slow machine does not.
        _, said = desk.communicate(timeout=120)
    assert desk.returncode == 0, said
    assert said == ""
    assert all(b"event: " in one.read() for one in streams)  # what was told is whole, and then it ends
    for one in listening:
        one.close()
