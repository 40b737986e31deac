"""Rule 1: conduct, and playing by the Rules."""

from marram.rules.book.conduct_found import found_by_committee
from marram.rules.book.plain_outcomes import free, in_breach, one_stroke, out
from marram.rules.book.rule_08_breach import breach
from marram.rules.book.rule_09_player import moved_by_player
from marram.rules.book.rule_14_wrong_place import played_from_wrong_place
from marram.rules.book.rule_20_rulings import breach_by_another_kept_quiet
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conduct import (
    ActOfOther,
    AgreementAtStart,
    CodePenalty,
    HowInvolved,
    WhoIgnored,
    act_of_other,
    code_penalty,
    how_involved,
    knew_it_applied,
    played_before_known_wrong,
    reasonable_judgement,
    someone_had_started,
    who_ignored,
)
from marram.rules.penalty import Who, general
from marram.rules.ruling import Action, Deadline, Judgement, NotCovered, Ruling, no_penalty


@provision("1.2b")
def conduct(case: Case) -> Ruling | Judgement:
    """A Code of Conduct sets its own penalties; without one only disqualification can follow."""
    provided = case[code_penalty]
    if provided is CodePenalty.ONE_STROKE:
        return one_stroke("1.2b")
    if provided is CodePenalty.GENERAL:
        return in_breach("1.2b")
    if provided is CodePenalty.DISQUALIFICATION:
        return out("1.2b")
    if provided is CodePenalty.WARNING:
        return free("1.2b").note("conduct_warning")
    return serious_misconduct(case)


@provision("1.2a")
def serious_misconduct(case: Case) -> Ruling | Judgement:
    """Whether an act was serious misconduct is the Committee's to judge; what it has found decides."""
    return found_by_committee(
        case,
        (
            "misconduct_far_from_norm",
            "misconduct_likely",
            "misconduct_unlikely",
            "misconduct_no_lesser_penalty",
            "misconduct_of_others",
        ),
    )


@provision("1.3b(1)")
def ignored_a_rule(case: Case) -> Ruling | Judgement:
    """Knowingly leaving a penalty out, or agreeing to ignore a Rule, means disqualification."""
    if not case[knew_it_applied]:
        return free("1.3b(1)").note("apply_the_penalty_itself")
    if case[who_ignored] is WhoIgnored.PLAYER_ALONE:
        return out("1.3b(1)")
    if case[who_ignored] is WhoIgnored.OPPONENTS_BREACH:
        return anothers_breach_ignored(case)
    return agreed_to_ignore(case)


@provision("3.2d(4)")
def anothers_breach_ignored(case: Case) -> Ruling | Judgement:
    """In a match a player may let the opponent's breach go; in stroke play the rest of the field is protected."""
    if case.match_play:
        return free("3.2d(4)").note("opponent_may_overlook_breach")
    return breach_by_another_kept_quiet(case)


@provision("1.3b(1)")
def agreed_to_ignore(case: Case) -> Ruling:
    """All who agreed are disqualified once one of them has started the round."""
    started = case[someone_had_started]
    if started is AgreementAtStart.CALLED_OFF:
        return free("1.3b(1)").note("others_who_agreed_are_out")
    if started is AgreementAtStart.YES:
        return out("1.3b(1)", Who.EACH_PLAYER)
    return free("1.3b(1)").note("call_off_agreement_before_start")


@provision("1.3c(1)")
def other_person_acted(case: Case) -> Ruling | NotCovered:
    """A player answers for what others do at the player's request, or with the player's silent consent."""
    if case.is_one_of(how_involved, HowInvolved.NEITHER):
        return free("1.3c(1)").note("act_of_outside_influence")
    act = case[act_of_other]
    if act is ActOfOther.MOVED_BALL:
        return moved_by_player(case).under("1.3c(1)")
    if act is ActOfOther.IMPROVED_CONDITIONS:
        return breach(case, "8.1a", "1.3c(1)")
    return NotCovered("as_if_player_had_acted", "1.3c(1)")


@provision("1.3b(2)")
def estimate_wrong(case: Case) -> Ruling:
    """A reasonable estimate of a spot, line, area or distance stands even if later shown to be wrong."""
    if not case[played_before_known_wrong]:
        return (
            no_penalty("1.3b(2)")
            .next(Action.CORRECT_MISTAKE)
            .correct("estimate_anew", Deadline.BEFORE_STROKE, general("14.7a"))
        )
    if case[reasonable_judgement]:
        return no_penalty("1.3b(2)").play_as_it_lies().stroke_counts()
    return played_from_wrong_place(case).under("1.3b(2)")
