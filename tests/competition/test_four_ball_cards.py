"""Cards of Four-Ball: whose gross scores and whose handicaps stand on them, by either edition of the Rules.

Read in published text: Rule 23.2 of 2023 (randa.org) and of 2019 (usga.org, players' edition), Clarifications 23.2a/1 and 23.2b/1
(alike in 2019 on usga.org and in 2023 on randa.org), and the clarification of April 2021 to Rule 3.3b(4) (usga.org): until
2022 the players answered for the handicap on the card. That in Four-Ball each partner's own stands on it, and that a wrong
one puts the side out of the net competition, is from memory of Rules 23.2b and 23.9a of 2019.
"""

from typing import Any

import pytest

from marram.competition.cards.acts import By, CardAct, Figure, HandicapShown, Returned, SettledAs, Settlement
from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import CardOutcome, card_outcome
from marram.competition.cards.scorecard import Beside, scorecard
from marram.competition.conditions.choices import Score
from marram.competition.results.board import LeaderBoard
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.errors import InputError
from marram.rules.engine.request import rule
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.ruling import Ruling
from marram.services.cards.cards import rule_card
from tests.competition.making import COURSE, strokes_on
from tests.competition.test_cards import BOTH, IN_2021, IN_2025, PAR

HANDICAPS = {"a": 4, "b": 13}
PLAYERS_ANSWER = [(2021, ()), (2025, ("L-2",))]
"""When the players answer for the handicap on the card: until 2022, since then by Model Local Rule L-2."""


def four_ball(
    *after: CardAct,
    a: list[Any] = PAR,
    b: list[Any] = PAR,
    year: int = 2025,
    local_rules: tuple[str, ...] = (),
    beside: tuple[Beside, ...] = (),
) -> CardOutcome:
    """Return what becomes of a net card; a score of ``None`` stands on it nowhere."""
    acts = [
        Figure(by, hole.number, score, ball)
        for ball, given in (("a", a), ("b", b))
        for by in (By.PLAYER, By.MARKER)
        for hole, score in zip(COURSE, given, strict=True)
        if score is not None
    ]
    numbers = [one.number for one in COURSE]
    under = RuledUnder(
        IN_2021 if year == 2021 else IN_2025,
        sides=Sides.FOUR_BALL,
        local_rules=local_rules,
        scorings=(Scoring(), Scoring(score=Score.NET)),
        strokes={
            ball: dict(zip(numbers, strokes_on(COURSE, one), strict=True)) for ball, one in HANDICAPS.items()
        },
        handicaps=HANDICAPS,
    )
    card = scorecard("side", 1, COURSE, [*acts, *BOTH, *after, Returned()], balls=("a", "b"))
    return card_outcome(card, under, beside)


def total(found: CardOutcome, score: Score) -> int | None:
    """The side's total of a card."""
    (place,) = LeaderBoard(Terms(Scoring(score=score)), [found.card]).places
    return place.score.total


def strokes(found: CardOutcome) -> dict[str, int]:
    """The handicap strokes that each ball has on the card."""
    return {row.player: sum(row.strokes) for row in found.card.rows}


def scores(hole: int, score: int | str | None) -> list[Any]:
    """Par everywhere but on one hole."""
    return [score if one.number == hole else par for one, par in zip(COURSE, PAR, strict=True)]


@pytest.mark.parametrize("year", [2021, 2025])
def test_the_score_that_counts_is_that_of_the_partner_it_is_identified_to(year: int) -> None:
    """Clarification 23.2b/1: both had 4, only B with a stroke there; identified to A alone it is 4 net too, to B alone 3."""
    mine = next(
        one.number
        for one, low, high in zip(COURSE, strokes_on(COURSE, 4), strokes_on(COURSE, 13), strict=True)
        if (low, high) == (0, 1)
    )
    to_a = four_ball(a=scores(mine, 4), b=scores(mine, None), year=year)
    to_b = four_ball(a=scores(mine, None), b=scores(mine, 4), year=year)
    assert to_a.out is to_b.out is None
    net_a, net_b = total(to_a, Score.NET), total(to_b, Score.NET)
    assert net_a is not None
    assert net_a - 1 == net_b
    assert total(to_a, Score.GROSS) == total(to_b, Score.GROSS) == sum(scores(mine, 4))


@pytest.mark.parametrize(("year", "local_rules"), PLAYERS_ANSWER)
@pytest.mark.parametrize("wrong", [None, 14])
def test_one_partners_missing_or_higher_handicap_costs_the_side_the_net_result(
    year: int, local_rules: tuple[str, ...], wrong: int | None
) -> None:
    """Rule 3.3b(4) until 2022, then Model Local Rule L-2: A's is right and B's is not; the gross result stands."""
    found = four_ball(HandicapShown(4, "a"), HandicapShown(wrong, "b"), year=year, local_rules=local_rules)
    assert [one.ball for one in found.findings] == ["b"]
    assert found.out is not None
    assert (found.out.side, found.out.score) == ("side", Score.NET)
    assert found.out.citation == ("3.3b(4)" if year == 2021 else "L-2")


