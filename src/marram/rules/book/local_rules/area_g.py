"""Model Local Rules, area G: limits on clubs, balls, transport and shoes."""

from marram.rules.book.hole_by_hole import breached_on_several, hole_by_hole
from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.book.rule_04_ball_and_equipment import equipment_breach
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.clubs import StrokeWithClub, stroke_with_club
from marram.rules.facts.equipment import stroke_at_ball_counted
from marram.rules.facts.local_equipment import (
    LimitedBall,
    LimitedClub,
    driver_made_before_1999,
    limited_ball,
    limited_club,
    ride_allowed,
    shoes_barred,
)
from marram.rules.facts.round import BreachWhen, breach_when
from marram.rules.penalty import disqualified, general
from marram.rules.ruling import Action, Deadline, Ruling, no_penalty

_CLUB_RULES = {
    LimitedClub.DRIVER_NOT_LISTED: "G-1",
    LimitedClub.OLD_GROOVES: "G-2",
    LimitedClub.TOO_LONG: "G-10",
}


@provision("4.1a(1)")
def club_limited(case: Case) -> Ruling:
    """A club that conforms may still be barred by a Local Rule: listed heads, grooves, length."""
    what = case[limited_club]
    code = _CLUB_RULES[what]
    if not case.local_rule(code):
        return free("4.1a(1)")
    if what is LimitedClub.DRIVER_NOT_LISTED:
        return driver_not_listed(case)
    return barred_club(case, code)


@provision("G-1")
def driver_not_listed(case: Case) -> Ruling:
    """A driver head must be on the list, unless it was made before 1999."""
    if case[driver_made_before_1999]:
        return free("G-1")
    return barred_club(case, "G-1")


def barred_club(case: Case, code: str) -> Ruling:
    """A stroke with the club disqualifies; carrying it does not matter (G-1, G-2, G-10)."""
    if case.is_one_of(stroke_with_club, StrokeWithClub.COUNTED):
        return out(code)
    return free(code).note("do_not_use_club")


@provision("4.2a(1)")
def ball_limited(case: Case) -> Ruling:
    """A Local Rule may ask for a ball on the list, or for one model throughout the round."""
    if case[limited_ball] is LimitedBall.NOT_LISTED:
        return ball_not_listed(case)
    return ball_of_other_model(case)


@provision("G-3")
def ball_not_listed(case: Case) -> Ruling:
    """Where adopted, a stroke at a ball not on the list disqualifies."""
    if not case.local_rule("G-3"):
        return free("4.2a(1)")
    if case[stroke_at_ball_counted]:
        return out("G-3")
    return free("G-3").note("use_ball_on_list")


@provision("G-4")
def ball_of_other_model(case: Case) -> Ruling:
    """Where adopted, one model is played throughout: the general penalty for each hole with another."""
    if not case.local_rule("G-4"):
        return free("4.2a(1)")
    if not case[stroke_at_ball_counted]:
        ruling = no_penalty("G-4").next(Action.CORRECT_MISTAKE)
        return ruling.correct("put_own_model_into_play", Deadline.BEFORE_STROKE, general("G-4"))
    several = case.is_one_of(breach_when, BreachWhen.SEVERAL_HOLES)
    ruling = breached_on_several(case, "G-4") if several else in_breach("G-4")
    ruling = ruling.note("finish_hole_with_either_model")
    return ruling.correct("own_model_from_next_tee", Deadline.BEFORE_NEXT_HOLE, disqualified("G-4"))


@provision("G-6")
def rode_during_round(case: Case) -> Ruling:
    """Where adopted, player and caddie walk: the general penalty for each hole of a ride not allowed."""
    if not case.local_rule("G-6"):
        return free("4.3a")
    if case[ride_allowed]:
        return free("G-6")
    return hole_by_hole(case, "G-6")


@provision("G-7")
def shoes_worn(case: Case) -> Ruling:
    """Where adopted, no stroke is made in shoes of a barred kind; the penalty is that of Rule 4.3."""
    if not case.local_rule("G-7"):
        return free("4.3a")
    if not case[shoes_barred]:
        return free("G-7")
    return equipment_breach(case, "G-7")
