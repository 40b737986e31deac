"""The Definition of stroke: whether a swing was one."""

from marram.rules.book.rule_09_natural_forces import lying_in_teeing_area
from marram.rules.book.rule_09_player import moved_by_accident_on_green, penalised_for_moving
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.ball import Area, area_of_ball
from marram.rules.facts.swing import Swing, what_swing
from marram.rules.ruling import Ruling, no_penalty

_LISTED_AS_STROKES = (Swing.CLUB_STOPPED_BY_SOMETHING, Swing.HEAD_OFF_AND_WENT_ON)
_LISTED_AS_NONE = (Swing.HEAD_OFF_AND_STOPPED, Swing.HEAD_OFF_IN_BACKSWING)


@provision("Definitions: stroke")
def swing_made(case: Case) -> Ruling:
    """A forward movement of the club made to strike the ball is a stroke, unless it was given up in time."""
    if case.is_one_of(what_swing, Swing.PREPARING):
        return ball_hit_in_preparing(case)
    if case.is_one_of(what_swing, *_LISTED_AS_STROKES, *_LISTED_AS_NONE, Swing.BRANCH_STRUCK):
        return swing_listed(case)
    if case.is_one_of(what_swing, Swing.STOPPED_OR_STEERED_CLEAR):
        return _no_stroke("Definitions: stroke")
    return _a_stroke("Definitions: stroke")


@provision("Clarification Stroke/1")
def swing_listed(case: Case) -> Ruling:
    """The published list: a stopped clubhead, and a clubhead that comes off."""
    if case.is_one_of(what_swing, *_LISTED_AS_STROKES):
        return _a_stroke("Clarification Stroke/1")
    if case.is_one_of(what_swing, Swing.BRANCH_STRUCK):
        return penalised_for_moving(case).under("Clarification Stroke/1").note("no_stroke_made")
    return _no_stroke("Clarification Stroke/1").note("look_up_ball_moved_without_stroke")


@provision("Definitions: stroke")
def ball_hit_in_preparing(case: Case) -> Ruling:
    """Hitting the ball by accident in a practice swing is no stroke; a ball in play has been moved."""
    if case.is_one_of(area_of_ball, Area.TEEING_AREA):
        moved = lying_in_teeing_area(case)
    elif case.is_one_of(area_of_ball, Area.PUTTING_GREEN):
        moved = moved_by_accident_on_green(case)
    else:
        moved = penalised_for_moving(case)
    return moved.under("Definitions: stroke").note("no_stroke_made")


def _a_stroke(citation: str) -> Ruling:
    return no_penalty(citation).stroke_counts().play_as_it_lies().note("counts_hit_or_missed")


def _no_stroke(citation: str) -> Ruling:
    return no_penalty(citation).play_as_it_lies().note("no_stroke_made")
