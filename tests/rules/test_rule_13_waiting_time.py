"""Rule 13.3a: ten seconds at the hole."""

from datetime import date

from hypothesis import given
from hypothesis import strategies as st

import marram
from marram.rules.editions import EDITIONS
from marram.rules.ruling import Action, Ruling


@given(st.integers(0, 600), st.sampled_from(EDITIONS))
def test_a_ball_that_falls_is_holed_and_costs_a_stroke_after_ten_seconds(seconds: int, day: date) -> None:
    """A ball that falls in is holed whenever it falls, with one stroke added after ten seconds (13.3a)."""
    facts = {"overhang": "fell_in", "seconds_at_hole": seconds}
    result = marram.rule("ball_overhung_hole", facts, played_on=day)

    assert isinstance(result, Ruling)
    assert result.action is Action.HOLED
    assert sum(one.strokes for one in result.penalties) == (1 if seconds > 10 else 0)
