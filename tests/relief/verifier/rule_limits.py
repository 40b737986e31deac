"""What each relief option allows, from the published Rules: size, and which places.

Each limit names its Rule. They were compared with published text of both editions where it was found; Rules 13.1f(2)
and 16.3b (2023) in full, Model Local Rules E-5 and B-2 and Clarification Relief Area/1 were not, and rest on summaries
and memory.

A limit gives for places (rows, metres) two margins: by how much they fulfil it in the strictest reading of the
map, and in the most lenient. A *line* is judged apart (``drop_line``).
"""

from dataclasses import dataclass, replace

import numpy as np
import shapely

from tests.relief.verifier.regions import REACH, Region

ONE, TWO = 1.0, 2.0

DIGIT = 0.0001
"""Metres: half of the ninth decimal of a degree, and a little, to which places are exported."""

SIZES = {
    # kind, reference: club-lengths. 0 is a spot, None is not so measured.
    ("stroke_and_distance", None): ONE,  # 14.6b, c; 18.1; 17.1d(1); 19.2a
    ("replay", None): ONE,  # 14.6
    ("back_on_the_line", None): ONE,  # 14.3b(3), 16.1c(2), 17.1d(2), 19.2b, 19.3
    ("lateral", None): TWO,  # 17.1d(3), 19.2c, 19.3a, Model Local Rule B-2
    ("free", None): ONE,  # 13.1f(2), 16.1b, 16.1c(1), 16.2b, 16.3b
    ("maximum_available", None): ONE,  # 16.1c(1)
    ("under_where_it_came_to_rest", None): ONE,  # 15.2a(2)
    ("extended", None): TWO,  # Model Local Rule E-5: to the outside of each line
    ("dropping_zone", None): None,  # Model Local Rule E-1: the zone itself
}
SPOTS = {"16.1d", "15.2a(3)"}
"""On the putting green the ball is placed: 16.1d(1) and (2), 15.2a(3)."""

AREA = {
    "13.1f(2)": "same",  # the area of the course where the ball came to rest
    "16.1": "general",
    "16.1b": "general",
    "16.2b": "general",
    "16.1c(1)": "bunker",
    "16.1c(2)": "not bunker",
    "16.1d": "green or general",
    "16.3b": "general",
    "15.2a(2)": "same",
    "15.2a(3)": "any",
    "17.1d(2)": "not penalty",
    "17.1d(3)": "not penalty",
    "17.2b": "not penalty",
    "B-2": "not penalty",
    "19.2b": "any",
    "19.2c": "any",
    "19.3a": "bunker",
    "19.3b": "not bunker",
    "E-5": "general",
    "E-1": "zone",
    "E-1.3": "zone",
}
"""The area of the course required of options that are not played again from the previous spot."""


@dataclass(frozen=True)
class Limit:
    """A named limit with its Rule; ``margins`` takes places (rows) to strict and lenient margins.

    For a ball at rest ``ball`` tells how its radius counts: 1 where it is enough that any part of it is inside (the
    club-lengths, the course, an area), -1 where no part may be beyond (nearer the hole, Clarification Relief Area/1; an
    area that comes first in Rule 2.2c), 0 where stance and swing are what counts. ``or_else``: another limit that is as good.
    """

    name: str
    rule: str
    margins: object
    ball: int = 1
    or_else: "Limit | None" = None

    def fulfilled(self, places, reach, ball):
        """Return the strict and the lenient margin of a ball of this radius, 0 for a place."""
        found = [one + self.ball * ball for one in self.margins(places, reach)]
        if self.or_else is None:
            return found
        other = self.or_else.fulfilled(places, reach, ball)
        return [np.maximum(one, two) for one, two in zip(found, other, strict=True)]


def wanted_size(option):
    """Return the club-lengths an option must have by its Rule: a number, 0 for a spot, ``None`` for another measure."""
    if option["citation"] in SPOTS:
        return 0
    return SIZES.get((option["kind"], None), "unknown")


def within(centre, radius):
    """Within club-lengths of a point (Definition of relief area)."""

    def margins(places, reach=REACH):  # noqa: ARG001
        inside = radius - np.hypot(*(places - centre).T)
        return inside, inside

    return Limit("size", "Definition of relief area", margins)


def not_nearer(hole, than, rule="Definition of relief area"):
    """Not nearer the hole than a point."""
    least = np.hypot(*(np.asarray(than) - hole))

    def margins(places, reach=REACH):  # noqa: ARG001
        beyond = np.hypot(*(places - hole).T) - least
        return beyond, beyond

    return Limit("nearer the hole", rule, margins, -1)


def inside(region: Region, name, rule):
    """In a region."""
    return Limit(name, rule, region.inside)


def outside(region: Region, name, rule):
    """Outside a region."""
    return Limit(name, rule, region.outside, -1)


def on_course(ground):
    """In bounds (Definitions of course and boundary edge)."""
    limits = []
    if ground.bounds is not None:
        limits.append(inside(ground.bounds, "out of bounds", "Definition of boundary edge"))
    if not ground.out.empty:
        # A ball is out of bounds only when all of it is (18.2a(2)).
        limits.append(Limit("out of bounds", "Definition of boundary edge", ground.out.outside))
    return limits


