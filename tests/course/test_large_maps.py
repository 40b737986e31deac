"""Maps of many features: a map of twice as many takes about twice the work, counted and not timed."""

import sys
from itertools import pairwise
from pathlib import Path

import pytest

from marram.course.checks.map_checks import check_course
from marram.course.checks.stake_checks import check_stakes
from marram.course.fault import FaultList
from marram.course.lies.regions import ground_of
from marram.course.lies.survey_on_map import read_all_on_map
from marram.course.loading import check, examine, load
from marram.course.reading.survey import SurveyPoint
from tests.course.drawing import nine_holes, write
from tests.course.large_maps import AREAS, KINDS, LINES, crowded_map, large_map, with_text


def calls_of(work) -> int:
    """Return how many Python functions a piece of work enters."""
    count = 0

    def entered(_frame, event, _arg) -> None:
        nonlocal count
        count += event in {"call", "c_call"}

    before = sys.getprofile()
    sys.setprofile(entered)
    try:
        work()
    finally:
        sys.setprofile(before)
    return count


@pytest.mark.parametrize("kind", KINDS)
def test_twice_the_map_is_twice_the_work(kind, tmp_path) -> None:
    """Loading and checking a map of each kind enters at most 2.5 times as many functions for twice the features."""
    paths = []
    for count in (400, 800):
        path = tmp_path / f"{count}.geojson"
        path.write_bytes(with_text(large_map(kind, count)))
        paths.append(path)
    course, _ = examine(paths[0])  # whatever is made once is made before counting
    assert course is not None
    check_course(course)
    half, whole = (calls_of(lambda path=path: examine(path)) for path in paths)
    assert whole < 2.5 * half


@pytest.mark.parametrize("kind", [*AREAS, *LINES])
def test_twice_as_many_in_one_place_is_twice_the_work(kind, tmp_path) -> None:
    """So it is where all the features lie over each other, for the check and for the ground of every hole."""
    path = tmp_path / "crowded.geojson"

    def opened() -> None:
        course, _ = examine(path)
        assert course is not None
        for number in course.holes:
            ground_of(course, number)

    entered = []
    for count in (60, 60, 120):  # the first only makes what is made once
        path.write_bytes(with_text(crowded_map(kind, count)))
        entered.append(calls_of(opened))
    assert entered[2] < 2.2 * entered[1]


@pytest.mark.parametrize("kind", ["mixed", "tees", "lines of play"])
def test_a_check_of_a_large_map_tells_every_few_per_cent_how_far_it_is(kind, tmp_path: Path) -> None:
    """No stretch of reading, putting together or checking is a tenth of the whole without a word, and none goes back."""
    told: list[float] = []
    path = tmp_path / "map.geojson"
    path.write_bytes(with_text(large_map(kind, 5_000)))
    check(path, progress=lambda _, part: told.append(part))
    steps = [after - before for before, after in pairwise(told)]
    assert min(steps) >= 0
    assert max(steps) < 0.1
    assert len(told) > 30


def test_a_check_of_very_many_stakes_tells_how_far_it_is_and_can_be_stopped(tmp_path: Path) -> None:
    """After every 500 stakes or so, around one long edge and around many short ones; what it raises ends the check."""
    path = tmp_path / "map.geojson"
    path.write_bytes(with_text(large_map("stakes", 8_000)))
    course, _ = examine(path)
    assert course is not None
    told: list[float] = []
    check_stakes(course, FaultList(course.plane), lambda _, part: told.append(part))
    assert told == sorted(told)
    assert max(after - before for before, after in pairwise([0.0, *told, 1.0])) <= 0.2
    assert len(told) > 8_000 / 500 - 2

    def stop(_what: str, part: float) -> None:
        if part > 0.5:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        check_course(course, stop)


def test_a_point_on_a_map_of_twice_as_many_features_is_twice_the_work(tmp_path: Path) -> None:
    """So it is to read where a measured point lies, with much water and many areas of each kind."""
    entered = []
    for count in (400, 400, 800):  # the first only makes what is made once
        path = tmp_path / "map.geojson"
        path.write_bytes(with_text(large_map("mixed", count)))
        course = load(path)
        point = SurveyPoint("", *course.plane.to_degrees(0.0, 0.0), 1.0)
        ground_of(course, 1)
        entered.append(calls_of(lambda course=course, point=point: read_all_on_map(course, [point], 1)))
    assert entered[2] < 2.5 * entered[1]


def test_a_check_tells_how_far_it_is_and_can_be_stopped(tmp_path: Path) -> None:
    """Progress rises from 0 to 1 through reading, putting together and checking; what it raises ends the work."""
    told: list[tuple[str, float]] = []
    path = write(tmp_path / "map.geojson", nine_holes())
    check(path, progress=lambda what, part: told.append((what, part)))

    assert list(dict.fromkeys(what for what, _ in told)) == ["reading", "assembling", "checking"]
    assert [part for _, part in told] == sorted(part for _, part in told)
    assert (told[0][1], told[-1][1]) == (0.0, 1.0)

    def stop(_what: str, part: float) -> None:
        if part > 0.6:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        check(path, progress=stop)
