"""Before and after 2019: the stroke, hazards, order of play, holing out."""

from dataclasses import replace

from marram.rules.book.former_rules.options import as_it_lies, in_breach, replaced
from marram.rules.book.rule_03_scorecard import did_not_hole_out
from marram.rules.book.rule_06_order_of_play import played_out_of_turn
from marram.rules.book.rule_10_making_a_stroke import hit_again_by_accident
from marram.rules.book.rule_12_bunkers import sand_touched_with_ball_in_bunker, thing_removed_from_bunker
from marram.rules.book.rule_17_penalty_areas import done_in_penalty_area
from marram.rules.editions import EDITION_2019
from marram.rules.engine.case import Case
from marram.rules.engine.fact import Fact
from marram.rules.engine.provision import provision
from marram.rules.facts.bunker import (
    RemovedThing,
    SandTouch,
    sand_improved,
    sand_touch,
    thing_removed_in_bunker,
)
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.former import former_time_to_hole_out_over, touch_allowed_before_2019
from marram.rules.facts.loose_things import obstruction_removal_moved_ball, removal_moved_ball
from marram.rules.facts.order import Cancellation, agreed_for_advantage, opponent_on_cancelling
from marram.rules.facts.penalty_area import PenaltyAreaAction, improved_in_penalty_area, penalty_area_action
from marram.rules.penalty import Who
from marram.rules.ruling import (
    Action,
    NotCovered,
    Ruling,
    Stroke,
    disqualification,
    general_penalty,
    no_penalty,
    penalty,
)


@provision("10.1a")
def ball_hit_twice(case: Case) -> Ruling:
    """Since 2019 an accidental double hit is one stroke; before, a penalty stroke was added."""
    if not case.played_since(EDITION_2019):
        return former_hit_twice(case)
    return hit_again_by_accident(case)


@provision("former 14-4")
def former_hit_twice(_case: Case) -> Ruling:
    """The stroke counted, and one penalty stroke was added."""
    return penalty(1, "former 14-4").stroke_counts().play_as_it_lies()


@provision("12.2a")
def thing_removed_in_own_bunker(case: Case) -> Ruling:
    """Since 2019 loose impediments may be removed from a bunker; before, they were not to be touched."""
    if not case.played_since(EDITION_2019):
        return former_thing_removed(case)
    return thing_removed_from_bunker(case)


@provision("former 13-4")
def former_thing_removed(case: Case) -> Ruling:
    """A loose impediment in the same hazard as the ball stayed; a movable obstruction could go."""
    obstruction = case.is_one_of(thing_removed_in_bunker, RemovedThing.MOVABLE_OBSTRUCTION)
    moved = case[removal_moved_ball]
    if obstruction:
        ruling = no_penalty("former 24-1")
        return replaced(ruling, "former 24-1") if moved else ruling.play_as_it_lies()
    ruling = general_penalty("former 13-4")
    return replaced(ruling, "former 13-4") if moved else ruling.play_as_it_lies()


@provision("12.2b(1)")
def sand_touched_in_own_bunker(case: Case) -> Ruling:
    """Since 2019 only four ways of touching the sand are a breach; before, any touch with hand or club was."""
    if not case.played_since(EDITION_2019):
        return former_sand_touched(case)
    return sand_touched_with_ball_in_bunker(case)


@provision("former 13-4")
def former_sand_touched(case: Case) -> Ruling:
    """With the ball in a hazard, its condition was not to be tested nor its ground touched with hand or club."""
    how = case[sand_touch]
    if how is SandTouch.BACKSWING:
        return in_breach("former 13-4").stroke_counts()
    if how in (SandTouch.TESTING, SandTouch.CLUB_BY_BALL, SandTouch.PRACTICE_SWING):
        return in_breach("former 13-4")
    if how in (SandTouch.REMOVING_OR_SEARCHING, SandTouch.TAKING_STANCE):
        return no_penalty("former 13-4 Exceptions").play_as_it_lies().note("former_loose_thing_itself")
    if how is SandTouch.SMOOTHING:
        return former_sand_smoothed(case)
    return former_touched(case, sand_improved)


@provision("former 13-4 Exceptions")
def former_sand_smoothed(case: Case) -> Ruling:
    """Smoothing only to care for the course was free, if it did not improve the next stroke."""
    if case[sand_improved]:
        return in_breach("former 13-2")
    return no_penalty("former 13-4 Exceptions").play_as_it_lies()


