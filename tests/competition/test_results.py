"""Results beyond the order: who is out, the play-off, teams, a series, the close, and what is refused."""

from datetime import UTC, date, datetime
from fractions import Fraction

import pytest

from marram.competition.conditions.choices import Score, TeamsBy, TieMethod
from marram.competition.conditions.event_file import Cut, Teams, Ties
from marram.competition.results.board import LeaderBoard, Standing
from marram.competition.results.card import Out, OutKind, RoundCard, Row
from marram.competition.results.closing import Change, Closed, reopening
from marram.competition.results.play_off import play_off_order
from marram.competition.results.scoring import Scoring
from marram.competition.results.series import SharedPlace, order_of_merit
from marram.competition.results.teams import team_results
from marram.competition.results.terms import Terms
from marram.competition.results.why import why
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.result import NeedFacts
from tests.competition.making import COURSE, card

LEVEL = [hole.par for hole in COURSE]
DAY = date(2025, 6, 21)
CLOSED = Closed(datetime(2025, 6, 21, 19, tzinfo=UTC))


def over(strokes: int, *, on: int = 0) -> list[int]:
    """Return a card of par with so many strokes more on one hole."""
    found = list(LEVEL)
    found[on] += strokes
    return found


def test_who_is_out_has_no_place_and_says_why() -> None:
    """A disqualified side comes last without a place, with the provision, and the others move up."""
    cards = [card("a", LEVEL), card("b", over(1)), card("c", over(2))]
    board = LeaderBoard(Terms(Scoring()), cards, out=[Out("a", OutKind.DISQUALIFIED, "3.3b(3)")])
    assert [(one.side, one.place) for one in board.places] == [("b", 1), ("c", 2), ("a", None)]
    assert "3.3b(3)" in why(board, "a").words


def test_out_of_the_net_competition_only() -> None:
    """Who is out of the net competition (Rule 3.3b(4) of 2019) keeps the gross place."""
    cards = [card("a", LEVEL, 3), card("b", over(1), 3)]
    out = [Out("a", OutKind.DISQUALIFIED, "3.3b(4)", Score.NET)]
    assert LeaderBoard(Terms(Scoring()), cards, out=out).places[0].side == "a"
    assert LeaderBoard(Terms(Scoring(score=Score.NET)), cards, out=out).places[0].side == "b"


def test_why_goes_down_to_the_hole() -> None:
    """Tied over all, a last nine that differs on one hole is named with that hole."""
    ties = Ties((TieMethod.COUNTBACK, TieMethod.SHARED), (TieMethod.SHARED,))
    board = LeaderBoard(Terms(Scoring(), ties=ties), [card("a", over(1, on=0)), card("b", over(1, on=13))])
    answer = why(board, "b")
    assert [one.side for one in board.places] == ["a", "b"]
    assert answer.decided is not None
    assert [(one.number, one.mine, one.theirs) for one in answer.decided.holes] == [(14, 5, 4)]
    assert answer.words.startswith("b ")
    assert "10 to 18: 37 against 36" in answer.words


def test_who_is_out_after_the_cut_counted_for_it() -> None:
    """A side disqualified in the second round was there when the cut was made: nobody moves up into its place."""
    cards = [card("a", LEVEL), card("b", over(1)), card("c", over(2))]
    terms = Terms(Scoring(), (18, 18), Cut(1, 2))
    late = LeaderBoard(terms, cards, out=[Out("a", OutKind.WITHDRAWN, round=2)])
    early = LeaderBoard(terms, cards, out=[Out("a", OutKind.WITHDRAWN, round=1)])
    assert late.through == {"a", "b"}
    assert early.through == {"b", "c"}


def test_a_live_board_goes_by_the_score_against_par() -> None:
    """Two under par after nine holes leads before one under after 18, and has nine holes left."""
    nine = [*over(-2, on=1)[:9], *[None] * 9]
    board = LeaderBoard(Terms(Scoring()), [card("on course", nine), card("home", over(-1))], sides=["later"])
    assert [(one.side, one.place, one.left, one.standing) for one in board.places] == [
        ("on course", 1, 9, Standing.PLAYING),
        ("home", 2, 0, Standing.FINISHED),
        ("later", None, 18, Standing.NOT_STARTED),
    ]
    assert "on the holes played" in why(board, "home").words


def test_a_play_off_hole_by_hole_and_over_three_holes() -> None:
    """The winner of a play-off comes first; after three holes tied for the lead it goes on hole by hole."""
    assert play_off_order({"a": [4, 4], "b": [4, 3], "c": [5]}) == ("b",)
    assert play_off_order({"a": [4, 4, 4, 5], "b": [3, 4, 5, 4], "c": [4, 4, 5]}, over=3) == ("b",)
    with pytest.raises(InputError, match="is not over"):
        play_off_order({"a": [4], "b": [4]})


