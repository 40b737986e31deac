"""Rules 18.1 and 18.2: stroke and distance; ball lost or out of bounds."""

from dataclasses import replace

from marram.rules.book.local_rules.area_e_options import alternative_options
from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL, offer, stroke_and_distance
from marram.rules.book.rule_06_wrong_ball import ball_out_of_play_played
from marram.rules.book.rule_11_deliberate_acts import deflected_elsewhere
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_16_options import in_bunker, in_general_area, on_putting_green, under_the_ball
from marram.rules.book.rule_17_options import penalty_area_relief, without_dropping_inside
from marram.rules.book.rule_18_two_provisional_balls import (
    CONTINUE_WITH_SECOND,
    provisional_gone_too,
    which_provisional_in_play,
)
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.lost import (
    AT_HAND,
    CrossedArea,
    ProvisionalState,
    SecondBall,
    Whereabouts,
    all_of_ball_out_of_bounds,
    crossed_area,
    identified_in_reasonable_time,
    late_ball_played,
    lifted_to_play_again,
    nearer_stroke_at_provisional,
    provisional_state,
    search_minutes,
    second_ball,
    whereabouts,
)
from marram.rules.facts.penalty_area import last_stroke_from_penalty_area
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import strokes
from marram.rules.relief_option import Limit, ReliefKind, ReliefOption
from marram.rules.ruling import Action, Ruling, WhichBall, no_penalty, penalty


@provision("18.1")
def play_again_from_previous_spot(case: Case) -> Ruling:
    """A player may at any time play again from where the previous stroke was made, for one stroke."""
    done = case[second_ball]
    if done is SecondBall.NOTHING_YET:
        return offer(no_penalty("18.1"), stroke_and_distance("18.1"))
    if done is SecondBall.TEED:
        return teed_ball_may_be_abandoned(case)
    return penalty(1, "18.1").next(Action.PLAY_OTHER_BALL).note("original_out_of_play")


@provision("Clarification 18.1/1")
def teed_ball_may_be_abandoned(_case: Case) -> Ruling:
    """A ball in the teeing area is not in play until a stroke is made; the original found may be played."""
    return offer(no_penalty("Clarification 18.1/1"), stroke_and_distance("18.1")).note(
        "teed_ball_may_be_abandoned"
    )


@provision("Clarification 18.1/2")
def lifted_then_played_again(case: Case) -> Ruling:
    """Playing again from the previous spot does not undo the stroke for lifting the ball without a right."""
    if case[lifted_to_play_again]:
        return offer(no_penalty("18.1"), stroke_and_distance("18.1"), may_play_as_it_lies=False)
    return offer(penalty(1, "9.4b"), stroke_and_distance("18.1"), may_play_as_it_lies=False).note(
        "replace_or_play_again"
    )


@provision("18.2a(1)")
def found_in_time(case: Case, *, nothing_certain: bool = False) -> Ruling:
    """A ball is lost if it is not found in three minutes; one found in time may be identified later.

    Found too late it counts as not found: what was known of it when the time ended decides (Rule 18.2b Exception).

    Args:
        case: the case.
        nothing_certain: whether it is known already that nothing was certain of the ball when the time ended.
    """
    if case.at_most(search_minutes, 3) and case[identified_in_reasonable_time]:
        return no_penalty("18.2a(1)").play_as_it_lies().note("provisional_abandoned_if_played")
    if case[late_ball_played]:
        return ball_out_of_play_played(case, "correct_wrong_ball_when_lost", "18.2a(1)", "18.2b")
    return lost_or_out(case) if nothing_certain else ball_not_found(case)


@provision("18.2a(2)")
def near_boundary(case: Case) -> Ruling:
    """A ball is out of bounds only when all of it lies outside the boundary edge."""
    if case[all_of_ball_out_of_bounds]:
        return lost_or_out(case)
    return (
        no_penalty("18.2a(2)")
        .under("2.1")
        .play_as_it_lies()
        .note("may_stand_out_of_bounds", "provisional_abandoned_if_played")
    )


