"""Rule 17: penalty areas."""

from marram.rules.book.local_rules.area_e_options import played_outside_relief_area_by_local_rule
from marram.rules.book.relief_options import offer, stroke_and_distance
from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_14_dropping import came_to_rest_outside, may_be_played_or_dropped_again
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_17_options import (
    last_stroke_outside,
    outside_penalty_area,
    penalty_area_relief,
    still_in_penalty_area_relief,
)
from marram.rules.book.rule_18_lost import lost_or_out, not_found_in_penalty_area, stroke_and_distance_added
from marram.rules.book.rule_19_unplayable import unplayable_relief
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.loose_things import obstruction_removal_moved_ball, removal_moved_ball
from marram.rules.facts.penalty_area import (
    AfterPenaltyArea,
    MovedTo,
    PenaltyAreaAction,
    WrongPointKnown,
    after_penalty_area,
    certain_in_penalty_area,
    certain_when_relief_taken,
    crossing_point_estimated_with_care,
    first_penalty_area_colour,
    found_in_penalty_area,
    improved_in_penalty_area,
    moved_by_nature_to,
    penalty_area_action,
    rested_in_relief_area,
    wrong_point_known,
)
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.ruling import Action, Ruling, no_penalty, penalty

_STILL_INSIDE = (AfterPenaltyArea.SAME_PENALTY_AREA, AfterPenaltyArea.ANOTHER_PENALTY_AREA)


@provision("17.1b")
def ball_in_penalty_area(case: Case) -> Ruling:
    """The ball may be played as it lies without penalty, or relief taken outside for one stroke."""
    if not case[found_in_penalty_area]:
        return not_found(case)
    ruling = offer(no_penalty("17.1b").under("17.1d"), *penalty_area_relief(case))
    return ruling.note("penalty_area_like_general_area")


@provision("17.1c")
def not_found(case: Case) -> Ruling:
    """Penalty relief for a ball not found needs knowledge or virtual certainty; otherwise it is lost."""
    if not case[certain_in_penalty_area]:
        return lost_or_out(case).under("17.1c")
    return not_found_in_penalty_area(case).under("17.1d")


@provision("17.1c")
def original_found_after_relief(case: Case) -> Ruling:
    """Once a ball is in play under penalty area relief, the original is out of play wherever it is found."""
    if case[certain_when_relief_taken]:
        return penalty(1, "17.1d").under("17.1c").next(Action.PLAY_OTHER_BALL).note("original_out_of_play")
    if case[played_since_put_down]:
        return relief_without_certainty_played(case)
    return no_penalty("14.5a").play_as_it_lies().note("lift_ball_dropped_by_mistake")


@provision("17.1c")
def relief_without_certainty_played(case: Case) -> Ruling:
    """Without the certainty only stroke and distance was open: played from a wrong place, with that stroke added.

    The ball dropped and played is in play (Rule 14.4); what it should have been is a ball played from where
    the previous stroke was made, as for a ball dropped where the original was lost (Rule 18.2b).
    """
    ruling = played_from_wrong_place(case).under("17.1c", "18.2b")
    if ruling.action is Action.HOLE_OVER:
        return ruling
    return stroke_and_distance_added(ruling.note("original_out_of_play"))


@provision("Clarification 17.1d(3)/2")
def crossing_point_was_wrong(case: Case) -> Ruling:
    """A careful estimate of the crossing point stands once the ball is played; until then it is corrected."""
    known = case[wrong_point_known]
    if known is WrongPointKnown.BEFORE_NOT_PLAYED:
        ruling = no_penalty("Clarification 17.1d(3)/2").under("14.5b(2)")
        ruling = offer(ruling, *penalty_area_relief(case), may_play_as_it_lies=False)
        return ruling.note("measure_from_true_crossing_point")
    if known is WrongPointKnown.AFTER_STROKE and case[crossing_point_estimated_with_care]:
        return no_penalty("1.3b(2)").under("Clarification 17.1d(3)/2").play_as_it_lies().stroke_counts()
    return played_from_wrong_place(case).under("17.1d")


