"""Rules 8.2 and 8.3: altering other physical conditions on purpose, for oneself or for another."""

from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_08_restoring import restored_by_original_object, restored_by_removing_object
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions_affecting import (
    DeliberateAct,
    Purpose,
    deliberate_act,
    original_object_back,
    other_player_let_it_happen,
    placed_object_removed,
    purpose_of_act,
)
from marram.rules.penalty import Who, general
from marram.rules.ruling import Action, Ruling, no_penalty


@provision("8.2b")
def own_conditions_altered(case: Case) -> Ruling:
    """Nobody may alter other conditions on purpose to affect their own ball or a later stroke."""
    return excused_act(case, "8.2b") or breach(case, "8.2b")


@provision("8.3b")
def anothers_conditions_altered(case: Case) -> Ruling:
    """A player must not improve or worsen another's conditions on purpose, nor steer another's ball."""
    excused = excused_act(case, "8.3b")
    if excused:
        return excused
    if not case[other_player_let_it_happen]:
        return breach(case, "8.3b")
    return allowed_by_the_other(case)


@provision("Clarification 8.3/1")
def allowed_by_the_other(case: Case) -> Ruling:
    """A player who asked for the act or allowed it breaks Rule 8.1 or 8.2 with it, so both are penalised."""
    other = Who.OPPONENT if case.match_play else Who.OTHER_PLAYER
    ruling = breach(case, "8.3b").also(general("Clarification 8.3/1", other))
    return ruling.note("both_players_lose_the_hole") if case.match_play else ruling


@provision("8.1a")
def excused_act(case: Case, rule: str) -> Ruling | None:
    """No breach: no such act, one that Rule 8.1b or 8.1d allows, care for the course, or put right in time."""
    if case.is_one_of(deliberate_act, DeliberateAct.NONE_OF_THESE):
        return no_penalty(rule).next(Action.PLAY_ON)
    if case.is_one_of(deliberate_act, DeliberateAct.ALLOWED_BY_RULE_8):
        return no_penalty("8.1b").under(rule).next(Action.PLAY_ON)
    if case.is_one_of(purpose_of_act, Purpose.CARE_FOR_COURSE):
        return no_penalty(f"{rule} Exception").next(Action.PLAY_ON)
    if case.is_one_of(deliberate_act, DeliberateAct.MOVED_FIXED_OBJECT) and case[original_object_back]:
        return restored_by_original_object(case)
    if case.is_one_of(deliberate_act, DeliberateAct.PUT_OBJECT_IN_POSITION) and case[placed_object_removed]:
        return restored_by_removing_object(case)
    return None
