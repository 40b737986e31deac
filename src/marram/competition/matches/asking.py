"""What the Rules are asked about a match, with the facts that the match itself shows (Rules 3.2c(1) and 20.1b)."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from marram.competition.matches.match import MatchState
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.doubt import IssueFrom
from marram.rules.facts.match import DeclaredHandicap
from marram.rules.result import Result


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
    just_completed = state.holes[-1].hole if state.holes else None
    completed = {one.hole for one in state.holes}
    this_hole = about not in completed or (about == just_completed and next_hole_begun is False)
    known: dict[str, Any] = {"result_final": state.final}
    if this_hole or about != just_completed or next_hole_begun:
        known["issue_from"] = IssueFrom.THIS_HOLE if this_hole else IssueFrom.EARLIER_HOLE
    if this_hole:
        known["asked_in_time"] = True
    return rule(
        "ruling_requested_in_match",
        {**known, **(facts or {})},
        played_on=played_on,
        form_of_play=FormOfPlay.MATCH_PLAY,
    )


def handicap_declared(
    declared: int,
    correct: int,
    *,
    played_on: date,
    facts: Mapping[str, Any] | None = None,
) -> Result:
    """Return what follows where a player declared a handicap for a match (Rule 3.2c(1)).

    A higher one changes the strokes given, whether or not a hole has been reached on which it does (Clarification 3.2c(1)/1).

    Args:
        declared: the Playing Handicap declared.
        correct: the one that applies.
        played_on: the day of play.
        facts: what else is known, such as ``handicap_put_right``.
    """
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
