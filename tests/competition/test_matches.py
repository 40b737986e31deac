"""A match: its state hole by hole, how it ends, what the Rules are asked, three balls at once, and a bracket."""

from datetime import date
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

import marram
from marram.competition.matches.asking import handicap_declared, ruling_requested
from marram.competition.matches.bracket import moved_on
from marram.competition.matches.match import (
    HoleAgreedTied,
    HoleBy,
    HoleGiven,
    HolePlayed,
    HolesDeducted,
    Match,
    MatchAct,
    MatchConceded,
    MatchDisqualified,
    MatchStatus,
    ResultAgreed,
    best_of,
    match_state,
    three_ball,
)
from marram.competition.results.card import NO_SCORE
from marram.errors import InputError
from marram.rules.penalty import PenaltyKind
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from tests.competition.reference import reference

DAY = date(2025, 6, 21)
MATCH = Match("a", "b", may_end_tied=False)
A, B, TIED = HolePlayed(4, 5), HolePlayed(5, 4), HolePlayed(4, 4)


def of(ident: str) -> tuple[dict[str, Any], Any]:
    """Return what a published value gives and expects."""
    one = reference()[ident]
    return one["inputs"], one["expected"]


def kinds(result: object) -> list[PenaltyKind]:
    """Return the kinds of penalty of a ruling."""
    assert isinstance(result, Ruling)
    return [one.kind for one in result.penalties]


def test_match_play_01_won_when_more_up_than_holes_are_left() -> None:
    """Two up with two left is dormie; three up with two left is won; conceded or disqualified ends it at once."""
    assert of("match-play-01")[1]["win"] == "lead > holes left"
    level = [TIED] * 14
    dormie = match_state(MATCH, [*level, A, A])
    assert (dormie.status, dormie.up, dormie.left, dormie.over) == (MatchStatus.DORMIE, 2, 2, False)
    won = match_state(MATCH, [*level[:13], A, A, A])
    assert (won.winner, won.words) == ("a", "3 and 2")
    assert match_state(MATCH, [A, MatchConceded("a")]).winner == "b"
    assert match_state(MATCH, [B, MatchDisqualified("b", "1.2a")]).winner == "a"


def test_match_play_02_two_and_one() -> None:
    """Two up with one to play is a win by 2 and 1."""
    inputs, expected = of("match-play-02")
    acts = [TIED] * (18 - inputs["holes_left"] - inputs["lead"]) + [A] * inputs["lead"]
    state = match_state(MATCH, acts)
    assert (state.words, state.over) == (expected["result"], expected["over"])


def test_match_play_04_and_05_a_wrong_handicap_declared() -> None:
    """Too high disqualifies, also before the hole it changes is reached; too low is played off; in time it costs nothing."""
    _, expected = of("match-play-04")
    inputs, ruling = of("match-play-05")
    late = {"handicap_put_right": False}
    high = handicap_declared(inputs["declared"], inputs["correct"], played_on=DAY, facts=late)
    assert kinds(high) == [PenaltyKind.DISQUALIFICATION]
    assert expected["too_high"] == ruling["ruling"] == "disqualified"
    low = handicap_declared(10, 11, played_on=DAY, facts=late)
    assert kinds(low) == []
    assert isinstance(low, Ruling)
    assert low.notes == ("play_off_lower_handicap",)
    assert isinstance(handicap_declared(12, 11, played_on=DAY), NeedFacts)


def test_match_play_12_two_rounds_of_18() -> None:
    """Over 36 holes a stroke falls on its hole in both rounds."""
    assert of("match-play-12")[1]["method"] == "two rounds of 18"
    match = Match("a", "b", tuple(range(1, 19)) * 2, {"b": {1: 1}}, may_end_tied=False)
    state = match_state(match, [A, *[TIED] * 17, A])
    assert [one.winner for one in state.holes if one.hole == 1] == [None, None]


def test_match_play_13_three_matches_at_once() -> None:
    """Three-Ball is three matches, each player in two."""
    matches = three_ball(("a", "b", "c"))
    assert len(matches) == of("match-play-13")[1]["matches"]
    assert sorted(side for one in matches for side in (one.first, one.second)) == [
        "a",
        "a",
        "b",
        "b",
        "c",
        "c",
    ]


def test_ties_playoff_01_goes_on_where_it_began() -> None:
    """A tied match goes on from the hole it began at, with the stroke of that hole given again."""
    _, expected = of("ties-playoff-01")
    assert expected["extra_hole_1"] == "the hole the match began on"
    holes = (*range(10, 19), *range(1, 10))
    match = Match("a", "b", holes, {"b": {10: 1}}, may_end_tied=False)
    level = [HolePlayed(4, 5), *[TIED] * 17]
    extended = match_state(match, level)
    assert extended.status is MatchStatus.EXTENDED
    on = match_state(match, [*level, HolePlayed(4, 4)])
    assert (on.holes[-1].hole, on.winner, on.words) == (10, "b", "1 up after 19 holes")


def test_clubs_01_and_02_holes_taken_off() -> None:
    """Too many clubs: one hole each, two at most; three up after the third hole becomes one up."""
    _, limits = of("clubs-01")
    inputs, expected = of("clubs-02")

    def ruled(form: str, holes: int) -> Ruling:
        facts = {"more_than_fourteen": True, "excess_noticed": "during_round", "holes_with_breach": holes}
        result = marram.rule(
            "too_many_clubs", facts, played_on=DAY, form_of_play=form, sides="individual", local_rules=[]
        )
        assert isinstance(result, Ruling), result
        return result

    def total(form: str, holes: int) -> int:
        return sum(one.strokes for one in ruled(form, holes).penalties)

    assert total("stroke_play", 1) == limits["stroke_per_hole"]
    assert total("stroke_play", 3) == limits["stroke_max"]
    assert total("match_play", 1) == limits["match_per_hole"]
    off = total("match_play", inputs["holes_in_breach"])
    assert off == limits["match_max"]
    state = match_state(MATCH, [A] * inputs["lead_after_hole_3"] + [HolesDeducted("a", off)])
    assert (state.leader, state.up) == ("a", expected["adjusted_lead"])


