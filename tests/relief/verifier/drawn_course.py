"""A made course as it is drawn, in metres: two holes side by side, turned by an angle of the seed.

Invented, in the North Sea. Same name and seed, same course.
"""

import math
import random

import shapely
from shapely import affinity
from shapely.geometry import LineString, Polygon, box, mapping

from tests.relief.verifier.flat import Flat

MIDDLE = (5.0, 55.0)
LENGTH = 330.0
"""Metres from tee to hole."""
APART = 90.0
"""Metres between the lines of play."""


class Drawing:
    """A course being drawn in metres, the first hole's tee at (0, 0), play going north before it is turned."""

    def __init__(self, seed, name, shift=(0.0, 0.0)):
        self.random = random.Random(f"{name} {seed}")
        self.turn = self.random.uniform(0, 360)
        self.shift = shift
        self.things = []

    def add(self, geometry, **tags):
        """Add a thing; a tag's underscores stay, ``golf_`` prefixes are not needed."""
        self.things.append((geometry, {key.rstrip("_"): str(value) for key, value in tags.items()}))

    def blob(self, x, y, radius, corners=9):
        """Return a round-ish area about a place."""
        turn = self.random.uniform(0, 2 * math.pi)
        radii = [radius * self.random.uniform(0.75, 1.25) for _ in range(corners)]
        return Polygon(
            (
                x + r * math.cos(turn + 2 * math.pi * i / corners),
                y + r * math.sin(turn + 2 * math.pi * i / corners),
            )
            for i, r in enumerate(radii)
        )

    def wander(self, x, y):
        """Return a place a little way off."""
        return x + self.random.uniform(-3, 3), y + self.random.uniform(-3, 3)

    def holes(self, *, boundary=True, numbers=(1, 2), greens=True):
        """Add two holes with tee, fairway, green, bunkers."""
        for index, number in enumerate(numbers):
            x = index * APART
            end = self.wander(x, LENGTH)
            self.add(LineString([(x, 0), self.wander(x, LENGTH / 2), end]), golf="hole", ref=number, par=4)
            self.add(box(x - 5, -4, x + 5, 5), golf="tee", ref=number)
            self.add(self.blob(x, 170, 16, 14), golf="fairway", holes=number)
            self.add(box(x - 13, 165, x + 14, 290), golf="fairway", holes=number)
            if greens:
                self.add(self.blob(*end, 12, 12), golf="green", ref=number)
            self.add(self.blob(x + 21, LENGTH - 8, 4), golf="bunker")
            self.add(self.blob(x - 8, 240, 4), golf="bunker")  # in the fairway as drawn
        if boundary:
            self.add(self.around(), marram="boundary")

    def around(self, side=45.0):
        """Return the ground of the course."""
        return box(-side, -40, APART + side, LENGTH + 45)

    def hole_at(self, number):
        """Return where the hole of a number is cut."""
        lines = (
            geometry
            for geometry, tags in self.things
            if tags.get("golf") == "hole" and tags["ref"] == str(number)
        )
        return next(lines).coords[-1]

    def document(self):
        """Return the course as GeoJSON."""
        flat = Flat(*MIDDLE)
        features = []
        for number, (geometry, tags) in enumerate(self.things):
            turned = affinity.translate(affinity.rotate(geometry, self.turn, origin=(45, 160)), *self.shift)
            placed = shapely.transform(turned, flat.degrees)
            features.append(
                {"type": "Feature", "id": f"made/{number}", "properties": tags, "geometry": mapping(placed)}
            )
        return features
