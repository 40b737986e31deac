"""Model Local Rules, area B: a ball played provisionally for one that may be in a penalty area."""

from marram.rules.book.relief_options import CONTINUE_WITH_PROVISIONAL
from marram.rules.book.rule_18_provisional import another_ball_played
from marram.rules.book.rule_18_two_provisional_balls import provisional_in_play
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.local_course import PenaltyAreaProvisional, penalty_area_provisional
from marram.rules.facts.lost import nearer_stroke_at_provisional
from marram.rules.ruling import Ruling, no_penalty


@provision("B-3")
def provisional_for_penalty_area(case: Case) -> Ruling:
    """Where adopted, a ball may be played under Rule 17.1d before it is known that the original is inside."""
    if not case.local_rule("B-3"):
        return another_ball_played(case)
    became = case[penalty_area_provisional]
    if became is PenaltyAreaProvisional.NOT_FOUND or case[nearer_stroke_at_provisional]:
        return provisional_in_play(case).under("B-3")
    if became is PenaltyAreaProvisional.FOUND_OUTSIDE:
        ruling = no_penalty("18.3c(3)").under("B-3").play_as_it_lies()
        return ruling.note("provisional_strokes_do_not_count")
    ruling = no_penalty("B-3").with_options(CONTINUE_WITH_PROVISIONAL)
    return ruling.note("one_of_the_two_balls", "no_other_penalty_area_relief")
