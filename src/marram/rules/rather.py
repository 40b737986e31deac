"""What is known of a case beyond what its provisions ask for, and changes the ruling all the same.

A provision asks for what it reads; a fact asked for by another incident may be known unasked (from the map, or told).
Here are the ones that must not be passed over. Nothing of this is ever asked.
"""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from marram.rules.engine.fact import FACTS, Fact
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption
from marram.rules.result import Result
from marram.rules.ruling import HandOver, Reason, Ruling

_ZONE, _POINT = "no_play_zone_interference", "nearest_point_exists"
UNASKED = {"abnormal_course_condition": (_ZONE, "ball_inside")}
"""By incident, the fact and its answer by which it is rather another one, though nothing asks for it."""


def rather(incident: str, known: Mapping[Fact[Any], Any]) -> HandOver | None:
    """Return that a condition is rather a no play zone, where the ball is known to lie in one (Rule 16.1f(1)).

    From a condition relief may be taken, from a no play zone it must: asked about the one, the other would be missed.
    """
    if incident not in UNASKED:
        return None
    name, answer = UNASKED[incident]
    zone = FACTS.get(name)
    inside = None if zone is None else known.get(zone)
    if zone is None or inside is None or zone.token(inside) != answer:
        return None
    return HandOver(
        "no_play_zone", "16.1f(1)", ((_ZONE, zone.token(inside)),), (Reason(_ZONE, "16.1f(1)", (inside,)),)
    )


def with_point_told(result: Result, known: Mapping[Fact[Any], Any]) -> Result:
    """Return a ruling without the free relief in the general area that no point of complete relief gives (Rule 16.1b).

    Where no other relief is left, the ball is played as it lies or taken as unplayable: that is ruled on there.
    """
    point = FACTS.get(_POINT)
    if point is None or known.get(point) is not False or not isinstance(result, Ruling):
        return result
    left = tuple(option for option in result.relief if not _from_point_in_general_area(option))
    if len(left) == len(result.relief):
        return result
    why = Reason(_POINT, "16.1b", (False,))
    if left:
        return replace(result, relief=left, reasons=(*result.reasons, why))
    facts = (("area_of_ball", "general_area"), ("spot_of_ball_known", "yes"))
    return HandOver("unplayable_ball", "16.1b", facts, (*result.reasons, why))


def _from_point_in_general_area(option: ReliefOption) -> bool:
    free = option.kind is ReliefKind.FREE and option.reference is Reference.NEAREST_POINT
    return free and Limit.GENERAL_AREA in option.limits
