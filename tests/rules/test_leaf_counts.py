"""The number of paths through each incident is pinned; a change of it is a change of the Rules."""

from datetime import date
from pathlib import Path

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.engine.counting import count, leaves_by_branch
from marram.rules.incidents import INCIDENTS

PINNED = {
    (name, date.fromisoformat(day)): (int(leaves), int(size))
    for line in (Path(__file__).parent / "leaf_counts.txt").read_text(encoding="utf-8").splitlines()
    if not line.startswith("#")
    for name, day, _, leaves, _, size in [line.split()]
}


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_leaf_counts_are_as_pinned(name: str, day: date) -> None:
    """On a mismatch the count per branch is shown, so that the branch that changed is found by bisection."""
    if (name, day) not in PINNED:
        pytest.fail(f"{name} is not pinned yet on {day}: make pin", pytrace=False)
    assert count(name, day) == PINNED[name, day], leaves_by_branch(name, day)


def test_no_pinned_incident_is_gone() -> None:
    """Each pinned line belongs to an incident that exists."""
    assert {name for name, _ in PINNED} <= {one.name for one in INCIDENTS}
