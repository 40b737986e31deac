"""From a place on the map to facts for the Rules: the area of the course, what else is there, how far the hole is.

What the map is sure of it hands over as facts; where it is in doubt it hands over none and says what to look at.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from shapely import Point

from marram.course import area_at
from marram.course.lies.colours import colour_within_reach
from marram.course.lies.doubts import Doubt, DoubtKind
from marram.course.lies.regions import TOUCHABLE, ground_of
from marram.course.lies.tolerance import TOUCH
from marram.course.model import Course, Feature, Hole, Kind
from marram.relief.geometry.tolerance import YARD
from marram.relief.place.dropping_zones import zones_serving
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.green import WrongGreenInterference, wrong_green_interference
from marram.rules.facts.local_relief import dropping_zone_provided
from marram.rules.facts.lost import all_of_ball_out_of_bounds
from marram.rules.facts.penalty_area import Colour, penalty_area_colour
from marram.rules.facts.relief import (
    Interference,
    InTheWay,
    ZoneInterference,
    in_the_way,
    interference,
    no_play_zone_interference,
    spot_behind_in_general_area,
)
from marram.words.ground import area_name, in_area, named_ground
from marram.words.spoken import spoken
from marram.words.texts import capital, text

XY = tuple[float, float]

SPEAKING = (
    Kind.RED_PENALTY_AREA,
    Kind.YELLOW_PENALTY_AREA,
    Kind.BUNKER,
    Kind.PUTTING_GREEN,
    Kind.TEEING_AREA,
    Kind.FAIRWAY,
    Kind.PATH,
    Kind.OBSTRUCTION,
    Kind.INTEGRAL_OBJECT,
    Kind.BARRIER,
    Kind.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER,
    Kind.NO_PLAY_ZONE,
    Kind.DROPPING_ZONE,
    Kind.OUT_OF_BOUNDS,
    Kind.WETLAND,
    Kind.TREES,
)
"""What is worth saying of a place, in the order it is said."""


LACKING = frozenset({DoubtKind.NO_BOUNDARY})
"""Doubts about the map as a whole: they leave open whether a ball is out of bounds, not what it lies in on the course."""

TAP_ACCURACY = 0.3
"""Metres: how exactly a place can be tapped on a map zoomed in (a choice of ours)."""

FAR_AWAY = 1200.0
"""Metres: farther from the hole than this, a place is more likely a mistake (a choice of ours)."""


@dataclass(frozen=True, slots=True)
class PlaceFacts:
    """What the map knows of the place where a ball lies.

    Attributes:
        area: the area of the course; ``None`` means out of bounds.
        words: the area in words.
        things: what else the ball touches, in words, with names.
        metres: the distance to the hole.
        facts: facts for the ruling, by name: answers as written in an address.
        doubts: why to look on the ground, if at all.
        lacks: what the map as a whole lacks, so that it could not tell here.
        area_open: whether a doubt leaves open which area of the course it is.
        wrong_green: whether it is a green that is not the one of the hole being played.
    """

    area: Area | None
    words: str
    things: tuple[str, ...]
    metres: float
    facts: dict[str, str]
    doubts: tuple[str, ...] = ()
    lacks: frozenset[DoubtKind] = frozenset()
    area_open: bool = False
    wrong_green: bool = False

    @property
    def sentence(self) -> str:
        """The area as it ends the sentence "The ball lies …"; what a doubt leaves open does not stand firm."""
        where = text("ground.area.wrong_green") if self.wrong_green else in_area(self.area)
        return text("ground.perhaps", where=where) if self.area_open else where

    @property
    def yards(self) -> float:
        """The distance to the hole in yards."""
        return self.metres / YARD


def place_facts(course: Course, hole: Hole, xy: XY, *, accuracy: float = TAP_ACCURACY) -> PlaceFacts:
    """Return what the map knows of a ball at ``xy`` when ``hole`` is played.

    Where the map is in doubt it hands over no fact: the official is asked, and told what to look at. Should the ball lie
    in a penalty area, its colour is handed over all the same where all that it may lie in are of one.

    Args:
        course: the map.
        hole: the hole being played.
        xy: the middle of the ball, in local metres.
        accuracy: how far off the place may be, in metres; what could change within it is in doubt.

    Raises:
        BadPlace: the place is nowhere near the course, or the accuracy is none.
    """
    reading = area_at(course, *xy, hole.number, accuracy=accuracy)
    area = Area(reading.area.value) if reading.area else None
    metres = hole.location.distance(Point(xy))
    doubts = [f"{capital(spoken(one.words))}." for one in reading.doubts]
    if metres > FAR_AWAY:
        doubts.append(text("relief.far_away", kilometres=metres / 1000))
    lacks = frozenset(one.kind for one in reading.doubts) & LACKING
    doubtful = metres > FAR_AWAY or any(about_area(one) for one in reading.doubts)
    wrong_green = reading.wrong_green is not None
    facts: dict[str, str] = {}
    if not doubtful and not lacks:
        facts[all_of_ball_out_of_bounds.name] = "yes" if area is None else "no"
    colour = reading.colour
    if doubtful:
        near = metres <= FAR_AWAY
        colour = (
            colour_within_reach(course, Point(xy), hole.number, accuracy, reading.doubts) if near else None
        )
    elif area:
        facts[area_of_ball.name] = area.value
    if colour:
        facts[penalty_area_colour.name] = Colour(colour.value).value
    if area is Area.GENERAL_AREA and not doubtful:
        # The spot right behind a ball is ground that the ball touches.
        facts[spot_behind_in_general_area.name] = "yes"
    sure = {one.kind for one in reading.conditions} - {
        one.feature.kind for one in reading.doubts if one.feature and not one.stands
    }
    if Kind.NO_PLAY_ZONE in sure:
        facts[no_play_zone_interference.name] = ZoneInterference.BALL_INSIDE.value
    if area not in (None, Area.PENALTY_AREA) and sure - {Kind.NO_PLAY_ZONE} and not doubtful:
        facts[interference.name] = Interference.BALL.value
        facts |= in_the_way_facts(sure)
    if wrong_green and not doubtful:
        facts[wrong_green_interference.name] = WrongGreenInterference.BALL_ON_IT.value
    if not doubtful and zones_serving(course, hole.number, xy):
        facts[dropping_zone_provided.name] = "yes"
    return PlaceFacts(
        area,
        text("ground.name.wrong_green") if wrong_green else area_name(area),
        tuple(_thing(feature) for feature in _touched(course, hole.number, xy)),
        metres,
        facts,
        tuple(dict.fromkeys(doubts)),
        lacks,
        doubtful,
        wrong_green,
    )


def in_the_way_facts(kinds: Iterable[Kind]) -> dict[str, str]:
    """Return as a fact which abnormal course condition mapped things are; empty where they are none that is known."""
    known = [IN_THE_WAY[kind].value for kind in IN_THE_WAY if kind in set(kinds)]
    return {in_the_way.name: known[0]} if known else {}


IN_THE_WAY = {
    Kind.GROUND_UNDER_REPAIR: InTheWay.GROUND_UNDER_REPAIR,
    Kind.TEMPORARY_WATER: InTheWay.TEMPORARY_WATER,
    Kind.PATH: InTheWay.IMMOVABLE_OBSTRUCTION,
    Kind.OBSTRUCTION: InTheWay.IMMOVABLE_OBSTRUCTION,
}
"""What a mapped abnormal course condition is for the Rules; of several at a place one stands for all."""


def about_area(doubt: Doubt) -> bool:
    """Whether a doubt leaves open which area of the course a ball lies in."""
    if doubt.stands or doubt.kind in LACKING:
        return False
    return doubt.feature is None or doubt.feature.kind not in (*TOUCHABLE, Kind.BARRIER)


def _touched(course: Course, hole_number: int, xy: XY) -> list[Feature]:
    """Return what a ball touches, in the order it is said."""
    ball = Point(xy)
    ground = ground_of(course, hole_number)
    touched = [piece for area in ground.within(ball, TOUCH, "every") for piece in area.touching(ball, TOUCH)]
    touched += [
        feature
        for feature in course.of(*SPEAKING)
        if feature.geometry.geom_type != "Point" and feature.geometry.dwithin(ball, TOUCH)
    ]
    return sorted(
        {id(one): one for one in touched if one.kind in SPEAKING}.values(),
        key=lambda one: SPEAKING.index(one.kind),
    )


def _thing(feature: Feature) -> str:
    return named_ground(feature.kind, feature.name, "underfoot")
