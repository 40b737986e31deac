"""Rule 19: unplayable ball."""

from marram.rules.book.local_rules.area_e_options import with_dropping_zone
from marram.rules.book.relief_options import back_on_the_line, lateral, offer, stroke_and_distance
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_17_options import penalty_area_relief, without_dropping_inside
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.penalty_area import last_stroke_from_penalty_area
from marram.rules.facts.unplayable import spot_of_ball_known
from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.rules.ruling import Ruling, no_penalty


@provision("19.1")
def unplayable_ball(case: Case) -> Ruling:
    """Only the player decides that the ball is unplayable, anywhere except in a penalty area."""
    if case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        return unplayable_in_penalty_area(case)
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if not case[spot_of_ball_known]:
        return spot_not_known(case)
    ruling = offer(no_penalty("19.1"), *with_dropping_zone(case, unplayable_relief(case), penalty=1))
    return ruling.note("unplayable_no_guarantee", "provisional_is_no_way_out")


@provision("17.3")
def unplayable_in_penalty_area(case: Case) -> Ruling:
    """A ball in a penalty area has relief under Rule 17 only, never under Rule 16.1, 16.3 or 19."""
    return offer(no_penalty("17.3"), *penalty_area_relief(case))


@provision("19.2")
def spot_not_known(case: Case) -> Ruling:
    """Where the spot of the ball is not known, only stroke and distance is left, and what Rule 17.2b adds."""
    options = (stroke_and_distance("19.2a"), *after_penalty_area(case))
    ruling = offer(no_penalty("19.2"), *options, may_play_as_it_lies=False)
    return ruling.note("unplayable_spot_must_be_known")


def as_it_lies_or_unplayable(ruling: Ruling, case: Case) -> Ruling:
    """Complete ``ruling`` where no other relief is to be had: as it lies, or unplayable ball relief."""
    return offer(ruling, *unplayable_relief(case))


@provision("19.2")
def unplayable_relief(
    case: Case, *, from_penalty_area: bool | None = None, area: Fact[Area] = area_of_ball
) -> tuple[ReliefOption, ...]:
    """For one stroke: stroke and distance, back on the line, or lateral relief; for two, what Rule 17.2b adds.

    Args:
        case: the case.
        from_penalty_area: whether the last stroke was made from a penalty area, if that is known already.
        area: the question that tells in which area of the course the ball lies.
    """
    options: tuple[ReliefOption, ...] = (
        unplayable_relief_in_bunker(case)
        if case.is_one_of(area, Area.BUNKER)
        else unplayable_relief_outside_bunker(case)
    )
    return (*options, *after_penalty_area(case, known=from_penalty_area))


def penalty_relief_in(case: Case, area: Fact[Area]) -> tuple[ReliefOption, ...]:
    """Return the penalty relief there is in an area: that of Rule 17 in a penalty area, elsewhere that of Rule 19."""
    if case.is_one_of(area, Area.PENALTY_AREA):
        return penalty_area_relief(case)
    return with_dropping_zone(case, unplayable_relief(case, area=area), penalty=1)


@provision("17.2b")
def after_penalty_area(case: Case, *, known: bool | None = None) -> tuple[ReliefOption, ...]:
    """What Rule 17.2b adds to stroke and distance where the last stroke was made from a penalty area."""
    from_penalty_area = case[last_stroke_from_penalty_area] if known is None else known
    return without_dropping_inside(case) if from_penalty_area else ()


def unplayable_relief_outside_bunker(case: Case) -> tuple[ReliefOption, ReliefOption, ReliefOption]:
    """The three options of Rule 19.2, each for one stroke."""
    return (
        stroke_and_distance("19.2a"),
        back_on_the_line(case, "19.2b"),
        lateral("19.2c", Reference.BALL),
    )


@provision("19.3")
def unplayable_relief_in_bunker(case: Case) -> tuple[ReliefOption, ...]:
    """The same options for one stroke, dropping in the bunker; or for two strokes on the line outside it."""
    return (
        stroke_and_distance("19.3a"),
        back_on_the_line(case, "19.3a", extra_limits=(Limit.IN_BUNKER,)),
        lateral("19.3a", Reference.BALL, extra_limits=(Limit.IN_BUNKER,)),
        back_on_the_line(case, "19.3b", penalty=2, extra_limits=(Limit.OUTSIDE_BUNKER,)),
    )
