"""A law over all leaves: nothing leads out of a penalty area for nothing.

Rules of Golf 2019 and 2023: 16.1a(2), 16.3a(1) and 17.3 (no free relief from conditions, an embedded ball or an
unplayable ball in a penalty area), 17.1d (out of it for a stroke), 15.2a, 16.2b(2) and 17.1e(2) (free relief that stays inside).
"""

from collections.abc import Iterator
from datetime import date
from enum import Enum

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.incidents import INCIDENTS
from marram.rules.relief_option import Limit, ReliefKind, ReliefOption
from marram.rules.ruling import Ruling

SAYS_WHERE = (
    "area_of_ball",
    "would_have_stopped",
    "moved_by_nature_to",
    "original_ball",
    "whereabouts",
    "new_place",
)
"""Facts that say where the ball lies, or would have come to rest."""

IN_PENALTY_AREA = {
    "penalty_area",
    "same_penalty_area",
    "another_penalty_area",
    "found_in_penalty_area",
    "certain_in_penalty_area",
    "penalty_area_or_condition",
}
"""Their answers that put it, or may put it, into a penalty area."""

STAYS_INSIDE = {Limit.IN_PENALTY_AREA, Limit.SAME_AREA_AS_REFERENCE}
"""Limits that keep a relief area measured from a point in the penalty area inside it."""

LEADS_OUT: dict[tuple[str, ReliefKind], str] = {}
"""Free options that lead out of a penalty area all the same: citation and kind, and what is published on it; none is known."""


def of_a_ball_there(name: str, day: date) -> Iterator[tuple[Ruling, ReliefOption]]:
    """Yield every option of an incident for a ball that, as answered, lies or may lie in a penalty area."""
    for leaf in leaves_on(book(name).root, day):
        if isinstance(leaf, Ruling) and any(
            isinstance(answer, Enum) and answer.value in IN_PENALTY_AREA
            for reason in leaf.reasons
            if reason.fact in SAYS_WHERE
            for answer in reason.answers
        ):
            yield from ((leaf, option) for option in leaf.relief)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("name", [one.name for one in INCIDENTS])
def test_no_free_relief_leads_out_of_a_penalty_area(name: str, day: date) -> None:
    """What is free keeps the ball in the penalty area; whatever leads out of it costs a stroke."""
    for ruling, option in of_a_ball_there(name, day):
        if option.penalty == 0 and (option.citation, option.kind) not in LEADS_OUT:
            assert STAYS_INSIDE & set(option.limits), (
                f"{name} offers {option.kind.value} under {option.citation} for nothing to a ball that may lie in a "
                f"penalty area ({[(one.fact, one.answers) for one in ruling.reasons]}). Let the provision read the area "
                "first; if a published text gives this relief, enter it with its source in LEADS_OUT."
            )


def test_the_law_looks_at_free_relief_there() -> None:
    """There is free relief inside a penalty area to look at: a dangerous animal (Rule 16.2b(2)), a no play zone (17.1e(2))."""
    for name in ("dangerous_animal", "no_play_zone"):
        assert any(option.penalty == 0 for day in EDITIONS for _, option in of_a_ball_there(name, day))
