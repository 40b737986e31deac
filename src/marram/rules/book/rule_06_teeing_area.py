"""Rules 6.1 and 6.2: starting a hole, and playing from the teeing area."""

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, out
from marram.rules.book.rule_08_improving import nothing_gained
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions_affecting import conditions_improved
from marram.rules.facts.teeing import (
    TeedOn,
    TeeImprovement,
    TeeMarker,
    about_to_play_from_tee,
    ball_in_teeing_area,
    part_of_ball_in_teeing_area,
    tee_ball_struck,
    tee_improvement,
    tee_marker,
    tee_stroke_cancelled,
    teed_on,
    teed_wrongly_again,
)
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.ruling import Action, Ruling, WhichBall, general_penalty, no_penalty


@provision("6.2b(1)")
def ball_at_edge_of_teeing_area(case: Case) -> Ruling:
    """A ball is in the teeing area when any part of it is; where the player stands does not matter."""
    if case[part_of_ball_in_teeing_area]:
        return no_penalty("6.2b(1)").stroke_counts().play_as_it_lies().note("may_stand_outside_teeing_area")
    return began_outside_teeing_area(case).under("6.2b(1)")


@provision("6.1b")
def began_outside_teeing_area(case: Case) -> Ruling:
    """A hole begun from outside the teeing area, or from other tee-markers."""
    if case.match_play:
        return began_outside_in_match(case)
    return began_outside_in_stroke_play(case)


@provision("6.1b(1)")
def began_outside_in_match(case: Case) -> Ruling:
    """In a match there is no penalty, but the opponent may promptly cancel the stroke."""
    if case[tee_stroke_cancelled]:
        return (
            no_penalty("6.1b(1)")
            .stroke_does_not_count()
            .next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)
        )
    ruling = no_penalty("6.1b(1)").under("Clarification 6.1b(1)/1").stroke_counts().play_as_it_lies()
    return ruling.note("lost_from_outside_drop_not_tee")


@provision("6.1b(2)")
def began_outside_in_stroke_play(case: Case) -> Ruling:
    """In stroke play: the general penalty, and a ball is played from inside the teeing area."""
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "6.1b(2)")
    ruling = (
        general_penalty("6.1b(2)")
        .stroke_does_not_count()
        .next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("strokes_from_outside_do_not_count")
    )
    return correct_before_next_hole(case, ruling, "play_from_inside_teeing_area", "6.1b(2)")


@provision("6.2b(5)")
def fell_off_tee(case: Case) -> Ruling:
    """A ball that falls or is knocked off the tee before a stroke at it is not in play."""
    if case[tee_ball_struck]:
        return no_penalty("6.2b(5)").stroke_counts().play_as_it_lies()
    return (
        no_penalty("6.2b(5)")
        .next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)
        .note("tee_again_anywhere")
    )


@provision("6.2b(6)")
def ball_in_play_in_teeing_area(case: Case) -> Ruling:
    """A ball in play that lies in the teeing area may be moved or teed again without penalty."""
    if case[ball_in_teeing_area]:
        return (
            no_penalty("6.2b(6)")
            .next(Action.PLAY_FROM_TEEING_AREA, WhichBall.ORIGINAL_OR_ANOTHER)
            .note("stroke_counted_may_tee_or_play_as_lies")
        )
    return no_penalty("6.2b(6)").play_as_it_lies()


@provision("6.2b(4)")
def tee_marker_moved(case: Case) -> Ruling:
    """Tee-markers stand fixed for the player about to play from between them."""
    if not case[about_to_play_from_tee]:
        return free("15.2").under("6.2b(4)").note("tee_marker_back_in_place")
    fate = case[tee_marker]
    if fate is TeeMarker.MISSING:
        return tee_markers_missing(case)
    if fate is TeeMarker.IMPROVED_NOT_RESTORED:
        ruling = general_penalty("8.1a").under("6.2b(4)").play_as_it_lies()
        return ruling.stroke_counts().note("tee_marker_back_in_place")
    if fate is TeeMarker.IMPROVED_RESTORED:
        return free("8.1c").under("6.2b(4)")
    return free("Clarification 6.2b(4)/1").note(
        "tee_marker_back_in_place", "deliberate_moving_may_be_misconduct"
    )


@provision("1.3b(2)")
def tee_markers_missing(case: Case) -> Ruling:
    """Without markers the Committee is asked, else the player's careful estimate of the teeing area stands."""
    ruling = free("1.3b(2)").note("estimate_teeing_area")
    return ruling if case.played_since(EDITION_2023) else ruling.under("Clarification 6.1/1")


@provision("6.2b(3)")
def teeing_area_improved(case: Case) -> Ruling:
    """The ground and growth of the teeing area may be improved; other things may not."""
    if case.is_one_of(tee_improvement, TeeImprovement.GROUND_OR_GRASS):
        return free("6.2b(3)")
    if not case[conditions_improved]:
        return nothing_gained(case)
    return general_penalty("8.1a").play_as_it_lies()


@provision("6.2b(2)")
def teed_wrongly(case: Case) -> Ruling:
    """A ball is played from the ground or from a conforming tee: the breach is the stroke, which counts."""
    if case.is_one_of(teed_on, TeedOn.GROUND_OR_TEE):
        return free("6.2b(2)")
    if case[teed_wrongly_again]:
        return out("6.2b(2)")
    return general_penalty("6.2b(2)").stroke_counts().play_as_it_lies()
