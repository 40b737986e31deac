"""Drawings of situations: what is drawn agrees with what is told, by the shapes of the map themselves."""

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import cache
from itertools import islice
from math import hypot
from random import Random
from typing import Any
from xml.etree import ElementTree as ET

import pytest
import shapely
from shapely import Point

from marram.course import load
from marram.course.model import Kind
from marram.demo import COURSE
from marram.relief.interference.usual_footprint import facing, footprint
from marram.relief.pictures.lettering import WIDTH
from marram.relief.place.ground import EDGE_REACH
from marram.rules.engine.changes import substance
from marram.rules.engine.fact import Fact
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.facts.local_course import crossed_where_opposite_allowed
from marram.rules.facts.penalty_area import Colour, penalty_area_colour
from marram.rules.relief_option import Reference, ReliefKind
from marram.teach.drawings.candidates import candidates
from marram.teach.drawings.frames import frame_of
from marram.teach.drawings.grounds import KINDS_IN_THE_WAY, NOT_ON_A_MAP, Grounds, WhyNone, grounds_of
from marram.teach.drawings.placing import Placed, placed
from marram.teach.drawings.scene import relief_svgs, scene_svg
from marram.teach.drawings.symbols import shoes, stance
from marram.teach.drawings.told import shown, why_none
from marram.teach.situations.sampling import situation, situations
from marram.words.place import writing_in, written_as

MAP = load(COURSE)
INCIDENTS = (
    "abnormal_course_condition",
    "ball_in_penalty_area",
    "ball_near_boundary",
    "ball_not_found",
    "ball_overhung_hole",
    "embedded_ball",
    "no_play_zone",
    "sand_touched",
    "unplayable_ball",
    "wrong_green",
)
SVG = "{http://www.w3.org/2000/svg}"


@cache
def drawn(incident: str) -> list[Placed]:
    """What is drawn of an incident: placed once, and not before a test asks."""
    tried = (placed(one, MAP) for one in islice(situations(4, incidents=(incident,)), 16))
    return [one for one in tried if isinstance(one, Placed)]


_AREAS = {
    "bunker": (Kind.BUNKER,),
    "putting_green": (Kind.PUTTING_GREEN,),
    "teeing_area": (Kind.TEEING_AREA,),
    "penalty_area": (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA),
}


def each_drawing(claim: Callable[[Placed], None]) -> Callable[[str], None]:
    """Make a claim about one drawing a test of every drawing, by incident."""

    @pytest.mark.parametrize("incident", INCIDENTS)
    def test(incident: str) -> None:
        for one in drawn(incident):
            claim(one)

    test.__doc__ = claim.__doc__
    return test


def _in(one: Placed, *kinds: Kind) -> bool:
    return any(area.geometry.covers(Point(one.ball)) for area in MAP.of(*kinds))


def _told(one: Placed, fact: str) -> str:
    return str(one.situation.facts.get(fact, ""))


def test_each_kind_of_situation_is_drawn() -> None:
    """Of every incident that turns on the ground the demonstration course holds at least two places."""
    for name in INCIDENTS:
        assert len(drawn(name)) >= 2, name


@each_drawing
def test_the_ball_lies_in_the_area_that_is_told(one: Placed) -> None:
    """The shapes of the map hold the ball where it is told to lie, in a penalty area of the colour told."""
    area = _told(one, "area_of_ball")
    if area == "general_area":
        assert not _in(
            one, *(kind for kinds in _AREAS.values() for kind in kinds if kind is not Kind.PUTTING_GREEN)
        )
        assert one.hole.green is None or not one.hole.green.geometry.covers(Point(one.ball))
    elif area:
        assert _in(one, *_AREAS[area])
    if one.situation.incident == "ball_in_penalty_area":
        colour = _told(one, "penalty_area_colour")
        wanted = [Kind(f"{colour}_penalty_area")] if colour else _AREAS["penalty_area"]
        assert _in(one, *wanted)
    out = _told(one, "all_of_ball_out_of_bounds")
    if out:
        bounds = MAP.of(Kind.BOUNDARY)[0].geometry
        inside = bool(
            shapely.covers(
                shapely.Polygon(bounds) if bounds.geom_type == "LineString" else bounds, Point(one.ball)
            )
        )
        assert (inside and not _in(one, Kind.OUT_OF_BOUNDS)) is (out == "no")


def test_a_lost_or_out_original_is_not_drawn_where_the_provisional_ball_could_be_played_from() -> None:
    """Out of bounds it lies beyond the boundary, lost it is marked as not seen; what is in something no map holds is not drawn."""
    out = grounds_of("provisional_ball", {"original_ball": "out_of_bounds"}, relief=True)
    assert isinstance(out, Grounds)
    assert out.out_of_bounds
    lost = grounds_of("provisional_ball", {"original_ball": "lost"}, relief=True)
    assert isinstance(lost, Grounds)
    assert not lost.seen
    assert (
        grounds_of("provisional_ball", {"original_ball": "in_condition"}, relief=True) is WhyNone.NOT_ON_A_MAP
    )
    for one in drawn("provisional_ball"):
        if _told(one, "original_ball") == "out_of_bounds":
            assert _in(one, Kind.OUT_OF_BOUNDS) or not _in(one, Kind.BOUNDARY)


