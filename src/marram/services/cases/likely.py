"""Which incidents are likely where a ball lies: by the area of the course, what is near, the form of play, sides and Local Rules.

Done alike on a phone without a network (``desk/offline/static/likely_here.js``), by the same tables, which its book brings.
Common practice, chosen by us; no Rule says so, and nothing is decided by it: a list begins with these, and what a
sentence points at is put in order by them where it leaves several open.
"""

from collections.abc import Sequence

from shapely import Point

from marram.course.feature_index import index_of
from marram.course.model import Course, Kind
from marram.relief.geometry.outline import XY
from marram.rules.facts.ball import Area
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.finding.citations import citations, closeness
from marram.rules.finding.ranking import out_of_force, tells_of_former
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident
from marram.services.cases.conditions import Conditions
from marram.services.cases.told import Offered, Sentence

MOST = 6
"""How many are offered under the map: as many as a phone shows without scrolling."""
NEAR = 5.0
"""Metres within which something is near a ball: about two club-lengths (Rule 16.1a looks no further than stance and swing)."""
FACTOR = 4
"""How many times likelier an incident is where the place speaks for it: a power of two, so that products are exact."""

BY_AREA: dict[Area | None, tuple[str, ...]] = {
    None: ("ball_near_boundary", "play_again_from_previous_spot", "provisional_ball", "ball_not_found"),
    Area.PENALTY_AREA: ("ball_in_penalty_area", "done_in_penalty_area", "played_from_penalty_area"),
    Area.BUNKER: ("sand_touched", "unplayable_ball", "thing_removed_from_bunker", "ball_moved_by_player"),
    Area.PUTTING_GREEN: (
        "ball_moved_by_natural_forces",
        "green_repaired",
        "ball_moved_by_player",
        "ball_hit_flagstick",
        "ball_lifted",
    ),
    Area.TEEING_AREA: ("began_outside_teeing_area", "fell_off_tee", "provisional_ball"),
    Area.GENERAL_AREA: (
        "unplayable_ball",
        "embedded_ball",
        "ball_moved_by_player",
        "ball_lifted_to_identify",
    ),
}
"""By the area a ball lies in."""

BY_KIND: dict[Kind, tuple[str, ...]] = {
    Kind.NO_PLAY_ZONE: ("no_play_zone",),
    Kind.PATH: ("abnormal_course_condition",),
    Kind.OBSTRUCTION: ("abnormal_course_condition",),
    Kind.BARRIER: ("abnormal_course_condition",),
    Kind.GROUND_UNDER_REPAIR: ("abnormal_course_condition",),
    Kind.TEMPORARY_WATER: ("abnormal_course_condition",),
    Kind.RED_PENALTY_AREA: ("ball_in_penalty_area",),
    Kind.YELLOW_PENALTY_AREA: ("ball_in_penalty_area",),
    Kind.OUT_OF_BOUNDS: ("ball_near_boundary", "provisional_ball"),
    Kind.BUNKER: ("ball_at_edge_of_bunker",),
    Kind.TREES: ("ball_dislodged_from_tree",),
}
"""By what is near, the weightiest first; the boundary counts with what is out of bounds."""

BY_FORM = {FormOfPlay.MATCH_PLAY: ("concession",), FormOfPlay.STROKE_PLAY: ("two_balls",)}
BY_SIDES = {Sides.FOURSOMES: ("foursomes_wrong_order",), Sides.FOUR_BALL: ("partner_acted_on_ball",)}
BY_LOCAL_RULE: dict[Area | None, dict[str, str]] = {
    None: {"E-5": "alternative_to_stroke_and_distance"},
    Area.GENERAL_AREA: {"E-3": "lie_preferred", "E-2": "lifted_to_be_cleaned", "E-4": "aeration_hole"},
}
"""What a Local Rule in force adds for a ball out of bounds or in an area, after what is likeliest."""
AREA_BEFORE_NEAR = (Area.PENALTY_AREA, Area.BUNKER, Area.PUTTING_GREEN, None)
"""Where the area itself says more than what is near: elsewhere what is near comes first."""


