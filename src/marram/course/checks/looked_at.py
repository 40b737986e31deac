"""What a check of the marking looked at, how much of it there is on the map, and how much was found."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from marram.course.checks.stakes import stakes_of
from marram.course.fault import Fault
from marram.course.model import Course, Kind


class Subject(Enum):
    """What is looked at, in the order in which a sheet tells it."""

    HOLES = "holes"
    TEEING_AREAS = "teeing_areas"
    PUTTING_GREENS = "putting_greens"
    BOUNDARY = "boundary"
    PENALTY_AREAS = "penalty_areas"
    WATER = "water"
    WETLANDS = "wetlands"
    BARRIERS = "barriers"
    """Walls, fences and the like: that somebody has said what they are for the Rules."""
    STAKES = "stakes"
    DROPPING_ZONES = "dropping_zones"
    GROUND_UNDER_REPAIR = "ground_under_repair"
    PATHS = "paths"
    EVACUATION_POINTS = "evacuation_points"
    LOCAL_RULES = "local_rules"
    """Markings that mean something only under a Local Rule: that it is in force."""
    THE_MAP = "the_map"
    """All that is on the map: that it is drawn soundly, and that nothing overlaps that must not."""


KINDS = {
    Subject.TEEING_AREAS: (Kind.TEEING_AREA,),
    Subject.PUTTING_GREENS: (Kind.PUTTING_GREEN,),
    Subject.BOUNDARY: (Kind.BOUNDARY, Kind.OUT_OF_BOUNDS),
    Subject.PENALTY_AREAS: (Kind.RED_PENALTY_AREA, Kind.YELLOW_PENALTY_AREA),
    Subject.WATER: (Kind.WATER,),
    Subject.WETLANDS: (Kind.WETLAND,),
    Subject.BARRIERS: (Kind.BARRIER,),
    Subject.DROPPING_ZONES: (Kind.DROPPING_ZONE,),
    Subject.GROUND_UNDER_REPAIR: (Kind.GROUND_UNDER_REPAIR, Kind.TEMPORARY_WATER),
    Subject.PATHS: (Kind.PATH,),
    Subject.EVACUATION_POINTS: (Kind.EVACUATION_POINT,),
    Subject.LOCAL_RULES: (Kind.DROPPING_ZONE, Kind.NO_PLAY_ZONE),
}
"""The kinds of features of a subject."""

CHECKS = {
    Subject.HOLES: (
        *("bad_stroke_index", "hole_backwards", "hole_not_a_line", "hole_unknown", "hole_without_number"),
        *("holes_missing", "line_leaves_course", "no_holes", "no_par", "no_stroke_index", "not_a_number"),
        *("repeated_hole", "repeated_stroke_index", "two_values", "unusual_par"),
    ),
    Subject.TEEING_AREAS: ("hole_without_tee", "tee_of_no_hole", "tee_of_two_holes"),
    Subject.PUTTING_GREENS: (
        *("double_green", "green_of_no_hole", "hole_off_green", "hole_without_green"),
        *("pin_of_double_green", "two_greens", "two_pins"),
    ),
    Subject.BOUNDARY: (
        "all_out_of_bounds",
        "area_outside",
        "boundary_gap",
        "no_boundary",
        "outline_as_boundary",
    ),
    Subject.PENALTY_AREAS: ("penalty_area_colour", "penalty_area_line", "two_colours"),
    Subject.WATER: ("coast_backwards", "water_without_status"),
    Subject.WETLANDS: ("wetland_without_status",),
    Subject.BARRIERS: ("barrier_without_status",),
    Subject.STAKES: (
        *("stake_alone", "stake_colour", "stake_gap", "stake_of_no_edge", "stake_off_edge"),
        *("corner_without_stake", "string_blocked", "string_off_edge", "two_next_stakes"),
    ),
    Subject.DROPPING_ZONES: (
        *("dropping_zone_for_nothing", "dropping_zone_nearer", "dropping_zone_of_no_hole"),
        "dropping_zone_overlap",
    ),
    Subject.GROUND_UNDER_REPAIR: ("repair_without_relief",),
    Subject.PATHS: ("path_without_surface", "path_without_width"),
    Subject.EVACUATION_POINTS: ("evacuation_point_in_the_way", "evacuation_point_unsaid"),
    Subject.LOCAL_RULES: ("needs_local_rule",),
}
"""The checks of a subject; whatever is not named here is of the map as a whole."""

_SUBJECT_OF = {check: subject for subject, checks in CHECKS.items() for check in checks}


@dataclass(frozen=True, slots=True)
class LookedAt:
    """What was looked at of one subject.

    Attributes:
        subject: what.
        count: how many of it the map holds.
        found: how many faults were found with it.
    """

    subject: Subject
    count: int
    found: int


def looked_at(course: Course, faults: Sequence[Fault]) -> tuple[LookedAt, ...]:
    """Return every subject with how many of it there are and how many faults were found; each fault counts once.

    Args:
        course: the map.
        faults: what was found, for instance by :func:`marram.course.check`.
    """
    found = Counter(_SUBJECT_OF.get(fault.check, Subject.THE_MAP) for fault in faults)
    return tuple(LookedAt(one, _count(course, one), found[one]) for one in Subject)


def _count(course: Course, subject: Subject) -> int:
    if subject is Subject.HOLES:
        return len(course.holes)
    if subject is Subject.STAKES:
        return len(stakes_of(course))
    if subject is Subject.THE_MAP:
        return len(course.features)
    return len(course.of(*KINDS[subject]))
