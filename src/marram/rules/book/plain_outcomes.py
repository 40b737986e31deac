"""The plain endings of provisions that say nothing about the ball: play goes on, or the player is out."""

from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, disqualification, general_penalty, no_penalty, penalty


def free(citation: str) -> Ruling:
    """No penalty; play goes on."""
    return no_penalty(citation).next(Action.PLAY_ON)


def stay_stopped(citation: str) -> Ruling:
    """No penalty; play is stopped."""
    return no_penalty(citation).next(Action.STOP_PLAY)


def one_stroke(citation: str, who: Who = Who.PLAYER) -> Ruling:
    """One penalty stroke; play goes on."""
    return penalty(1, citation, who).next(Action.PLAY_ON)


def in_breach(citation: str, who: Who = Who.PLAYER) -> Ruling:
    """The general penalty; play goes on."""
    return general_penalty(citation, who).next(Action.PLAY_ON)


def out(citation: str, who: Who = Who.PLAYER) -> Ruling:
    """Disqualification."""
    return disqualification(citation, who).next(Action.HOLE_OVER)
