"""Rule 3.2: matches: concessions, telling the opponent, handicaps, the match score."""

from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.book.rule_01_playing_by_the_rules import agreed_to_ignore
from marram.rules.book.rule_09_replacing import must_go_back
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conduct import knew_it_applied
from marram.rules.facts.match import (
    Conceded,
    DeclaredHandicap,
    WhenAsked,
    WhoConceded,
    conceded,
    conceded_in_time,
    declared_handicap,
    handicap_put_right,
    misled_and_ruling_in_time,
    opponent_knew_penalty,
    result_misunderstood,
    score_put_right,
    strokes_given_affected,
    strokes_misapplied_put_right,
    strokes_put_right,
    strokes_right,
    told_of_penalty_in_time,
    when_strokes_given,
    who_conceded,
)
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Ruling, no_penalty, penalty


@provision("3.2b")
def concession(case: Case) -> Ruling:
    """In match play the next stroke, a hole or the match may be conceded; in stroke play nothing may."""
    if not case.match_play:
        return (
            no_penalty("3.3c")
            .under("3.2b")
            .next(Action.CORRECT_MISTAKE)
            .note("nothing_conceded_in_stroke_play")
        )
    how = case[who_conceded]
    if how is WhoConceded.CLEARLY:
        return concession_made(case)
    if how is WhoConceded.MISUNDERSTOOD:
        return concession_not_made(case)
    return concession_by_caddie(case, how)


@provision("3.2b(1)")
def concession_made(case: Case) -> Ruling:
    """A concession in time is final: it can be neither declined nor withdrawn."""
    if not case[conceded_in_time]:
        return free("3.2b(1)").note("concession_too_late")
    if case[conceded] is Conceded.HOLES_IN_TURN:
        return conceded_to_shorten_match(case)
    if case[conceded] is Conceded.STROKE:
        return no_penalty("3.2b(1)").next(Action.HOLED).note("conceded_ball_counts_holed")
    final = no_penalty("3.2b(1)").next(Action.HOLE_OVER)
    if case[conceded] is Conceded.HOLE:
        return final.note("hole_conceded")
    return final.note("match_conceded")


@provision("Clarification 3.2b(1)/1")
def conceded_to_shorten_match(case: Case) -> Ruling:
    """Conceding holes to each other to shorten the match disqualifies both, if they knew better and started."""
    if not case[knew_it_applied]:
        return free("Clarification 3.2b(1)/1").note("match_stands_as_played")
    return agreed_to_ignore(case).under("Clarification 3.2b(1)/1")


@provision("3.2b(2)")
def concession_not_made(_case: Case) -> Ruling:
    """A ball lifted on a reasonable misunderstanding is replaced without penalty."""
    return no_penalty("3.2b(2)").replace_ball().note("replace_unless_conceded_now")


@provision("Clarification 3.2b(2)/1")
def concession_by_caddie(case: Case, how: WhoConceded) -> Ruling:
    """A caddie cannot concede; a caddie who also lifts the opponent's ball costs the player a stroke."""
    if how is WhoConceded.CADDIE_LIFTED_BALL:
        ruling = must_go_back(penalty(1, "9.5b"), Who.OPPONENT).note("replace_unless_conceded_now")
        return ruling.under("3.2b(2)", "Clarification 3.2b(2)/1")
    return concession_not_made(case).under("Clarification 3.2b(2)/1")


@provision("3.2d(1)")
def strokes_told(case: Case) -> Ruling:
    """A wrong number of strokes taken, not put right in time, loses the hole."""
    if not case.match_play:
        return free("3.2d(1)").note("match_play_only")
    if case[strokes_right] or case[strokes_put_right]:
        return free("3.2d(1)")
    if case[when_strokes_given] is WhenAsked.AFTER_HOLE and not case[result_misunderstood]:
        return free("3.2d(1) Exception")
    return in_breach("3.2d(1)").next(Action.HOLE_OVER)


@provision("3.2d(2)")
def penalty_told(case: Case) -> Ruling:
    """A penalty must be told to the opponent as soon as reasonably possible, known or not."""
    if not case.match_play:
        return free("3.2d(2)").note("tell_marker_of_penalty")
    if case[told_of_penalty_in_time]:
        return free("3.2d(2)")
    if case[opponent_knew_penalty]:
        return free("3.2d(2) Exception")
    return in_breach("3.2d(2)").next(Action.HOLE_OVER)


@provision("3.2d(3)")
def match_score_wrong(case: Case) -> Ruling:
    """A wrong match score that was agreed becomes the true one unless found in time."""
    if case[score_put_right]:
        return free("3.2d(3)").note("correct_match_score")
    if case[misled_and_ruling_in_time]:
        return free("3.2d(3) Exception").note("correct_match_score")
    return free("3.2d(3)").note("agreed_score_stands")


@provision("3.2c(1)")
def handicap_declared_wrong(case: Case) -> Ruling:
    """A handicap declared too high can disqualify; one declared too low is played off."""
    if not case.match_play:
        return free("3.2c(1)").note("match_play_only")
    if case[handicap_put_right]:
        return free("3.2c(1)")
    if case[declared_handicap] is DeclaredHandicap.TOO_LOW:
        return free("3.2c(1)").note("play_off_lower_handicap")
    if case[strokes_given_affected]:
        return out("3.2c(1)")
    return free("3.2c(1)")


@provision("3.2c(2)")
def handicap_strokes_misapplied(case: Case) -> Ruling:
    """A handicap stroke forgotten or wrongly applied leaves the agreed result unless found in time."""
    if case[strokes_misapplied_put_right]:
        return free("3.2c(2)").note("correct_hole_result")
    return free("3.2c(2)").note("agreed_result_stands")