@pytest.mark.parametrize(("year", "local_rules"), PLAYERS_ANSWER)
def test_one_partners_lower_handicap_is_the_one_that_counts_for_that_ball(
    year: int, local_rules: tuple[str, ...]
) -> None:
    """Rule 3.3b(4) until 2022, then Model Local Rule L-2: B's strokes are those of the 10 shown, A's those of the 4."""
    found = four_ball(HandicapShown(4, "a"), HandicapShown(10, "b"), year=year, local_rules=local_rules)
    assert found.out is None
    assert strokes(found) == {"a": 4, "b": 10}


@pytest.mark.parametrize("shown", [None, 10, 14])
def test_since_2023_what_the_card_shows_of_a_partner_does_not_matter(shown: int | None) -> None:
    """Rule 3.3b(4) of 2023: the Committee works out the strokes of each partner."""
    found = four_ball(HandicapShown(4, "a"), HandicapShown(shown, "b"))
    assert found.out is None
    assert strokes(found) == HANDICAPS


@pytest.mark.parametrize(("year", "local_rules"), PLAYERS_ANSWER)
def test_a_handicap_nobody_looked_for_is_not_taken_for_missing(
    year: int, local_rules: tuple[str, ...]
) -> None:
    """Nothing entered of B's handicap, and nothing is ruled on."""
    assert four_ball(HandicapShown(4, "a"), year=year, local_rules=local_rules).findings == ()


def test_whose_handicap_it_is_must_be_said() -> None:
    """Of a card with two balls one handicap without its ball, or of another player, is refused; both at once."""
    with pytest.raises(InputError) as caught:
        four_ball(HandicapShown(4), HandicapShown(4, "c"))
    assert len(caught.value.faults) == 2
    assert "say whose it is" in caught.value.faults[0]
    assert "'c' has no ball" in caught.value.faults[1]


FILE: dict[str, Any] = {
    "side": "side",
    "played_on": "2021-06-21",
    "sides": "four_ball",
    "balls": ["a", "b"],
    "course": [{"number": one.number, "par": one.par, "stroke_index": one.stroke_index} for one in COURSE],
    "handicaps": HANDICAPS,
    "acts": [
        *(
            {"act": "figure", "by": by, "hole": one.number, "score": one.par, "ball": ball}
            for by in ("player", "marker")
            for ball in HANDICAPS
            for one in COURSE
        ),
        {"act": "certified", "by": "player"},
        {"act": "certified", "by": "marker"},
        {"act": "handicap_shown", "handicap": 10, "ball": "b"},
        {"act": "returned"},
    ],
}


def test_a_file_gives_the_handicaps_of_the_partners() -> None:
    """The same from a file of a day of 2021: the lower handicap shown is B's."""
    assert strokes(rule_card(FILE).outcome) == {"a": 4, "b": 10}


@pytest.mark.parametrize(
    ("change", "told"),
    [
        ({"handicap": 9, "handicaps": {}}, "each of the balls has one of its own"),
        ({"handicaps": {"a": 4, "c": 13}}, "handicaps names 'c'"),
        ({"balls": []}, "the card shows one ball. Give handicap instead"),
    ],
)
def test_handicaps_that_do_not_fit_the_balls_are_refused(change: dict[str, Any], told: str) -> None:
    """One handicap for two balls, one of a ball that is not there, two for one ball."""
    acts = [] if change.get("balls") == [] else FILE["acts"]
    with pytest.raises(InputError, match=told):
        rule_card({**FILE, "acts": acts, **change})


@pytest.mark.parametrize("how", [SettledAs.INCLUDED, SettledAs.NOT_INCLUDED])
def test_a_partner_disqualified_for_a_hole_leaves_it_to_the_other(how: SettledAs) -> None:
    """Rule 23.2a with Clarification 23.2a/1 (out of that hole): A's 3 by a wrong ball is none, B's 6 counts for the side."""
    hole = COURSE[6]
    ruling = Beside("r1", hole.number, 0, "a wrong ball", ball="a", no_score=("a",))
    found = four_ball(
        Settlement("r1", how), a=scores(hole.number, 3), b=scores(hole.number, 6), beside=(ruling,)
    )
    assert total(found, Score.GROSS) == sum(scores(hole.number, 6))


@pytest.mark.parametrize("day", [IN_2021, IN_2025])
@pytest.mark.parametrize(
    ("last", "note"),
    [("this_side", "side_wins_hole"), ("other_side", "side_loses_hole"), ("not_known", "hole_is_tied")],
)
def test_where_nobody_holes_out_in_a_match_the_last_to_be_in_play_wins(
    day: Any, last: str, note: str
) -> None:
    """Clarification 23.2a/1: A and C are out by wrong balls, B and D have picked up; who picked up first loses the hole."""
    facts = {"partners_completed": "neither", "other_side_on_hole": "no_ball_either", "last_in_play": last}
    found = rule(
        "four_ball_hole", facts, played_on=day, form_of_play=FormOfPlay.MATCH_PLAY, sides=Sides.FOUR_BALL
    )
    assert isinstance(found, Ruling)
    assert found.notes == (note,)
    assert "Clarification 23.2a/1" in found.citations
