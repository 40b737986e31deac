"""Rules 8.1c and 8.1d: restoring conditions that were improved, or worsened after the ball came to rest."""

from marram.rules.book.relief_options import free_option
from marram.rules.book.rule_08_allowed import allowed_on_green
from marram.rules.book.rule_08_breach import breach
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions_affecting import (
    AlteredPlace,
    WorsenedBy,
    altered_place,
    conditions_improved,
    easily_restored,
    improved_what_was_worsened,
    worsened_after_rest,
    worsened_by,
)
from marram.rules.facts.teeing import TeeImprovement, tee_improvement
from marram.rules.penalty import general
from marram.rules.relief_option import Limit, Reference, Setting
from marram.rules.ruling import Action, Deadline, Ruling, WhichBall, no_penalty


@provision("8.1c(1)")
def restored_by_original_object(_case: Case) -> Ruling:
    """Putting the original object back before the stroke, so that nothing is gained, avoids the penalty."""
    return no_penalty("8.1c(1)").play_as_it_lies()


@provision("8.1c(2)")
def restored_by_removing_object(_case: Case) -> Ruling:
    """Taking the object away again before the stroke, so that nothing is gained, avoids the penalty."""
    return no_penalty("8.1c(2)").play_as_it_lies()


@provision("8.1d")
def conditions_worsened(case: Case) -> Ruling:
    """What others worsened after the ball came to rest may be restored; what oneself or nature did may not."""
    if not case[worsened_after_rest]:
        return taken_as_found(case)
    if case.is_one_of(worsened_by, WorsenedBy.SOMEBODY_ELSE_OR_ANIMAL):
        return may_be_restored(case)
    return not_to_be_improved(case)


@provision("8.1d(1)")
def may_be_restored(case: Case) -> Ruling:
    """The player may restore the conditions; if that is not easy, place the ball on the nearest like spot."""
    ruling = no_penalty("8.1d(1)")
    if case[easily_restored]:
        return ruling.play_as_it_lies().note("may_restore_and_clean")
    nearby = free_option(
        "8.1d(1)",
        Reference.BALL,
        (Limit.NOT_NEARER_THAN_BALL, Limit.SAME_AREA_AS_REFERENCE),
        setting=Setting.PLACE,
    )
    return (
        ruling.with_options(nearby)
        .next(Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF, WhichBall.ORIGINAL)
        .note("nearest_like_conditions", "most_similar_conditions")
    )


@provision("8.1a")
def taken_as_found(_case: Case) -> Ruling:
    """What was there when the ball came to rest is played as it is found."""
    return (
        no_penalty("8.1a")
        .play_as_it_lies()
        .correct("leave_conditions_as_they_are", Deadline.BEFORE_STROKE, general("8.1a"))
    )


@provision("8.1d(2)")
def not_to_be_improved(case: Case) -> Ruling:
    """Worsened by the player's side or by natural forces, the conditions must not be improved."""
    if not case[improved_what_was_worsened]:
        return (
            no_penalty("8.1d(2)")
            .play_as_it_lies()
            .note("loose_things_may_still_go")
            .correct("leave_conditions_as_they_are", Deadline.BEFORE_STROKE, general("8.1a"))
        )
    if not case[conditions_improved]:
        return no_penalty("8.1d(2)").play_as_it_lies()
    if case.is_one_of(altered_place, AlteredPlace.PUTTING_GREEN) and allowed_on_green(case):
        return no_penalty("8.1b(10)").under("8.1d(2)").play_as_it_lies()
    if case.is_one_of(altered_place, AlteredPlace.OWN_TEEING_AREA) and case.is_one_of(
        tee_improvement, TeeImprovement.GROUND_OR_GRASS
    ):
        return no_penalty("8.1b(8)").under("6.2b(3)", "8.1d(2)").play_as_it_lies()
    return breach(case, "8.1a", "8.1d(2)")
