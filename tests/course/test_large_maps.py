"""Maps of many features: a map of twice as many takes about twice the work, counted and not timed."""

import sys
from pathlib import Path

import pytest

from marram.course.checks.map_checks import check_course
from marram.course.loading import check, examine
from tests.course.drawing import nine_holes, write
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


def test_a_check_tells_how_far_it_is_and_can_be_stopped(tmp_path: Path) -> None:
    """Progress rises from 0 to 1 through reading, putting together and checking; what it raises ends the work."""
    told: list[tuple[str, float]] = []
    path = write(tmp_path / "map.geojson", nine_holes())
    check(path, progress=lambda what, part: told.append((what, part)))

    assert [what for what, _ in told if what != "checking"] == ["reading", "assembling"]
    assert [part for _, part in told] == sorted(part for _, part in told)
    assert (told[0][1], told[-1][1]) == (0.0, 1.0)

    def stop(_what: str, part: float) -> None:
        if part > 0.6:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        check(path, progress=stop)
