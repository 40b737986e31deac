"""Rule 23: Four-Ball."""

from dataclasses import replace

from marram.rules.book.correctable import correct_before_next_hole
from marram.rules.book.not_corrected import disqualified_or_without_score
from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.book.rule_03_scorecard import score_too_low
from marram.rules.book.rule_04_clubs import clubs_penalty
from marram.rules.book.rule_06_order_of_play import played_out_of_turn, whose_turn
from marram.rules.book.rule_10_other_help import caddie_behind_ball
from marram.rules.book.rule_23_disqualified import hole_lost_to_partner, left_open, score_of_other_counts
from marram.rules.book.who_bears import both_partners, falls_on_each, one_partner, penalty_in_four_ball
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
    arrived,
    last_in_play,
    other_side_on_hole,
    partners_completed,
    play_helped_partner,
    played_the_hole,
    side_breach,
    side_card,
    stood_to_learn_line,
)
from marram.rules.facts.partners import (
    ActForPartner,
    OutFor,
    SideOnHole,
    TurnOf,
    act_for_partner,
    match_hole_decided,
    other_partner_completed,
    out_for,
    side_on_hole,
    whose_turn_it_was,
)
from marram.rules.facts.wrong_place import next_hole_started
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Judgement, Ruling, no_penalty


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
    if case[next_hole_started]:
        return out("3.3c", Who.SIDE).under("23.2a")
    ruling = no_penalty("23.2a").under("3.3c").next(Action.CORRECT_MISTAKE)
    return correct_before_next_hole(case, ruling, "a_partner_holes_out", "3.3c", Who.SIDE)


@provision("23.2b")
def four_ball_card(case: Case) -> Ruling:
    """One card; each score on it is identified to the partner who made it, and the one that counts is right."""
    if case.match_play:
        return free("3.3b").note("no_scorecard_in_match_play")
    fault = case[side_card]
    if fault is SideCard.NOT_IDENTIFIED:
        return out("23.2b(1)", Who.SIDE)
    if fault is SideCard.OTHER_NOT_IDENTIFIED:
        return free("23.2b(1)").under("Clarification 23.2b/1").note("score_of_one_partner_counts")
    if fault is SideCard.BOTH_SCORES_ENTERED:
        return free("23.2b(1)").under("23.2b(2)").note("lower_score_counts")
    if fault is SideCard.ONE_PARTNER_CERTIFIED:
        return free("23.2b(1)").note("one_partner_certifies")
    if fault is SideCard.OTHER_SCORE_WRONG:
        return free("23.2b(2)").note("only_counting_score_matters")
    if fault is SideCard.SCORE_THAT_COUNTS_TOO_HIGH:
        return free("3.3b(3)").under("23.2b(2)").note("higher_score_stands")
    ruling = score_too_low(case).under("23.2b(2)")
    on_side = tuple(replace(penalty, who=Who.SIDE) for penalty in ruling.penalties)
    return replace(ruling, penalties=on_side)


@provision("23.3")
def four_ball_hole_completed(case: Case) -> Ruling:
    """The side has completed a hole when no partner plays on, or in a match when its result is decided."""
    done = free("23.3").next(Action.HOLE_OVER).note("side_has_completed_hole")
    how_far = case[side_on_hole]
    if how_far is SideOnHole.BOTH_DONE:
        return done
    stopped = how_far is SideOnHole.ONE_DONE_OTHER_STOPPED
    if stopped and (not case.match_play or case.played_since(EDITION_2023)):
        return done
    if case.match_play and case[match_hole_decided]:
        return done
    return free("23.3").note("side_still_plays_hole")


@provision("23.4")
def partner_arrived_late(case: Case) -> Ruling:
    """One partner may play for the side; the other joins only between two holes."""
    when = case[arrived]
    if when is Arrived.BETWEEN_HOLES:
        return free("23.4")
    if when is Arrived.NOT_AT_ALL:
        return absent_all_round(case)
    if case[played_the_hole]:
        return in_breach("23.4", Who.ONE_PARTNER)
    return free("23.4").note("join_on_next_hole")


@provision("Clarification 23.4/1")
def absent_all_round(case: Case) -> Ruling:
    """One partner may play alone; in a match an absent partner still counts in working out the strokes given."""
    alone = free("23.4").note("one_partner_plays_alone")
    if not case.match_play:
        return alone
    return alone.under("Clarification 23.4/1").note("absent_partner_counts_for_strokes")


