"""The number of paths through each incident is pinned; a change of it is a change of the Rules."""

from datetime import date

import pytest

from marram.rules.engine.counting import count, days_of, leaves_by_branch
from marram.rules.incidents import INCIDENTS
from tests.rules.pinned import EVERY, PINNED


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_leaf_counts_are_as_pinned(name: str, day: date) -> None:
    """On a mismatch the count per branch is shown, so that the branch that changed is found by bisection."""
    if (name, day) not in PINNED:
        pytest.fail(f"{name} is not pinned yet on {day}: make pin", pytrace=False)
    assert count(name, day) == PINNED[name, day], leaves_by_branch(name, day)


@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_each_day_that_decides_is_pinned(name: str) -> None:
    """A branch with a day of its own, before or after an edition, is walked by the laws too."""
    pinned = [day for one, day in sorted(PINNED) if one == name]
    if pinned != days_of(name):
        days = ", ".join(map(str, days_of(name)))
        pytest.fail(f"{name} is decided otherwise from {days} on: make pin", pytrace=False)


def test_no_pinned_incident_is_gone() -> None:
    """Each pinned line belongs to an incident that exists."""
    assert {name for name, _ in PINNED} <= {one.name for one in INCIDENTS}
