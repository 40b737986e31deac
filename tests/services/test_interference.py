"""What interferes is found by itself: wrong greens, feet on a path, a stand before the hole (Rules 13.1f, 16.1a, F-23)."""

from dataclasses import replace
from datetime import date

import pytest
from shapely.geometry import Point, box

from marram.course.model import Course, Feature, Kind
from marram.relief import Drawn
from marram.rules.ruling import Action, HandOver, Ruling
from marram.services.cases.conditions import Conditions
from marram.services.cases.places import Places
from marram.services.cases.rulings import Asked, rule_at_place
from marram.services.ground.interference import in_line_of_sight, interfering
from marram.services.ground.relief import draw_options
from tests.relief.ground_for_tests import BUNKER, course

OTHER = Feature(Kind.PUTTING_GREEN, "green of 2", box(-60, 20, -40, 40), holes=(2,))
STAND = Feature(Kind.OBSTRUCTION, "stand", box(-4, 120, 4, 125), tags={"building": "grandstand"})
NONE_IN_FORCE: tuple[str, ...] = ()


def asked(where: Course, ball, *, year=2023, hand=None, what=None, local=NONE_IN_FORCE, **facts):
    x, y = ball
    longitude, latitude = where.plane.to_degrees(x, y)
    conditions = Conditions(date(year, 6, 1), local=local, handed=hand)
    return Asked(conditions, what, 1, Places({"ball": (latitude, longitude)}), facts)


def drawn(where: Course, ball, **more):
    ruled = rule_at_place(where, asked(where, ball, **more))
    assert isinstance(ruled.result, Ruling)
    return ruled, draw_options(where, ruled, ruled.result.relief)


@pytest.mark.parametrize("year", [2019, 2023])
@pytest.mark.parametrize("hand", ["right", "left"])
def test_a_ball_on_another_holes_green_must_be_dropped_clear_of_it(year: int, hand: str) -> None:
    """Rule 13.1f is chosen, playing on is not offered, and the area drawn is clear of the green."""
    ruled, options = drawn(course(OTHER), (-50.0, 30.0), year=year, hand=hand)

    assert ruled.asked.what == "wrong_green"
    assert ruled.result.action is Action.TAKE_RELIEF
    (option,) = options
    assert option.option.citation == "13.1f(2)"
    for area in option.areas:
        assert area.polygon.intersection(OTHER.geometry).area < 1e-9


def test_without_the_players_hand_it_is_asked_for_and_nothing_else() -> None:
    """The wrong green is found all the same; only stance and swing are not known."""
    ruled, (option,) = drawn(course(OTHER), (-50.0, 30.0))

    assert ruled.asked.what == "wrong_green"
    assert [need.value for need in option.answer.needs] == ["handedness"]


@pytest.mark.parametrize("hand", ["right", "left"])
def test_feet_alone_on_a_wrong_green_interfere_for_the_hand_that_stands_there(hand: str) -> None:
    """Right-handed feet on the green: relief must be taken; left-handed ones are off it."""
    ruled = rule_at_place(course(OTHER), asked(course(OTHER), (-39.3, 30.0), hand=hand))

    assert (ruled.asked.what == "wrong_green") is (hand == "right")
    if hand == "right":
        assert ruled.assumed["wrong_green_interference"] == "stance_only"


def test_of_an_incident_that_is_named_it_is_not_asked_what_the_map_sees() -> None:
    """Feet on the green, and named so: how it interferes is a premise, of the hand that stands there; else it is asked."""
    where = course(OTHER)
    named = {
        hand: rule_at_place(where, asked(where, (-39.3, 30.0), hand=hand, what="wrong_green"))
        for hand in ("right", "left")
    }
    told = rule_at_place(
        where,
        asked(where, (-39.3, 30.0), hand="right", what="wrong_green", wrong_green_interference="ball_on_it"),
    )

    assert named["right"].assumed["wrong_green_interference"] == "stance_only"
    assert "wrong_green_interference" not in named["left"].known
    assert (told.known["wrong_green_interference"], told.assumed) == ("ball_on_it", {})


def test_where_d3_is_in_force_the_stance_gives_no_relief_and_is_not_cleared() -> None:
    """Model Local Rule D-3: no interference by the stance; relief for a ball on the green may leave the feet on it."""
    ruled = rule_at_place(course(OTHER), asked(course(OTHER), (-39.3, 30.0), hand="right", local=("D-3",)))
    _, (without,) = drawn(course(OTHER), (-40.5, 30.0), hand="right")
    _, (with_rule,) = drawn(course(OTHER), (-40.5, 30.0), hand="right", local=("D-3",))

    assert ruled.asked.what != "wrong_green"
    shift = [min(one.metres for one in option.areas[0].measures) for option in (with_rule, without)]
    assert shift[0] < shift[1]


