"""Rule 20: resolving Rules issues, and rulings by referee and Committee."""

from marram.rules.book.conduct_found import found_by_committee
from marram.rules.book.plain_outcomes import free, out
from marram.rules.editions import EDITION_2023
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.facts.doubt import (
    IssueFrom,
    LateBreach,
    RulingFault,
    agreed_in_good_faith,
    asked_in_time,
    facts_came_to_light_later,
    issue_from,
    late_breach,
    opponent_knew_breach,
    opponent_misinformed,
    player_aware_of_facts,
    referee_assigned,
    referee_refers,
    result_final,
    ruling_can_be_corrected,
    ruling_fault,
    visible_to_naked_eye,
)
from marram.rules.facts.scorecard import hole_result_affected
from marram.rules.penalty import Who
from marram.rules.ruling import Action, Judgement, Ruling


@provision("20.1b")
def ruling_requested_in_match(case: Case) -> Ruling:
    """In a match a ruling is given only if asked for in time; later only on hidden facts."""
    if not case.match_play:
        return free("20.1c(1)").note("raise_before_returning_card")
    if case[result_final]:
        return asked_after_match(case)
    return asked_during_match(case)


@provision("20.1b(2)")
def asked_during_match(case: Case) -> Ruling:
    """Before another hole is begun; about an earlier hole only if misinformed, and asked at once."""
    if not case[asked_in_time]:
        return _stands("20.1b(2)")
    if case[issue_from] is IssueFrom.THIS_HOLE:
        return _given("20.1b(2)")
    if case[opponent_misinformed] and case[facts_came_to_light_later]:
        return _given("20.1b(2)")
    return _stands("20.1b(2)")


@provision("20.1b(3)")
def asked_after_match(case: Case) -> Ruling:
    """After a final result: new facts, and an opponent who knew of the false information."""
    if case[facts_came_to_light_later] and case[opponent_misinformed] and case[opponent_knew_breach]:
        return _given("20.1b(3)")
    return _stands("20.1b(3)")


def _given(citation: str) -> Ruling:
    return free(citation).note("ruling_is_given")


def _stands(citation: str) -> Ruling:
    return free(citation).note("no_ruling_result_stands")


@provision("20.1b(1)")
def decided_among_players(case: Case) -> Ruling:
    """Players in a match may settle a question in good faith; in stroke play they may not."""
    if not case.match_play:
        return free("20.1c(1)").note("agreement_not_binding")
    if not case[agreed_in_good_faith]:
        return out("1.3b(1)", Who.EACH_PLAYER).under("20.1b(1)")
    if case[referee_assigned]:
        return free("20.1b(1)").note("assigned_referee_rules")
    return free("20.1b(1)").note("agreed_outcome_conclusive")


@provision("20.1c(2)")
def breach_by_another_kept_quiet(case: Case) -> Ruling | Judgement:
    """In stroke play players protect the field: keeping quiet can be serious misconduct."""
    if case.match_play:
        return free("20.1b(2)").note("opponent_may_overlook_breach")
    return found_by_committee(
        case, ("misconduct_knew_breach", "misconduct_time_to_tell"), otherwise="20.1c(2)"
    )


@provision("20.2a")
def referee_disputed(case: Case) -> Ruling:
    """The referee's ruling is followed; a second opinion needs the referee's consent."""
    if case[referee_refers]:
        return free("20.2a").note("await_second_opinion")
    return free("20.2a").note("follow_referee")


@provision("20.2c")
def seen_only_on_video(case: Case) -> Ruling:
    """What the naked eye could not have seen is disregarded, unless the player was aware of it."""
    if case[visible_to_naked_eye] or case[player_aware_of_facts]:
        return free("20.2c").note("rule_on_what_video_shows")
    return free("20.2c").note("disregard_what_video_shows")


@provision("20.2d")
def ruling_was_wrong(case: Case) -> Ruling:
    """A wrong ruling is corrected if it is not too late; an administrative mistake always."""
    fault = case[ruling_fault]
    if fault is RulingFault.ADMINISTRATIVE:
        return free("20.2d(2)").note("correct_administrative_mistake")
    if fault is RulingFault.INSTRUCTION_MISUNDERSTOOD:
        return free("20.2d(1)").note("misunderstanding_as_wrong_ruling")
    if case[ruling_can_be_corrected]:
        return free("20.2d(1)").next(Action.CORRECT_MISTAKE).note("correct_the_ruling")
    return free("20.2d(1)").note("wrong_ruling_stands")


@provision("20.2e")
def found_after_result(case: Case) -> Ruling | Judgement:
    """After the end only disqualification is left, and only for certain breaches."""
    found = case[late_breach]
    if found is LateBreach.MISCONDUCT_OR_AGREEMENT:
        return misconduct_after_result(case)
    if case.match_play:
        return free("20.2e(1)").note("result_is_final")
    if found is LateBreach.SCORE_TOO_LOW:
        return score_too_low_found_late(case)
    if found is LateBreach.KNOWN_DISQUALIFICATION:
        return out("20.2e(2)")
    if found is LateBreach.HANDICAP_TOO_HIGH and not case.played_since(EDITION_2023):
        return out("20.2e(2)")
    return free("20.2e(2)").note("result_is_final")


@provision("20.2e(2)")
def score_too_low_found_late(case: Case) -> Ruling:
    """A returned score too low disqualifies after the close as well, where it made a difference."""
    if case.is_one_of(form_of_play, FormOfPlay.STROKE_PLAY) or case[hole_result_affected]:
        return out("20.2e(2)").under("3.3b(3)")
    return free("20.2e(2)").note("too_low_without_effect")


@provision("20.2e")
def misconduct_after_result(_case: Case) -> Judgement:
    """There is no time limit for serious misconduct, nor for knowingly ignoring a Rule."""
    return Judgement(
        "20.2e",
        "committee",
        ("no_time_limit", "what_was_known_when"),
        (out("1.2a"), out("1.3b(1)"), free("20.2e")),
    )


@provision("20.3")
def not_in_the_rules(_case: Case) -> Judgement:
    """What the Rules do not cover is decided in a way that is reasonable, fair and like similar cases."""
    return Judgement("20.3", "committee", ("all_circumstances", "treat_like_similar_cases"), (free("20.3"),))
