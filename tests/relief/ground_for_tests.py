"""An invented hole for the tests: play goes north, the hole is cut at (0, 200)."""

from datetime import date

from shapely.geometry import LineString, Point, Polygon, box

from marram.course.model import Course, Feature, Hole, Kind
from marram.course.plane import LocalPlane
from marram.relief import Player
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption, Setting

HOLE = (0.0, 200.0)
PLAYER = Player(club_length=1.15, right_handed=True)
IN_2019 = date(2019, 6, 1)
IN_2023 = date(2023, 6, 1)

POND = box(20, 60, 60, 100)  # red; its west edge is the straight line x = 20
DITCH = box(-60, 130, 60, 134)  # yellow, across the hole
BUNKER = Polygon([(-14, 150), (-6, 148), (-4, 158), (-12, 162)])
GREEN = Point(0, 200).buffer(12)
TEE = box(-5, -4, 5, 6)
FAIRWAY = box(-15, 30, 15, 128)
PATH = box(-30, 20, -27, 180)  # 3 m wide, along the hole
ZONE = box(25, 140, 28, 143)


def course(*more):
    tee = Feature(Kind.TEEING_AREA, "tee", TEE, holes=(1,))
    green = Feature(Kind.PUTTING_GREEN, "green", GREEN, holes=(1,))
    features = (
        Feature(Kind.BOUNDARY, "outline", box(-80, -30, 80, 240)),
        Feature(Kind.RED_PENALTY_AREA, "pond", POND),
        Feature(Kind.YELLOW_PENALTY_AREA, "ditch", DITCH),
        Feature(Kind.BUNKER, "bunker", BUNKER),
        Feature(Kind.FAIRWAY, "fairway", FAIRWAY, holes=(1,)),
        Feature(Kind.PATH, "path", PATH),
        Feature(Kind.DROPPING_ZONE, "zone", ZONE),
        tee,
        green,
        *more,
    )
    line = LineString([(0, 1), (0, 120), HOLE])
    hole = Hole(1, line, Point(HOLE), par=4, green=green, tees=(tee,))
    return Course("Test Links", LocalPlane(-5.0, 56.0), {1: hole}, features)


def course_at(hole, *features):
    """A course of one hole, cut at a place, with nothing but some features on it."""
    line = LineString([(hole[0], hole[1] - 300), hole])
    return Course("Random Links", LocalPlane(0.0, 50.0), {1: Hole(1, line, Point(hole))}, features)


def option(
    kind, reference, club_lengths, *limits, setting=Setting.DROP, citation="test", dropped_on_line=False
):
    return ReliefOption(kind, citation, reference, club_lengths, limits, 1, setting, dropped_on_line)


STROKE_AND_DISTANCE = option(
    ReliefKind.STROKE_AND_DISTANCE,
    Reference.PREVIOUS_STROKE,
    1,
    Limit.NOT_NEARER,
    Limit.SAME_AREA_AS_REFERENCE,
    setting=Setting.AS_THE_SPOT_ALLOWS,
)
LATERAL_PENALTY_AREA = option(
    ReliefKind.LATERAL,
    Reference.CROSSING_POINT,
    2,
    Limit.NOT_NEARER,
    Limit.SAME_AREA_AS_FIRST_TOUCHED,
    Limit.OUTSIDE_PENALTY_AREA,
)
LATERAL_UNPLAYABLE = option(
    ReliefKind.LATERAL, Reference.BALL, 2, Limit.NOT_NEARER, Limit.SAME_AREA_AS_FIRST_TOUCHED
)
LATERAL_IN_BUNKER = option(ReliefKind.LATERAL, Reference.BALL, 2, Limit.NOT_NEARER, Limit.IN_BUNKER)
LINE_2019 = option(
    ReliefKind.BACK_ON_THE_LINE,
    Reference.LINE_THROUGH_CROSSING_POINT,
    1,
    Limit.NOT_NEARER,
    Limit.SAME_AREA_AS_FIRST_TOUCHED,
    Limit.OUTSIDE_PENALTY_AREA,
)
LINE_2023 = option(
    ReliefKind.BACK_ON_THE_LINE,
    Reference.LINE_THROUGH_CROSSING_POINT,
    1,
    Limit.NOT_NEARER_THAN_CROSSING_POINT,
    Limit.SAME_AREA_AS_FIRST_TOUCHED,
    Limit.OUTSIDE_PENALTY_AREA,
    dropped_on_line=True,
)
LINE_UNPLAYABLE_2023 = option(
    ReliefKind.BACK_ON_THE_LINE,
    Reference.LINE_THROUGH_BALL,
    1,
    Limit.NOT_NEARER_THAN_BALL,
    Limit.SAME_AREA_AS_FIRST_TOUCHED,
    dropped_on_line=True,
)
LINE_IN_BUNKER_2023 = option(
    ReliefKind.BACK_ON_THE_LINE,
    Reference.LINE_THROUGH_BALL,
    1,
    Limit.NOT_NEARER_THAN_BALL,
    Limit.IN_BUNKER,
    dropped_on_line=True,
)
LINE_OUTSIDE_BUNKER_2023 = option(
    ReliefKind.BACK_ON_THE_LINE,
    Reference.LINE_THROUGH_BALL,
    1,
    Limit.NOT_NEARER_THAN_BALL,
    Limit.SAME_AREA_AS_FIRST_TOUCHED,
    Limit.OUTSIDE_BUNKER,
    dropped_on_line=True,
)
FREE_GENERAL = option(
    ReliefKind.FREE,
    Reference.NEAREST_POINT,
    1,
    Limit.NOT_NEARER,
    Limit.GENERAL_AREA,
    Limit.COMPLETE_RELIEF,
)
FREE_BUNKER = option(
    ReliefKind.FREE, Reference.NEAREST_POINT, 1, Limit.NOT_NEARER, Limit.IN_BUNKER, Limit.COMPLETE_RELIEF
)
MAXIMUM_BUNKER = option(
    ReliefKind.MAXIMUM_AVAILABLE, Reference.MAXIMUM_POINT, 1, Limit.NOT_NEARER, Limit.IN_BUNKER
)
FREE_GREEN = option(
    ReliefKind.FREE,
    Reference.NEAREST_POINT,
    0,
    Limit.NOT_NEARER,
    Limit.ON_GREEN_OR_GENERAL_AREA,
    Limit.COMPLETE_RELIEF,
    setting=Setting.PLACE,
)
EMBEDDED = option(ReliefKind.FREE, Reference.BEHIND_EMBEDDED_BALL, 1, Limit.NOT_NEARER, Limit.GENERAL_AREA)
TWO_POINTS = option(ReliefKind.EXTENDED, Reference.TWO_POINTS, 2, Limit.GENERAL_AREA, Limit.NOT_NEARER)
IN_ZONE = option(ReliefKind.DROPPING_ZONE, Reference.DROPPING_ZONE, None, Limit.WITHIN_DROPPING_ZONE)
PROVISIONAL = option(ReliefKind.PROVISIONAL, Reference.PROVISIONAL_BALL, None)
