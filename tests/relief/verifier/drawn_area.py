"""An area as it was exported, laid out in metres: its polygon, its marks by role, and whether its rings are sound."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from shapely.geometry import shape

REFERENCES = (
    "example_spot",
    "first_touched",
    "crossing_point",
    "reference",
    "previous_spot",
    "ball",
    "opposite_edge",
)
"""Roles that may be the reference point, the first that is there being it."""
SEARCHED_FOR = ("reference", "place_here")
"""Roles of a point that was searched for: a ball is dropped from it, or placed on it (Rule 16.1d)."""


@dataclass(frozen=True)
class DrawnArea:
    """One area of an answer in metres about the hole."""

    features: tuple
    flat: object

    @cached_property
    def polygon(self):
        """The picture of the area."""
        return self.flat.laid(shape(self.features[0]["geometry"]))

    @property
    def properties(self):
        """What is said of the area."""
        return self.features[0]["properties"]

    def marks(self, role):
        """Return the geometries with a role, in metres."""
        return [
            self.flat.laid(shape(one["geometry"]))
            for one in self.features[1:]
            if one["properties"].get("role") == role
        ]

    def point(self, role):
        """Return the place of the one mark with a role, or ``None``."""
        found = [one for one in self.marks(role) if one.geom_type == "Point"]
        return np.array(found[0].coords[0]) if found else None

    @cached_property
    def reference(self):
        """The reference point, as drawn."""
        kind = self.properties.get("kind")
        roles = REFERENCES
        if kind in {"free", "maximum_available"} and self.marks("shift"):
            roles = SEARCHED_FOR
        if kind in {"stroke_and_distance", "replay"}:
            roles = ("previous_spot",)
        if kind == "extended":
            roles = ("ball", "boundary_point")
        return next((at for role in roles if (at := self.point(role)) is not None), None)

    @cached_property
    def footprint(self):
        """Lie, stance and swing about a ball at (0, 0), as drawn at the reference point; ``None`` where not drawn."""
        rings = self.marks("stance")
        if not rings or self.reference is None:
            return None
        polygons = [one if one.geom_type == "Polygon" else shapely.Polygon(one.coords) for one in rings]
        return shapely.transform(shapely.union_all(polygons), lambda points: points - self.reference)

    def faults_of_rings(self):
        """Yield what is wrong with the area's geometry as GeoJSON (RFC 7946, 3.1.6)."""
        geometry = self.features[0]["geometry"]
        if geometry["type"] == "Point":
            return
        if geometry["type"] not in {"Polygon", "MultiPolygon", "GeometryCollection"}:
            yield f"a relief area is drawn as a {geometry['type']}"
            return
        if geometry["type"] == "GeometryCollection":
            if not geometry["geometries"]:
                yield "the area is empty"
            return
        polygons = [geometry["coordinates"]] if geometry["type"] == "Polygon" else geometry["coordinates"]
        rings = [ring for polygon in polygons for ring in polygon]
        if not rings:
            yield "the area is empty"
        for ring in rings:
            if len(ring) < 4 or ring[0] != ring[-1]:
                yield "a ring is not closed or has fewer than four positions"
            elif not all(abs(x) <= 180 and abs(y) <= 90 for x, y, *_ in ring):
                yield "a position is not on the globe"
        if self.polygon.area <= 0:
            yield "the area is drawn with no ground in it"
