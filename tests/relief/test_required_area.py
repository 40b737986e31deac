"""The required area prepared for places about a ball says of every place what its limits say."""

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from marram.relief.geometry.limits import Inside, Outside
from marram.relief.geometry.outline import Outline
from marram.relief.geometry.outlines import Outlines
from marram.relief.interference.required_area import RequiredArea

COURSE = Outline(shapely.box(-100, -100, 100, 100))
BUNKER = Outline(shapely.Point(0, 0).buffer(6))
POND = Outline(shapely.box(3, -30, 40, 30))
FAR = Outline(shapely.box(60, 60, 70, 70))
LIMITS = (Inside(Outlines((COURSE,))), Inside(Outlines((BUNKER, FAR))), Outside(Outlines((POND,))))
METRES = st.integers(-12_000, 12_000).map(lambda one: one / 100)


@pytest.mark.parametrize("limit", LIMITS)
@given(ball=st.tuples(METRES, METRES), place=st.tuples(METRES, METRES), reach=st.integers(1, 150))
def test_prepared_about_a_ball_it_admits_what_the_limit_admits(limit, ball, place, reach):
    """Near the ball and far from it, whether an edge is near or none, the answer is the limit's own."""
    x, y = place[0] - ball[0], place[1] - ball[1]
    area = RequiredArea([limit], ball, reach)
    assert area.admits((x, y)) == limit.admits(x + ball[0], y + ball[1])


def test_only_outlines_with_an_edge_near_the_ball_give_edges():
    """The course about the ball has no edge near; the bunker and the pond have."""
    area = RequiredArea(LIMITS, (2.0, 0.0), 5.0)
    assert len(area.edges) == 2
