"""Model Local Rules, area E: what they add to the relief of a Rule (dropping zones, two strokes instead of going back, back on the line)."""

from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_relief import (
    dropping_zone_provided,
    relief_was_back_on_the_line,
    rest_near_where_it_first_touched,
)
from marram.rules.facts.local_zones import dropping_zone_is_only_option
from marram.rules.facts.relief import rest_in_area_first_touched, rest_nearer_than_start_of_line
from marram.rules.relief_option import Limit, Reference, ReliefKind, ReliefOption


@provision("E-1")
def dropping_zone_relief(case: Case, penalty: int) -> tuple[ReliefOption, ...]:
    """One more option, for what the relief costs otherwise: drop in the dropping zone, if there is one."""
    if not ((case.local_rule("E-1") or case.local_rule("E-1.3")) and case[dropping_zone_provided]):
        return ()
    return (
        ReliefOption(
            ReliefKind.DROPPING_ZONE,
            "E-1",
            Reference.DROPPING_ZONE,
            None,
            (Limit.WITHIN_DROPPING_ZONE,),
            penalty,
        ),
    )


@provision("E-1.3")
def only_dropping_zone(case: Case) -> bool:
    """Whether the dropping zone is the only relief, beside stroke and distance, which is always there."""
    if not (case.local_rule("E-1.3") and case[dropping_zone_provided]):
        return False
    return not case.local_rule("E-1") or case[dropping_zone_is_only_option]


@provision("E-1")
def with_dropping_zone(
    case: Case, options: tuple[ReliefOption, ...], penalty: int
) -> tuple[ReliefOption, ...]:
    """Add the dropping zone, if there is one; where it is the only relief, leave stroke and distance beside it."""
    if only_dropping_zone(case):
        options = tuple(one for one in options if one.kind is ReliefKind.STROKE_AND_DISTANCE)
    return (*options, *dropping_zone_relief(case, penalty))


@provision("E-12")
def played_outside_relief_area_by_local_rule(case: Case) -> bool:
    """Whether a ball of which only the relief area was told is one dropped back on the line that may be played there."""
    if case.played_since(EDITION_2023) or not case.local_rule("E-12"):
        return False
    return case[relief_was_back_on_the_line] and may_be_played_outside_relief_area(case)


@provision("E-12")
def may_be_played_outside_relief_area(case: Case) -> bool:
    """Until 2022, where adopted: a ball dropped back on the line that stayed close to where it touched.

    It may lie nearer the hole than the point chosen on the line, but not than the point the line starts
    from (the spot of the ball, or where it last crossed the edge of the penalty area).
    """
    if case.played_since(EDITION_2023) or not case.local_rule("E-12"):
        return False
    if not (case[rest_near_where_it_first_touched] and case[rest_in_area_first_touched]):
        return False
    return not case[rest_nearer_than_start_of_line]


def alternative_option() -> ReliefOption:
    """For two strokes: drop between the lines through where the ball was lost and the fairway point."""
    return ReliefOption(
        ReliefKind.EXTENDED,
        "E-5",
        Reference.TWO_POINTS,
        2,
        (Limit.NOT_NEARER, Limit.GENERAL_AREA),
        2,
    )


@provision("E-5")
def alternative_options(case: Case) -> tuple[ReliefOption, ...]:
    """For two strokes: the relief area between the two points, or a dropping zone where there is one."""
    return with_dropping_zone(case, (alternative_option(),), penalty=2)