def likely_here(
    course: Course, ball: XY, area: Area | None, conditions: Conditions, most: int = MOST
) -> tuple[Incident, ...]:
    """Return the incidents that are likely where a ball lies, the likeliest first.

    Args:
        course: the map.
        ball: its spot, in local metres.
        area: the area of the course it lies in; ``None``: out of bounds.
        conditions: the conditions of the case.
        most: how many at most.
    """
    near = near_kinds(course, ball)
    by_place = [name for kind in BY_KIND if kind in near for name in BY_KIND[kind]]
    names = [*BY_AREA[area], *by_place] if area in AREA_BEFORE_NEAR else [*by_place, *BY_AREA[area]]
    if area is Area.GENERAL_AREA and _on_wrong_green(course, ball):
        names.insert(0, "wrong_green")
    names[1:1] = by_local_rule(area, conditions)
    names += by_competition(conditions)
    return tuple(incident(name) for name in tuple(dict.fromkeys(names))[:most])


def by_local_rule(area: Area | None, conditions: Conditions) -> list[str]:
    """Return what the Local Rules in force add for a ball in an area."""
    codes = conditions.local or ()
    return [name for code, name in BY_LOCAL_RULE.get(area, {}).items() if code in codes]


def by_competition(conditions: Conditions) -> list[str]:
    """Return what is likely anywhere by the sides and the form of play."""
    names: list[str] = []
    if conditions.sides in BY_SIDES:
        names += BY_SIDES[conditions.sides]
    if conditions.form in BY_FORM:
        names += BY_FORM[conditions.form]
    return names


def _on_wrong_green(course: Course, ball: XY) -> bool:
    """Tell whether a ball in the general area lies on a green: it is then not that of the hole being played (Rule 13.1f)."""
    return bool(index_of(course, Kind.PUTTING_GREEN).near(Point(ball), 0.0))


def near_kinds(course: Course, ball: XY) -> frozenset[Kind]:
    """Return the kinds of ground within :data:`NEAR` of a ball; near the boundary counts as near what is out of bounds."""
    point = Point(ball)
    found = {one.kind for one in index_of(course, *BY_KIND).near(point, NEAR)}
    if any(one.geometry.boundary.dwithin(point, NEAR) for one in course.of(Kind.BOUNDARY)):
        found.add(Kind.OUT_OF_BOUNDS)
    return frozenset(found)


def by_place(
    offered: Sequence[Offered], sentence: Sentence, likely: Sequence[Incident]
) -> tuple[Offered, ...]:
    """Return what a sentence points to in the order that the place gives it.

    What is cited by its Rule stays first, what is not in force stands last, and after it what only tells of the former
    Rules, unless the sentence speaks of them. Done alike in
    ``desk/rulings/static/by_place.js``: products of the same numbers, and places kept where they are equal.
    """
    cited = citations(sentence.words)
    of_former = tells_of_former(sentence.words)

    def taught(one: Offered) -> bool:
        return one.for_teaching and not of_former

    if not offered or any(closeness(offered[0].incident, one) > 0 for one in cited):
        return tuple(sorted(offered, key=taught))
    speaks = {one.name for one in likely}
    context = sentence.context()

    def order(one: Offered) -> tuple[bool, bool, float]:
        factor = FACTOR if one.incident.name in speaks else 1
        return taught(one), out_of_force(one.incident, context), -one.likelihood * factor

    return tuple(sorted(offered, key=order))


__all__ = [
    "AREA_BEFORE_NEAR",
    "BY_AREA",
    "BY_KIND",
    "BY_LOCAL_RULE",
    "FACTOR",
    "MOST",
    "NEAR",
    "by_competition",
    "by_local_rule",
    "by_place",
    "likely_here",
    "near_kinds",
]
