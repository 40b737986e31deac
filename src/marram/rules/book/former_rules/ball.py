"""Before and after 2019: the ball moved, searched for, lifted, deflected."""

from marram.rules.book.former_rules.options import (
    free_and_replace,
    one_stroke_and_replace,
)
from marram.rules.book.former_rules.relief import former_lost_or_out
from marram.rules.book.rule_07_identifying import own_ball_lifted_to_identify
from marram.rules.book.rule_09_natural_forces import (
    moved_after_being_replaced_on_green,
    moved_within_its_area,
)
from marram.rules.book.rule_09_player import (
    moved_before_found,
    moved_by_accident_on_green,
    penalised_for_moving,
)
from marram.rules.book.rule_11_accidental_deflection import deflected_off_green
from marram.rules.book.rule_14_lifting import marked_before_lifting
from marram.rules.book.rule_18_lost import found_in_time
from marram.rules.editions import EDITION_2019, GREEN_MOVEMENT_RULE
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.advice import caddie_authorised
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.deflection import RestsOn, rests_on
from marram.rules.facts.former import (
    Likelihood,
    SearchPlace,
    announced_and_observed,
    green_movement_rule_adopted,
    likelihood_player_moved_ball,
    moved_in_allowed_act,
    search_place,
)
from marram.rules.facts.lifting import Marking, cleaned_when_lifted, spot_marking
from marram.rules.facts.lost import identified_in_reasonable_time, late_ball_played, search_minutes
from marram.rules.facts.movement import lifted_and_replaced_on_green
from marram.rules.facts.search import lifting_needed_to_identify
from marram.rules.ruling import Action, NotCovered, Ruling, general_penalty, no_penalty, penalty


@provision("9.2b")
def who_moved_ball_in_general_area(case: Case) -> Ruling:
    """Since 2019 the player is the cause only if that is known or virtually certain; before, if likelier than not."""
    if not case.played_since(EDITION_2019):
        return former_weight_of_evidence(case)
    if case.is_one_of(likelihood_player_moved_ball, Likelihood.CERTAIN):
        return penalised_for_moving(case)
    return moved_within_its_area(case).under("9.2b(2)")


@provision("former Decision 18-2/0.5")
def former_weight_of_evidence(case: Case) -> Ruling:
    """The weight of the evidence decided whether the player had made the ball move."""
    if case.is_one_of(likelihood_player_moved_ball, Likelihood.NOT_LIKELIER):
        return no_penalty("former Decision 18-2/0.5").play_as_it_lies()
    return one_stroke_and_replace("former 18-2").under("former Decision 18-2/0.5")


@provision("13.1d(1)")
def own_ball_moved_on_green(case: Case) -> Ruling:
    """Since 2019 moving one's own ball by accident on the green is free; before, it cost a stroke in most cases."""
    if not case.played_since(EDITION_2019):
        return former_moved_on_green(case)
    return moved_by_accident_on_green(case)


@provision("former 18-2")
def former_moved_on_green(case: Case) -> Ruling:
    """One stroke, unless it moved in the very act that another Rule allowed or the Local Rule of 2017 was in force."""
    if case[moved_in_allowed_act]:
        return free_and_replace("former 18-2").under("former 20-1")
    if case.played_since(GREEN_MOVEMENT_RULE) and case[green_movement_rule_adopted]:
        return free_and_replace("former Local Rule of 2017").under("former 18-2")
    return one_stroke_and_replace("former 18-2")


@provision("13.1d(2)")
def ball_moved_by_nature_on_green(case: Case) -> Ruling:
    """Since 2019 a ball that was lifted and replaced goes back, whatever moved it; before, it was played as it lay."""
    if not case.played_since(EDITION_2019):
        return former_moved_by_nature(case)
    if case[lifted_and_replaced_on_green]:
        return moved_after_being_replaced_on_green(case)
    return moved_within_its_area(case)


@provision("former Decision 18-1/12")
def former_moved_by_nature(_case: Case) -> Ruling:
    """Wind and water were no outside agency: the ball was played from where it came to rest."""
    return no_penalty("former Decision 18-1/12").play_as_it_lies()


