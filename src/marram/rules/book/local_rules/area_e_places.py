"""Model Local Rules, area E: zones out of bounds, young trees and power lines."""

from dataclasses import replace

from marram.rules.book.local_rules.without_local_rule import no_local_relief
from marram.rules.book.relief_options import stroke_and_distance
from marram.rules.book.rule_02_course import no_free_relief
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_16_conditions import in_teeing_area
from marram.rules.book.rule_16_no_play_zone import beside_zone, beside_zone_in_penalty_area, no_play_zone
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.course import Thing
from marram.rules.facts.local_relief import line_hit_for_certain, played_on_after_line
from marram.rules.facts.local_zones import (
    PartOfYoungTree,
    part_of_young_tree,
    zone_beyond_boundary_interferes,
    zone_beyond_boundary_named,
)
from marram.rules.facts.relief import played_despite_zone
from marram.rules.penalty import general
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.ruling import (
    Action,
    Deadline,
    HandOver,
    NotCovered,
    Ruling,
    WhichBall,
    general_penalty,
    no_penalty,
)


def replay(code: str) -> ReliefOption:
    """Play the stroke again, without penalty, from where it was made (Rule 14.6)."""
    return replace(stroke_and_distance(code, penalty=0), kind=ReliefKind.REPLAY)


@provision("E-9")
def zone_beyond_boundary(case: Case) -> Ruling:
    """Where adopted, an area out of bounds is a no play zone, and relief must be taken from it."""
    if not (case.local_rule("E-9") and case[zone_beyond_boundary_named]):
        return no_local_relief(case)
    if not case[zone_beyond_boundary_interferes]:
        return no_penalty("E-9").play_as_it_lies()
    if case[played_despite_zone]:
        return played_from_wrong_place(case).under("E-9")
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return in_teeing_area(case)
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return beside_zone_in_penalty_area(case).under("E-9")
    return beside_zone(case).under("E-9")


@provision("E-10")
def young_tree(case: Case) -> Ruling | NotCovered | HandOver:
    """Where adopted, a young tree that is marked is a no play zone; otherwise a tree, and its stake an obstruction."""
    if not case.local_rule("E-10"):
        if case.is_one_of(part_of_young_tree, PartOfYoungTree.STAKE):
            return HandOver("something_in_the_way", "15.2")
        return no_free_relief(case, Thing.GROWING)
    return no_play_zone(case)


@provision("E-11")
def hit_power_line(case: Case) -> Ruling:
    """Where adopted, a stroke whose ball hit a power line does not count and is replayed without penalty."""
    if not (case.local_rule("E-11") and case[line_hit_for_certain]):
        return no_penalty("11.1a").stroke_counts().play_as_it_lies()
    return stroke_replayed(case, "E-11")


def stroke_replayed(case: Case, code: str) -> Ruling:
    """A stroke that the Local Rule ``code`` cancels must be played again, without penalty."""
    if case[played_on_after_line]:
        return not_replayed(case, code)
    otherwise = general(code if case.played_since(EDITION_2023) else "14.7a")
    ruling = no_penalty(code).stroke_does_not_count().with_options(replay(code))
    return (
        ruling.next(Action.REPLAY, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("power_line_replay")
        .correct("replay_power_line_stroke", Deadline.BEFORE_STROKE, otherwise)
    )


@provision("E-11")
def not_replayed(case: Case, code: str) -> Ruling:
    """Going on without replaying: the general penalty; until 2022 for a wrong place, since 2023 for this alone."""
    if not case.played_since(EDITION_2023):
        return played_from_wrong_place(case).under(code)
    ruling = general_penalty(code).stroke_counts().note("power_line_no_wrong_place")
    return ruling.next(Action.HOLE_OVER if case.match_play else Action.PLAY_AS_IT_LIES)
