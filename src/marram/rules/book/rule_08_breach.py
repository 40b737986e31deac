"""How a breach of Rule 8 ends."""

from marram.rules.engine.case import Case
from marram.rules.ruling import Action, Ruling, general_penalty


def breach(case: Case, citation: str, *also: str) -> Ruling:
    """The general penalty: in match play the hole is over, otherwise the ball is played as it lies."""
    ruling = general_penalty(citation).under(*also)
    return ruling.next(Action.HOLE_OVER if case.match_play else Action.PLAY_AS_IT_LIES)
