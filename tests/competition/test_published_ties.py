"""Ties as unions and clubs publish how they are decided, each with the page it was read on (stored copies)."""

from collections.abc import Sequence
from random import Random

import pytest

from marram.competition.conditions.choices import CountbackStrokes, Score, TieMethod
from marram.competition.conditions.event_file import Ties
from marram.competition.conditions.reading import read_event_file
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import Hole, RoundCard, Row
from marram.competition.results.comparisons import countback, hole_by_hole
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.competition.results.why import why
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay
from tests.competition.making import COURSE, card
from tests.competition.test_published_results import named_holes

NET = Scoring(score=Score.NET)


def ties(*methods: TieMethod, strokes: CountbackStrokes | None = None) -> Ties:
    return Ties(methods, methods, strokes)


def order(board: LeaderBoard) -> list[tuple[str, int | None]]:
    return [(one.side, one.place) for one in board.places]


def on_card(side: str, gross: Sequence[int], handicap: int) -> RoundCard:
    """Return a card whose handicap is known and whose strokes by hole are not, as stroke play needs it."""
    return RoundCard(side, 1, COURSE, (Row(side, tuple(gross)),), handicap)


def spread(total: int, holes: int) -> list[int]:
    each, rest = divmod(total, holes)
    return [each + 1] * rest + [each] * (holes - rest)


@pytest.mark.parametrize("strokes", [CountbackStrokes.ROUNDED_FRACTION, CountbackStrokes.EXACT_FRACTION])
def test_two_players_tied_over_nine_and_apart_over_six(strokes: CountbackStrokes) -> None:
    """Of 12 and 20, 45 and 49 on the last nine are 39 each; 31 less 4 beats 35 less 7 on the last six.

    The example of a club (superiorgolfclubintl.net, "Rules of golf", after the former handicap manual), which rounds the parts;
    by exact fractions it is 31 less 4 and 35 less 6 2/3, and ends the same.
    """
    first = on_card("B", [*spread(45, 9), *spread(14, 3), *spread(31, 6)], 12)
    second = on_card("S", [*spread(49, 9), *spread(14, 3), *spread(35, 6)], 20)
    board = LeaderBoard(Terms(NET, ties=ties(TieMethod.COUNTBACK, strokes=strokes)), [second, first])
    assert order(board) == [("B", 1), ("S", 2)]
    decided = why(board, "S").decided
    assert decided is not None
    assert (decided.comparison.first, decided.comparison.end) == (12, 18)
    rounded = strokes is CountbackStrokes.ROUNDED_FRACTION
    assert decided.theirs == 27
    assert (
        decided.mine == (28 if rounded else 35 - 20 * 6 / 18)
        or abs(float(decided.mine or 0) - 28.333) < 0.001
    )


def test_half_of_fifteen_is_seven_and_a_half() -> None:
    """A society takes the exact half off (le-turf.org, "Game rulings"): 15 with 44 on the last nine loses to 16 with 44."""
    fifteen = on_card("fifteen", [*spread(43, 9), *spread(44, 9)], 15)
    sixteen = on_card("sixteen", [*spread(44, 9), *spread(44, 9)], 16)
    board = LeaderBoard(Terms(NET, ties=ties(TieMethod.COUNTBACK)), [fifteen, sixteen])
    assert order(board) == [("sixteen", 1), ("fifteen", 2)]
    rounded = ties(TieMethod.LAST_HOLES, strokes=CountbackStrokes.ROUNDED_FRACTION)
    level = LeaderBoard(Terms(NET, ties=rounded), [fifteen, sixteen])
    assert [one.place for one in level.places] == [1, 1]  # 8, 5, 3 and 1 are taken off both


def test_a_round_of_nine_holes() -> None:
    """The last six, the last three, the last hole (juniorgolfscotland.co.uk, "What if there is a tie?")."""
    assert named_holes(countback(9, 1)) == ["4-9", "7-9", "9"]
    holes = COURSE[:9]
    a = card("a", [3, 4, 4, 5, 4, 4, 4, 4, 4], holes=holes)
    b = card("b", [4, 4, 4, 4, 4, 4, 4, 4, 4], holes=holes)
    gross = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)
    board = LeaderBoard(Terms(gross, (9,), ties=ties(TieMethod.COUNTBACK)), [a, b])
    assert order(board) == [("b", 1), ("a", 2)]