@provision("18.2b")
def ball_not_found(case: Case, known: Whereabouts | None = None) -> Ruling:
    """Stroke and distance, unless it is known or virtually certain what became of the ball.

    Args:
        case: the case.
        known: what is known of the ball, if that was told already in other words.
    """
    certain = known or case[whereabouts]
    if certain in (Whereabouts.NOT_KNOWN, Whereabouts.OUT_OF_BOUNDS):
        return lost_or_out(case)
    at_hand = case.is_one_of(provisional_state, *AT_HAND)
    if at_hand and case[nearer_stroke_at_provisional]:
        return which_provisional_in_play(case, case[provisional_state])
    if certain is Whereabouts.PENALTY_AREA_OR_CONDITION:
        return penalty_area_or_condition(case, provisional_at_hand=at_hand)
    if certain is Whereabouts.PENALTY_AREA:
        return not_found_in_penalty_area(case, provisional_at_hand=at_hand)
    if certain is Whereabouts.DELIBERATELY_STOPPED:
        return deliberately_stopped(case, provisional_at_hand=at_hand)
    instead = stroke_and_distance_instead(case)
    if certain is Whereabouts.OUTSIDE_INFLUENCE:
        return moved_by_outside_influence(case, *instead)
    if certain is Whereabouts.MOVABLE_OBSTRUCTION:
        return not_found_in_movable_obstruction(case, *instead)
    return not_found_in_condition(case, *instead)


@provision("18.2b")
def lost_or_out(
    case: Case, *, from_penalty_area: bool | None = None, provisional: ProvisionalState | None = None
) -> Ruling:
    """A ball lost or out of bounds must be played again from the previous spot, for one stroke.

    Args:
        case: the case.
        from_penalty_area: whether the last stroke was made from a penalty area, if that is known already.
        provisional: what became of a provisional ball, if that is known already.
    """
    provisional = provisional or case[provisional_state]
    if provisional in AT_HAND:
        return which_provisional_in_play(case, provisional)
    options = [stroke_and_distance("18.2b")]
    if case.local_rule("E-5"):
        options.extend(alternative_options(case))
    if case[last_stroke_from_penalty_area] if from_penalty_area is None else from_penalty_area:
        options.extend(without_dropping_inside(case))
    so_far = (
        no_penalty("18.2b")
        if provisional is ProvisionalState.NOT_PLAYED
        else provisional_gone_too(provisional)
    )
    return offer(so_far, *options, may_play_as_it_lies=False).note("original_out_of_play")


@provision("18.2b")
def dropped_where_lost(case: Case) -> Ruling:
    """A ball dropped where the original was lost or went out is in a wrong place: the player must go back.

    Played all the same, it costs the general penalty for the wrong place besides the stroke of stroke and
    distance, which could not be got round by dropping.
    """
    if not case[played_since_put_down]:
        return lost_or_out(case).under("14.5a")
    ruling = played_from_wrong_place(case).under("18.2b")
    if ruling.action is Action.HOLE_OVER:
        return ruling
    return stroke_and_distance_added(ruling)


def stroke_and_distance_added(ruling: Ruling) -> Ruling:
    """Add the stroke of stroke and distance to the penalty for the wrong place; how serious it was is said while it is open."""
    undecided = ("so_far_forward_is_often_serious",) if "play_out_both_balls" in ruling.notes else ()
    return ruling.also(strokes(1, "18.2b")).note("stroke_and_distance_is_added", *undecided)


@provision("17.1c")
def not_found_in_penalty_area(case: Case, *, provisional_at_hand: bool = True) -> Ruling:
    """A ball virtually certain to be in a penalty area has relief there though it was not found.

    Args:
        case: the case.
        provisional_at_hand: whether a provisional ball lies on the course, or may; else nothing is said of one.
    """
    ruling = offer(no_penalty("17.1c"), *penalty_area_relief(case), may_play_as_it_lies=False)
    ruling = ruling.note("original_out_of_play")
    return ruling.note("provisional_abandoned_if_played") if provisional_at_hand else ruling


