"""Maps of many features: a map of twice as many takes about twice the work, counted and not timed."""

import sys

import pytest

from marram.course.checks.map_checks import check_course
from marram.course.loading import examine
from tests.course.large_maps import KINDS, large_map, with_text


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