def test_what_is_mapped_as_a_line_is_a_place_for_a_ball_too() -> None:
    """A ditch without width has two ends and no edge round it: the ball is tried beside the line itself."""
    number, hole = next(iter(MAP.holes.items()))
    ditch = next(one for one in MAP.features if one.kind is Kind.YELLOW_PENALTY_AREA)
    line = shapely.LineString([hole.line.interpolate(80).coords[0], hole.line.interpolate(120).coords[0]])
    lines = replace(MAP, features=(replace(ditch, geometry=line, holes=()),))
    told = grounds_of("ball_in_penalty_area", {"penalty_area_colour": "yellow"}, relief=True)
    assert isinstance(told, Grounds)
    for _, place in islice(candidates(lines, told, number, Random(1)), 40):
        box = line.buffer(8).bounds
        assert box[0] <= place[0] <= box[2]
        assert box[1] <= place[1] <= box[3]


@each_drawing
def test_what_interferes_is_what_is_told(one: Placed) -> None:
    """The mapped condition is of the kind told, and touches the ball, or stance or swing alone, or nothing, as told."""
    if one.condition is not None and _told(one, "in_the_way"):
        assert one.condition.kind in KINDS_IN_THE_WAY[_told(one, "in_the_way")]
    names = ("interference", "no_play_zone_interference", "wrong_green_interference")
    told = next((_told(one, name) for name in names if _told(one, name)), "")
    if not told:
        assert one.condition is None
        return
    hole = (one.hole.location.x, one.hole.location.y)
    if told == "none":
        assert one.condition is None
        return
    assert one.condition is not None
    away = one.condition.geometry.distance(Point(one.ball))
    if told in {"ball", "ball_inside", "ball_on_it"}:
        assert away < 0.022
    elif told != "line_of_play":
        made = footprint(right_handed=one.right_handed, direction=facing(one.ball, hole), tall=True)
        assert 0.02 < away < 3.0
        assert made.at(one.ball).intersects(one.condition.geometry)
    if told == "stance_only":
        assert stance(one.ball, hole, right_handed=one.right_handed).intersects(one.condition.geometry)


@each_drawing
def test_the_player_stands_on_the_side_of_the_hand(one: Placed) -> None:
    """Seen towards the hole, a right-handed player's shoes are to the left of the ball, a left-handed one's to the right."""
    hole = (one.hole.location.x, one.hole.location.y)
    for shoe in shoes(one.ball, hole, right_handed=one.right_handed):
        x, y = shoe.centroid.x - one.ball[0], shoe.centroid.y - one.ball[1]
        left = (hole[0] - one.ball[0]) * y - (hole[1] - one.ball[1]) * x
        assert (left > 0) is one.right_handed
        assert 0.4 < hypot(x, y) < 1.2


@each_drawing
def test_the_ruling_at_that_place_is_the_ruling_of_the_situation(one: Placed) -> None:
    """An official who enters the same facts at the same place gets the same ruling."""
    assert substance(one.ruled.result) == substance(one.situation.ruling)
    place = one.ruled.lie.place
    for name, answer in (place.facts if place else {}).items():
        assert str(one.situation.facts.get(name, answer)) == answer, name


@each_drawing
def test_the_drawing_shows_the_ball_at_its_place(one: Placed) -> None:
    """The last circle of the map is the ball, where the frame puts it; the distance written is that of the map."""
    drawing = ET.fromstring(scene_svg(one))
    x, y = frame_of(one, WIDTH).at(one.ball)
    circles = [(float(node.get("cx", 0)), float(node.get("cy", 0))) for node in drawing.iter(f"{SVG}circle")]
    assert any(hypot(cx - x, cy - y) < 0.02 for cx, cy in circles)
    metres = float(re.search(r"([\d.]+) m \(", shown(one)[0])[1])
    assert metres == pytest.approx(one.hole.location.distance(Point(one.ball)), abs=0.5)
    assert drawing.find(f"{SVG}desc").text == " ".join(shown(one))


@each_drawing
def test_the_drawing_gives_no_ruling_away(one: Placed) -> None:
    """No relief area, reference point or club-length stands in the drawing of a situation."""
    drawing = scene_svg(one)
    assert 'fill="url(#scene-area)"' not in drawing
    for words in ("reference point", "club-length", "not nearer"):
        assert words not in drawing


@each_drawing
def test_a_crossing_lies_on_the_edge_it_is_said_to_lie_on(one: Placed) -> None:
    """Where the ball crossed is on the edge of its penalty area, or on the boundary."""
    edges = [area.geometry.boundary for area in MAP.of(*_AREAS["penalty_area"])]
    if "entry" in one.places:
        assert min(edge.distance(Point(one.places["entry"])) for edge in edges) < 0.05
    if "boundary" in one.places:
        bounds = [*MAP.of(Kind.BOUNDARY), *MAP.of(Kind.OUT_OF_BOUNDS)]
        assert min(area.geometry.boundary.distance(Point(one.places["boundary"])) for area in bounds) < 0.05


