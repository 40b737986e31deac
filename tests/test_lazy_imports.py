"""What is not needed is not imported: help and a ruling load no numpy, no shapely, no web stack."""

import subprocess
import sys

import pytest

HEAVY = ("numpy", "shapely", "pyproj", "fastapi", "starlette", "uvicorn", "jinja2", "pydantic", "rapidfuzz")


def loaded_by(code: str) -> set[str]:
    found = subprocess.run(
        [sys.executable, "-c", f"{code}\nimport sys; print('MODULES', *sys.modules)"],
        capture_output=True,
        text=True,
        check=True,
    )
    return set(found.stdout.rpartition("MODULES")[2].split())


@pytest.mark.parametrize(
    "code",
    [
        "import marram",
        "import marram.cli.app",
        "import marram, datetime; marram.rule('ball_moved_by_player', {}, played_on=datetime.date(2024, 5, 1))",
        """
import sys
sys.argv = ['marram', 'rule', 'ball_moved_by_player', '--edition', '2023']
from marram.cli import main
try:
    main()
except SystemExit as end:
    assert end.code == 3, end.code
""",
    ],
)
def test_light_work_loads_no_heavy_library(code: str) -> None:
    """Help, the Python API and a ruling on the command line import none of the heavy libraries."""
    heavy = sorted(loaded_by(code) & set(HEAVY))

    assert not heavy, heavy


def test_help_loads_no_rule() -> None:
    """The command line's help needs neither the book nor the vocabulary."""
    assert not {name for name in loaded_by("import marram.cli.app") if name.startswith("marram.rules")}
