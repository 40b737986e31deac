"""Results that Committees argue about, each with the published text that settles it.

Each outcome is read from the text that its test names.
"""

from decimal import Decimal
from typing import Any

import pytest

from marram.competition.conditions.choices import CountbackStrokes, MaximumBy, Score, TieMethod, Variation
from marram.competition.conditions.event_file import Entrant, EventFile, Maximum, Rating, Ties
from marram.competition.conditions.handicaps import handicap_of, side_handicap_of
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import NO_SCORE, Hole, OutKind, RoundCard, Row
from marram.competition.results.play_off import play_off_order, play_off_strokes
from marram.competition.results.scoring import Scoring, hole_value
from marram.competition.results.terms import Terms
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.results.competition_results import read_results
from tests.competition.making import COURSE, PARS, card, strokes_on

MATCHING = Ties((TieMethod.COUNTBACK,), (TieMethod.COUNTBACK,))
LEVEL = list(PARS)


def over(*holes: int) -> list[int]:
    """Return a card in par with one over on some holes."""
    return [par + (number in holes) for number, par in enumerate(PARS, start=1)]


def order(board: LeaderBoard) -> list[str]:
    """Return who has a place, in order."""
    return [one.side for one in board.places if one.place is not None]


@pytest.mark.parametrize(("one", "other"), [(9, 10), (12, 13), (15, 16), (17, 18), (3, 4), (6, 7), (8, 9)])
def test_cards_are_matched_from_the_end(one: int, other: int) -> None:
    """Committee Procedures 5A(6): last nine, six, three, the 18th; then the last six, three and one of the first nine."""
    board = LeaderBoard(
        Terms(Scoring(), ties=MATCHING), [card("late", over(other)), card("early", over(one))]
    )
    assert order(board) == ["early", "late"]


def test_a_start_from_the_tenth_hole_changes_nothing() -> None:
    """Committee Procedures 5A(6), as Canada's union prints it: with several tees the last nine are still holes 10 to 18."""
    board = LeaderBoard(Terms(Scoring(), ties=MATCHING), [card("from 10", over(2)), card("from 1", over(18))])
    assert order(board) == ["from 10", "from 1"]


def test_a_plus_handicap_is_added_to_part_of_a_round() -> None:
    """Committee Procedures 5A(6): half of the handicap is deducted from the last nine; of a plus two that adds one."""
    plus = RoundCard(
        "plus",
        1,
        COURSE,
        (Row("plus", tuple(LEVEL), tuple(-1 if (one.stroke_index or 0) > 16 else 0 for one in COURSE)),),
        -2,
    )
    two = card("two", over(2, 3, 4, 5), 2)
    board = LeaderBoard(Terms(Scoring(score=Score.NET), ties=MATCHING), [plus, two])
    assert order(board) == ["two", "plus"]  # 36 + 1 against 36 - 1


def test_the_fraction_is_kept() -> None:
    """Canada's union and those of Great Britain: fractions are not disregarded: 11 ÷ 2 = 5.5 beats the 5 of ten."""
    eleven, ten = card("eleven", over(1), 11), card("ten", LEVEL, 10)
    board = LeaderBoard(Terms(Scoring(score=Score.NET), ties=MATCHING), [eleven, ten])
    assert order(board) == ["eleven", "ten"]
    assert [one.score.total for one in board.places] == [62, 62]


def test_strokes_by_stroke_index_need_the_strokes_of_each_hole() -> None:
    """An option of some clubs, not the text: without the strokes of the holes it cannot be applied, and says so."""
    ties = Ties(MATCHING.first_place, MATCHING.other_places, CountbackStrokes.BY_STROKE_INDEX)
    bare = RoundCard("bare", 1, COURSE, (Row("bare", tuple(LEVEL)),), 11)
    with pytest.raises(InputError, match="not the handicap alone"):
        LeaderBoard(Terms(Scoring(score=Score.NET), ties=ties), [bare])


