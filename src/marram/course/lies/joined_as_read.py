"""The ground as it is drawn: as it is read, and what is joined on the ground as one area, without a seam."""

from collections import defaultdict
from collections.abc import Hashable, Iterable

from marram.course.lies.extents import Extent
from marram.course.lies.united import UnitedArea, one_by_one, unite
from marram.course.model import Kind

JOINED = frozenset(
    {
        Kind.FAIRWAY,
        Kind.PUTTING_GREEN,
        Kind.BUNKER,
        Kind.PATH,
        Kind.GROUND_UNDER_REPAIR,
        Kind.TEMPORARY_WATER,
        Kind.WATER,
        Kind.RED_PENALTY_AREA,
        Kind.YELLOW_PENALTY_AREA,
    }
)
"""Kinds that are one area where they are joined: a seam between two features is no edge on the ground."""


def joined(pieces: Iterable[Extent]) -> list[UnitedArea]:
    """Return the areas that pieces of ground make, those of one kind in the order of their first pieces.

    Args:
        pieces: ground of features, kind by kind.
    """
    groups: dict[Hashable, list[Extent]] = defaultdict(list)
    for index, one in enumerate(pieces):
        kind = one.feature.kind
        areal = kind in JOINED and one.shape.area > 0
        # Greens of different holes that adjoin are shown as two: which of them is the wrong one matters.
        holes = one.feature.holes if kind is Kind.PUTTING_GREEN else ()
        groups[(kind, holes) if areal else index].append(one)
    return [
        area for some in groups.values() for area in (one_by_one(some) if len(some) == 1 else unite(some))
    ]
