"""A module imports only from its own layer or one below it, and every room is on the map (docs/architecture.md)."""

import ast
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
SOURCE = ROOT / "src" / "marram"
PURE = ("rules", "handicap", "words")
"""Layers that use the standard library only."""

FILES = [path for layer in PURE for path in sorted((SOURCE / layer).rglob("*.py"))]
ROOMS = sorted(
    path.parent.relative_to(SOURCE)
    for path in SOURCE.rglob("__init__.py")
    if path.parent != SOURCE and "english" not in path.parts
)


def test_layers_and_rooms_import_downwards_only() -> None:
    """Nothing below knows anything above; the contracts stand in pyproject.toml."""
    lint = [
        sys.executable,
        "-c",
        "from importlinter.cli import lint_imports_command as lint; lint()",
        "--no-logo",
    ]
    said = subprocess.run(lint, cwd=ROOT, capture_output=True, text=True, check=False)

    assert said.returncode == 0, said.stdout + said.stderr


def test_every_route_of_the_desk_has_its_room_in_the_table_of_rights() -> None:
    """The desk starts: it refuses to where a route stands in no room of desk/people/rights.py."""
    said = subprocess.run(
        [sys.executable, "-c", "from marram.desk.app import create_app; create_app()"],
        capture_output=True,
        text=True,
        check=False,
    )

    assert said.returncode == 0, said.stderr.splitlines()[-1:]


def test_every_layer_has_its_place_in_the_contract() -> None:
    """A new folder or file at the top of the package must be given a layer."""
    contracts = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["importlinter"]
    first = contracts["contracts"][0]

    assert first["type"] == "layers"
    assert first["exhaustive"] is True


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(SOURCE)))
def test_the_rules_and_their_words_need_no_library(path: Path) -> None:
    """Facts in, ruling out: with the standard library alone."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        names = [alias.name for alias in node.names] if isinstance(node, ast.Import) else []
        names += [node.module] if isinstance(node, ast.ImportFrom) and node.module else []
        for name in names:
            root = name.split(".")[0]
            assert root == "marram" or root in sys.stdlib_module_names, name


@pytest.mark.parametrize("room", ROOMS, ids=str)
def test_every_room_says_what_it_is_for(room: Path) -> None:
    """Each folder has a paragraph of its own, and stands in the architecture."""
    module = ast.parse((SOURCE / room / "__init__.py").read_text(encoding="utf-8"))

    assert len((ast.get_docstring(module) or "").split()) >= 6, room
    assert f"`{room}/`" in (ROOT / "docs" / "architecture.md").read_text(encoding="utf-8")