def test_free_relief_is_drawn_where_it_is_offered() -> None:
    """From a path, ground under repair or water the relief area is drawn clear of the condition."""
    free = [
        (one, option)
        for one in drawn("abnormal_course_condition")
        for option in one.options
        if option.option.kind is ReliefKind.FREE
    ]
    assert free
    for one, option in free:
        assert option.areas
        assert one.condition is not None
        assert not one.condition.geometry.covers(Point(option.areas[0].reference))
        assert len(relief_svgs(one)) == sum(bool(each.areas) for each in one.options)


def test_where_there_is_no_ground_none_is_drawn_and_it_is_said() -> None:
    """A scorecard has no drawing, an animal hole is on no map, and each is told with its reason."""
    card = next(situations(1, incidents=("scorecard_fault",)))
    assert placed(card, MAP) is WhyNone.NOTHING_OF_THE_GROUND
    hole = {"interference": "ball", "in_the_way": "animal_hole", "area_of_ball": "general_area"}
    assert grounds_of("abnormal_course_condition", hole, relief=True) is WhyNone.NOT_ON_A_MAP
    for fact in NOT_ON_A_MAP:
        assert grounds_of("x", {fact: "yes", "area_of_ball": "bunker"}, relief=False) is WhyNone.NOT_ON_A_MAP
    assert len({why_none(why) for why in WhyNone}) == len(WhyNone)


def test_how_far_the_hole_is_is_told_in_yards_where_they_are_usual() -> None:
    """Beside a scale in yards no label of the drawing tells metres."""
    labels = r">[^<]* \d+ {}<"
    metres = [scene_svg(one) for one in drawn("abnormal_course_condition")]
    assert any(re.search(labels.format("m"), one) for one in metres)
    with written_as(writing_in("US")):
        yards = [scene_svg(one) for one in drawn("abnormal_course_condition")]
    assert any(re.search(labels.format("yd"), one) for one in yards)
    assert not any(re.search(labels.format("m"), one) for one in yards)


def test_the_same_seed_gives_the_same_drawing() -> None:
    """Drawn twice a situation lies at one place; with another seed it lies elsewhere."""
    one = next(situations(2, incidents=("embedded_ball",)))
    first, again, other = placed(one, MAP, 1), placed(one, MAP, 1), placed(one, MAP, 2)
    assert isinstance(first, Placed)
    assert isinstance(again, Placed)
    assert isinstance(other, Placed)
    assert scene_svg(first) == scene_svg(again)
    assert first.ball != other.ball


def test_a_ball_whose_spot_is_not_known_is_not_drawn_as_seen() -> None:
    """Rule 19.2: without its spot only stroke and distance is left; a drawing that shows the ball would tell otherwise."""
    facts = {"spot_of_ball_known": "no", "area_of_ball": "general_area"}
    found = grounds_of("unplayable_ball", facts, relief=True)
    assert isinstance(found, Grounds)
    assert not found.seen


def _with(incident: str, known: dict[Fact[Any], object]) -> Iterator[Placed]:
    """What is drawn of an incident of which something is known."""
    for seed in range(8):
        one = situation(incident, Random(seed), known=known)
        there = None if one is None else placed(one, MAP)
        if isinstance(there, Placed):
            yield there


def test_a_ball_that_is_lost_is_drawn_where_balls_are_lost() -> None:
    """Not on a fairway, but beside the line of play; with Model Local Rule E-5, which is for such a ball, too."""
    lost = [
        *drawn("ball_not_found"),
        *_with("ball_not_found", {LOCAL_RULES["E-5"]: True}),
        *drawn("alternative_to_stroke_and_distance"),
    ]
    elsewhere = [one for one in lost if one.ruled.lie.place and one.ruled.lie.place.area is Area.GENERAL_AREA]
    assert elsewhere
    for one in elsewhere:
        assert not one.seen
        assert not _in(one, Kind.FAIRWAY)
        assert one.hole.line.distance(Point(one.ball)) > 10


def test_relief_on_the_opposite_side_is_drawn_too() -> None:
    """Model Local Rule B-2: its relief area lies across the penalty area, as far from the hole as the cross on its edge."""
    known: dict[Fact[Any], object] = {
        LOCAL_RULES["B-2"]: True,
        crossed_where_opposite_allowed: True,
        penalty_area_colour: Colour.RED,
    }
    every = [
        (one, option.areas[0].reference)
        for one in _with("ball_in_penalty_area", known)
        for option in one.options
        if option.option.reference is Reference.OPPOSITE_EDGE and option.areas
    ]
    assert every
    for one, across in every:
        hole, entry = (one.hole.location.x, one.hole.location.y), one.places["entry"]
        assert across is not None
        far = [hypot(at[0] - hole[0], at[1] - hole[1]) for at in (across, entry)]
        assert far[0] == pytest.approx(far[1], abs=EDGE_REACH)  # a cross beside its edge is moved onto it
        assert hypot(across[0] - entry[0], across[1] - entry[1]) > 0.5
