"""Where the real course maps are: open data beside the repository, not part of it."""

import os
from pathlib import Path

import pytest

FOLDER = Path(__file__).parents[3] / "shared" / "open-data" / "courses"
"""© OpenStreetMap contributors, Open Database License (ODbL) 1.0."""


def real_map(name: str) -> Path:
    """Return the path of a real map; where it is absent the test is skipped, but fails under CI=true."""
    path = FOLDER / name
    if not path.exists():
        reason = f"{name} is not in {FOLDER}: the open data lies beside the repository"
        if os.environ.get("CI") == "true":
            pytest.fail(reason)
        pytest.skip(reason)
    return path
