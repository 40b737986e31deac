"""``marram serve`` with a map or a port that cannot be used: nothing is announced that is not there."""

import socket
from pathlib import Path

import pytest

from tests.cli.running import marram


@pytest.fixture
def free_port() -> str:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return str(probe.getsockname()[1])


@pytest.mark.parametrize(
    ("content", "message"),
    [(None, "cannot be read: No such file"), ("{", "Editing needs the map as GeoJSON"), ("[]", "no GeoJSON")],
)
def test_a_map_that_cannot_be_used_is_said_and_no_address(
    tmp_path: Path, free_port: str, content: str | None, message: str
) -> None:
    """The fault names the file; the address is printed only once there is something to open."""
    course = tmp_path / "course.geojson"
    if content is not None:
        course.write_text(content, encoding="utf-8")
    found = marram("serve", str(course), "--port", free_port)
    assert found.code == 2
    assert found.out == ""
    assert str(course) in found.err
    assert message in found.err


def test_a_port_in_use_is_said() -> None:
    """Another program listens there: the port is named, and the option that gives another."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = str(taken.getsockname()[1])
        found = marram("serve", "--demo", "--port", port)
    assert found.code == 2
    assert port in found.err
    assert "--port" in found.err
    assert found.out == ""
