"""What the rooms of an event do at the desk can be had from the shell and from Python: docs/event.md, held to all three."""

import re
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest
from typer.main import get_command

from marram.cli.app import application
from marram.desk.people.rights import ROOMS

ROOT = Path(__file__).parents[1]
OF_THE_EVENT = {
    *("entries", "draw", "ready", "officials", "holes", "cards", "walk", "results", "board", "matches"),
    *("papers", "published", "suspension", "conditions"),
}
NOT_FROM_THE_SHELL = {"POST /suspension/position"}
"""Where a ball lay is kept by whoever stands beside it."""

ROWS = [
    [cell.strip() for cell in line.strip("|").split("|")]
    for line in (ROOT / "docs/event.md").read_text(encoding="utf-8").splitlines()
    if line.startswith("| ") and "`" in line and "at the desk" not in line
]


def test_every_route_of_the_rooms_has_a_row() -> None:
    """Each route of these rooms stands on the page once, and no route that the desk does not have."""
    told = [route for row in ROWS for route in re.findall(r"`((?:GET|POST) [^`]+)`", row[1])]
    routes = {route for room in ROOMS if room.name in OF_THE_EVENT for route in room.rights}

    assert sorted(told) == sorted(routes - NOT_FROM_THE_SHELL)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_the_command_of_a_row_is_there(row: list[str]) -> None:
    """The command exists, and has the option that the row names."""
    words = row[2].strip("`").split()
    found: Any = get_command(application())
    for word in words[1:]:
        if word.startswith("--"):
            assert word in {name for one in found.params for name in one.opts}, row
            break
        found = found.commands[word] if hasattr(found, "commands") else found
    assert not hasattr(found, "commands"), row


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_the_python_of_a_row_is_there(row: list[str]) -> None:
    """The name can be imported, and has a docstring."""
    name = row[3].strip("`")
    parts = (name if name.startswith("marram.") else f"marram.services.{name}").split(".")
    at = next(at for at, part in enumerate(parts) if part[0].isupper() or at == len(parts) - 1)
    found: Any = import_module(".".join(parts[:at]))
    for part in parts[at:]:
        found = getattr(found, part)
    assert found.__doc__, row
