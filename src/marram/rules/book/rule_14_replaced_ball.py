"""Rules 14.2b and 14.5a: a ball that was put back by a wrong person, in a wrong way or on a wrong spot."""

from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.replacing import (
    ReplacedBy,
    ball_marker_left,
    replaced_by,
    replaced_in_right_way,
    replaced_on_right_spot,
)
from marram.rules.facts.wrong_place import played_since_put_down
from marram.rules.penalty import Penalty, general, strokes
from marram.rules.ruling import Deadline, Ruling, no_penalty, penalty


@provision("14.2b")
def ball_put_back(case: Case) -> Ruling:
    """A ball was put back: on the right spot, by the right person, in the right way?"""
    if not case[replaced_on_right_spot]:
        return put_back_on_wrong_spot(case)
    if not case.is_one_of(replaced_by, ReplacedBy.PLAYER_OR_LIFTER):
        return put_back_by_wrong_person(case)
    if not case[replaced_in_right_way]:
        return put_back_in_wrong_way(case)
    return ball_marker_at_the_spot(case)


@provision("14.2c")
def put_back_on_wrong_spot(case: Case) -> Ruling:
    """A ball played from a spot other than the one required is played from a wrong place."""
    if case[played_since_put_down]:
        return played_from_wrong_place(case).under("14.2c")
    return put_back_again(case, general("14.7a"))


@provision("14.2b(1)")
def put_back_by_wrong_person(case: Case) -> Ruling:
    """One stroke for playing a ball that was put back by somebody not allowed to."""
    if case[played_since_put_down]:
        return penalty(1, "14.2b(1)").play_as_it_lies().stroke_counts()
    return put_back_again(case, strokes(1, "14.2b(1)"))


@provision("14.2b(2)")
def put_back_in_wrong_way(case: Case) -> Ruling:
    """One stroke for playing a ball that was put on the required spot in a wrong way."""
    if case[played_since_put_down]:
        return penalty(1, "14.2b(2)").play_as_it_lies().stroke_counts()
    return put_back_again(case, strokes(1, "14.2b(2)"))


@provision("14.1a")
def ball_marker_at_the_spot(case: Case) -> Ruling:
    """One stroke for a stroke made with the ball-marker left in place; the ball was in play all the same."""
    if not case[ball_marker_left]:
        return no_penalty("14.2b").play_as_it_lies()
    if case[played_since_put_down]:
        return penalty(1, "14.1a").under("14.4").play_as_it_lies().stroke_counts()
    return (
        no_penalty("14.4")
        .play_as_it_lies()
        .correct("take_ball_marker_away", Deadline.BEFORE_STROKE, strokes(1, "14.1a"))
    )


@provision("14.5a")
def put_back_again(_case: Case, otherwise: Penalty) -> Ruling:
    """Until the ball is played, the mistake may be corrected without penalty."""
    return (
        no_penalty("14.5a")
        .replace_ball()
        .note("mistake_may_be_corrected")
        .correct("put_back_as_required", Deadline.BEFORE_STROKE, otherwise)
    )
