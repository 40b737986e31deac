"""Rule 13.1: what is allowed or required on putting greens, and relief from wrong greens."""

from marram.rules.book.local_rules.area_d import clear_of_fringe, fringe_of_wrong_green, green_taken_out
from marram.rules.book.local_rules.area_e_options import with_dropping_zone
from marram.rules.book.relief_options import free_option
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.green import (
    GreenDamage,
    GreenTest,
    TestedGreen,
    WrongGreenInterference,
    green_improved,
    green_test,
    mark_on_green,
    meant_to_test,
    played_despite_wrong_green,
    repair_delayed_play,
    repair_within_limits,
    tested_green,
    wrong_green_interference,
)
from marram.rules.facts.loose_things import removed_on_green
from marram.rules.facts.relief import only_by_unreasonable_choice
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference
from marram.rules.ruling import (
    Action,
    Deadline,
    HandOver,
    Ruling,
    WhichBall,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("13.1c(1)")
def loose_soil_removed(case: Case) -> Ruling:
    """Sand and loose soil may be removed on the putting green, and nowhere else if that improves conditions."""
    if case[removed_on_green]:
        return no_penalty("13.1c(1)").play_as_it_lies()
    if case[green_improved]:
        return general_penalty("8.1a").under("13.1c(1)").play_as_it_lies()
    return no_penalty("13.1c(1)").play_as_it_lies()


@provision("13.1c(2)")
def green_repaired(case: Case) -> Ruling:
    """Damage on the putting green may be repaired, promptly, and no more than restored."""
    if not case.is_one_of(mark_on_green, GreenDamage.PERSON_OR_OUTSIDE_INFLUENCE):
        return not_damage_on_green(case)
    return damage_repaired(case)


@provision("13.1c(2)")
def damage_repaired(case: Case) -> Ruling:
    """Damage may be restored, not improved, and without delaying play."""
    if not case[repair_within_limits] and case[green_improved]:
        return general_penalty("8.1a").under("13.1c(2)").play_as_it_lies()
    if case[repair_delayed_play]:
        return penalty(1, "5.6a").under("13.1c(2)").play_as_it_lies().note("first_delay_costs_one_stroke")
    return no_penalty("13.1c(2)").play_as_it_lies().note("committee_repairs_what_players_cannot")


@provision("13.1c(2)")
def not_damage_on_green(case: Case) -> Ruling:
    """Traces of upkeep, weather, growth and wear are no damage: improving them is a breach."""
    if case[green_improved]:
        return general_penalty("8.1a").under("13.1c(2)").play_as_it_lies()
    return no_penalty("13.1c(2)").play_as_it_lies().note("not_damage_leave_it")


@provision("13.1e")
def green_tested(case: Case) -> Ruling | HandOver:
    """The surface of a putting green or wrong green must not be rubbed or rolled on to test it."""
    if case.is_one_of(green_test, GreenTest.OTHERWISE) or not case[meant_to_test]:
        return no_penalty("13.1e").next(Action.PLAY_ON)
    if case.is_one_of(tested_green, TestedGreen.OUTSIDE_ROUND):
        return HandOver("practised_before_round", "5.2", (("practised_before", "green_tested"),))
    if case.is_one_of(tested_green, TestedGreen.ANY_OTHER):
        return general_penalty("13.1e").next(Action.PLAY_ON)
    if case.is_one_of(tested_green, TestedGreen.JUST_COMPLETED) and case.local_rule("I-2"):
        return general_penalty("I-2").next(Action.PLAY_ON).note("on_next_hole")
    return no_penalty("13.1e Exception").next(Action.PLAY_ON)


@provision("13.1f")
def wrong_green(case: Case) -> Ruling:
    """With interference by a wrong green, free relief must be taken."""
    how = case[wrong_green_interference]
    if how is WrongGreenInterference.NONE:
        how = fringe_of_wrong_green(case)
    if how is WrongGreenInterference.NONE:
        return no_penalty("13.1f").play_as_it_lies()
    taken_out = green_taken_out(case)
    if taken_out is not None:
        return taken_out
    if how is WrongGreenInterference.STANCE_ONLY and case.local_rule("D-3"):
        return no_penalty("D-3").play_as_it_lies()
    if how is not WrongGreenInterference.BALL_ON_IT and case[only_by_unreasonable_choice]:
        return no_penalty("13.1f Exception").play_as_it_lies()
    if case[played_despite_wrong_green]:
        return played_from_wrong_place(case).under("13.1f(2)")
    return wrong_green_relief(case)


@provision("13.1f(2)")
def wrong_green_relief(case: Case) -> Ruling:
    """Drop within one club-length of the nearest point of complete relief, in the area where the ball lay."""
    option = free_option(
        "13.1f(2)",
        Reference.NEAREST_POINT,
        (Limit.NOT_NEARER, Limit.SAME_AREA_AS_REFERENCE, Limit.COMPLETE_RELIEF),
    )
    ruling = (
        no_penalty("13.1f(2)")
        .with_options(*with_dropping_zone(case, (option,), penalty=0), may_play_as_it_lies=False)
        .next(Action.TAKE_RELIEF, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("nearest_point_in_same_area")
        .correct("relief_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )
    return clear_of_fringe(case, ruling)
