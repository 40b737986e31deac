"""Where a ball dropped back on the line may come to rest (Rules 14.3c, 16.1c(2), 17.1d(2), 19.2b, 19.3)."""

from dataclasses import replace

from marram.rules.book.local_rules.area_e_options import may_be_played_outside_relief_area
from marram.rules.book.relief_options import back_on_the_line
from marram.rules.book.rule_14_dropping import (
    came_to_rest_outside,
    drop_judged,
    may_be_played_or_dropped_again,
)
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.relief import (
    LineRelief,
    line_relief,
    rest_in_area_first_touched,
    rest_nearer_than_chosen_point,
    rest_nearer_than_start_of_line,
    rest_within_club_length,
)
from marram.rules.relief_option import Limit, Reference, ReliefOption
from marram.rules.ruling import Action, Ruling, no_penalty


@provision("14.3c")
def dropped_back_on_the_line(case: Case) -> Ruling:
    """A drop like any other: on the line in the right way (since 2023), undeflected, and at rest in its relief area.

    Where the ball is placed, the second drop has set the spot: no relief is chosen again, and its price is not due again.
    """
    option = option_taken(case)
    ruling = drop_judged(case, at_rest_back_on_the_line).under(option.citation)
    return ruling if ruling.action is Action.PLACE else replace(ruling, relief=(option,))


@provision("14.3c")
def at_rest_back_on_the_line(case: Case) -> Ruling:
    """In the relief area the ball is in play; outside it, it is dropped again, and then placed."""
    if came_to_rest_in_relief_area(case):
        return no_penalty("14.3c(1)").play_as_it_lies()
    if may_be_played_outside_relief_area(case):
        return may_be_played_or_dropped_again(case)
    return came_to_rest_outside(case)


@provision("14.3c")
def came_to_rest_in_relief_area(case: Case) -> bool:
    """The relief area of 2019 ends at the point chosen; since 2023 at the point the line starts from."""
    if not (case[rest_within_club_length] and case[rest_in_area_first_touched]):
        return False
    if case.played_since(EDITION_2023):
        return not case[rest_nearer_than_start_of_line]
    return not case[rest_nearer_than_chosen_point]


def option_taken(case: Case) -> ReliefOption:
    """The back-on-the-line option that was taken, with its limits and its cost."""
    taken = case[line_relief]
    if taken is LineRelief.PENALTY_AREA:
        return back_on_the_line(
            case,
            "17.1d(2)",
            Reference.LINE_THROUGH_CROSSING_POINT,
            extra_limits=(Limit.OUTSIDE_PENALTY_AREA,),
        )
    if taken is LineRelief.UNPLAYABLE:
        return back_on_the_line(case, "19.2b")
    if taken is LineRelief.UNPLAYABLE_IN_BUNKER:
        return back_on_the_line(case, "19.3a", extra_limits=(Limit.IN_BUNKER,))
    if taken is LineRelief.UNPLAYABLE_OUTSIDE_BUNKER:
        return back_on_the_line(case, "19.3b", penalty=2, extra_limits=(Limit.OUTSIDE_BUNKER,))
    return back_on_the_line(case, "16.1c(2)", extra_limits=(Limit.OUTSIDE_BUNKER,))
