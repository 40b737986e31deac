"""A morning and an afternoon start: half of the groups from each."""

from datetime import time

import pytest

from marram.competition.draw.wishes import starts
from marram.errors import InputError


@pytest.mark.parametrize(
    ("groups", "tees", "before"),
    [(8, (1,), 4), (7, (1,), 4), (8, (1, 10), 4), (7, (1, 10), 4), (1, (1,), 1), (2, (1, 10), 2)],
)
def test_half_of_the_groups_plays_from_each_start(groups: int, tees: tuple[int, ...], before: int) -> None:
    """Every tee is used at every time of the morning before the afternoon begins; an odd group plays in the morning."""
    found = starts(time(8), groups, minutes=10, tees=tees, second=time(13, 30))

    assert len(found) == groups
    assert [one.time < time(12) for one in found] == [True] * before + [False] * (groups - before)
    assert found[:before] == starts(time(8), before, minutes=10, tees=tees)
    assert found[before:] == (
        starts(time(13, 30), groups - before, minutes=10, tees=tees) if groups > before else ()
    )


def test_two_shotguns() -> None:
    """36 groups on 18 tees: 18 at nine, 18 at two."""
    found = starts(time(9), 36, minutes=0, tees=range(1, 19), second=time(14))

    assert [(one.time.hour, one.tee) for one in found] == [
        (at, tee) for at in (9, 14) for tee in range(1, 19)
    ]


def test_a_second_start_before_the_first_is_over_is_refused() -> None:
    """Ten groups from eight: the fifth leaves at 8:40, so nobody can start again at 8:40."""
    with pytest.raises(InputError, match="08:40, lies before the last group of the first, 08:40"):
        starts(time(8), 10, minutes=10, second=time(8, 40))
