"""Rule 10.1: making a stroke."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.stroke import (
    ClubHold,
    Contact,
    MovingBall,
    contact,
    foot_on_line,
    hands_work_apart,
    held_against_body,
    how_ball_was_moving,
    stance_to_spare_other_line,
)
from marram.rules.ruling import Judgement, Ruling, general_penalty, no_penalty


def _stroke_stands(citation: str) -> Ruling:
    """No penalty, and the stroke counts."""
    return no_penalty(citation).stroke_counts().play_as_it_lies()


def _stroke_in_breach(citation: str) -> Ruling:
    """The general penalty; the stroke made in breach still counts."""
    return general_penalty(citation).stroke_counts().play_as_it_lies()


@provision("10.1a")
def ball_struck(case: Case) -> Ruling | Judgement:
    """The ball must be fairly struck at with the head of the club."""
    met = case[contact]
    if met is Contact.HIT_AGAIN_BY_ACCIDENT:
        return hit_again_by_accident(case)
    if met is Contact.HIT_AGAIN_ON_PURPOSE:
        return struck_again_on_purpose(case)
    if met is Contact.FAIR:
        return _stroke_stands("10.1a")
    return _stroke_in_breach("10.1a")


@provision("10.1a")
def hit_again_by_accident(_case: Case) -> Ruling:
    """Hitting the ball more than once in one swing by accident is one stroke, without penalty."""
    return _stroke_stands("10.1a").note("one_stroke_for_double_hit")


@provision("10.1d")
def struck_again_on_purpose(_case: Case) -> Judgement:
    """Hitting the moving ball again on purpose is a stroke at it, or deflects it: the referee finds which."""
    return Judgement(
        "10.1d",
        "referee",
        ("second_hit_a_stroke", "second_hit_a_deflection"),
        (_stroke_in_breach("10.1d"),),
    )


@provision("10.1b")
def club_anchored(case: Case) -> Ruling:
    """The club must be swung freely, not anchored to the body."""
    held = case[held_against_body]
    if held is ClubHold.CLUB_OR_HAND_ON_BODY:
        return _stroke_in_breach("10.1b")
    if held is ClubHold.FOREARM_ON_BODY and case[hands_work_apart]:
        return _stroke_in_breach("10.1b").under("Clarification 10.1b/1")
    return _stroke_stands("10.1b")


@provision("10.1c")
def stood_across_line(case: Case) -> Ruling:
    """No stroke with the feet deliberately across, or a foot on, the line of play."""
    if not case[foot_on_line]:
        return _stroke_stands("10.1c")
    if case[stance_to_spare_other_line]:
        return _stroke_stands("10.1c Exception")
    return _stroke_in_breach("10.1c")


@provision("10.1d")
def moving_ball_played(case: Case) -> Ruling:
    """No stroke at a moving ball, with three exceptions."""
    moving = case[how_ball_was_moving]
    if moving is MovingBall.STARTED_IN_BACKSWING:
        return _stroke_stands("10.1d Exception 1").note("see_whether_player_moved_ball")
    if moving is MovingBall.FALLING_OFF_TEE:
        return _stroke_stands("10.1d Exception 2")
    if moving is MovingBall.IN_WATER:
        return _stroke_stands("10.1d Exception 3").note("no_waiting_for_current")
    if moving is MovingBall.WOBBLING:
        return _stroke_stands("10.1d").note("wobbling_ball_is_at_rest")
    return _stroke_in_breach("10.1d")
