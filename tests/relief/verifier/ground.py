"""The ground of one hole, read from the things of a map: which area of the course is where.

Sources: the Definitions of areas of the course, teeing area and wrong green; Rule 2.2c for ground in two areas.
"""

from functools import cached_property

import numpy as np
import shapely

from tests.relief.verifier.joined import JOINED, connected, united
from tests.relief.verifier.penalty import Wet
from tests.relief.verifier.regions import Region

LEAST_PATH, MOST_PATH = 0.2, 6.0
"""Metres either side of a path drawn as a line without a width: surely path, and possibly path (own choice)."""
CONDITIONS = ("path", "obstruction", "repair", "puddle", "no_play")


class Ground(Wet):
    """The ground as it counts on one hole, in metres about where the hole is cut."""

    @cached_property
    def bunkers(self):
        """All bunkers."""
        return self.with_crevices(self.region(self.course.of_kind("bunker")))

    def same_bunker(self, place):
        """Return the bunker at a place, with all bunkers joined to it."""
        every = [("sand", *self.laid(one)) for one in self.course.of_kind("bunker")]
        found = connected([(one[1], one) for one in every], place, alike=True)
        return self.with_crevices(Region.of(united([one[1] for one in found]))).without(self.penalty)

    @cached_property
    def _greens(self):
        """Greens surely of this hole, and greens possibly: those that join its own on the ground."""
        own = self.own_green
        if own is None:
            return [], []
        every = self.course.of_kind("green")
        shapes = [("green", *self.laid(one)) for one in every]
        pairs = [(shape[1], shape) for shape in shapes]
        joined = connected(pairs, self.flat.laid(own.geometry).representative_point().coords[0], alike=True)
        possibly = [
            one for one, shape in zip(every, shapes, strict=True) if any(shape is other for other in joined)
        ]
        surely = [
            one for one in possibly if one is own or self.holes_of_green(one) == self.holes_of_green(own)
        ]
        return surely, possibly

    @cached_property
    def green(self):
        """The putting green of the hole; whether a green that joins it is one with it, the map leaves open."""
        surely, possibly = self._greens
        return Region(self.region(surely).least, self.region(possibly).most)

    @cached_property
    def wrong_greens(self):
        """Every other green of the map."""
        surely, possibly = self._greens
        every = self.course.of_kind("green")
        least = self.region([one for one in every if one not in possibly])
        return Region(least.least, self.region([one for one in every if one not in surely]).most)

    @cached_property
    def tees(self):
        """The teeing area: that of the day where it is drawn, else mown tees of the hole; a tee of no hole is open."""
        day = [one for one in self.course.of_kind("day_tee") if not one.holes or self.number in one.holes]
        if day:
            return self.region(day)
        mown = self.course.of_kind("tee")
        own, open_ = [], []
        for one in mown:
            ref = one.tags.get("ref", "")
            named = one.holes | ({int(ref)} if ref.isdigit() else set())
            named &= set(self.course.holes)
            if named:
                (own if self.number in named else []).append(one)
            elif self._line.distance(one.geometry) < 60 / 60_000:
                open_.append(one)
        least, most = self.region(own), self.region([*own, *open_])
        return Region(least.least, most.most)

    @cached_property
    def mown_tees(self):
        """Every mown tee: grass that a fairway point may lie on where the ball is short of the fairway (E-5)."""
        return self.region(self.course.of_kind("tee"))

    @cached_property
    def specific(self):
        """The specific areas of the course, by name."""
        return {"penalty": self.penalty, "bunker": self.bunkers, "green": self.green, "tee": self.tees}

    @cached_property
    def fairways(self):
        """Grass cut to fairway height of the hole being played: fairways less every other area of the course."""
        every = self.course.of_kind("fairway")
        own = [one for one in every if self.number in one.holes]
        own = own or [one for one in every if not one.holes and one.geometry.intersects(self._line)]
        found = self.region(own)
        # A wrong green is no fairway either: it is prepared for putting. Out of bounds none is general area.
        for other in (self.penalty, self.bunkers, self.green, self.wrong_greens, self.out):
            if not other.empty and not found.empty:
                found = found.without(other)
        return found

    def joints(self, *kinds):
        """Return the ground where two things of some kinds meet: seams, ends of lines, overlaps."""
        if kinds not in self._seams:
            shapes = (
                [one[1] for one in self.wet]
                if "red" in kinds
                else [self.laid(one)[0] for one in self.course.of_kind(*kinds)]
            )
            shapes = [one for one in shapes if not one.is_empty]
            if not shapes:
                return shapely.Polygon()
            tree = shapely.STRtree(shapes)
            one, other = tree.query(shapes, predicate="dwithin", distance=JOINED)
            met = [
                shapes[a].buffer(JOINED).intersection(shapes[b])
                for a, b in zip(one, other, strict=True)
                if a < b
            ]
            self._seams[kinds] = (
                shapely.union_all([shapely.envelope(part) for part in met]) if met else shapely.Polygon()
            )
        return self._seams[kinds]

    # --- single places

    def area_at(self, place, ball=0.0):
        """Return the areas of the course a place (or a ball of that radius) may lie in: one, unless the map is open."""
        places = np.atleast_2d(place)
        if self.bounds and self.bounds.inside(places)[0][0] < -ball - JOINED:
            return {None}
        if not self.out.empty and self.out.inside(places)[0][0] > ball + JOINED:
            return {None}
        found = set()
        if self.bounds and abs(self.bounds.inside(places)[0][0] + ball) <= JOINED:
            found.add(None)
        if not self.out.empty and abs(self.out.inside(places)[0][0] - ball) <= JOINED:
            found.add(None)
        for name, region in self.specific.items():
            if region.empty:
                continue
            low, high = (one[0] for one in region.inside(places))
            if low + ball > JOINED:
                return found | {name}
            if high + ball >= -JOINED:
                found.add(name)
        return found | {"general"}
