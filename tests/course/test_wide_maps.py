"""Many balls on maps that reach far beyond the holes: the sea, a lake, a boundary, a long fence, a burn that runs away."""

import tracemalloc

import numpy as np
import pytest
from shapely.geometry import LineString, box

from marram.course.lies.area_grid import areas_of
from marram.course.lies.areas import AREAS, area_at
from marram.course.lies.regions import Ground
from marram.course.model import Kind
from tests.course.drawing import course, feature, hole

FAR = 9_000.0
"""Metres."""

MEGABYTES = 1_000_000


def wide(kind, **tags):
    """Return a course with one feature that runs far beyond its hole."""
    shapes = {
        "sea": LineString([(160, -FAR), (150, 0), (160, FAR)]),
        "lake": box(150, -FAR, 150 + FAR, FAR),
        "boundary": box(-FAR, -150, FAR, 150),
        "fence": box(-FAR, 60, FAR, 61),
        "burn": LineString([(-FAR, -60), (-50, -70), (200, 30), (FAR, 60)]),
    }
    kinds = {"boundary": Kind.BOUNDARY, "fence": Kind.OUT_OF_BOUNDS}
    tags = {"sea": {"natural": "coastline"}, "lake": {"natural": "water"}, "burn": {"waterway": "stream"}}
    return course(
        feature(kinds.get(kind, Kind.WATER), shapes[kind], kind, tags=tags.get(kind, {})), holes=[hole()]
    )


@pytest.mark.parametrize("kind", ["sea", "lake", "boundary", "fence", "burn"])
def test_balls_near_and_far_are_read_as_one_by_one(kind) -> None:
    """Beside the hole, at the edge of what is laid out in cells, and kilometres away."""
    links = wide(kind)
    random = np.random.default_rng(3)
    places = np.vstack(
        [
            random.uniform(-300, 300, (150, 2)),
            random.uniform(-1200, 1200, (150, 2)),
            random.uniform(-8_000, 8_000, (150, 2)),
        ]
    )
    found = areas_of(links, places, 1)

    assert [AREAS[Ground(int(one))] for one in found] == [area_at(links, x, y, 1).area for x, y in places]
    assert len(set(found.tolist())) > 1


@pytest.mark.parametrize("kind", ["sea", "lake", "boundary"])
def test_memory_does_not_grow_with_what_is_mapped_far_out(kind) -> None:
    """Cells are laid about the holes, a part at a time, so that a map of some hundred square kilometres needs no more."""
    links = wide(kind)
    tracemalloc.start()
    areas_of(links, np.zeros((1, 2)), 1)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()

    assert most < 60 * MEGABYTES
