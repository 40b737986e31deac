"""What the Rules are asked about a match, with the facts that the match itself shows (Rules 3.2c(1) and 20.1b)."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from marram.competition.matches.match import MatchState
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.doubt import IssueFrom, LateBreach
from marram.rules.facts.match import DeclaredHandicap
from marram.rules.result import Result

RULING_REQUESTED = "ruling_requested_in_match"


def ruling_requested(
    state: MatchState,
    about: int,
    *,
    next_hole_begun: bool | None,
    played_on: date,
    facts: Mapping[str, Any] | None = None,
) -> Result:
    """Return whether a ruling that a player asks for in a match is given (Rule 20.1b).

    Args:
        state: how the match stands.
        about: the number of the hole it is about.
        next_hole_begun: whether a player has begun another hole since the last one completed; ``None``: not known.
        played_on: the day of play.
        facts: what else is known, by the names of facts; what is not is asked.
    """
    return rule(
        RULING_REQUESTED,
        {**facts_of_request(state, about, next_hole_begun=next_hole_begun), **(facts or {})},
        played_on=played_on,
        form_of_play=FormOfPlay.MATCH_PLAY,
    )


def facts_of_request(state: MatchState, about: int, *, next_hole_begun: bool | None) -> dict[str, Any]:
    """Return what the match itself shows of a request for a ruling, by the names of facts."""
    known: dict[str, Any] = {"result_final": state.final}
    this_hole = _about_this_hole(state, about, next_hole_begun)
    if this_hole is not None:
        known["issue_from"] = IssueFrom.THIS_HOLE if this_hole else IssueFrom.EARLIER_HOLE
    if this_hole:
        known["asked_in_time"] = True
    return known


def _about_this_hole(state: MatchState, about: int, next_hole_begun: bool | None) -> bool | None:
    """Return whether a hole is the one in play or just completed; ``None`` where its number does not tell.

    After 18 holes a match comes to holes that it has played before (Rule 3.2a(4)), so that a number may mean two of them.
    """
    just_completed = state.holes[-1].hole if state.holes else None
    completed = {one.hole for one in state.holes}
    if about == just_completed:
        return None if next_hole_begun is None else not next_hole_begun
    if about == state.next_hole and about in completed and next_hole_begun is not False:
        return None
    return about not in completed


def handicap_declared(
    declared: int,
    correct: int,
    *,
    played_on: date,
    result_final: bool = False,
    facts: Mapping[str, Any] | None = None,
) -> Result:
    """Return what follows where a player declared a handicap for a match (Rule 3.2c(1)).

    Found out after the result of the match is final it changes nothing, unless the player knew (Rule 20.2e(1)).

    A higher one changes the strokes given, whether or not a hole has been reached on which it does (Clarification 3.2c(1)/1).

    Args:
        declared: the Playing Handicap declared.
        correct: the one that applies.
        played_on: the day of play.
        result_final: whether the result of the match was final when it was found out.
        facts: what else is known, such as ``handicap_put_right``.
    """
    if result_final:
        known_late = {"late_breach": LateBreach.OTHER} if declared <= correct else {}
        return rule(
            "found_after_result",
            {**known_late, **(facts or {})},
            played_on=played_on,
            form_of_play=FormOfPlay.MATCH_PLAY,
        )
    known: dict[str, Any] = {"strokes_given_affected": declared != correct}
    if declared == correct:
        known["handicap_put_right"] = True
    else:
        known["declared_handicap"] = (
            DeclaredHandicap.TOO_HIGH if declared > correct else DeclaredHandicap.TOO_LOW
        )
    return rule(
        "handicap_declared_wrong",
        {**known, **(facts or {})},
        played_on=played_on,
        form_of_play=FormOfPlay.MATCH_PLAY,
    )