@provision("17.2")
def played_from_penalty_area(case: Case) -> Ruling:
    """After a stroke from a penalty area there are more options than usual."""
    became = case[after_penalty_area]
    if became in _STILL_INSIDE:
        ruling = no_penalty("17.2a").under("17.1b")
        return offer(ruling, *still_in_penalty_area_relief(case)).note("further_relief_after_dropping_inside")
    if became is AfterPenaltyArea.UNPLAYABLE_OUTSIDE:
        return unplayable_outside(case)
    return lost_outside(case)


@provision("17.2b")
def lost_outside(case: Case) -> Ruling:
    """Lost or out of bounds after a stroke from a penalty area: go back in for one stroke, or outside for two."""
    return lost_or_out(case, from_penalty_area=True).under("17.2b")


@provision("17.2b")
def unplayable_outside(case: Case) -> Ruling:
    """An unplayable ball played from a penalty area has the options of Rule 19, and those for two strokes."""
    ruling = no_penalty("17.2b").under("19.1")
    options = unplayable_relief(case, from_penalty_area=True)
    return offer(ruling, *options).note("further_relief_after_dropping_inside")


@provision("17.2")
def dropped_inside_but_not_played(case: Case) -> Ruling:
    """A ball dropped in the penalty area under stroke and distance, and not played, leaves relief outside."""
    ruling = penalty(1, "17.1d(1)").under("17.2").note("two_strokes_in_all")
    outside = outside_penalty_area(case, first_penalty_area_colour)
    return offer(ruling, *outside, last_stroke_outside("17.2a(2)"))


@provision("17.1b")
def done_in_penalty_area(case: Case) -> Ruling:
    """The Rules for the general area apply: no special restriction on touching or moving things."""
    action = case[penalty_area_action]
    if action is PenaltyAreaAction.TOUCHED_GROUND_OR_WATER:
        return touched_in_penalty_area(case)
    if action is PenaltyAreaAction.REMOVED_LOOSE_IMPEDIMENT and case[removal_moved_ball]:
        return must_go_back(penalty(1, "15.1b"))
    if action is PenaltyAreaAction.REMOVED_MOVABLE_OBSTRUCTION and case[obstruction_removal_moved_ball]:
        return must_go_back(no_penalty("15.2a(1)"))
    if action is PenaltyAreaAction.PLAYED_MOVING_BALL_IN_WATER:
        return ball_moving_in_water(case)
    return no_penalty("17.1b").play_as_it_lies()


@provision("17.1b")
def touched_in_penalty_area(case: Case) -> Ruling:
    """Grounding the club and touching ground, water or plants are allowed if nothing is improved."""
    if case[improved_in_penalty_area]:
        return breach(case, "8.1a")
    return no_penalty("17.1b").play_as_it_lies()


@provision("10.1d Exception 3")
def ball_moving_in_water(_case: Case) -> Ruling:
    """A ball moving in water may be played without penalty, or relief taken."""
    return no_penalty("10.1d Exception 3").stroke_counts().play_as_it_lies().note("no_waiting_for_current")


@provision("9.3")
def relief_ball_moved_by_nature(case: Case) -> Ruling:
    """A dropped ball at rest that natural forces move: played from there in 2019, since 2023 not always."""
    if not case[rested_in_relief_area]:
        if played_outside_relief_area_by_local_rule(case):
            return may_be_played_or_dropped_again(case)
        return came_to_rest_outside(case)
    moved_to = case[moved_by_nature_to]
    if moved_to is MovedTo.SAME_AREA:
        return no_penalty("9.3").play_as_it_lies()
    if case.played_since(EDITION_2023):
        return must_go_back(no_penalty("9.3 Exception 2"))
    if moved_to is MovedTo.PENALTY_AREA:
        return offer(no_penalty("9.3").under("17.1b"), *penalty_area_relief(case))
    if moved_to is MovedTo.OUT_OF_BOUNDS:
        return offer(
            no_penalty("9.3").under("18.2b"), stroke_and_distance("18.2b"), may_play_as_it_lies=False
        )
    return no_penalty("9.3").play_as_it_lies()