def in_area(ground, name):
    """In an area of the course, what comes before it taken off (Rule 2.2c); wrong greens are general area."""
    limits = [
        outside(one, _NAMES[other], "2.2c") for other, one in _named_before(ground, name) if not one.empty
    ]
    if name != "general":
        limits.append(inside(ground.specific[name], f"not in {name}", "2.2"))
    return limits


_NAMES = {
    "penalty": "in a penalty area",
    "bunker": "in a bunker",
    "green": "on the green",
    "tee": "in the teeing area",
}


def _named_before(ground, name):
    for other in ("penalty", "bunker", "green", "tee"):
        if other == name:
            return
        yield other, ground.specific[other]


def area_limits(ground, option, *, ball, crossing, reference):
    """Return the limits of the area of the course that an option requires, or ``None`` where the map is open.

    Args:
        ground: the ground of the hole.
        option: the option's fields.
        ball: where the ball lies, metres.
        crossing: where it last crossed the edge of the penalty area, metres, if it did.
        reference: the reference point, metres.
    """
    kind, citation = option["kind"], option["citation"]
    if kind in {"stroke_and_distance", "replay"}:
        return _same(ground, reference, 0.0)  # 14.6
    wanted = AREA.get(citation)
    if citation == "16.2b(2)":
        return [inside(ground.same_penalty_area(ball), "not in the penalty area", citation)]
    match wanted:
        case "general":
            return in_area(ground, "general")
        case "same":
            return _same(ground, ball, BALL)
        case "bunker":
            # A ball that touches a penalty area too lies in that, not in the bunker (2.2c).
            wet = [] if ground.penalty.empty else [outside(ground.penalty, "in a penalty area", "2.2c")]
            return [inside(ground.same_bunker(ball), "outside the bunker", citation), *wet]
        case "not bunker":
            # What a penalty area covers of a bunker is none, and a ball that touches both is in the penalty area (2.2c).
            wet = None if ground.penalty.empty else inside(ground.penalty, "not in a penalty area", "2.2c")
            return [replace(outside(ground.same_bunker(ball), "in the same bunker", citation), or_else=wet)]
        case "not penalty":
            return [outside(ground.left(ball, crossing), "in the same penalty area", citation)]
        case "green or general":
            return [
                outside(ground.specific[one], _NAMES[one], citation)
                for one in ("penalty", "bunker", "tee")
                if not ground.specific[one].empty
            ]
        case "any" | "zone":
            return []
    return None


BALL = 0.04267 / 2
"""Metres: half the least diameter of a ball (Equipment Rules, Part 4)."""


def _same(ground, place, ball):
    areas = ground.area_at(place, ball)
    if len(areas) != 1:
        return None
    (area,) = areas
    return None if area is None else in_area(ground, area)


def corridor(hole, ball, fairway, width):
    """Between the lines from the hole through two points, and so far to the outside of each (Model Local Rule E-5)."""
    to_ball, to_fairway = _unit(ball - hole), _unit(fairway - hole)
    turn = to_ball[0] * to_fairway[1] - to_ball[1] * to_fairway[0]

    def margins(places, reach=REACH):  # noqa: ARG001
        gone = places - hole
        left_of_ball = to_ball[0] * gone[:, 1] - to_ball[1] * gone[:, 0]
        left_of_fairway = to_fairway[0] * gone[:, 1] - to_fairway[1] * gone[:, 0]
        side = 1.0 if turn >= 0 else -1.0
        found = np.minimum(width + side * left_of_ball, width - side * left_of_fairway)
        found = np.minimum(found, gone @ _unit(to_ball + to_fairway))  # on this side of the hole
        # The last digit of the two points as exported turns the lines a little.
        open_by = DIGIT * np.hypot(*gone.T) / min(np.hypot(*(ball - hole)), np.hypot(*(fairway - hole)))
        return found - open_by, found + open_by

    return Limit("outside the corridor", "E-5", margins)


def line_of_play(hole, conditions):
    """The straight line to the hole does not run over a condition (16.1a(1), for a ball on the putting green)."""

    def margins(places, reach=REACH):
        ends = np.broadcast_to(hole, places.shape)
        lines = shapely.linestrings(np.stack([places, ends], axis=1))
        most, least = (shapely.intersects(one.geometry, lines) for one in (conditions.most, conditions.least))
        # How far it is to a place with a clear line is not told: such a place is refused, but only just.
        return np.where(most, -1e-9, reach), np.where(least, -1e-9, reach)

    return Limit("line of play", "16.1a(1)", margins, 0)


def _unit(vector):
    return vector / max(np.hypot(*vector), 1e-12)


def least_and_most(limits, places, reach=REACH, ball=0.0):
    """Return the strict and the lenient margin of fulfilling all limits, and which limit is least fulfilled.

    With a ball's radius (metres) it is a ball at rest that is asked about, without one the place where one lands.
    """
    strict = np.full(len(places), np.inf)
    lenient = np.full(len(places), np.inf)
    which = np.full(len(places), -1)
    for index, limit in enumerate(limits):
        low, high = limit.fulfilled(places, reach, ball)
        strict = np.minimum(strict, low)
        which = np.where(high < lenient, index, which)
        lenient = np.minimum(lenient, high)
    return strict, lenient, which