def test_a_tie_that_nobody_has_spoken_of_is_asked() -> None:
    """Level after the last hole the match ends tied, goes on, or waits for what the Terms say; never a guess."""
    level = [TIED] * 18
    statuses = {
        told: match_state(Match("a", "b", may_end_tied=told), level).status for told in (None, True, False)
    }
    assert statuses == {None: MatchStatus.TO_BE_SAID, True: MatchStatus.TIED, False: MatchStatus.EXTENDED}


def test_holes_conceded_agreed_and_lost() -> None:
    """A hole can be conceded, lost by the general penalty, or agreed tied; who picks up loses to who holes out."""
    acts: list[MatchAct] = [
        HoleGiven("b", HoleBy.CONCEDED),
        HoleGiven("b", HoleBy.PENALTY),
        HoleAgreedTied(),
        HolePlayed(NO_SCORE, 9),
    ]
    state = match_state(MATCH, acts)
    assert [one.winner for one in state.holes] == ["b", "b", None, "b"]
    assert state.words == "3 up"
    with pytest.raises(InputError, match="both picked up"):
        match_state(MATCH, [HolePlayed(NO_SCORE, NO_SCORE)])


def test_nothing_follows_the_end_of_a_match() -> None:
    """A hole after the match was over is refused, and so is a side that does not play in it."""
    with pytest.raises(InputError, match="over after 10 holes"):
        match_state(MATCH, [A] * 11)
    with pytest.raises(InputError, match="does not play in this match"):
        match_state(MATCH, [HoleGiven("c", HoleBy.CONCEDED)])


HOLES = st.lists(st.sampled_from([A, B, TIED]), max_size=18)


@given(HOLES)
def test_the_state_is_the_difference_of_holes_won(acts: list[HolePlayed]) -> None:
    """As far as the match goes, the lead is holes won less holes lost, and turning the sides round turns it."""
    played: list[HolePlayed] = []
    for one in acts:
        if match_state(MATCH, played).over:
            break
        played.append(one)
    state = match_state(MATCH, played)
    lead = played.count(A) - played.count(B)
    assert state.up == abs(lead)
    assert state.over == (abs(lead) > 18 - len(played))
    assert all(abs(after.up - before.up) <= 1 for before, after in pairwise(state.holes))
    turned = match_state(
        Match("b", "a", may_end_tied=False), [HolePlayed(one.second, one.first) for one in played]
    )
    assert (turned.leader, turned.words) == (state.leader, state.words)


def test_rulings_are_asked_in_time() -> None:
    """About this hole a ruling is given; about an earlier one only where misinformed; after the result hardly ever."""
    state = match_state(MATCH, [A, B])
    now = ruling_requested(state, 3, next_hole_begun=True, played_on=DAY)
    just = ruling_requested(state, 2, next_hole_begun=False, played_on=DAY)
    for one in (now, just):
        assert isinstance(one, Ruling)
        assert one.notes == ("ruling_is_given",)
    facts = {"asked_in_time": True, "opponent_misinformed": False}
    earlier = ruling_requested(state, 1, next_hole_begun=False, played_on=DAY, facts=facts)
    assert isinstance(earlier, Ruling)
    assert earlier.notes == ("no_ruling_result_stands",)
    unknown = ruling_requested(state, 2, next_hole_begun=None, played_on=DAY)
    assert isinstance(unknown, NeedFacts)
    final = match_state(MATCH, [*[A] * 10, ResultAgreed()])
    late = ruling_requested(
        final, 10, next_hole_begun=False, played_on=DAY, facts={"facts_came_to_light_later": False}
    )
    assert isinstance(late, Ruling)
    assert late.notes == ("no_ruling_result_stands",)


def test_the_best_net_score_of_partners_counts() -> None:
    """Of partners the lowest net score counts with its strokes; of nobody who holed out there is none."""
    assert best_of([(5, 1), (5, 0)]) == (5, 1)
    assert best_of([(NO_SCORE, 1), (6, 0)]) == (6, 0)
    assert best_of([(NO_SCORE, 1)]) == (NO_SCORE, 0)


def test_a_bracket_moves_on() -> None:
    """Who wins meets the winner beside; a bye moves on by itself; what is open stays open."""
    rounds = moved_on([("a", None), ("b", "c"), ("d", "e"), ("f", "g")], {(1, 2): "c", (2, 1): "a"})
    assert [(one.first, one.second, one.winner) for one in rounds[1]] == [("a", "c", "a"), (None, None, None)]
    assert [(one.first, one.second) for one in rounds[2]] == [("a", None)]
    assert len(rounds) == 3


def test_a_winner_that_does_not_play_is_refused() -> None:
    """A bracket of three, a winner who is not in the meeting, a meeting there is none of: each is told."""
    with pytest.raises(InputError, match="2, 4, 8"):
        moved_on([("a", "b")] * 3, {})
    with pytest.raises(InputError) as refused:
        moved_on([("a", "b"), ("c", "d")], {(1, 1): "x", (3, 1): "a"})
    assert len(refused.value.faults) == 2
