"""Back on the line in both editions (Rules 16.1c(2), 17.1d(2), 19.2b, 19.3b)."""

from math import hypot, pi

import pytest
from shapely.geometry import box

from marram.course.model import Feature, Kind
from marram.errors import BadPlace
from marram.relief import Bound, NeedsPlace, NoRelief, Place, Situation, Why, relief_areas
from tests.relief.ground_for_tests import (
    HOLE,
    IN_2019,
    IN_2023,
    LINE_2019,
    LINE_2023,
    LINE_IN_BUNKER_2023,
    LINE_OUTSIDE_BUNKER_2023,
    LINE_UNPLAYABLE_2023,
    PLAYER,
    course,
)

ENTRY = (-10.0, 134.0)  # the far edge of the ditch that crosses the hole


def draw(option, ball=None, played_on=IN_2023, **places):
    (answer,) = relief_areas(
        Situation(course(), 1, ball=ball, played_on=played_on, player=PLAYER, **places), [option]
    )
    return answer


def on_the_line(behind):
    length = hypot(ENTRY[0] - HOLE[0], ENTRY[1] - HOLE[1])
    scale = (length + behind) / length
    return HOLE[0] + scale * (ENTRY[0] - HOLE[0]), HOLE[1] + scale * (ENTRY[1] - HOLE[1])


def test_in_2019_the_area_is_not_nearer_than_the_chosen_point():
    """A place half a club-length nearer the hole than the chosen point is outside (2019)."""
    area = draw(LINE_2019, played_on=IN_2019, entry=ENTRY, dropped_at=on_the_line(10.0)).areas[0]
    nearer, farther = on_the_line(9.5), on_the_line(10.5)

    assert [one.bound for one in area.contains(*nearer).failures] == [Bound.NOT_NEARER]
    assert area.contains(*farther).inside
    assert area.drop_line is None


def test_in_2019_dropping_without_choosing_a_point_chooses_it():
    """The reference point is then on the line, as far from the hole as where the ball first touched (2019)."""
    touched = (on_the_line(10.0)[0] + 0.8, on_the_line(10.0)[1])
    area = draw(LINE_2019, played_on=IN_2019, entry=ENTRY, dropped_at=touched).areas[0]
    cross = (area.reference[0] - HOLE[0]) * (ENTRY[1] - HOLE[1]) - (area.reference[1] - HOLE[1]) * (
        ENTRY[0] - HOLE[0]
    )

    assert cross == pytest.approx(0.0, abs=1e-9)
    assert hypot(area.reference[0] - HOLE[0], area.reference[1] - HOLE[1]) == pytest.approx(
        hypot(touched[0] - HOLE[0], touched[1] - HOLE[1])
    )


def test_since_2023_the_area_is_a_full_circle_about_the_spot_touched():
    """Half a club-length nearer the hole than the spot touched is inside since 2023: any direction."""
    area = draw(LINE_2023, entry=ENTRY, dropped_at=on_the_line(10.0)).areas[0]

    assert area.contains(*on_the_line(9.5)).inside
    assert area.area_m2 == pytest.approx(pi * 1.15**2, abs=2 * pi * 1.15 * area.arc_error)


def test_since_2023_the_crossing_point_still_bounds_it():
    """Dropped 0.3 m behind where the line may begin, no place nearer the hole than the crossing point is in."""
    start = draw(LINE_2023, entry=ENTRY).areas[0].drop_line.stretches[0][0]
    area = draw(LINE_2023, entry=ENTRY, dropped_at=on_the_line(start + 0.3)).areas[0]

    assert area.contains(*on_the_line(start + 0.5)).inside
    assert not area.contains(*on_the_line(-0.1)).inside


def test_no_ball_may_be_dropped_on_the_line_inside_the_same_penalty_area():
    """The ditch is 4 m wide: the line begins where it leaves the ditch on the near side, y = 130."""
    line = draw(LINE_2023, entry=ENTRY).areas[0].drop_line

    first = line.stretches[0][0]

    assert line.at(first)[1] == pytest.approx(130.0)
    with pytest.raises(BadPlace, match="not where this option allows"):
        draw(LINE_2023, entry=ENTRY, dropped_at=on_the_line(first - 1.0))


def test_a_spot_off_the_line_is_refused_since_2023():
    """A ball dropped a metre to the side was not dropped on the line."""
    x, y = on_the_line(10.0)

    with pytest.raises(BadPlace, match="off the line"):
        draw(LINE_2023, entry=ENTRY, dropped_at=(x + 1.0, y))


def test_the_line_goes_from_the_hole_through_the_point():
    """Every place on the drop line keeps the crossing point straight between it and the hole."""
    line = draw(LINE_2023, entry=ENTRY).areas[0].drop_line
    x, y = line.at(25.0)
    cross = (x - HOLE[0]) * (ENTRY[1] - HOLE[1]) - (y - HOLE[1]) * (ENTRY[0] - HOLE[0])

    assert cross == pytest.approx(0.0, abs=1e-9)
    assert hypot(x - HOLE[0], y - HOLE[1]) == pytest.approx(hypot(10, 66) + 25.0)


def test_the_line_ends_at_the_boundary():
    """No place out of bounds belongs to the line: the course ends at y = -30."""
    line = draw(LINE_UNPLAYABLE_2023, (0.0, 60.0)).areas[0].drop_line

    assert line.stretches == ((0.0, pytest.approx(90.0)),)


def test_unplayable_in_a_bunker_stays_in_it_for_one_stroke_and_leaves_it_for_two():
    """The one-stroke line ends at the bunker's edge; the two-stroke line begins there (Rule 19.3a, b)."""
    ball = (-8.0, 155.0)
    inside = draw(LINE_IN_BUNKER_2023, ball).areas[0].drop_line
    outside = draw(LINE_OUTSIDE_BUNKER_2023, ball).areas[0].drop_line

    assert inside.stretches[0][0] == 0.0
    assert inside.stretches[0][1] == pytest.approx(outside.stretches[0][0])


def test_relief_outside_a_bunker_begins_where_water_begins_that_is_mapped_over_it():
    """A bunker drawn 4 m into a pond ends at the water, where a ball lies in the penalty area (Rules 2.2c, 19.3b)."""
    pond = Feature(Kind.RED_PENALTY_AREA, "pond", box(-30, 140, 30, 152))
    situation = Situation(course(pond), 1, ball=(-8.0, 155.0), played_on=IN_2023, player=PLAYER)
    (answer,) = relief_areas(situation, [LINE_OUTSIDE_BUNKER_2023])
    line = answer.areas[0].drop_line

    assert line.at(line.stretches[0][0])[1] == pytest.approx(152.0)


def test_a_crossing_point_is_needed():
    """The option says which place it needs."""
    assert draw(LINE_2023) == NeedsPlace(LINE_2023, (Place.CROSSING_POINT,))


def test_where_everything_behind_is_the_same_penalty_area_there_is_no_room():
    """A pond that reaches back to the boundary leaves no place on the line."""
    lake = Feature(Kind.RED_PENALTY_AREA, "lake", box(-80, -30, 80, 20))
    (answer,) = relief_areas(
        Situation(course(lake), 1, played_on=IN_2023, player=PLAYER, entry=(0.0, 20.0)), [LINE_2023]
    )

    assert answer == NoRelief(LINE_2023, Why.NO_ROOM)
