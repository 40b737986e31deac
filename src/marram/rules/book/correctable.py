"""A mistake that can still be corrected: until when, and what follows if it is not."""

from marram.rules.engine.case import Case
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.penalty import Who, disqualified
from marram.rules.ruling import Deadline, Ruling

_ELSE = {
    FormOfPlay.STABLEFORD: "else_no_points",
    FormOfPlay.MAXIMUM_SCORE: "else_maximum_score",
    FormOfPlay.PAR_BOGEY: "else_hole_lost",
}


def correct_before_next_hole(
    case: Case, ruling: Ruling, what: str, citation: str, who: Who = Who.PLAYER, *, hole_only: bool = True
) -> Ruling:
    """Add to ``ruling`` that the mistake must be corrected before another hole is begun (stroke play).

    Args:
        case: the case; the form of play is read.
        ruling: the ruling so far.
        what: the note key of what to do.
        citation: the provision that disqualifies who does not do it in regular stroke play.
        who: who is disqualified then.
        hole_only: where each hole is scored on its own, only the hole is lost instead (Rule 21).
    """
    if not hole_only or case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return ruling.correct(what, Deadline.BEFORE_NEXT_HOLE, disqualified(citation, who))
    return ruling.correct(what, Deadline.BEFORE_NEXT_HOLE).note(_ELSE[case[form_of_play]])