def test_feet_on_a_path_are_found_and_said_as_a_premise() -> None:
    """A right-handed player beside the path of the course stands on it: Rule 16.1 with stance or swing."""
    ruled, (option,) = drawn(course(), (-26.3, 90.0), hand="right")

    assert ruled.asked.what == "abnormal_course_condition"
    assert ruled.assumed["interference"] == "stance_or_swing"
    assert ruled.assumed["in_the_way"] == "immovable_obstruction"
    assert isinstance(option.answer, Drawn)


def test_a_flooded_bunker_is_ruled_with_maximum_available_relief() -> None:
    """The map finds no complete relief in the bunker, so the options are those of Rule 16.1c for that."""
    flood = Feature(Kind.TEMPORARY_WATER, "flood", BUNKER.buffer(0.5))
    ruled, options = drawn(course(flood), (-8.0, 155.0), hand="right")

    assert ruled.assumed["nearest_point_exists"] == "no"
    assert [one.option.kind.value for one in options] == ["maximum_available", "back_on_the_line"]
    assert all(isinstance(one.answer, Drawn) for one in options)


def test_what_the_official_said_outweighs_what_the_map_finds() -> None:
    """Interference answered by the official stands."""
    ruled = rule_at_place(
        course(),
        asked(course(), (-26.3, 90.0), hand="right", interference="none"),
    )

    assert ruled.known["interference"] == "none"


@pytest.mark.parametrize("year", [2019, 2023])
def test_a_stand_far_ahead_is_found_in_the_line_of_sight_and_drawn(year: int) -> None:
    """Model Local Rule F-23: a stand between ball and hole, 60 m away, is what relief is taken from."""
    where = course(STAND)
    facts = {
        "stand_interference": "line_of_sight",
        "stand_within_reach": "yes",
        "stroke_unreasonable_anyway": "no",
        "only_by_unreasonable_choice": "no",
        "dropping_zone_provided": "no",
    }
    what = "temporary_immovable_obstruction"
    ruled, options = drawn(where, (0.0, 60.0), year=year, hand="right", what=what, local=("F-23",), **facts)

    assert in_line_of_sight(where, 1, (0.0, 60.0), ruled.asked.conditions) == (STAND,)
    assert in_line_of_sight(where, 1, (30.0, 60.0), ruled.asked.conditions) == ()
    sight = [one for one in options if one.option.clear_of_sight]
    assert sight
    for option in sight:
        assert isinstance(option.answer, Drawn), option
        assert all(Point(area.reference).distance(STAND.geometry) > 1 for area in option.areas)


def test_only_what_is_within_reach_of_a_stroke_is_looked_at() -> None:
    """A path 10 m away interferes with nobody."""
    found = interfering(
        course(), 1, (-15.0, 90.0), None, conditions=Conditions(date(2023, 6, 1), handed="right")
    )

    assert found == ()


PAVED = Feature(Kind.PATH, "paved", box(10, 40, 13, 60), tags={"surface": "asphalt"})
REPAIR = Feature(Kind.GROUND_UNDER_REPAIR, "repair", box(8, 40, 10, 60))


def test_a_second_condition_at_the_reference_point_is_said_and_relief_is_from_one_after_the_other() -> None:
    """Decision 1-4/8 (until 2018): not from both in one procedure; the second is named, with what to do."""
    _, options = drawn(course(PAVED, REPAIR), (10.6, 50.0), hand="right")

    (option,) = options
    (area,) = option.areas
    assert PAVED.geometry.distance(Point(area.reference)) > 0
    assert any("ground under repair" in note for note in option.notes)


SLAB = Feature(Kind.OBSTRUCTION, "slab", box(13, 49, 15, 51), tags={"height": "0.05"})


def test_conditions_that_lead_back_to_each_other_are_left_together() -> None:
    """Decision 1-4/8 (until 2018): where relief from each ends on the other, the one point is clear of both, and it is said."""
    where = course(PAVED, SLAB)
    _, (option,) = drawn(where, (14.0, 50.0), hand="right")

    (area,) = option.areas
    assert interfering(where, 1, area.reference, None, conditions=RIGHT_HANDED) == ()
    assert sum("at the same time" in note for note in option.notes) == 1
    assert not any("in its turn" in note for note in option.notes)


