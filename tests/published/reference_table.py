"""Published values on rulings, pace, stopping play and the course: the check that each has, or why it has none."""

from collections.abc import Callable
from datetime import date
from typing import Any

import marram
from marram.rules.penalty import PenaltyKind
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling

ON = date(2025, 6, 21)

NO_PACE = (
    "how long a hole or round should take is not worked out: the minutes of play are given by the Committee"
)
NO_TIMING = "no clock is kept: a policy's breach is told, and ruled under the Local Rule"
NO_MEASURING = "no ball, hole or flagstick is measured; whether it conforms is told"
NO_DISTANCE = (
    "how far lightning is, and when it is over, is never worked out: services and local codes say it first"
)

NOT_HERE = {
    "pace-time-par-01": NO_PACE,
    "pace-time-par-03": NO_PACE,
    "pace-time-par-04": NO_PACE,
    "pace-time-par-07": NO_PACE,
    "pace-time-par-15": NO_PACE,
    "pace-stroke-time-02": "a condition of 2016; the times of a policy are asked, not known",
    "pace-policy-02": NO_TIMING,
    "pace-policy-05": NO_TIMING,
    "pace-policy-07": "which of two definitions holds is the Committee's; it is asked as `behind_group_in_front`",
    "pace-policy-08": NO_TIMING,
    "pace-policy-09": NO_TIMING,
    "pace-policy-04": "the value names another scale for other forms, from memory; the register has K-3 as a scale with "
    "a warning first, and no published text was found that settles it",
    "equipment-ball-01": NO_MEASURING,
    "equipment-ball-02": NO_MEASURING,
    "hole-flagstick-01": NO_MEASURING,
    "hole-flagstick-03": NO_MEASURING,
    "lightning-01": NO_DISTANCE,
    "lightning-02": NO_DISTANCE,
    "lightning-03": NO_DISTANCE,
    "lightning-04": NO_DISTANCE,
    "green-02": "there is no figure: a green is what the map outlines",
    "relief-05": "the depth is measured on the ground: a teeing area is read from the map, not made",
    "boundary-02": "where an edge runs is drawn on the map: a line, or the course side of stakes",
}

Check = Callable[[dict[str, Any], Any], None]
CHECKS: dict[str, Check] = {}


def value(*idents: str) -> Callable[[Check], Check]:
    def keep(check: Check) -> Check:
        for ident in idents:
            assert ident not in CHECKS, ident
            CHECKS[ident] = check
        return check

    return keep


def ruled(incident: str, form: str = "stroke_play", codes: tuple[str, ...] = (), **facts: object) -> Ruling:
    """Return a ruling of which nothing is left to ask."""
    result = marram.rule(
        incident, facts, played_on=ON, form_of_play=form, sides="individual", local_rules=list(codes)
    )
    assert isinstance(result, Ruling), result
    return result


def asked(incident: str, **facts: object) -> NeedFacts:
    result = marram.rule(
        incident, facts, played_on=ON, form_of_play="stroke_play", sides="individual", local_rules=[]
    )
    assert isinstance(result, NeedFacts), result
    return result


def kinds(ruling: Ruling) -> list[PenaltyKind]:
    return [one.kind for one in ruling.penalties]


def strokes(ruling: Ruling) -> int:
    return sum(one.strokes for one in ruling.penalties)


def option(ruling: Ruling, kind: ReliefKind) -> ReliefOption:
    (found,) = (one for one in ruling.relief if one.kind is kind)
    return found
