"""Rule 6.3c(1) for a player's own ball that was out of play: out of bounds, lost, or no longer the ball in play."""

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.out_of_play import OutOfPlay, ball_out_of_play
from marram.rules.facts.substitution import wrong_ball_corrected
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import strokes
from marram.rules.ruling import Action, Ruling, general_penalty


@provision("6.3c(1)")
def own_ball_out_of_play_played(case: Case) -> Ruling:
    """The player's own ball is a wrong ball too once it is out of play; the strokes at it do not count."""
    ruling = general_penalty("6.3c(1)").under("Definitions: wrong ball")
    if case.match_play:
        return ruling.next(Action.HOLE_OVER)
    if case[wrong_ball_corrected]:
        return corrected(case, ruling)
    if case[next_hole_started]:
        return disqualified_or_without_score(case, "6.3c(1)")
    ruling = ruling.stroke_does_not_count().next(Action.CORRECT_MISTAKE).note("strokes_with_wrong_ball_void")
    if case.is_one_of(ball_out_of_play, OutOfPlay.OUT_OF_BOUNDS, OutOfPlay.LOST):
        what, citation = "correct_wrong_ball_when_lost", "18.2b"
    else:
        what, citation = "correct_with_ball_in_play", "6.3b(2)"
    return correct_before_next_hole(case, ruling.under(citation), what, "6.3c(1)")


@provision("18.2b")
def corrected(case: Case, ruling: Ruling) -> Ruling:
    """A ball out of bounds or lost is put right under stroke and distance, whose stroke comes on top."""
    ruling = ruling.stroke_does_not_count().next(Action.PLAY_ON).note("strokes_with_wrong_ball_void")
    if case.is_one_of(ball_out_of_play, OutOfPlay.OUT_OF_BOUNDS, OutOfPlay.LOST):
        return ruling.also(strokes(1, "18.2b")).under("18.2b")
    return ruling
