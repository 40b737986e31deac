"""Where balls are put on a hole: in some ground, beside the line of play, at an edge, where one crossed it."""

import math
import random
from functools import lru_cache

import numpy as np
import shapely

from tests.relief.verifier.course import Course
from tests.relief.verifier.ground import Ground
from tests.relief.verifier.map_file import read

BESIDE_PLAY = 45.0
"""Metres to either side of a line of play where balls are put."""


@lru_cache(maxsize=8)
def course_of(file, name):
    """Return a course of a file, read once."""
    return Course.of(read(file), name)


@lru_cache(maxsize=64)
def ground_of(file, name, number):
    """Return the ground of a hole, laid out once."""
    return Ground(course_of(file, name), number)


class Places:
    """Places on one course, drawn at random from a seed."""

    def __init__(self, file, name=None, seed=1):
        self.file, self.name = file, name
        self.random = random.Random(seed)
        self.course = course_of(file, name)

    def hole(self):
        """Return the ground of a hole at random."""
        return ground_of(self.file, self.name, self.random.choice(self.course.holes))

    def inside(self, ground, geometry, joints=None, tries=60):
        """Return a place inside a geometry at random, near the line of play and often at a joint, or ``None``."""
        near = shapely.intersection(geometry, _strip(ground))
        if joints is not None and not joints.is_empty and self.random.random() < 0.5:
            at_joint = shapely.intersection(near, joints.buffer(2.0))
            near = near if at_joint.is_empty else at_joint
        parts = [one for one in shapely.get_parts(near) if one.geom_type == "Polygon" and one.area > 1e-4]
        if not parts:
            return None
        part = self.random.choice(parts)
        low_x, low_y, high_x, high_y = part.bounds
        for _ in range(tries):
            at = self.random.uniform(low_x, high_x), self.random.uniform(low_y, high_y)
            if shapely.contains_xy(part, *at):
                return np.array(at)
        return np.array(part.representative_point().coords[0])

    def beside_play(self, ground):
        """Return a place beside the line of play."""
        at = ground.line.interpolate(self.random.uniform(0.1, 0.97), normalized=True)
        angle, away = self.random.uniform(0, 2 * math.pi), self.random.uniform(0, BESIDE_PLAY)
        return np.array((at.x + away * math.cos(angle), at.y + away * math.sin(angle)))

    def previous(self, ground):
        """Where the previous stroke was made: on the tee, the green, or beside the line of play, on the course."""
        where = self.random.random()
        for region in (ground.tees,) if where < 0.25 else (ground.green,) if where < 0.35 else ():
            if not region.empty and (at := self.inside(ground, region.least.geometry)) is not None:
                return at
        for _ in range(30):
            at = self.beside_play(ground)
            if len(areas := ground.area_at(at)) == 1 and areas != {None}:
                return at
        return np.array(ground.line.interpolate(0.3, normalized=True).coords[0])

    def near_edge(self, ground):
        """Return a place within a few centimetres of an edge of some kind, near the line of play."""
        kinds = ("penalty", "bunker", "green", "tee")
        shapes = [ground.specific[one].least.geometry for one in kinds] + [ground.wrong_greens.least.geometry]
        if ground.bounds is not None:
            shapes.append(ground.bounds.least.geometry)
        if not ground.out.empty:
            shapes.append(ground.out.least.geometry)
        shapes = [one for one in shapes if not one.is_empty]
        if not shapes:
            return None
        edge = shapely.intersection(shapely.boundary(self.random.choice(shapes)), _strip(ground))
        lines = [
            one for one in shapely.get_parts(edge) if one.geom_type == "LineString" and one.length > 0.01
        ]
        if not lines:
            return None
        at = self.random.choice(lines).interpolate(self.random.random(), normalized=True)
        return np.array((at.x + self.random.uniform(-0.1, 0.1), at.y + self.random.uniform(-0.1, 0.1)))

    def crossed(self, ground, ball):
        """Return where a ball out of bounds last crossed the boundary, given to some centimetres."""
        edges = [
            one.least.geometry for one in (ground.bounds, ground.out) if one is not None and not one.empty
        ]
        edge = shapely.union_all([shapely.boundary(one) for one in edges])
        near = shapely.intersection(edge, shapely.Point(ball).buffer(edge.distance(shapely.Point(ball)) + 15))
        lines = [
            one for one in shapely.get_parts(near) if one.geom_type == "LineString" and one.length > 0.05
        ]
        if not lines:
            return None
        at = np.array(self.random.choice(lines).interpolate(self.random.random(), normalized=True).coords[0])
        if self.random.random() < 0.3:
            at = at + np.array([self.random.uniform(-0.3, 0.3), self.random.uniform(-0.3, 0.3)])
        return at


def _strip(ground):
    return ground.line.buffer(BESIDE_PLAY)
