"""The penalty areas of a hole: as marked, and any water that is not, red where no colour is shown.

Sources: the Definition of penalty area; Rule 17.1d for the one that relief is taken from.
"""

from functools import cached_property

import shapely

from tests.relief.verifier.joined import JOINED, connected, crevices, united
from tests.relief.verifier.laid import Laid
from tests.relief.verifier.regions import NOWHERE, Region
from tests.relief.verifier.sea import sea_of

LEAST_STREAM, MOST_STREAM = 0.05, 15.0
"""Metres either side of a watercourse drawn as a line without a width: surely wet, and possibly wet (own choice)."""


class Wet(Laid):
    """A hole with its penalty areas."""

    @cached_property
    def wet(self):
        """Each penalty area on the map as (colour, least, most): as marked, and unmarked water as red."""
        marked = [
            (one.what, *self.laid(one, LEAST_STREAM, MOST_STREAM))
            for one in self.course.of_kind("red", "yellow")
        ]
        water = [("red", *self.laid(one, LEAST_STREAM, MOST_STREAM)) for one in self.course.of_kind("water")]
        coast = [self.flat.laid(one.geometry) for one in self.course.of_kind("coast")]
        if sea := sea_of(coast, self.bounds.least.geometry if self.bounds else None):
            water.append(("red", *sea))
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
        return self.with_crevices(self._joined(self.wet))

    @cached_property
    def _crevices(self):
        areas = [self.laid(one)[1] for one in self.course.of_kind("bunker", "green")]
        return crevices([*areas, *(most for _, _, most in self.wet)])

    def with_crevices(self, region):
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
        return self._joined([one for one in self.wet if one[0] == colour])

    def same_penalty_area(self, place):
        """Return the penalty area at a place: of one colour where joined; ground of the other colour beside it is open."""
        surely = connected(
            [(low, one) for one in self.wet for low in [one[1]] if not low.is_empty], place, alike=True
        )
        possibly = connected([(one[2], one) for one in self.wet], place, alike=False)
        same = len(surely) == len(possibly) and all(one[1] is one[2] for one in possibly)
        least = united([one[1] for one in surely])
        return Region.of(least, None if same else united([one[2] for one in possibly]))

    def left(self, ball, crossing):
        """Return the penalty area that relief is taken from: the one the ball lies in, else the one at the crossing."""
        lies_in = not self.penalty.empty and self.penalty.inside(ball[None])[0][0] > 0
        return self.same_penalty_area(ball if lies_in else crossing)
