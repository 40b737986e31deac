"""What is not needed is not imported: help and a ruling load no numpy, no shapely, no web stack."""

import os
import subprocess
import sys

import pytest

from marram.demo import COURSE

HEAVY = (
    "numpy",
    "shapely",
    "pyproj",
    "fastapi",
    "starlette",
    "uvicorn",
    "jinja2",
    "pydantic",
    "rapidfuzz",
    "snowballstemmer",
    "sqlalchemy",
    "alembic",
    "psycopg",
    "PIL",
    "cryptography",
)


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
        "from marram.cli.app import names_alone; names_alone()",
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
    shown = loaded_by("from marram.cli.app import names_alone; names_alone()")

    assert not {name for name in shown if name.startswith("marram.rules")}


def test_relief_loads_only_what_this_case_needs() -> None:
    """A drawing loads nothing of the desk, paper, stories, drops, maps kept in versions, and no other reader."""
    loaded = loaded_by(f"""
import os, sys
sys.argv = ['marram', 'relief', {str(COURSE)!r}, '--hole', '7', '--ball', '3.9961,55.0078', '--svg', os.devnull]
from marram.cli import main
try:
    main()
except SystemExit as end:
    assert end.code == 0, end.code
""")
    not_needed = {
        *set(HEAVY) - {"numpy", "shapely", "pyproj"},
        "marram.course.reading.osm_xml",
        "marram.course.versions.map_versions",
        "marram.relief.drop",
        "marram.relief.pictures.geojson",
        "asyncio",
        "numpy.ma",
        "shapely.ops",
        "statistics",
    }  # fmt: skip

    assert "marram.relief.pictures.sheet" in loaded
    assert not loaded & not_needed, sorted(loaded & not_needed)
    for part in ("marram.desk", "marram.paper", "marram.rules.story", "marram.course.greens"):
        assert not {name for name in loaded if name.startswith(part)}, part


@pytest.mark.parametrize(("asked", "given"), [(None, "1"), ("3", "3")])
def test_the_command_line_starts_no_threads_for_matrices_unless_asked(asked: str | None, given: str) -> None:
    """Before numpy is loaded, its threads are set to one; a number that the environment gives is kept."""
    environment = {key: value for key, value in os.environ.items() if key != "OPENBLAS_NUM_THREADS"}
    told = subprocess.run(
        [
            sys.executable,
            "-c",
            """
import os, sys
sys.argv = ['marram', '--version']
from marram.cli import main
assert 'numpy' not in sys.modules
try:
    main()
except SystemExit:
    print('THREADS', os.environ['OPENBLAS_NUM_THREADS'])
""",
        ],
        env=environment if asked is None else {**environment, "OPENBLAS_NUM_THREADS": asked},
        capture_output=True,
        text=True,
        check=True,
    ).stdout

    assert told.split("THREADS ")[1].strip() == given
