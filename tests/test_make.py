"""`make test` runs every test once, in two runs that both report."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
STAND_IN = """#!/bin/sh
printf '%s\\n' "$*" >> "$RAN"
case "$*" in *"$FAILS"*) exit 1 ;; esac
"""
"""What takes Python's place: it notes how it was called, and fails where it is told to."""
SOME_TESTS = """
import pytest

def test_plain(): pass

@pytest.mark.browser
def test_marked(): pass

@pytest.mark.browser
@pytest.mark.parametrize("size", [1, 2])
def test_each(size): pass

class TestMany:
    pytestmark = pytest.mark.browser
    def test_of_a_class(self): pass
"""


def made(folder: Path, fails: str) -> tuple[int, list[str]]:
    """Run `make test` with a stand-in for Python; return its exit status and the runs of pytest."""
    python, ready, ran = folder / "bin/python", folder / "ready", folder / "ran"
    python.parent.mkdir()
    python.write_text(STAND_IN)
    python.chmod(0o755)
    ready.touch()
    environment = {
        name: value for name, value in os.environ.items() if not name.startswith(("MAKE", "MFLAGS"))
    }
    done = subprocess.run(
        ["make", "test", f"BIN={python.parent}", f"READY={ready}"],
        cwd=ROOT,
        env={**environment, "RAN": str(ran), "FAILS": fails},
        capture_output=True,
        text=True,
        check=False,
    )
    return done.returncode, [line for line in ran.read_text().splitlines() if "pytest" in line]


@pytest.mark.parametrize(
    ("fails", "fine"), [("-m not browser", False), ("-m browser", False), ("nothing", True)]
)
def test_both_runs_report_and_either_fails_the_make(tmp_path: Path, fails: str, fine: bool) -> None:
    """When the first run fails the second is made all the same; `make` fails when either did."""
    status, runs = made(tmp_path, fails)
    assert len(runs) == 2
    assert (status == 0) is fine


def test_together_the_two_runs_are_every_test_once(tmp_path: Path) -> None:
    """What one leaves out by its mark the other runs: by pytest's own choice, on tests marked in each way there is."""
    _, runs = made(tmp_path, "nothing")
    (tmp_path / "test_some.py").write_text(SOME_TESTS)
    (tmp_path / "pytest.ini").write_text("[pytest]\nmarkers = browser: of a browser\n")
    chosen: list[str] = []
    for run in runs:
        mark = re.search(r"-m ((?:not )?\w+)", run.removeprefix("-m pytest"))
        assert mark, run
        collected = subprocess.run(
            [
                sys.executable,
                "-m",
                "pytest",
                "--collect-only",
                "-q",
                "-m",
                mark[1],
                "test_some.py",
            ],
            cwd=tmp_path,
            capture_output=True,
            text=True,
            check=False,
        )
        chosen += [line for line in collected.stdout.splitlines() if "::" in line]
    assert sorted(chosen) == sorted({*chosen})
    assert len(chosen) == 5


def test_nothing_else_narrows_a_run() -> None:
    """No run of `make test` names files or chooses by name, so that a new test file is in one of them."""
    makefile = (ROOT / "Makefile").read_text(encoding="utf-8")
    recipe = makefile.split("\ntest:")[1].split("\n\n")[0]
    assert not re.search(r"pytest\b.*(\s-k|--ignore|--deselect|\stests|\.py\b)", recipe)
