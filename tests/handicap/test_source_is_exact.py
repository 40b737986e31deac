"""The layer holds no binary floating-point number: none is written, and nothing is divided into one."""

import ast
from pathlib import Path

import pytest

import marram.handicap

FILES = sorted(Path(marram.handicap.__path__[0]).rglob("*.py"))


def inexact(source: str) -> list[str]:
    """Return what in a source can make a floating-point number."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Constant) and isinstance(node.value, float | complex):
            found.append(f"line {node.lineno}: {node.value}")
        elif isinstance(node, ast.BinOp | ast.AugAssign) and isinstance(node.op, ast.Div):
            found.append(f"line {node.lineno}: a division")
        elif isinstance(node, ast.Name) and node.id in {"float", "round"}:
            found.append(f"line {node.lineno}: {node.id}")
    return found


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_no_file_can_make_a_floating_point_number(path: Path) -> None:
    """No literal with a point, no ``/``, no ``float`` and no ``round`` (which rounds halves to even)."""
    assert inexact(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("line", ["a = 1.5", "a = 1 / 2", "a /= 2", "a = float('1')", "a = round(2)"])
def test_what_is_inexact_is_found(line: str) -> None:
    """The check can fail."""
    assert inexact(line)
