"""Rule 17: the relief options for a ball in, or played from, a penalty area."""

from dataclasses import replace

from marram.rules.book.local_rules.area_b import opposite_side_relief
from marram.rules.book.local_rules.area_e_options import dropping_zone_relief, only_dropping_zone
from marram.rules.book.relief_options import back_on_the_line, lateral, stroke_and_distance
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import provision
from marram.rules.facts.penalty_area import (
    Colour,
    first_penalty_area_colour,
    last_stroke_from_penalty_area,
    penalty_area_colour,
)
from marram.rules.relief_option import Limit, Reference, ReliefOption

_LINE = Reference.LINE_THROUGH_CROSSING_POINT
_OUTSIDE = (Limit.OUTSIDE_PENALTY_AREA,)


@provision("17.1c")
def penalty_area_relief(case: Case) -> tuple[ReliefOption, ...]:
    """Penalty relief for a ball in a penalty area: under Rule 17.1d or, if it was played from one, 17.2a."""
    if case[last_stroke_from_penalty_area]:
        return still_in_penalty_area_relief(case)
    return usual_relief(case)


@provision("17.1d")
def usual_relief(case: Case) -> tuple[ReliefOption, ...]:
    """For one stroke: stroke and distance, back on the line or, from a red penalty area, lateral relief."""
    again = stroke_and_distance("17.1d(1)")
    if only_dropping_zone(case):
        return again, *dropping_zone_relief(case, penalty=1)
    options = (again, *outside_penalty_area(case), *dropping_zone_relief(case, penalty=1))
    if case[penalty_area_colour] is Colour.RED:
        return (*options, *opposite_side_relief(case))
    return options


def outside_penalty_area(case: Case, colour: Fact[Colour] = penalty_area_colour) -> tuple[ReliefOption, ...]:
    """For one stroke: the options measured from where the ball last crossed the edge."""
    line = back_on_the_line(case, "17.1d(2)", _LINE, extra_limits=_OUTSIDE)
    if case[colour] is Colour.YELLOW:
        return (line,)
    return line, lateral("17.1d(3)", Reference.CROSSING_POINT, extra_limits=_OUTSIDE)


@provision("17.2a")
def still_in_penalty_area_relief(case: Case) -> tuple[ReliefOption, ...]:
    """The usual options for one stroke, or play from where the last stroke outside a penalty area was made."""
    return (*usual_relief(case), last_stroke_outside("17.2a(2)"))


@provision("17.2b")
def without_dropping_inside(case: Case) -> tuple[ReliefOption, ...]:
    """For two strokes in all: relief outside the penalty area played from, without dropping in it first.

    It is measured from where the ball last crossed the edge before it was played from there.
    """
    line = back_on_the_line(case, "17.2b", _LINE, 2, _OUTSIDE)
    outside = last_stroke_outside("17.2b", 2)
    if case[first_penalty_area_colour] is Colour.YELLOW:
        return line, outside
    return line, lateral("17.2b", Reference.CROSSING_POINT, 2, _OUTSIDE), outside


def last_stroke_outside(citation: str, penalty: int = 1) -> ReliefOption:
    """Play from where the last stroke from outside a penalty area was made."""
    again = stroke_and_distance(citation, penalty)
    return replace(again, reference=Reference.LAST_STROKE_OUTSIDE_PENALTY_AREA)
