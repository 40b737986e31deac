"""Very many measured points: read as one by one, and with work in proportion to them."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.course import load
from marram.course.lies import survey_on_map
from marram.course.lies.survey_on_map import read_all_on_map, read_on_map
from marram.course.reading.survey import SurveyPoint
from marram.demo import COURSE
from marram.errors import BadPlace

LINKS = load(COURSE)
EDGES = np.vstack(
    [np.asarray(f.geometry.exterior.coords) for f in LINKS.features if f.geometry.geom_type == "Polygon"]
)

anywhere = st.tuples(st.floats(-900, 900), st.floats(-700, 700))
by_an_edge = st.builds(
    lambda corner, east, north: (float(EDGES[corner][0]) + east, float(EDGES[corner][1]) + north),
    st.integers(0, len(EDGES) - 1),
    st.floats(-12, 12),
    st.floats(-12, 12),
)
accuracies = st.sampled_from([0.0, 0.02, 1.0, 8.0])


def point(x, y, accuracy=0.02):
    longitude, latitude = LINKS.plane.to_degrees(x, y)
    return SurveyPoint("", longitude, latitude, accuracy)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(anywhere | by_an_edge, accuracies), min_size=1, max_size=40), st.integers(1, 18))
def test_many_points_are_read_as_one_by_one(drawn, hole) -> None:
    """Area, colour and every doubt of points anywhere, most of them near edges, are those of each read alone."""
    points = [point(x, y, accuracy) for (x, y), accuracy in drawn]
    for one, together in zip(points, read_all_on_map(LINKS, points, hole), strict=True):
        alone = read_on_map(LINKS, one, hole)
        assert (together.area, together.colour) == (alone.area, alone.colour)
        assert [doubt.words for doubt in together.doubts] == [doubt.words for doubt in alone.doubts]


def test_few_points_are_read_by_themselves(monkeypatch) -> None:
    """Of points spread over the course only those near an edge, and one for each set of areas, are read alone."""
    calls = []
    alone = survey_on_map.area_at
    monkeypatch.setattr(survey_on_map, "area_at", lambda *a, **k: calls.append(1) or alone(*a, **k))
    xy = np.random.default_rng(4).uniform([-900, -700], [900, 700], (4000, 2))
    read_all_on_map(LINKS, [point(x, y) for x, y in xy.tolist()], 5)
    assert len(calls) < len(xy) / 3


def test_progress_is_told_and_can_end_the_work() -> None:
    """The progress rises to one; what it raises ends the reading."""
    told = []
    points = [point(x, 0.0) for x in range(-200, 200)]
    read_all_on_map(LINKS, points, 5, progress=lambda _, part: told.append(part))
    assert told == sorted(told)
    assert told[-1] == 1.0


def test_points_that_cannot_be_of_this_course_are_all_refused() -> None:
    """Each is named, by its number where it has no name; one whose accuracy nobody said is told too."""
    far = SurveyPoint("Gate", *LINKS.plane.to_degrees(60_000.0, 0.0), 0.02)
    unsaid = SurveyPoint("", *LINKS.plane.to_degrees(0.0, 0.0), None)
    with pytest.raises(BadPlace) as refused:
        read_all_on_map(LINKS, [far, point(0.0, 0.0), unsaid], 5)

    first, second = refused.value.faults
    assert first.startswith("'Gate' at ")
    assert "of this course" in first
    assert "point 3" in second


def test_no_points_give_no_readings() -> None:
    """An empty survey of a hole is read to an empty list."""
    assert read_all_on_map(LINKS, [], 5) == []
