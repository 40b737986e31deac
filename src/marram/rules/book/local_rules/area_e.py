"""Model Local Rules, area E: special or required relief procedures."""

from marram.rules.book.local_rules.area_e_options import alternative_options
from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL, offer, stroke_and_distance
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_18_lost import ball_not_found
from marram.rules.book.rule_18_two_provisional_balls import provisional_gone_too
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.alternative import alternative_ball_dropped, alternative_ball_in_area
from marram.rules.facts.lost import AT_HAND, ProvisionalState, Whereabouts, provisional_state
from marram.rules.facts.penalty_area import certain_in_penalty_area
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import general, strokes
from marram.rules.ruling import Action, Deadline, Ruling, no_penalty


@provision("E-5")
def alternative_to_stroke_and_distance(case: Case) -> Ruling:
    """For a ball lost or out of bounds: two strokes instead of going back, where the Committee allows it."""
    if not case.local_rule("E-5"):
        return not_adopted(case)
    if case[certain_in_penalty_area]:
        return not_for_a_ball_in_a_penalty_area(case)
    provisional = case[provisional_state]
    if provisional in AT_HAND:
        return not_after_a_provisional_ball(case)
    so_far = no_penalty("E-5")
    if provisional is not ProvisionalState.NOT_PLAYED:
        so_far = provisional_gone_too(provisional).under("E-5")
    if case[alternative_ball_dropped]:
        return ball_dropped_under_the_alternative(case, so_far.also(strokes(2, "E-5")))
    options = (stroke_and_distance("18.2b"), *alternative_options(case))
    return offer(so_far, *options, may_play_as_it_lies=False).note("alternative_points")


@provision("18.2b")
def not_adopted(case: Case) -> Ruling:
    """Without the Local Rule it is a ball that was not found, or is out of bounds, like any other."""
    in_penalty_area = case[certain_in_penalty_area]
    known = Whereabouts.PENALTY_AREA if in_penalty_area else Whereabouts.NOT_KNOWN
    return ball_not_found(case, known).note("alternative_not_adopted")


@provision("E-5")
def ball_dropped_under_the_alternative(case: Case, ruling: Ruling) -> Ruling:
    """Once a ball is in play under the Local Rule, the original must not be played."""
    if case[alternative_ball_in_area]:
        return ruling.next(Action.PLAY_OTHER_BALL).note("alternative_original_out_of_play")
    if case[played_since_put_down]:
        wrong_place = played_from_wrong_place(case).under("E-5")
        if wrong_place.action is Action.HOLE_OVER:
            return wrong_place
        return wrong_place.also(*ruling.penalties).note(*ruling.notes)
    return ruling.next(Action.CORRECT_MISTAKE).correct(
        "put_relief_right", Deadline.BEFORE_STROKE, general("14.7a")
    )


@provision("E-5")
def not_for_a_ball_in_a_penalty_area(case: Case) -> Ruling:
    """The Local Rule gives no relief for a ball virtually certain to be in a penalty area."""
    ruling = no_penalty("E-5").under("17.1c")
    ruling = offer(ruling, *penalty_area_relief(case), may_play_as_it_lies=False)
    return ruling.note("alternative_not_for_penalty_area")


@provision("E-5")
def not_after_a_provisional_ball(_case: Case) -> Ruling:
    """The Local Rule gives no relief for the original ball once a provisional ball was played."""
    ruling = no_penalty("E-5").under("18.3c(2)").with_options(CONTINUE_WITH_PROVISIONAL)
    ruling = ruling.next(Action.PLAY_PROVISIONAL).note("original_out_of_play")
    return ruling.note("alternative_not_after_provisional")
