"""What follows when a moved ball must go back to its spot, and when it was not put back."""

from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.ruling import Action, Deadline, Ruling, disqualified, general, general_penalty


def must_go_back(ruling: Ruling) -> Ruling:
    """The ball is replaced before the next stroke; playing it from elsewhere is a wrong place (14.7a)."""
    return ruling.replace_ball().correct("replace_before_stroke", Deadline.BEFORE_STROKE, general("14.7a"))


@provision("14.7a")
def played_from_wrong_place(case: Case, *also: str) -> Ruling:
    """A stroke from a wrong place counts and costs the general penalty; a serious breach must be corrected."""
    ruling = general_penalty("14.7a").under(*also).stroke_counts()
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    return ruling.play_as_it_lies().correct(
        "correct_if_serious_breach", Deadline.BEFORE_NEXT_HOLE, disqualified("14.7b")
    )