@provision("7.4")
def own_ball_moved_in_search(case: Case) -> Ruling:
    """Since 2019 moving one's own ball by accident in a search is free; before, only in sand, water or a condition."""
    if not case.played_since(EDITION_2019):
        return former_moved_in_search(case)
    return moved_before_found(case)


@provision("former 12-1")
def former_moved_in_search(case: Case) -> Ruling:
    """One stroke for moving one's own ball, but not in sand, in probed water, or in a condition that gave relief."""
    if case.is_one_of(search_place, SearchPlace.LOOSE_IN_HAZARD, SearchPlace.ELSEWHERE):
        return one_stroke_and_replace("former 18-2").under("former 12-1")
    return free_and_replace("former 12-1")


@provision("18.2a(1)")
def ball_found_after_search(case: Case) -> Ruling:
    """Three minutes to find the ball since 2019, five before."""
    if not case.played_since(EDITION_2019):
        return former_found_in_time(case)
    return found_in_time(case, nothing_certain=True)


@provision("former Definitions: lost ball")
def former_found_in_time(case: Case) -> Ruling:
    """A ball not found and identified within five minutes was lost."""
    if case.at_most(search_minutes, 5) and case[identified_in_reasonable_time]:
        return no_penalty("former Definitions: lost ball").play_as_it_lies()
    if case[late_ball_played]:
        return former_lost_ball_played(case)
    return former_lost_or_out(case).under("former Definitions: lost ball")


@provision("former 15-3")
def former_lost_ball_played(case: Case) -> Ruling:
    """A lost ball was a wrong ball: loss of hole, or two strokes and the mistake put right."""
    ruling = general_penalty("former 15-3").under("former Definitions: lost ball").stroke_does_not_count()
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    return ruling.next(Action.CORRECT_MISTAKE).note("former_correct_wrong_ball")


@provision("7.3")
def own_ball_lifted_to_be_identified(case: Case) -> Ruling:
    """Since 2019 nobody need be told; before, lifting had to be announced and watched."""
    if not case.played_since(EDITION_2019):
        return former_lifted_to_identify(case)
    return own_ball_lifted_to_identify(case)


@provision("former 12-2")
def former_lifted_to_identify(case: Case) -> Ruling:
    """Announce, mark, let another player watch, clean no more than needed: one stroke for any fault."""
    if case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        return former_marked_on_green(case)
    as_allowed = (
        case[lifting_needed_to_identify]
        and case[announced_and_observed]
        and not case.is_one_of(spot_marking, Marking.NOT_MARKED)
        and not case[cleaned_when_lifted]
    )
    return free_and_replace("former 12-2") if as_allowed else one_stroke_and_replace("former 12-2")


@provision("former 20-1")
def former_marked_on_green(case: Case) -> Ruling:
    """On the green any ball could be lifted and cleaned, once its spot was marked."""
    if case.is_one_of(spot_marking, Marking.NOT_MARKED):
        return one_stroke_and_replace("former 20-1")
    return free_and_replace("former 16-1b").under("former 20-1")


@provision("14.1b Exception")
def caddie_lifted_on_green(case: Case) -> Ruling:
    """Since 2019 the caddie may lift on the green without being asked; before, only with authority."""
    if not case.played_since(EDITION_2019):
        return former_lifted_by_caddie(case)
    return marked_before_lifting(case)


@provision("former 20-1")
def former_lifted_by_caddie(case: Case) -> Ruling:
    """A caddie could lift the ball only when authorised to do so."""
    if not case[caddie_authorised]:
        return one_stroke_and_replace("former 18-2").under("former 20-1")
    return former_marked_on_green(case)


@provision("11.1a")
def ball_hit_own_side(case: Case) -> Ruling | NotCovered:
    """Since 2019 a ball not played from the green may hit its own side by accident; before, that cost a stroke."""
    if not case.played_since(EDITION_2019):
        return former_hit_own_side(case)
    return deflected_off_green(case)


@provision("former 19-2")
def former_hit_own_side(case: Case) -> Ruling | NotCovered:
    """One stroke, and the ball was played as it lay, unless it lay in or on clothes or equipment."""
    if case.is_one_of(rests_on, RestsOn.ON_COURSE):
        return penalty(1, "former 19-2").stroke_counts().play_as_it_lies()
    return NotCovered("former_resting_on_own_side", "former 19-2")
