"""A module imports only from its own layer or one below it (docs/architecture.md)."""

import ast
from pathlib import Path

import pytest

SOURCE = Path(__file__).parents[1] / "src" / "marram"
MAY_IMPORT = {
    "rules": {"rules"},
    "words": {"words", "rules"},
    "course": {"course"},
    "relief": {"relief", "course", "rules"},
    "demo": {"demo", "course"},
    "paper": {"paper", "course"},
    "desk": {"desk", "paper", "demo", "relief", "course", "words", "rules", "marram"},
    "docs": {"docs", "cli", "words", "rules"},
    "cli": {"cli", "desk", "paper", "demo", "relief", "course", "words", "rules", "marram"},
}
BELOW_ALL = {"errors", "lazy_names"}
"""Single files that every layer may use."""
LIBRARIES = {"rules": set(), "words": set()}
"""Layers that use the standard library only."""


def imports(path: Path) -> set[str]:
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module)
    return found


FILES = [path for layer in MAY_IMPORT for path in sorted((SOURCE / layer).rglob("*.py"))]


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(SOURCE)))
def test_a_module_imports_only_what_its_layer_may(path: Path) -> None:
    """Nothing below knows anything above; the Rules and their words need no library."""
    import sys

    layer = path.relative_to(SOURCE).parts[0]
    for name in imports(path):
        root, *rest = name.split(".")
        if root == "marram":
            assert (rest[0] if rest else "marram") in MAY_IMPORT[layer] | BELOW_ALL, name
        elif layer in LIBRARIES:
            assert root in sys.stdlib_module_names, name
