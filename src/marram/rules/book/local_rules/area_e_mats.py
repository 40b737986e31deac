"""Model Local Rule E-12 as it has been since 2023: mats required on the fairway, to spare the turf."""

from marram.rules.book.local_rules.area_e_lies import lifted_without_reason
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.mats import OnMat, mat_required_here, on_mat, put_on_mat
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.ruling import Action, Ruling, WhichBall, general_penalty, no_penalty


@provision("E-12")
def fairway_mat(case: Case) -> Ruling:
    """Where adopted, a ball at fairway height is placed on a mat and played from it, except with a putter."""
    if not (case.played_since(EDITION_2023) and case.local_rule("E-12")):
        return mat_without_local_rule(case)
    if not case[mat_required_here]:
        return no_penalty("E-12").play_as_it_lies()
    where = case[on_mat]
    if where is OnMat.PLAYED_WITHOUT:
        return general_penalty("14.7a").under("E-12").stroke_counts().play_as_it_lies()
    note = {
        OnMat.NOT_YET: "place_on_mat",
        OnMat.ROLLED_OFF: "place_on_mat_once_more",
        OnMat.ROLLED_OFF_AGAIN: "move_mat_until_ball_stays",
        OnMat.MOVED_BY_ACCIDENT: "place_on_mat_without_penalty",
    }[where]
    return no_penalty("E-12").next(Action.PLACE, WhichBall.ORIGINAL_OR_ANOTHER).note(note)


@provision("9.1a")
def mat_without_local_rule(case: Case) -> Ruling:
    """Without the Local Rule a ball is played as it lies, and one put on a mat had no reason to be lifted."""
    if not case[put_on_mat]:
        return no_penalty("9.1a").play_as_it_lies()
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("9.4b")
    return lifted_without_reason(case)