def test_conditions_that_do_not_lead_back_are_left_one_after_the_other() -> None:
    """At the nearest point off the path the feet stand on a patch of repair: relief from it leads away, and is its own procedure."""
    patch = Feature(Kind.GROUND_UNDER_REPAIR, "patch", box(8, 50.05, 9.95, 52))
    where = course(PAVED, patch)
    _, (option,) = drawn(where, (10.6, 50.0), hand="right", year=2019)

    (area,) = option.areas
    assert area.reference[0] < 10
    assert [one.feature for one in interfering(where, 1, area.reference, None, conditions=RIGHT_HANDED)] == [
        patch
    ]
    assert sum("in its turn" in note for note in option.notes) == 1
    assert not any("at the same time" in note for note in option.notes)


RIGHT_HANDED = Conditions(date(2023, 6, 1), local=(), handed="right")


def test_where_f3_is_in_force_repair_and_the_path_it_adjoins_are_left_together() -> None:
    """Model Local Rule F-3: one condition, so the reference point is clear of both and nothing else is said to interfere."""
    _, options = drawn(course(PAVED, REPAIR), (10.6, 50.0), hand="right", local=("F-3",))

    (option,) = options
    both = PAVED.geometry.union(REPAIR.geometry)
    assert all(both.distance(Point(area.reference)) > 0 for area in option.areas)
    assert len(option.notes) == 1


ZONE = Feature(Kind.NO_PLAY_ZONE, "zone", box(-30, 40, -24, 46))


@pytest.mark.parametrize("year", [2019, 2023])
def test_a_ball_in_a_no_play_zone_must_be_dropped_clear_of_it(year: int) -> None:
    """Rule 16.1f(1) is chosen, playing on is not offered, and the area drawn is clear of the zone."""
    ruled, options = drawn(course(ZONE), (-27.0, 43.0), year=year, hand="right")

    assert ruled.asked.what == "no_play_zone"
    assert ruled.result.action is Action.TAKE_RELIEF
    (area,) = (area for option in options for area in option.areas)
    assert area.polygon.intersection(ZONE.geometry).area < 1e-9


@pytest.mark.parametrize("year", [2019, 2023])
def test_a_ball_in_a_no_play_zone_is_not_ruled_on_as_in_a_condition(year: int) -> None:
    """Rule 16.1f(1): asked about repair that the zone adjoins, relief could be left out or end in the zone; it is handed over."""
    repair = Feature(Kind.GROUND_UNDER_REPAIR, "repair", box(-24, 40, -18, 46))
    where = course(ZONE, repair)
    asked_of_repair = asked(where, (-24.3, 43.0), year=year, hand="right", what="abnormal_course_condition")
    on_the_ground = {"no_play_zone_interference": "none"}
    ruled = rule_at_place(where, asked_of_repair)

    assert isinstance(ruled.result, HandOver)
    assert (ruled.result.incident, ruled.result.facts) == (
        "no_play_zone",
        (("no_play_zone_interference", "ball_inside"),),
    )
    assert [(why.fact, why.from_map) for why in ruled.sheet.why] == [("no_play_zone_interference", True)]
    assert not isinstance(
        rule_at_place(where, replace(asked_of_repair, facts=on_the_ground)).result, HandOver
    )


def test_a_no_play_zone_in_a_penalty_area_counts_there_too() -> None:
    """Rule 17.1e(1): a ball in the zone must be played from outside the penalty area, with penalty relief."""
    water = Feature(Kind.RED_PENALTY_AREA, "water", box(-40, 30, -20, 60))
    ruled, _ = drawn(course(water, ZONE), (-27.0, 43.0), hand="right")

    assert ruled.asked.what == "no_play_zone"
    assert ruled.result.action is Action.TAKE_RELIEF
    assert {option.citation for option in ruled.result.relief} == {"17.1d(1)", "17.1d(2)", "17.1d(3)"}


WALL = Feature(Kind.BARRIER, "wall", box(20.2, 40, 20.5, 60), tags={"barrier": "wall"})


def test_a_wall_that_nobody_has_told_about_is_asked_about() -> None:
    """A wall in the swing: what interferes is the question; as an obstruction it gives relief from it, as no other."""
    where = course(WALL)
    open_ = rule_at_place(where, asked(where, (20.0, 50.0), hand="right"))
    assert open_.asked.what == "abnormal_course_condition"
    assert not isinstance(open_.result, Ruling)
    assert open_.result.fact == "in_the_way"

    _, (option,) = drawn(where, (20.0, 50.0), hand="right", in_the_way="immovable_obstruction")
    assert option.option.citation == "16.1b"
    assert isinstance(option.answer, Drawn)
    told = {"in_the_way": "boundary_or_integral_object", "last_stroke_from_penalty_area": "no"}
    _, options = drawn(where, (20.0, 50.0), hand="right", **told)
    assert options
    assert not any(option.option.citation.startswith("16") for option in options)
