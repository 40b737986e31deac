"""Rule 23: Four-Ball."""

from dataclasses import replace

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.book.rule_03_scorecard import score_too_low
from marram.rules.book.rule_04_clubs import clubs_penalty
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, Sides, form_of_play, sides
from marram.rules.facts.forms import (
    Arrived,
    Completed,
    LastInPlay,
    OtherSide,
    SideBreach,
    SideCard,
    WhomElse,
    arrived,
    last_in_play,
    other_side_on_hole,
    partners_completed,
    play_helped_partner,
    played_the_hole,
    side_breach,
    side_card,
    stood_to_learn_line,
    whom_else,
)
from marram.rules.facts.scorecard import too_late_to_correct
from marram.rules.ruling import Action, NotCovered, Ruling, Who, no_penalty


@provision("23.2a")
def four_ball_hole(case: Case) -> Ruling:
    """The lower score of the partners counts; one of them needs to complete the hole."""
    done = case[partners_completed]
    if done is Completed.BOTH:
        return no_penalty("23.2a").next(Action.HOLED).note("lower_score_counts")
    if done is Completed.ONE:
        return no_penalty("23.2a").next(Action.HOLED).note("score_of_one_partner_counts")
    if case.match_play:
        return no_partner_completed_in_match(case)
    return no_partner_completed(case)


@provision("23.2a")
def no_partner_completed_in_match(case: Case) -> Ruling:
    """In a match the side loses the hole, unless the other side had lost it or holed no ball either."""
    over = no_penalty("23.2a").next(Action.HOLE_OVER)
    other = case[other_side_on_hole]
    if other is OtherSide.COMPLETED:
        return over.note("side_loses_hole")
    if other is OtherSide.CONCEDED_OR_LOST:
        return over.note("side_wins_hole")
    last = case[last_in_play]
    note = {
        LastInPlay.THIS_SIDE: "side_wins_hole",
        LastInPlay.OTHER_SIDE: "side_loses_hole",
        LastInPlay.NOT_KNOWN: "hole_is_tied",
    }[last]
    return over.under("Clarification 23.2a/1").note(note)


@provision("23.2a")
def no_partner_completed(case: Case) -> Ruling:
    """In stroke play the side has no score: corrected in time, or disqualified."""
    if not case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
        return disqualified_or_without_score(case, "3.3c").under("23.2a")
    if case[too_late_to_correct]:
        return out("3.3c", Who.SIDE).under("23.2a")
    ruling = no_penalty("23.2a").under("3.3c").next(Action.CORRECT_MISTAKE)
    return correct_before_next_hole(case, ruling, "a_partner_holes_out", "3.3c", Who.SIDE)


@provision("23.2b")
def four_ball_card(case: Case) -> Ruling:
    """One card; each score that counts is identified to the partner who made it."""
    if case.match_play:
        return free("3.3b").note("no_scorecard_in_match_play")
    fault = case[side_card]
    if fault is SideCard.NOT_IDENTIFIED:
        return out("23.2b(2)", Who.SIDE)
    if fault is SideCard.OTHER_SCORE_WRONG:
        return free("23.2b(2)").note("only_counting_score_matters")
    ruling = score_too_low(case).under("23.2b(2)")
    on_side = tuple(replace(penalty, who=Who.SIDE) for penalty in ruling.penalties)
    return replace(ruling, penalties=on_side)


@provision("23.4")
def partner_arrived_late(case: Case) -> Ruling:
    """One partner may play for the side; the other joins only between two holes."""
    if case[arrived] is Arrived.BETWEEN_HOLES:
        return free("23.4")
    if case[played_the_hole]:
        return in_breach("23.4")
    return free("23.4").note("join_on_next_hole")


@provision("23.9a")
def four_ball_penalty(case: Case) -> Ruling:
    """A penalty normally falls on the one partner; in three situations on both (2019: Rule 23.8a)."""
    rule = "23.9a" if case.played_since(EDITION_2023) else "23.8a"
    breach = case[side_breach]
    if breach is SideBreach.CLUBS:
        return clubs_penalty(case, "4.1b").under(f"{rule}(2)").note("both_partners_get_it")
    if breach is SideBreach.WRONG_BALL:
        return in_breach("6.3c(1)").under(f"{rule}(2) Exception")
    start = one_stroke if breach is SideBreach.ONE_STROKE else in_breach
    if falls_on_both(case):
        return start(f"{rule}(2)", Who.EACH_PLAYER)
    return start(f"{rule}(1)")


@provision("23.9a(2)")
def falls_on_both(case: Case) -> bool:
    """The partner shares the penalty if helped, and in a match also if an opponent was hurt."""
    affected = case[whom_else]
    return affected is WhomElse.HELPED_PARTNER or (affected is WhomElse.HURT_OPPONENT and case.match_play)


@provision("23.9b")
def four_ball_disqualified(case: Case) -> NotCovered:
    """Whether a disqualification falls on the side or only on the partner for the hole goes by a list."""
    return NotCovered("look_up_list_of_rules", "23.9b" if case.played_since(EDITION_2023) else "23.8b")


@provision("23.6")
def played_on_after_concession(case: Case) -> Ruling:
    """A player whose stroke was conceded must not play on in a way that helps the partner."""
    if case[play_helped_partner]:
        return free("23.6 Exception").note("partner_has_no_score")
    return free("23.6 Exception")


@provision("23.8")
def partner_stood_behind(case: Case) -> Ruling | NotCovered:
    """Partners do not stand behind each other's ball on the line to learn something for their next stroke."""
    if not case.played_since(EDITION_2023):
        return NotCovered("partner_behind_in_2019", "10.2b(4)")
    citation = "22.6" if case.is_one_of(sides, Sides.FOURSOMES) else "23.8"
    if case[stood_to_learn_line]:
        return in_breach(citation)
    return free(citation).note("standing_behind_has_another_limit")