@pytest.mark.parametrize(
    ("by", "total", "first"), [(TeamsBy.ROUND, 144, "x"), (TeamsBy.HOLE, 142, "y"), (TeamsBy.EVENT, 144, "x")]
)
def test_teams_count_their_best_scores(by: TeamsBy, total: int, first: str) -> None:
    """Of three the two best count: by round, over the event, or on each hole by itself."""
    par = sum(LEVEL)
    y_three = [over(-2, on=0), over(4, on=1), over(4, on=2)]
    cards = [
        *(card(f"x{number}", LEVEL) for number in range(3)),
        *(card(f"y{number}", gross) for number, gross in enumerate(y_three)),
    ]
    teams = {"x": ["x0", "x1", "x2"], "y": ["y0", "y1", "y2"]}
    places = team_results(LeaderBoard(Terms(Scoring()), cards), teams, Teams(3, 2, by))
    assert (places[0].team, places[0].total) == (first, total - 144 + 2 * par)


def test_a_team_with_too_few_scores_has_no_place() -> None:
    """Where a member is out, only the others' scores can count."""
    cards = [card("x0", LEVEL), card("x1", LEVEL)]
    board = LeaderBoard(Terms(Scoring()), cards, out=[Out("x1", OutKind.DISQUALIFIED)])
    (only,) = team_results(board, {"x": ["x0", "x1"]}, Teams(2, 2))
    assert only.place is None


def test_an_order_of_merit_over_a_series() -> None:
    """Points of the best two of three count; those who share a place get the mean of the places, or each the whole."""
    cards = [card("a", LEVEL), card("b", LEVEL), card("c", over(1))]
    tied = LeaderBoard(Terms(Scoring()), cards).places
    c_won = LeaderBoard(Terms(Scoring()), [card("c", LEVEL), card("a", over(1))]).places
    merit = order_of_merit([tied, c_won, tied], (10, 6, 2), best=2)
    assert [(one.side, one.place, one.points) for one in merit] == [
        ("a", 1, Fraction(16)),
        ("b", 1, Fraction(16)),
        ("c", 3, Fraction(12)),
    ]
    full = order_of_merit([tied], (10, 6, 2), shared=SharedPlace.FULL)
    assert [one.points for one in full] == [10, 10, 2]


def test_a_closed_result_is_changed_only_as_rule_20_2_allows() -> None:
    """After the close: a score too low disqualifies, another breach changes nothing, a mistake in the work always does."""

    def may(change: Change, facts: dict[str, object], closed: Closed | None = CLOSED) -> bool | None:
        return reopening(change, facts, played_on=DAY, form=FormOfPlay.STROKE_PLAY, closed=closed).allowed

    assert may(Change.BREACH, {"late_breach": "score_too_low"}) is True
    assert may(Change.BREACH, {"late_breach": "other"}) is False
    assert may(Change.BREACH, {"late_breach": "misconduct_or_agreement"}) is None
    assert may(Change.ADMINISTRATIVE, {}) is True
    assert may(Change.BREACH, {"late_breach": "other"}, closed=None) is True


def test_what_is_unknown_after_the_close_is_asked() -> None:
    """Without saying what came to light, the Rules ask for it."""
    found = reopening(Change.BREACH, {}, played_on=DAY, form=FormOfPlay.STROKE_PLAY, closed=CLOSED)
    assert found.allowed is None
    assert isinstance(found.result, NeedFacts)
    assert found.result.fact == "late_breach"


def test_cards_that_cannot_be_used_are_refused_with_every_fault() -> None:
    """Two cards of a round, a score below 1, strokes that are not the handicap, a round there is none of: all at once."""
    wrong = RoundCard("a", 1, COURSE, (Row("a", (0,) * 18, (1,) * 18),), 17)
    with pytest.raises(InputError) as refused:
        LeaderBoard(Terms(Scoring()), [wrong, card("b", LEVEL, round_=2), card("c", LEVEL), card("c", LEVEL)])
    faults = "\n".join(refused.value.faults)
    assert "hole 1 is 0" in faults
    assert "the handicap is 17, and the strokes on its holes are 18" in faults
    assert "there is no round 2" in faults
    assert "'c' has two cards of round 1" in faults


def test_points_need_the_strokes_of_each_hole() -> None:
    """In net Stableford a handicap without its strokes by hole is refused, not passed over."""
    bare = RoundCard("a", 1, COURSE, (Row("a", tuple(LEVEL)),), 12)
    with pytest.raises(InputError, match="strokes of each hole"):
        LeaderBoard(Terms(Scoring(FormOfPlay.STABLEFORD, Score.NET)), [bare])