@provision("17.1a")
def penalty_area_or_condition(case: Case, *, provisional_at_hand: bool) -> Ruling:
    """Where a penalty area or a condition beside it is as likely, only penalty area relief is left."""
    numbered = "Clarification 17.1a/1" if case.played_since(EDITION_2023) else "Clarification 17.1a/2"
    return not_found_in_penalty_area(case, provisional_at_hand=provisional_at_hand).under(numbered)


@provision("16.1e")
def not_found_in_condition(case: Case, *instead: ReliefOption) -> Ruling:
    """A ball virtually certain to be in an abnormal course condition has free relief though not found."""
    area = case[crossed_area]
    if area is CrossedArea.BUNKER:
        options: tuple[ReliefOption, ...] = in_bunker(case)
    else:
        options = (in_general_area() if area is CrossedArea.GENERAL_AREA else on_putting_green(case),)
    ruling = offer(no_penalty("16.1e"), *options, *instead, may_play_as_it_lies=False)
    return ruling.note("measure_from_crossing_point", "original_out_of_play")


@provision("15.2b")
def not_found_in_movable_obstruction(case: Case, *instead: ReliefOption) -> Ruling:
    """A ball virtually certain to be in or on a movable obstruction has free relief though not found.

    Where the obstruction is in a penalty area the ball is in that area (Rule 17.1a), so that a provisional ball not yet in
    play is given up (Rule 18.3c(3)).
    """
    under = under_the_ball(on_green=case.is_one_of(area_of_ball, Area.PUTTING_GREEN), found=False)
    gone = [one for one in instead if one.kind is ReliefKind.PROVISIONAL]
    if gone and case.is_one_of(area_of_ball, Area.PENALTY_AREA):
        under = replace(under, limits=(Limit.NOT_NEARER, Limit.IN_PENALTY_AREA))
        again = stroke_and_distance("18.1")
        ruling = offer(no_penalty("15.2b"), under, again, may_play_as_it_lies=False).under("18.3c(3)")
        return ruling.note(
            "reference_where_it_entered", "original_out_of_play", "provisional_abandoned_if_played"
        )
    ruling = offer(no_penalty("15.2b"), under, *instead, may_play_as_it_lies=False)
    return ruling.note("reference_where_it_entered", "original_out_of_play")


@provision("9.6")
def moved_by_outside_influence(_case: Case, *instead: ReliefOption) -> Ruling:
    """A ball virtually certain to have been moved by an outside influence is replaced, without penalty."""
    ruling = no_penalty("9.6").under("14.2a Exception").with_options(*instead)
    ruling = ruling.next(Action.REPLACE, WhichBall.ORIGINAL_OR_ANOTHER)
    return ruling.note("outside_influence_or_stroke_and_distance")


@provision("11.2c")
def deliberately_stopped(case: Case, *, provisional_at_hand: bool) -> Ruling:
    """A ball deliberately deflected or stopped is played from where it would have come to rest.

    Where that is out of bounds, the player goes back: Rule 18.3c does not say that a provisional ball counts for a ball
    that was stopped on the course, and a note says so.
    """
    ruling = deflected_elsewhere(case, no_penalty("11.2c")).note("penalty_for_who_stopped_it")
    if provisional_at_hand and "18.2b" in (one.citation for one in ruling.relief):
        ruling = ruling.note("provisional_beside_stopped_ball")
    return replace(ruling, which_ball=WhichBall.ORIGINAL_OR_ANOTHER)


def stroke_and_distance_instead(case: Case) -> tuple[ReliefOption, ...]:
    """The choice beside free relief: on with the provisional ball, or from the spot if none was played."""
    provisional = case[provisional_state]
    if provisional is ProvisionalState.NOT_PLAYED:
        return (stroke_and_distance("18.1"),)
    if provisional is ProvisionalState.SECOND_FOUND:
        return (CONTINUE_WITH_SECOND,)
    return (CONTINUE_WITH_PROVISIONAL,) if provisional is ProvisionalState.FOUND else ()
