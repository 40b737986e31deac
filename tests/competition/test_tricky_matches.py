"""Matches that referees argue about, each with the published text that settles it.

Each outcome is read from the text that its test names. Rules 3.2 and 20.1b of 2019 and 2023 and their
Clarifications as the R&A and the USGA publish them; Rule 20.2 of 2023.
"""

from datetime import date

import pytest

from marram.competition.matches.acts import (
    HoleLostByBoth,
    HolePlayed,
    HolesDeducted,
    MatchAct,
    MatchConceded,
    MatchDisqualified,
    ResultAgreed,
)
from marram.competition.matches.asking import handicap_declared, ruling_requested
from marram.competition.matches.match import Match, MatchStatus, match_state
from marram.errors import InputError
from marram.rules.result import NeedFacts
from marram.rules.ruling import Judgement, Ruling

DAYS = (date(2021, 6, 1), date(2025, 6, 1))
MATCH = Match("a", "b", may_end_tied=False)
WON, TIED = HolePlayed(3, 4), HolePlayed(4, 4)


def test_a_decided_match_cannot_be_conceded() -> None:
    """Rule 3.2b(1) and Clarification 3.2b(1)/2 (2023): what is decided by play is not undone by a concession."""
    with pytest.raises(InputError, match="over after 10 holes"):
        match_state(MATCH, [*[WON] * 10, MatchConceded("a")])
    with pytest.raises(InputError, match="nor a concession"):
        match_state(MATCH, [MatchConceded("a"), MatchConceded("b")])


def test_a_match_conceded_on_the_way_is_won_by_the_other() -> None:
    """Rule 3.2b(1): the match may be conceded at any time before it is decided, also by the side that leads."""
    state = match_state(MATCH, [*[WON] * 3, MatchConceded("a")])
    assert (state.winner, state.next_hole) == ("b", None)


def test_a_result_is_final_only_of_a_match_that_is_over() -> None:
    """Rule 3.2a(3) to (5): players do not agree on a result after five holes; they play, concede, or are disqualified."""
    with pytest.raises(InputError, match="not over after 5 holes"):
        match_state(MATCH, [*[TIED] * 5, ResultAgreed()])
    assert match_state(MATCH, [*[WON] * 10, ResultAgreed()]).final


@pytest.mark.parametrize("late", [HolesDeducted("a", 2), MatchConceded("a"), ResultAgreed()])
def test_nothing_changes_a_final_result_but_disqualification(late: MatchAct) -> None:
    """Rule 20.2e(1): after the result is final only serious misconduct or knowingly ignoring a Rule is without a limit."""
    final = [*[WON] * 10, ResultAgreed()]
    with pytest.raises(InputError, match="result is final"):
        match_state(MATCH, [*final, late])
    assert match_state(MATCH, [*final, MatchDisqualified("a", "1.2a")]).winner == "b"


def test_a_fifteenth_club_found_before_the_result_is_final_reopens_a_won_match() -> None:
    """Rule 4.1b: two holes are taken off the score of the match, so that ten up after ten is eight up and eight to play."""
    state = match_state(MATCH, [*[WON] * 10, HolesDeducted("a", 2)])
    assert (state.status, state.up, state.next_hole) == (MatchStatus.DORMIE, 8, 11)


def test_a_deduction_after_the_last_hole_decides_a_level_match() -> None:
    """Rules 3.2a(3) and 4.1b: level after the last hole, and one hole taken off: the other has won."""
    assert match_state(MATCH, [*[TIED] * 18, HolesDeducted("a", 1)]).winner == "b"


@pytest.mark.parametrize("day", DAYS)
def test_a_hole_that_comes_again_is_not_taken_for_the_earlier_one(day: date) -> None:
    """Rules 3.2a(4) and 20.1b(2): on the first extra hole "hole 1" may mean it or the first: which is asked, not assumed."""
    on_the_19th = match_state(MATCH, [TIED] * 18)
    assert on_the_19th.next_hole == 1
    asked = {"asked_in_time": True}
    open_ = ruling_requested(on_the_19th, 1, next_hole_begun=True, played_on=day, facts=asked)
    assert isinstance(open_, NeedFacts)
    assert open_.fact == "issue_from"
    said = {**asked, "issue_from": "this_hole"}
    given = ruling_requested(on_the_19th, 1, next_hole_begun=True, played_on=day, facts=said)
    assert isinstance(given, Ruling)
    assert given.notes == ("ruling_is_given",)
    before = ruling_requested(on_the_19th, 18, next_hole_begun=False, played_on=day)
    assert isinstance(before, Ruling)
    assert before.notes == ("ruling_is_given",)


@pytest.mark.parametrize("day", DAYS)
@pytest.mark.parametrize(("declared", "out"), [(12, True), (10, False)], ids=["one too high", "one too low"])
def test_a_wrong_handicap_declared(day: date, declared: int, out: bool) -> None:
    """Rule 3.2c(1) and Clarification 3.2c(1)/1: too high disqualifies even before a hole where it matters; too low stands."""
    found = handicap_declared(declared, 11, played_on=day, facts={"handicap_put_right": False})
    assert isinstance(found, Ruling)
    assert bool(found.penalties) is out
    assert ("play_off_lower_handicap" in found.notes) is not out


@pytest.mark.parametrize("day", DAYS)
def test_a_handicap_found_too_high_after_the_final_result(day: date) -> None:
    """Rule 20.2e(1): the result stands, unless the player knew it: that is for the Committee, and has no time limit."""
    innocent = handicap_declared(12, 11, played_on=day, result_final=True, facts={"late_breach": "other"})
    assert isinstance(innocent, Ruling)
    assert (innocent.penalties, innocent.notes) == ((), ("result_is_final",))
    assert isinstance(handicap_declared(12, 11, played_on=day, result_final=True), NeedFacts)
    knew = {"late_breach": "misconduct_or_agreement"}
    assert isinstance(handicap_declared(12, 11, played_on=day, result_final=True, facts=knew), Judgement)


def test_a_hole_that_both_lose_is_tied() -> None:
    """Rule 5.3a and 3.2a(2): player and opponent both up to five minutes late both lose the first hole: it is tied."""
    state = match_state(MATCH, [HoleLostByBoth(), WON])
    assert ([one.winner for one in state.holes], state.words) == ([None, "a"], "1 up")


def test_strokes_fall_on_extra_holes_as_in_the_round() -> None:
    """Rules 3.2a(4) and 3.2c(2): who has a stroke on the first hole has it again on the nineteenth."""
    net = Match("a", "b", strokes={"b": {1: 1}}, may_end_tied=False)
    level = [HolePlayed(4, 5), *[TIED] * 17]
    assert match_state(net, level).status is MatchStatus.EXTENDED
    assert match_state(net, [*level, TIED]).winner == "b"
