"""Rule 9: ball played as it lies; ball at rest lifted or moved."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.cause import cause_known, movement_accidental, while_searching
from marram.rules.ruling import Deadline, Ruling, general, no_penalty, penalty


@provision("9.4b")
def ball_moved_by_player(case: Case) -> Ruling:
    """One penalty stroke for moving the ball at rest, and the ball is replaced."""
    if not case[cause_known]:
        return moved_by_unknown_cause(case)
    if case[area_of_ball] is Area.PUTTING_GREEN and case[movement_accidental]:
        return no_penalty("13.1d(1)").replace_ball()
    if case[while_searching] and case[movement_accidental]:
        return no_penalty("7.4").replace_ball()
    return (
        penalty(1, "9.4b")
        .replace_ball()
        .correct("replace_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))
    )


@provision("9.2b(2)")
def moved_by_unknown_cause(_case: Case) -> Ruling:
    """Without knowledge or virtual certainty the ball counts as moved by natural forces."""
    return no_penalty("9.3").play_as_it_lies()
