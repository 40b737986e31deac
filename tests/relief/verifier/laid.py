"""One hole of a map laid out in metres: where it is cut, how much ground a thing covers, and what is in bounds.

Sources: the Definitions of hole, boundary edge and out of bounds.
"""

from functools import cached_property

import shapely

from tests.relief.verifier.flat import Flat
from tests.relief.verifier.joined import united
from tests.relief.verifier.regions import NOWHERE, Region


class Laid:
    """A hole of a course, in metres about where it is cut."""

    def __init__(self, course, number, middle=None):
        self.course, self.number, self._seams = course, number, {}
        line = next(one for one in course.of_kind("hole") if one.tags.get("ref") == str(number))
        self._line = line.geometry
        at = self._cut()
        self.flat = Flat(*(middle or at))
        self.hole = self.flat.metres([at])[0]
        self.line = self.flat.laid(self._line)

    def _cut(self):
        """Where the hole is cut: its own pin, else the one pin on its green, else the end of the line of play."""
        pins = self.course.of_kind("pin")
        own = [one for one in pins if one.tags.get("ref") == str(self.number)]
        green = self.own_green
        if not own and green is not None:
            shared = self.holes_of_green(green)
            own = [one for one in pins if "ref" not in one.tags and green.geometry.intersects(one.geometry)]
            own = [] if len(shared) > 1 else own
        return own[0].geometry.coords[0] if len(own) == 1 else self._line.coords[-1]

    def holes_of_green(self, green):
        """Return the numbers of the holes that a green is the green of: named, or where their lines of play end."""
        named = green.holes | ({int(green.tags["ref"])} if green.tags.get("ref", "").isdigit() else set())
        ends = {
            int(one.tags["ref"])
            for one in self.course.of_kind("hole")
            if one.tags.get("ref", "").isdigit()
            and green.geometry.intersects(shapely.Point(one.geometry.coords[-1]))
        }
        return named | ends

    @cached_property
    def own_green(self):
        """The green of the hole, ``None`` where the map leaves open which."""
        own = [one for one in self.course.of_kind("green") if self.number in self.holes_of_green(one)]
        if len(own) > 1:  # pieces of one green, or two greens: the one the line of play ends on is in use
            end = shapely.Point(self._line.coords[-1])
            own = [one for one in own if one.geometry.intersects(end)]
        return own[0] if len(own) == 1 else None

    def laid(self, thing, least=0.0, most=0.0):
        """Return a thing's ground in metres: the least and the most it covers."""
        geometry = self.flat.laid(thing.geometry)
        if geometry.geom_type.endswith("Polygon"):
            return geometry, geometry
        if geometry.geom_type == "Point":
            return shapely.Polygon(), shapely.Polygon()
        if thing.width:
            # The ends of a line may be cut flat or go round, and lines that meet may be drawn as one.
            half = thing.width / 2
            return geometry.buffer(half, cap_style="flat", join_style="bevel"), geometry.buffer(
                half * 1.02, cap_style="square", join_style="mitre", mitre_limit=5
            )
        return geometry.buffer(least, cap_style="flat"), geometry.buffer(most)

    def region(self, things, least=0.0, most=0.0):
        """Return the region that some things cover together."""
        if not things:
            return NOWHERE
        pairs = [self.laid(one, least, most) for one in things]
        low, high = (united([pair[i] for pair in pairs]) for i in (0, 1))
        return Region.of(low, None if all(a is b for a, b in pairs) else high)

    @cached_property
    def bounds(self):
        """The course within its boundary, without what is out of bounds on this hole; ``None`` without a boundary."""
        drawn = self.course.of_kind("boundary")
        shapes = [self.flat.laid(one.geometry) for one in drawn] or (
            [self.flat.laid(self.course.outline.geometry)] if self.course.outline else []
        )
        if not shapes:
            return None
        lines = [one for one in shapes if "Line" in one.geom_type]
        areas = [one for one in shapes if "Polygon" in one.geom_type]
        if lines:
            areas += list(shapely.get_parts(shapely.polygonize(lines)))
        return Region.of(shapely.union_all(areas))

    @cached_property
    def out(self):
        """Areas that are out of bounds when this hole is played."""
        every = self.course.of_kind("out")
        return self.region([one for one in every if not one.holes or self.number in one.holes])
