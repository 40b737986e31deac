"""Rule 9.4: ball lifted, touched or moved by the player."""

from marram.rules.book.relief_options import offer
from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area, moved_by_natural_forces
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.book.rule_17_options import penalty_area_relief
from marram.rules.book.rule_19_unplayable import unplayable_relief
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import (
    APPLYING_A_RULE,
    Doing,
    actions_reasonable,
    cause_known,
    moved_while,
    movement_accidental,
)
from marram.rules.facts.lifting import Marking, cleaned_when_lifted, spot_marking
from marram.rules.facts.movement import (
    AfterLifting,
    HandledAs,
    TreePurpose,
    after_lifting,
    handled_as,
    handling_allowed,
    tree_purpose,
)
from marram.rules.ruling import Action, Ruling, no_penalty, penalty


@provision("9.2b(2)")
def ball_moved_by_player(case: Case) -> Ruling:
    """Only knowledge or virtual certainty makes the player the cause; else natural forces are."""
    if not case[cause_known]:
        return moved_by_natural_forces(case).under("9.2b(2)")
    return moved_by_player(case)


@provision("9.4b")
def moved_by_player(case: Case) -> Ruling:
    """Causing the ball at rest to move costs one stroke, and it is replaced, unless an exception applies."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if not case[movement_accidental]:
        return lifted_as_allowed(case) if case[handling_allowed] else penalised_for_moving(case)
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return moved_by_accident_on_green(case)
    if case.is_one_of(moved_while, Doing.SEARCHING):
        return moved_before_found(case)
    if case.is_one_of(moved_while, Doing.REMOVING_MOVABLE_OBSTRUCTION):
        return moved_with_obstruction(case)
    if case.is_one_of(moved_while, Doing.MOVING_AWAY_FROM_BALL):
        return moved_after_resting_against_person(case)
    if case.is_one_of(moved_while, *APPLYING_A_RULE) and case[actions_reasonable]:
        return moved_while_applying_rule(case)
    return penalised_for_moving(case)


@provision("9.4b")
def penalised_for_moving(_case: Case) -> Ruling:
    """One penalty stroke; whoever then plays without replacing gets the general penalty in total."""
    return must_go_back(penalty(1, "9.4b")).note("general_penalty_in_total")


@provision("13.1d(1)")
def moved_by_accident_on_green(_case: Case) -> Ruling:
    """On the putting green moving the ball by accident costs nothing (9.4b Exception 3)."""
    return must_go_back(no_penalty("13.1d(1)").under("9.4b Exception 3"))


@provision("7.4")
def moved_before_found(_case: Case) -> Ruling:
    """Moving the ball by accident while searching for or identifying it costs nothing."""
    return must_go_back(no_penalty("7.4").under("9.4b Exception 2"))


@provision("15.2a(1)")
def moved_with_obstruction(_case: Case) -> Ruling:
    """A ball that moves while a movable obstruction is being removed goes back without penalty."""
    return must_go_back(no_penalty("15.2a(1)").under("9.4b Exception 4"))


@provision("Clarification 11.1b/2")
def moved_after_resting_against_person(_case: Case) -> Ruling:
    """A ball that had come to rest against a person or equipment, and moves with them, goes back at no cost."""
    return must_go_back(no_penalty("Clarification 11.1b/2"))


@provision("9.4b Exception 4")
def moved_while_applying_rule(case: Case) -> Ruling:
    """Off the green, reasonable actions in applying a Rule protect against the penalty."""
    ruling = must_go_back(no_penalty("9.4b Exception 4"))
    if case.is_one_of(moved_while, Doing.TAKING_RELIEF):
        return ruling.note("relief_may_still_be_taken")
    return ruling


@provision("9.4")
def ball_handled_by_player(case: Case) -> Ruling:
    """Lifting the ball, or touching it on purpose, costs one stroke where no Rule allows it."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        return lying_in_teeing_area(case)
    if case.is_one_of(handled_as, HandledAs.ONLY_TOUCHED):
        return touched_on_purpose(case)
    if not case[handling_allowed]:
        return penalised_for_moving(case)
    return lifted_as_allowed(case)


@provision("9.4b")
def touched_on_purpose(case: Case) -> Ruling:
    """Touching the ball on purpose costs one stroke even if it does not move, unless a Rule allows it."""
    if case[handling_allowed]:
        return no_penalty("9.4b Exception 1").play_as_it_lies()
    return penalty(1, "9.4b").play_as_it_lies()


@provision("9.4b Exception 1")
def lifted_as_allowed(case: Case) -> Ruling:
    """A Rule that allows lifting takes the penalty away; a ball that is to go back must have been marked."""
    ruling = no_penalty("9.4b Exception 1")
    after = case[after_lifting]
    if after is AfterLifting.RELIEF_GIVEN_UP and not case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return free_relief_given_up(case)  # on the green any ball may be lifted (Rule 13.1b)
    if after is AfterLifting.WENT_ELSEWHERE:
        return ruling.under("9.4a").play_as_it_lies()
    if after is AfterLifting.GOES_ELSEWHERE:
        return ruling.under("9.4a").next(Action.PLAY_ON).note("go_on_under_that_rule")
    if not case.is_one_of(spot_marking, Marking.RIGHT):
        return must_go_back(penalty(1, "14.1a").under("9.4b Exception 1"))
    if not case.is_one_of(area_of_ball, Area.PUTTING_GREEN) and case[cleaned_when_lifted]:
        return cleaned_off_the_green(case)
    return must_go_back(ruling)


@provision("14.1c")
def cleaned_off_the_green(_case: Case) -> Ruling:
    """Lifted to identify it, for damage, on request or to look for relief, a ball to go back must not be cleaned."""
    return must_go_back(penalty(1, "14.1c").under("9.4b Exception 1")).note("no_need_to_put_dirt_back")


@provision("Clarification 9.4b/4")
def free_relief_given_up(_case: Case) -> Ruling:
    """Once free relief is given up the ball should not have been lifted: one stroke, and it goes back."""
    ruling = penalty(1, "9.4b").under("Clarification 9.4b/4")
    return must_go_back(ruling).note("relief_may_still_be_taken_free", "stroke_and_distance_in_all_one")


@provision("Clarification 9.4a/1")
def ball_dislodged_from_tree(case: Case) -> Ruling:
    """A ball brought down from a tree costs nothing if that served to identify it or to take relief."""
    if case.is_one_of(tree_purpose, TreePurpose.FIND_OR_IDENTIFY):
        ruling = must_go_back(no_penalty("7.4").under("Clarification 9.4a/1"))
        return ruling.note("relief_instead_of_replacing_in_tree")
    if case.is_one_of(tree_purpose, TreePurpose.TAKE_RELIEF):
        ruling = no_penalty("9.4b Exception 1").under("Clarification 9.4a/1").note("relief_from_tree_is_due")
        if case.is_one_of(area_of_ball, Area.PENALTY_AREA):  # where no ball is unplayable (Rule 17.3)
            return offer(ruling.under("17.3"), *penalty_area_relief(case), may_play_as_it_lies=False)
        return offer(ruling, *unplayable_relief(case), may_play_as_it_lies=False)
    return penalised_for_moving(case).under("Clarification 9.4a/1").note("need_not_go_back_into_tree")