@provision("23.5")
def partner_acted_on_ball(case: Case) -> Ruling:
    """A partner may do to the player's ball what the player may, and what the partner does is the player's act."""
    act = case[act_for_partner]
    if act is ActForPartner.ALLOWED:
        return free("23.5a")
    start = one_stroke if act is ActForPartner.ONE_STROKE else in_breach
    return penalty_in_four_ball(case, start("23.5b"))


@provision("23.9a")
def four_ball_penalty(case: Case) -> Ruling:
    """A penalty normally falls on the one partner; in three situations on both (2019: Rule 23.8a)."""
    breach = case[side_breach]
    if breach is SideBreach.CLUBS:
        return clubs_penalty_of_side(case)
    if breach is SideBreach.WRONG_BALL:
        return penalty_in_four_ball(case, in_breach("6.3c(1)"))
    start = one_stroke if breach is SideBreach.ONE_STROKE else in_breach
    citation = both_partners(case) if falls_on_each(case) else one_partner(case)
    return penalty_in_four_ball(case, start(citation))


@provision("23.9a(2)")
def clubs_penalty_of_side(case: Case) -> Ruling:
    """Penalty strokes for clubs go to each partner; the score of a match, or a total, is adjusted once."""
    return penalty_in_four_ball(case, clubs_penalty(case, "4.1b"))


@provision("23.9b")
def four_ball_disqualified(case: Case) -> Ruling | Judgement:
    """A hole not completed costs the partner's score for it; a fault of the card puts the side out.

    For other Rules the book has two lists. Their text was not at hand: what the criteria say of them is from
    memory and says so, and the Committee decides with the book.
    """
    what = case[out_for]
    if what is OutFor.HOLE_NOT_COMPLETED:
        return partner_without_score(case)
    if what is OutFor.SCORECARD:
        return free("3.3b").note("no_scorecard_in_match_play") if case.match_play else out("23.2b", Who.SIDE)
    return left_open("23.9b" if case.played_since(EDITION_2023) else "23.8b")


@provision("23.2a")
def partner_without_score(case: Case) -> Ruling:
    """One partner without a valid score leaves the hole to the other; with neither, the side has no score.

    Where holes are scored on their own nobody is disqualified for such a mistake (Rules 21.1c, 21.2c and 21.3c).
    """
    if case[other_partner_completed]:
        if not case.match_play and not case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY):
            return score_of_other_counts(case).under(
                disqualified_or_without_score(case, "6.3c(1)").citations[0]
            )
        return hole_lost_to_partner(case, "6.3c(1)")
    if case.match_play:
        return no_partner_completed_in_match(case)
    return no_partner_completed(case)


@provision("23.6")
def out_of_turn_in_four_ball(case: Case) -> Ruling:
    """Partners play in whatever order they like: only a stroke out of the side's turn is out of turn."""
    if case.match_play and case[whose_turn_it_was] is TurnOf.OWN_SIDE:
        return no_penalty("23.6").play_as_it_lies().stroke_counts().note("partners_play_in_any_order")
    return played_out_of_turn(case)


@provision("23.6")
def whose_turn_in_four_ball(case: Case) -> Ruling:
    """The side's turn is found as a player's; then either partner may play."""
    return whose_turn(case).under("23.6").note("partners_play_in_any_order")


@provision("23.6")
def played_on_after_concession(case: Case) -> Ruling:
    """In a match a player whose stroke was conceded must not play on in a way that helps the partner."""
    if not case.match_play:
        return free("3.2b").note("no_concession_in_stroke_play")
    if case[play_helped_partner]:
        return free("23.6 Exception").note("partner_has_no_score")
    return free("23.6 Exception")


@provision("23.8")
def partner_stood_behind(case: Case) -> Ruling:
    """Partners do not stand behind each other's ball on the line to learn something for their next stroke.

    In 2019 a partner was bound only by what binds a caddie (Rules 22.2 and 23.5a).
    """
    if not case.played_since(EDITION_2023):
        return caddie_behind_ball(case).note("partner_like_caddie")
    citation = "22.6" if case.is_one_of(sides, Sides.FOURSOMES) else "23.8"
    if case[stood_to_learn_line]:
        return in_breach(citation, Who.SIDE if citation == "22.6" else Who.ONE_PARTNER)
    return free(citation).note("standing_behind_has_another_limit")
