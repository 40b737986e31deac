"""Rule 24: team competitions."""

from marram.rules.book.plain_outcomes import free, in_breach, out
from marram.rules.book.rule_10_advice import advice_received_unasked
from marram.rules.engine.case import Case
from marram.rules.engine.provision import provision
from marram.rules.facts.help import asked_or_allowed
from marram.rules.facts.teams import (
    TeamAdvice,
    advice_giver_allowed,
    all_team_scores_count,
    team_advice,
    team_disqualified_for_conduct,
    team_members_in_same_group,
)
from marram.rules.ruling import Judgement, NotCovered, Ruling


@provision("24.2")
def team_player_disqualified(case: Case) -> Ruling | Judgement | NotCovered:
    """Where not all scores count, a team member is out of that round only, unless it was for conduct."""
    if case[all_team_scores_count]:
        return NotCovered("team_terms_decide", "24.2")
    this_round = out("Clarification 24.2/1").note("out_of_this_round_only")
    if not case[team_disqualified_for_conduct]:
        return this_round
    whole = out("Clarification 24.2/1").note("out_of_whole_competition")
    return Judgement(
        "Clarification 24.2/1", "committee", ("conduct_how_serious", "conduct_code_says"), (this_round, whole)
    )


@provision("24.4")
def advice_in_team(case: Case) -> Ruling:
    """In a team competition an advice giver may be named; playing team members may not advise each other."""
    what = case[team_advice]
    if what is TeamAdvice.ASKED_ADVICE_GIVER:
        return asked_advice_giver(case)
    if what is TeamAdvice.GIVEN_UNASKED:
        return advice_giver_spoke_unasked(case)
    if what is TeamAdvice.ADVICE_GIVER_STOOD_BEHIND:
        return advice_giver_stood_behind(case)
    if what is TeamAdvice.PLAYING_ADVICE_GIVER:
        return playing_advice_giver(case)
    return team_members_advised(case)


@provision("24.4b")
def playing_advice_giver(case: Case) -> Ruling:
    """While playing a round the advice giver is a team member like any other."""
    return team_members_advised(case).under("24.4b")


@provision("24.4a")
def asked_advice_giver(case: Case) -> Ruling:
    """Only a person named under the Local Rule may be asked."""
    if case.local_rule("H-2") and case[advice_giver_allowed]:
        return free("24.4a")
    return in_breach("10.2a").under("24.4a")


@provision("24.4a")
def advice_giver_spoke_unasked(case: Case) -> Ruling:
    """The named advice giver may advise; from another person who is not playing it is advice unasked."""
    if case.local_rule("H-2") and case[advice_giver_allowed]:
        return free("24.4a")
    return advice_received_unasked(case).under("24.4a")


@provision("24.4a")
def advice_giver_stood_behind(case: Case) -> Ruling:
    """The restriction on standing behind the player holds for an advice giver as well."""
    if case[asked_or_allowed]:
        return in_breach("10.2b(4)").under("24.4a", "1.3c(1)")
    return free("1.3c(1)").under("24.4a")


@provision("24.4c")
def team_members_advised(case: Case) -> Ruling:
    """Playing team members who are not partners do not advise each other."""
    if case.local_rule("H-5") and case[team_members_in_same_group]:
        return free("24.4c")
    return in_breach("10.2a").under("24.4c")