def test_a_hole_without_a_score_in_stroke_play_is_out_and_never_leads() -> None:
    """Rule 3.3b(3), 2019 and 2023: no score returned for a hole disqualifies; the other places are final."""
    board = LeaderBoard(Terms(Scoring()), [card("blank", [NO_SCORE, *LEVEL[1:]]), card("home", over(1))])
    assert board.final
    assert order(board) == ["home"]
    last = board.places[-1]
    assert last.out is not None
    assert (last.side, last.out.kind, last.out.citation) == ("blank", OutKind.DISQUALIFIED, "3.3b(3)")
    put_right = board.with_card(card("blank", LEVEL))
    assert order(put_right) == ["blank", "home"]


def test_a_side_of_four_ball_without_any_score_on_a_hole_is_out() -> None:
    """Rule 23.2a: neither partner with a score on a hole, and the side is disqualified; one of them is enough."""

    def side(name: str, second: object) -> RoundCard:
        rows = (Row("a", (NO_SCORE, *LEVEL[1:])), Row("b", (second, *LEVEL[1:])))  # type: ignore[arg-type]
        return RoundCard(name, 1, COURSE, rows)

    board = LeaderBoard(Terms(Scoring()), [side("none", NO_SCORE), side("one", 9), side("open", None)])
    assert [one.side for one in board.places if one.out is not None] == ["none"]


@pytest.mark.parametrize(
    ("form", "maximum", "value"),
    [
        (FormOfPlay.STABLEFORD, None, 0),
        (FormOfPlay.PAR_BOGEY, None, -1),
        (FormOfPlay.MAXIMUM_SCORE, Maximum(MaximumBy.TIMES_PAR, 2), 8),
        (FormOfPlay.MAXIMUM_SCORE, Maximum(MaximumBy.NET_OVER_PAR, 2), 7),
        (FormOfPlay.MAXIMUM_SCORE, Maximum(MaximumBy.STROKES, 10), 10),
    ],
)
def test_a_hole_not_finished(form: FormOfPlay, maximum: Maximum | None, value: int) -> None:
    """Rules 21.1b(1), 21.2b(1), 21.3b(1): no point, the maximum, the hole lost; net double bogey counts a stroke received."""
    assert hole_value(Scoring(form, maximum=maximum), Hole(1, 4, 1), NO_SCORE, 1) == value


def test_a_play_off_that_one_of_two_does_not_complete() -> None:
    """Rule 3.3a and its Clarification: disqualified or withdrawn in the play-off, and the other has won without finishing."""
    assert play_off_order({"a": [4], "b": [4, None]}) == ("a",)
    assert play_off_order({"a": [None], "b": [], "c": [None]}) == ("b",)
    with pytest.raises(InputError, match="is not over"):
        play_off_order({"a": [4], "b": [4]})


def test_strokes_in_a_play_off_over_some_holes() -> None:
    """Canada's union on ties: the percentage of 18 holes played; half a stroke and more is one, less is none."""
    assert [play_off_strokes(15, 3), play_off_strokes(14, 3), play_off_strokes(-3, 3)] == [3, 2, 0]


TEES = (
    Rating("white", Decimal("72.0"), 113, 72),
    Rating("red", Decimal("73.0"), 113, 73),
)


def event(form: FormOfPlay = FormOfPlay.STROKE_PLAY, **more: Any) -> EventFile:
    """Return an event with two sets of tees, of par 72 and par 73."""
    players = (
        Entrant("white", Decimal(10), tees="white"),
        Entrant("red", Decimal(10), tees="red"),
    )
    return EventFile(form_of_play=form, scores=(Score.NET,), ratings=TEES, players=players, **more)


@pytest.mark.parametrize(
    ("form", "red"),
    [
        (FormOfPlay.STROKE_PLAY, 11),
        (FormOfPlay.MAXIMUM_SCORE, 11),
        (FormOfPlay.MATCH_PLAY, 11),
        (FormOfPlay.STABLEFORD, 10),
        (FormOfPlay.PAR_BOGEY, 10),
    ],
)
def test_tees_of_different_par(form: FormOfPlay, red: int) -> None:
    """Rule 6.2b of the Rules of Handicapping (USGA): the higher par receives the difference, except against par itself."""
    found = event(form)
    playing = [handicap_of(found, one, COURSE).playing for one in found.players]
    assert playing == [10, red]


