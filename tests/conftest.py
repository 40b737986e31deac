"""What holds for every test."""

import gc
import os
from pathlib import Path

import pytest

gc.set_threshold(100_000)
"""Ten thousands of tests and the trees of the Rules stay: looking for cycles among them all took 6 of 100 seconds (measured)."""

os.environ["LC_ALL"] = "C.UTF-8"
"""Commands write times and days as the locale does, and tests expect those of no region."""


def pytest_collection_finish() -> None:
    """What was made until here stays until the end, and is not looked through again."""
    gc.collect()
    gc.freeze()


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """Where only tests of a browser run, a file that marks none is not read: reading all takes as long as many of them."""
    only = config.getoption("markexpr") == "browser" and collection_path.name.startswith("test_")
    return True if only and "mark.browser" not in collection_path.read_text("utf-8") else None


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """What takes long begins first, so that nobody waits for it in the end."""
    items.sort(key=lambda one: one.get_closest_marker("long") is None)
