"""In which order facts are told: as the Rules ask for them, but what a sentence speaks of stands before it."""

from collections.abc import Mapping
from typing import Any

_CHOICE_OF_STROKE = ("stroke_unreasonable_anyway", "only_by_unreasonable_choice")
TOLD_BEFORE: Mapping[str, tuple[str, ...]] = {
    "interference": (*_CHOICE_OF_STROKE, "area_of_ball", "nearest_point_exists"),
    "local_interference": _CHOICE_OF_STROKE,
    "moved_while": ("actions_reasonable",),
    "preparing_how": ("actions_reasonable", "original_object_back"),
    "actions_reasonable": ("original_object_back",),
    "least_intrusive_course": ("original_object_back",),
    "grounded_lightly": ("original_object_back",),
    "stroke_was_made": ("original_object_back",),
    "ball_out_of_play": ("wrong_ball_corrected",),
    "in_the_way": ("interference",),
    "area_of_ball": ("new_place",),
    "area_of_placing_spot": ("spot_that_stays_exists",),
    "way_of_dropping": ("ball_in_relief_area",),
    "when_strokes_given": ("strokes_put_right",),
    "bad_time_number": ("told_of_earlier_bad_time",),
    "provisional_state": ("nearer_stroke_at_provisional",),
}
"""By fact: those that come after it. That the ball touched "it" follows on what "it" is, and a second stroke with a
provisional ball on the first."""


def in_order(facts: Mapping[str, Any]) -> dict[str, Any]:
    """Return facts in the order in which they are told.

    Args:
        facts: the facts with their answers, in the order in which the Rules ask for them.
    """
    names = list(facts)
    for name, later in TOLD_BEFORE.items():
        if name not in facts:
            continue
        first = min((names.index(each) for each in later if each in facts), default=len(names))
        if first < names.index(name):
            names.remove(name)
            names.insert(first, name)
    return {name: facts[name] for name in names}
