"""The ground of one hole, read from the things of a map: which area of the course is where.

Sources: the Definitions of areas of the course, penalty area (any water on the course is one, marked or not, and
red where no colour is shown), boundary edge, teeing area and wrong green; Rule 2.2c for ground in two areas.
"""

from functools import cached_property

import numpy as np
import shapely

from tests.relief.verifier.flat import Flat
from tests.relief.verifier.joined import JOINED, connected, crevices, united
from tests.relief.verifier.regions import NOWHERE, Region
from tests.relief.verifier.sea import sea_of

LEAST_STREAM, MOST_STREAM = 0.05, 15.0
"""Metres either side of a watercourse drawn as a line without a width: surely wet, and possibly wet (own choice)."""
LEAST_PATH, MOST_PATH = 0.2, 6.0
"""The same for a path (own choice)."""
CONDITIONS = ("path", "obstruction", "repair", "puddle", "no_play")
TEE_REACH = 35.0


class Ground:
    """The ground as it counts on one hole, in metres about where the hole is cut."""

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
        green = self._green
        if not own and green is not None:
            shared = self._holes_of_green(green)
            own = [one for one in pins if "ref" not in one.tags and green.geometry.intersects(one.geometry)]
            own = [] if len(shared) > 1 else own
        return own[0].geometry.coords[0] if len(own) == 1 else self._line.coords[-1]

    def _holes_of_green(self, green):
        named = green.holes | ({int(green.tags["ref"])} if green.tags.get("ref", "").isdigit() else set())
        ends = {
            int(one.tags["ref"])
            for one in self.course.of_kind("hole")
            if one.tags.get("ref", "").isdigit()
            and green.geometry.intersects(shapely.Point(one.geometry.coords[-1]))
        }
        return named | ends

    @cached_property
    def _green(self):
        own = [one for one in self.course.of_kind("green") if self.number in self._holes_of_green(one)]
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

    # --- what is in bounds

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

    # --- the specific areas

    @cached_property
    def _wet(self):
        """Each penalty area on the map as (colour, least, most): as marked, and unmarked water as red."""
        marked = [
            (one.what, *self.laid(one, LEAST_STREAM, MOST_STREAM))
            for one in self.course.of_kind("red", "yellow")
        ]
        water = [("red", *self.laid(one, LEAST_STREAM, MOST_STREAM)) for one in self.course.of_kind("water")]
        coast = [self.flat.laid(one.geometry) for one in self.course.of_kind("coast")]
        if sea := sea_of(coast, self.bounds.least.geometry if self.bounds else None):
            water.append(("red", sea, sea))
        cover = shapely.union_all([most for _, _, most in marked])
        within = self.bounds.least.geometry.buffer(JOINED) if self.bounds else None
        kept = []
        for colour, least, most in water:
            low = least.difference(cover)
            low = (
                low if within is None else low.intersection(within)
            )  # water off the course is no penalty area
            high = low if most is least else most.difference(cover)
            high = high if most is least or within is None else high.intersection(within)
            if not high.is_empty:
                kept.append((colour, low, high))
        return [one for one in (*marked, *kept) if not one[2].is_empty]

    @cached_property
    def penalty(self):
        """All penalty areas."""
        return self._with_crevices(self._joined(self._wet))

    @cached_property
    def _crevices(self):
        areas = [self.laid(one)[1] for one in self.course.of_kind("bunker", "green")]
        return crevices([*areas, *(most for _, _, most in self._wet)])

    def _with_crevices(self, region):
        """Return a region that may hold the crevices beside it; whether it does, the map leaves open."""
        parts = shapely.get_parts(self._crevices)
        beside = parts[shapely.dwithin(parts, region.most.geometry, JOINED)]
        if not len(beside):
            return region
        return Region.of(region.least.geometry, shapely.union_all([region.most.geometry, *beside]))

    @staticmethod
    def _joined(wet):
        if not wet:
            return NOWHERE
        same = all(one[1] is one[2] for one in wet)
        return Region.of(united([one[1] for one in wet]), None if same else united([one[2] for one in wet]))

    def colour(self, colour):
        """All penalty areas of a colour."""
        return self._joined([one for one in self._wet if one[0] == colour])

    def same_penalty_area(self, place):
        """Return the penalty area at a place: of one colour where joined; ground of the other colour beside it is open."""
        surely = connected(
            [(low, one) for one in self._wet for low in [one[1]] if not low.is_empty], place, alike=True
        )
        possibly = connected([(one[2], one) for one in self._wet], place, alike=False)
        same = len(surely) == len(possibly) and all(one[1] is one[2] for one in possibly)
        least = united([one[1] for one in surely])
        return Region.of(least, None if same else united([one[2] for one in possibly]))

    def left(self, ball, crossing):
        """Return the penalty area that relief is taken from: the one the ball lies in, else the one at the crossing."""
        lies_in = not self.penalty.empty and self.penalty.inside(ball[None])[0][0] > 0
        return self.same_penalty_area(ball if lies_in else crossing)

    @cached_property
    def bunkers(self):
        """All bunkers."""
        return self._with_crevices(self.region(self.course.of_kind("bunker")))

    def same_bunker(self, place):
        """Return the bunker at a place, with all bunkers joined to it."""
        every = [("sand", *self.laid(one)) for one in self.course.of_kind("bunker")]
        found = connected([(one[1], one) for one in every], place, alike=True)
        return self._with_crevices(Region.of(united([one[1] for one in found]))).without(self.penalty)

    @cached_property
    def _greens(self):
        """Greens surely of this hole, and greens possibly: those that join its own on the ground."""
        own = self._green
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
            one for one in possibly if one is own or self._holes_of_green(one) == self._holes_of_green(own)
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
                [one[1] for one in self._wet]
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
        for name, region in self.specific.items():
            if region.empty:
                continue
            low, high = (one[0] for one in region.inside(places))
            if low + ball > JOINED:
                return found | {name}
            if high + ball >= -JOINED:
                found.add(name)
        return found | {"general"}
