"""What docs/handicap.md shows works as it stands."""

import doctest
from pathlib import Path


def test_the_guide_runs() -> None:
    """Its Python gives what it prints."""
    guide = Path(__file__).parents[2] / "docs" / "handicap.md"

    found = doctest.testfile(str(guide), module_relative=False)

    assert found.attempted > 5
    assert found.failed == 0