def test_after_the_last_three_hole_by_hole_from_the_eighteenth() -> None:
    """An Australian club's conditions (rmcgc.com.au, "Scoring"): nine, six, three, then single holes from the last back."""
    assert named_holes(hole_by_hole(18)) == [str(number) for number in range(18, 0, -1)]
    base = [4] * 18
    one, two = list(base), list(base)
    one[16], one[15] = 5, 3  # holes 17 and 16: the same over three
    terms = Terms(
        Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS), ties=ties(TieMethod.LAST_HOLES, TieMethod.HOLE_BY_HOLE)
    )
    board = LeaderBoard(terms, [card("one", one), card("two", two)])
    assert order(board) == [("two", 1), ("one", 2)]
    decided = why(board, "one").decided
    assert decided is not None
    assert (decided.comparison.first, decided.comparison.end) == (16, 17)
    left = Terms(Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS), ties=ties(TieMethod.LAST_HOLES))
    assert [one.place for one in LeaderBoard(left, [card("one", one), card("two", two)]).places] == [1, 1]


@pytest.mark.parametrize("seed", range(20))
def test_the_last_nine_are_those_of_the_card_wherever_a_group_began(seed: int) -> None:
    """Holes 10 to 18 irrespective of where players began (the same page; golf-monthly.co.uk and miamivalleygolf.org alike).

    A card has its holes by their numbers and does not know where the round began, so that nothing else can be compared.
    """
    luck = Random(seed)
    sides = [f"s{number}" for number in range(6)]
    pars = [hole.par for hole in COURSE]
    gross = {side: luck.sample(pars, 18) for side in sides}  # all of one total
    scoring = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)
    terms = Terms(scoring, ties=ties(TieMethod.COUNTBACK, TieMethod.HOLE_BY_HOLE))

    cards = [RoundCard(side, 1, COURSE, (Row(side, tuple(gross[side])),)) for side in sides]
    expected = sorted(
        sides,
        key=lambda side: (
            *(sum(gross[side][18 - count :]) for count in (9, 6, 3, 1)),
            *(sum(gross[side][9 - count : 9]) for count in (6, 3, 1)),
            *gross[side][::-1],
        ),
    )
    assert [one.side for one in LeaderBoard(terms, cards).places] == expected


def test_holes_of_one_number_only_are_met() -> None:
    """A course of holes 10 to 18 played alone names the holes by their numbers."""
    holes = tuple(Hole(number, 4, number) for number in range(10, 19))
    a = card("a", [4] * 8 + [5], holes=holes)
    b = card("b", [5] + [4] * 8, holes=holes)
    gross = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)
    board = LeaderBoard(Terms(gross, (9,), ties=ties(TieMethod.COUNTBACK)), [a, b])
    decided = why(board, "a").decided
    assert order(board) == [("b", 1), ("a", 2)]
    assert decided is not None
    assert (decided.comparison.holes, [one.number for one in decided.holes]) == (6, [18])


def test_the_last_36_holes_of_72() -> None:
    """Two on 9 under for the third place: 68 after a worse third round, or 74; the bronze went by the last 36 holes.

    Of the two the last rounds, 68 and 74, and the other's 205 after three are printed (golfbible.co.uk, European championship
    of 2019); the third rounds are made up so that the two methods differ.
    """

    def rounds(side: str, *totals: int) -> list[RoundCard]:
        return [
            RoundCard(side, number, COURSE, (Row(side, tuple(spread(total, 18))),))
            for number, total in enumerate(totals, start=1)
        ]

    cards = [*rounds("68", 70, 69, 72, 68), *rounds("74", 70, 70, 65, 74)]
    gross = Scoring(FormOfPlay.STROKE_PLAY, Score.GROSS)
    by_36 = ties(TieMethod.LAST_TWO_ROUNDS, TieMethod.COUNTBACK)
    board = LeaderBoard(Terms(gross, (18,) * 4, ties=by_36), cards)
    assert order(board) == [("74", 1), ("68", 2)]
    decided = why(board, "68").decided
    assert decided is not None
    assert (decided.mine, decided.theirs) == (140, 139)
    assert {one.round for one in decided.holes} == {3, 4}
    by_18 = ties(TieMethod.COUNTBACK)
    assert order(LeaderBoard(Terms(gross, (18,) * 4, ties=by_18), cards)) == [("68", 1), ("74", 2)]


@pytest.mark.parametrize("rounds", [1, 2, 3])
def test_two_of_fewer_than_three_rounds_are_refused(rounds: int) -> None:
    """Over two rounds the last two are the whole competition, in which they are tied already."""
    document = {
        "form_of_play": "stroke_play",
        "sides": "individual",
        "scores": ["gross"],
        "rounds": [{"name": f"R{day}", "played_on": f"2026-05-0{day}"} for day in range(1, rounds + 1)],
        "ties": {"first_place": ["last_two_rounds", "shared"], "other_places": ["shared"]},
    }
    if rounds == 3:
        found = read_event_file(document).ties
        assert found is not None
        assert found.first_place[0] is TieMethod.LAST_TWO_ROUNDS
        return
    with pytest.raises(InputError, match="last_two_rounds compares two rounds of three or more"):
        read_event_file(document)