@provision("former 13-4")
def former_touched(case: Case, improved: Fact[bool]) -> Ruling:
    """Touching the ground of the hazard was a breach, except in the ways that the Exceptions allowed."""
    if case[touch_allowed_before_2019]:
        if case[improved]:
            return in_breach("former 13-2")
        return no_penalty("former 13-4 Exceptions").play_as_it_lies()
    return in_breach("former 13-4")


@provision("17.1b")
def done_in_water_hazard(case: Case) -> Ruling:
    """Since 2019 a penalty area is treated like the general area; before, its ground and loose things were not touched."""
    if not case.played_since(EDITION_2019):
        return former_done_in_water_hazard(case)
    return done_in_penalty_area(case)


@provision("former 13-4")
def former_done_in_water_hazard(case: Case) -> Ruling:
    """Ground, water and loose impediments were not to be touched before the stroke."""
    action = case[penalty_area_action]
    if action is PenaltyAreaAction.TOUCHED_GROUND_OR_WATER:
        return former_touched(case, improved_in_penalty_area)
    if action is PenaltyAreaAction.REMOVED_LOOSE_IMPEDIMENT:
        ruling = general_penalty("former 13-4")
        return replaced(ruling, "former 13-4") if case[removal_moved_ball] else ruling.play_as_it_lies()
    if action is PenaltyAreaAction.REMOVED_MOVABLE_OBSTRUCTION:
        ruling = no_penalty("former 24-1")
        return (
            replaced(ruling, "former 24-1")
            if case[obstruction_removal_moved_ball]
            else ruling.play_as_it_lies()
        )
    return as_it_lies("former 14-6")


@provision("6.4")
def played_before_turn(case: Case) -> Ruling:
    """Since 2019 playing out of turn is encouraged in stroke play where safe; it was free before, too."""
    if not case.played_since(EDITION_2019):
        return former_out_of_turn(case)
    return played_out_of_turn(case)


@provision("former 10")
def former_out_of_turn(case: Case) -> Ruling:
    """No penalty; in match play the opponent could recall the stroke, in stroke play it stood."""
    if case.match_play:
        return former_out_of_turn_in_match(case)
    if case[agreed_for_advantage]:
        return disqualification("former 10-2c", Who.EACH_PLAYER).next(Action.HOLE_OVER)
    return as_it_lies("former 10-2c")


@provision("former 10-1c")
def former_out_of_turn_in_match(case: Case) -> Ruling:
    """The opponent could at once require the player to cancel the stroke and play in turn."""
    answer = case[opponent_on_cancelling]
    if answer is Cancellation.CANCELLED:
        return no_penalty("former 10-1c").next(Action.REPLAY).stroke_does_not_count()
    if answer is Cancellation.LET_STAND:
        return as_it_lies("former 10-1c")
    return replace(no_penalty("former 10-1c").play_as_it_lies(), stroke=Stroke.OPPONENT_MAY_CANCEL)


@provision("3.3c")
def picked_up_before_holing_out(case: Case) -> Ruling | NotCovered:
    """Maximum Score is a form of stroke play since 2019, where a player may pick up; before, it was none."""
    if not case.played_since(EDITION_2019):
        return former_picked_up(case)
    return did_not_hole_out(case)


@provision("former 3-2")
def former_picked_up(case: Case) -> Ruling | NotCovered:
    """In stroke play every hole was holed out, except where points or holes are scored."""
    if case.match_play:
        return no_penalty("former 2-1").next(Action.HOLE_OVER).note("picked_up_in_match")
    if case.is_one_of(form_of_play, FormOfPlay.MAXIMUM_SCORE):
        return NotCovered("former_no_maximum_score", "former 3-2")
    if case.is_one_of(form_of_play, FormOfPlay.STABLEFORD):
        return no_penalty("former 32-1").next(Action.HOLE_OVER).note("no_points_on_hole")
    if case.is_one_of(form_of_play, FormOfPlay.PAR_BOGEY):
        return no_penalty("former 32-1").next(Action.HOLE_OVER).note("hole_counts_as_lost")
    if case[former_time_to_hole_out_over]:
        return disqualification("former 3-2").next(Action.HOLE_OVER)
    ruling = no_penalty("former 3-2").next(Action.CORRECT_MISTAKE)
    return ruling.note("former_hole_out", "lifted_ball_costs_a_stroke")
