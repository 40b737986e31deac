"""Every relief option that the Rules as encoded can give is drawn, or says what it needs."""

from functools import cache
from itertools import product
from math import cos, hypot, pi, sin

from shapely.geometry import Point, box

from marram.course.model import Feature, Kind
from marram.relief import Bound, Drawn, NeedsPlace, Situation, relief_areas
from marram.relief.geometry.outline import Outline
from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.incidents import INCIDENTS
from marram.rules.relief_option import Limit, ReliefKind
from marram.rules.ruling import Judgement, Ruling
from tests.relief.ground_for_tests import HOLE, IN_2023, PLAYER, ZONE, course


@cache
def every_option():
    found = {}
    for incident in INCIDENTS:
        for day in (EDITION_2019, EDITION_2023):
            for leaf in leaves_on(book(incident.name).root, day):
                outcomes = [leaf] if isinstance(leaf, Ruling) else []
                outcomes += leaf.outcomes if isinstance(leaf, Judgement) else ()
                for ruling in outcomes:
                    found |= dict.fromkeys(ruling.relief)
    return list(found)


BALLS = {
    Limit.IN_BUNKER: (-8.0, 155.0),
    Limit.OUTSIDE_BUNKER: (-8.0, 155.0),
    Limit.IN_PENALTY_AREA: (40.0, 80.0),
    Limit.ON_GREEN_OR_GENERAL_AREA: (2.0, 192.0),
}


def ball_for(option):
    return next((BALLS[limit] for limit in option.limits if limit in BALLS), (3.0, 60.0))


def draw(option):
    x, y = ball_for(option)
    flooded = option.kind is ReliefKind.MAXIMUM_AVAILABLE
    size = 500.0 if flooded else 0.8
    water = Feature(Kind.TEMPORARY_WATER, "water", box(x - size, y - size, x + size, y + size))
    (answer,) = relief_areas(
        Situation(
            course(water),
            1,
            ball=(x, y),
            played_on=IN_2023,
            player=PLAYER,
            entry=(20.0, 80.0),
            previous=(0.0, 1.0) if Limit.TEEING_AREA in option.limits else (2.0, 20.0),
            opposite=(60.0, 68.0),
            last_outside=(5.0, 30.0),
            estimated=(4.0, 62.0),
            condition=water,
            zone=Outline(ZONE),
            provisional=(6.0, 70.0),
        ),
        [option],
    )
    return answer


def name(option):
    return f"{option.citation} {option.kind.value} {option.reference.value} {option.dropped_on_line}"


def test_the_rules_give_many_options():
    """The walk over the Rules finds each kind of relief (dropping zones belong to Local Rules of a course)."""
    assert {one.kind for one in every_option()} >= set(ReliefKind) - {ReliefKind.DROPPING_ZONE}


def test_with_every_place_given_each_is_drawn():
    """Each option gives an area that is not empty and has its construction and measures."""
    for option in every_option():
        answer = draw(option)

        assert isinstance(answer, Drawn), name(option)
        for area in answer.areas:
            assert not area.polygon.is_empty, name(option)
            assert area.construction
            assert area.measures


def test_with_nothing_given_each_asks():
    """Without any place no option is drawn: each says at least one thing that it needs."""
    options = every_option()
    answers = relief_areas(Situation(course(), 1, played_on=IN_2023, player=PLAYER), options)

    for option, answer in zip(options, answers, strict=True):
        assert isinstance(answer, NeedsPlace), name(option)
        assert answer.needs, name(option)


def test_the_pictures_and_the_distances_agree():
    """Points well inside the picture are inside by distance; none is nearer the hole than its limit.

    Sampled on rings around the reference point; within 2 cm of an edge the picture is not asked.
    """
    for option in every_option():
        for area in draw(option).areas:
            if not area.is_spot:
                compare(area, name(option))


def compare(area, named):
    inner, outer = area.polygon.buffer(-0.02), area.polygon.buffer(0.02)
    reach = area.radius or 6.0
    least = next((one.radius for one in area.limits if one.bound is Bound.NOT_NEARER), 0.0)
    for ring, step in product(range(1, 9), range(16)):
        x = area.reference[0] + 1.1 * reach * ring / 8 * cos(step * pi / 8 + ring)
        y = area.reference[1] + 1.1 * reach * ring / 8 * sin(step * pi / 8 + ring)
        inside = area.contains(x, y).inside
        if inner.covers(Point(x, y)):
            assert inside, (named, x, y)
        elif area.radius is not None and not outer.covers(Point(x, y)):
            assert not inside, (named, x, y)
        if inside:
            assert hypot(x - HOLE[0], y - HOLE[1]) >= least - 0.001, (named, x, y)
