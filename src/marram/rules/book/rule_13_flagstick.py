"""Rule 13.2: the flagstick."""

from marram.rules.book.rule_11_deliberate_acts import deflected_on_purpose
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.deflection import Deflector
from marram.rules.facts.flagstick import (
    FlagstickMover,
    FlagstickState,
    attendance_authorised,
    flagstick_leant_on_purpose,
    flagstick_moved_to_affect,
    flagstick_mover,
    flagstick_state,
    hit_by_design,
    moved_with_flagstick,
    part_in_hole,
    who_meant_the_hit,
)
from marram.rules.penalty import Who, general
from marram.rules.ruling import Action, Deadline, Ruling, general_penalty, no_penalty

_AS_DEFLECTOR = {
    FlagstickMover.OWN_SIDE: Deflector.OWN_SIDE,
    FlagstickMover.OTHER_PLAYER: Deflector.OTHER_PLAYER,
    FlagstickMover.OUTSIDER: Deflector.OUTSIDER,
}


@provision("13.2")
def ball_hit_flagstick(case: Case) -> Ruling:
    """A ball that hits the flagstick or its attendant is played as it lies, unless that was by design."""
    if case.is_one_of(flagstick_state, FlagstickState.LEFT_IN_HOLE):
        return ball_hit_flagstick_left_in(case)
    return ball_hit_removed_flagstick(case)


@provision("13.2a(2)")
def ball_hit_flagstick_left_in(case: Case) -> Ruling:
    """No penalty for hitting a flagstick left in the hole, unless the player had deliberately leant it."""
    if case[flagstick_leant_on_purpose]:
        return general_penalty("13.2a(1)").stroke_counts().play_as_it_lies()
    return no_penalty("13.2a(2)").stroke_counts().play_as_it_lies()


@provision("13.2b(2)")
def ball_hit_removed_flagstick(case: Case) -> Ruling:
    """By accident: as it lies. By design: Rule 11.2 applies."""
    if not case[hit_by_design]:
        return no_penalty("13.2b(2)").stroke_counts().play_as_it_lies()
    return deflected_on_purpose(case, _AS_DEFLECTOR[case[who_meant_the_hit]]).under("13.2b(2)")


@provision("13.2a")
def flagstick_moved(case: Case) -> Ruling:
    """A flagstick left in the hole must not be moved to affect where the ball comes to rest."""
    mover = case[flagstick_mover]
    if mover is FlagstickMover.OUTSIDER:
        return no_penalty("13.2a").stroke_counts().play_as_it_lies()
    if mover is FlagstickMover.OWN_SIDE:
        return flagstick_moved_by_own_side(case)
    return flagstick_moved_by_other_player(case)


@provision("13.2a(3)")
def flagstick_moved_by_own_side(case: Case) -> Ruling:
    """The player and the caddie must not draw the flagstick to affect the ball in motion."""
    if case[flagstick_moved_to_affect]:
        return general_penalty("13.2a(3)").stroke_counts().play_as_it_lies()
    return no_penalty("13.2a(3)").stroke_counts().play_as_it_lies()


@provision("13.2a(4)")
def flagstick_moved_by_other_player(case: Case) -> Ruling:
    """Another player who does so unasked gets the penalty."""
    if case[attendance_authorised]:
        return no_penalty("13.2b(1)").stroke_counts().play_as_it_lies()
    if not case[flagstick_moved_to_affect]:
        return no_penalty("13.2a(4)").stroke_counts().play_as_it_lies()
    who = Who.OPPONENT if case.match_play else Who.OTHER_PLAYER
    return general_penalty("13.2a(4)", who).stroke_counts().play_as_it_lies()


@provision("13.2c")
def ball_against_flagstick(case: Case) -> Ruling:
    """A ball resting against the flagstick is holed if any part of it is below the surface in the hole."""
    if case[part_in_hole]:
        return no_penalty("13.2c").stroke_counts().next(Action.HOLED)
    if case[moved_with_flagstick]:
        return (
            no_penalty("13.2c")
            .replace_ball()
            .note("replace_on_lip")
            .correct("replace_on_lip_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
        )
    return no_penalty("13.2c").play_as_it_lies().note("not_holed_against_flagstick")
