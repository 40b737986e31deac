"""A check of areas that almost meet: joined on the ground as likely as not, but read as two."""

import numpy as np
import shapely
from shapely import STRtree

from marram.course.fault import FaultList
from marram.course.lies.regions import Ground, ground_of
from marram.course.model import Course
from marram.course.near_pairs import near_pairs
from marram.said import said

ALMOST = 0.3
"""Metres: areas of one kind with a gap no wider than this may be one that was not drawn edge to edge (own choice)."""

_KINDS = (Ground.RED_PENALTY_AREA, Ground.YELLOW_PENALTY_AREA, Ground.BUNKER)


def check_almost_joined(course: Course, faults: FaultList) -> None:
    """Note each pair of penalty areas of a colour, or of bunkers, that almost meet."""
    if not course.holes:
        return
    ground = ground_of(course, min(course.holes))
    for kind in _KINDS:
        region = ground.region(kind)
        areas = () if region is None else region.areas
        if len(areas) < 2:
            continue
        shapes = np.array([area.geometry for area in areas], dtype=object)
        first, second = near_pairs(STRtree(shapes), shapes, ALMOST)
        for one, other in zip(*(side[first < second].tolist() for side in (first, second)), strict=True):
            gap = shapely.shortest_line(shapes[one], shapes[other])
            near, beside = (areas[i].edge_near(shapely.centroid(gap)) for i in (one, other))
            faults.note(
                "almost_joined",
                said(
                    "this {kind} ends {gap:.2f} m from {other}: they are read as two, and relief from one may lie "
                    "in the other",
                    kind=near.kind,
                    gap=gap.length,
                    other=beside.ident,
                ),
                said("Draw them edge to edge if they are one on the ground."),
                feature=near.ident,
                at=gap,
            )