def test_the_difference_in_par_comes_after_the_allowance() -> None:
    """Rule 6.2b: it is added to the Playing Handicap, so that 90 % are not taken of it: 9 and 10."""
    found = event(allowance=Decimal(90))
    assert [handicap_of(found, one, COURSE).playing for one in found.players] == [9, 10]
    alone = EventFile(scores=(Score.NET,), ratings=TEES, players=(found.players[1],))
    assert handicap_of(alone, alone.players[0], COURSE).playing == 10


def test_a_mixed_side_receives_half_of_both_adjustments() -> None:
    """Guidance for Great Britain and Ireland: 50 % of the Course Handicaps together, then half the combined adjustments."""
    found = event(sides=Sides.FOURSOMES)
    side = side_handicap_of(found, found.players, COURSE)
    assert side.playing == 11  # (10 + 10) ÷ 2, and half of one stroke, rounded upwards
    assert sum(side.strokes) == 11


@pytest.mark.parametrize(
    ("variation", "indexes", "playing"),
    [
        (Variation.GREENSOMES, (12, 18), 14),
        (Variation.PINEHURST, (18, 12), 14),
        (Variation.SCRAMBLE, (5, 10, 15, 20), 8),
        (Variation.SCRAMBLE, (20, 10), 7),
        (None, (6, 11), 9),
    ],
)
def test_the_handicap_of_partners_who_share_a_ball(
    variation: Variation | None, indexes: tuple[int, ...], playing: int
) -> None:
    """Appendix C: 60/40 for greensomes and Chapman, 25/20/15/10 and 35/15 for a scramble, half the sum for Foursomes."""
    sides = Sides.FOURSOMES if variation is not Variation.SCRAMBLE else None
    found = EventFile(scores=(Score.NET,), sides=sides, variation=variation, ratings=TEES[:1])
    partners = [Entrant(f"p{one}", Decimal(one)) for one in indexes]
    assert side_handicap_of(found, partners, COURSE).playing == playing


def cards_file(**change: Any) -> dict[str, Any]:
    """Return a file of one net card of a Foursomes side."""
    document = {
        "event": {
            "played_on": "2025-06-21",
            "form_of_play": "stroke_play",
            "sides": "foursomes",
            "scores": ["net"],
            "ratings": [{"tees": "white", "course_rating": 72.0, "slope": 113, "par": 72}],
            "players": [{"name": "Ina", "handicap_index": 6}, {"name": "Olf", "handicap_index": 11}],
        },
        "course": [
            {"number": one.number, "par": one.par, "stroke_index": one.stroke_index} for one in COURSE
        ],
        "cards": [{"side": "Ina and Olf", "gross": LEVEL, "players": ["Ina", "Olf"]}],
    }
    return {**document, **change}


def test_a_net_result_is_never_worked_out_without_a_handicap() -> None:
    """Rule 3.1c: a net score is the gross score less handicap strokes; where they are not known there is none."""
    _, (found,) = read_results(cards_file())
    assert found.board.places[0].score.total == 72 - 9
    for nobody in ({"players": ["Ina", "Eve"]}, {}):
        one = {"side": "Ina and Olf", "gross": LEVEL, **nobody}
        with pytest.raises(InputError, match="the handicap is not known"):
            read_results(cards_file(cards=[one]))


def test_a_net_four_ball_takes_each_partners_own_strokes() -> None:
    """Rule 23.2b(2): the Committee applies each partner's strokes to the score that is entered for that partner."""
    event_ = {**cards_file()["event"], "sides": "four_ball", "allowance": 85}
    balls = [{"player": "Ina", "gross": LEVEL}, {"player": "Olf", "gross": LEVEL}]
    _, (found,) = read_results(cards_file(event=event_, cards=[{"side": "Ina and Olf", "balls": balls}]))
    best = [max(a, b) for a, b in zip(strokes_on(COURSE, 5), strokes_on(COURSE, 9), strict=True)]
    assert found.board.places[0].score.total == 72 - sum(best)
    with pytest.raises(InputError, match="Eve"):
        read_results(
            cards_file(
                event=event_, cards=[{"side": "s", "balls": [*balls, {"player": "Eve", "gross": LEVEL}]}]
            )
        )
