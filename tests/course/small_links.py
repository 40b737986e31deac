"""A small course of two parallel holes with one area of each kind, in metres."""

from marram.course.model import Kind
from tests.course.drawing import BOUNDARY, course, feature, hole, square

GREEN = feature(Kind.PUTTING_GREEN, square(150, 0, 10), "green 1", holes=(1,))
OTHER_GREEN = feature(Kind.PUTTING_GREEN, square(150, 60, 10), "green 2", holes=(2,))
TEE = feature(Kind.TEEING_AREA, square(0, 0, 5), "tee 1", holes=(1,))
OTHER_TEE = feature(Kind.TEEING_AREA, square(0, 60, 5), "tee 2", holes=(2,))
HOLES = (
    hole(1, green=GREEN, tees=[TEE]),
    hole(2, tee=(0, 60), cup=(150, 60), green=OTHER_GREEN, tees=[OTHER_TEE]),
)
BUNKER = feature(Kind.BUNKER, square(60, 0, 5), "bunker")
RED = feature(Kind.RED_PENALTY_AREA, square(80, 0, 5), "red")
YELLOW = feature(Kind.YELLOW_PENALTY_AREA, square(100, 0, 5), "yellow")
LINKS = course(BOUNDARY, GREEN, OTHER_GREEN, TEE, OTHER_TEE, BUNKER, RED, YELLOW, holes=HOLES)


def kinds(reading):
    """Return the kinds of the doubts of a reading."""
    return {doubt.kind for doubt in reading.doubts}
