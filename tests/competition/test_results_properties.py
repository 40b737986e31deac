"""What holds of every result: order of entry never matters, a stroke more never helps, totals are the sums of holes."""

from dataclasses import replace
from fractions import Fraction

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from marram.competition.conditions.choices import (
    CountbackStrokes,
    MaximumBy,
    Score,
    TieMethod,
)
from marram.competition.conditions.event_file import Cut, Maximum, Ties
from marram.competition.results.board import LeaderBoard, Place, Standing
from marram.competition.results.card import NO_SCORE, Hole, RoundCard
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.competition.results.why import why
from marram.rules.facts.conditions import FormOfPlay
from tests.competition.making import COURSE, card

PATIENT = settings(deadline=None, max_examples=50, suppress_health_check=[HealthCheck.too_slow])
"""Whole competitions take a moment to draw on a busy machine, which says nothing of what is tested."""

METHODS = st.lists(
    st.sampled_from([TieMethod.COUNTBACK, TieMethod.LAST_HOLES, TieMethod.LOWER_HANDICAP]), unique=True
).map(tuple)
SCORINGS = st.builds(
    Scoring,
    form=st.sampled_from([FormOfPlay.STROKE_PLAY, FormOfPlay.STABLEFORD, FormOfPlay.PAR_BOGEY]),
    score=st.sampled_from(Score),
) | st.builds(
    Scoring,
    form=st.just(FormOfPlay.MAXIMUM_SCORE),
    score=st.sampled_from(Score),
    maximum=st.builds(Maximum, by=st.sampled_from(MaximumBy), number=st.integers(2, 9)),
)
NINE = tuple(Hole(one.number, one.par, place) for place, one in enumerate(COURSE[:9], start=1))


@st.composite
def competitions(draw: st.DrawFn) -> tuple[Terms, list[RoundCard]]:
    """Draw terms with complete cards of some players over one or two rounds, of nine or 18 holes."""
    scoring = draw(SCORINGS)
    holes = draw(st.sampled_from([NINE, COURSE]))
    rounds = draw(st.integers(1, 2))
    ties = Ties(
        draw(METHODS),
        draw(METHODS),
        draw(st.sampled_from(CountbackStrokes)),
    )
    cards = []
    for player in range(draw(st.integers(1, 6))):
        handicap = draw(st.integers(0, 3)) * (len(holes) // 9) if scoring.net else 0
        for round_ in range(1, rounds + 1):
            over = draw(st.lists(st.integers(-1, 2), min_size=len(holes), max_size=len(holes)))
            gross = [hole.par + one for hole, one in zip(holes, over, strict=True)]
            cards.append(card(f"player {player}", gross, handicap, round_=round_, holes=holes))
    return Terms(scoring, (len(holes),) * rounds, ties=ties), cards


def shown(places: tuple[Place, ...]) -> list[tuple[str, int | None, bool]]:
    return [(one.side, one.place, one.shared) for one in places]


@PATIENT
@given(competitions(), st.randoms(use_true_random=False))
def test_order_of_entry_never_matters(given_: tuple[Terms, list[RoundCard]], random: object) -> None:
    """Cards that come in another order, at once or one after the other, give the same places."""
    terms, cards = given_
    board = LeaderBoard(terms, cards)
    mixed = list(cards)
    random.shuffle(mixed)  # type: ignore[attr-defined]
    growing = LeaderBoard(terms)
    for one in mixed:
        growing = growing.with_card(one)
        _ = growing.places
    assert shown(LeaderBoard(terms, mixed).places) == shown(board.places)
    assert shown(growing.places) == shown(board.places)


@PATIENT
@given(competitions(), st.data())
def test_a_stroke_more_never_improves_a_place(
    given_: tuple[Terms, list[RoundCard]], data: st.DataObject
) -> None:
    """A stroke more on any hole of any card leaves its side no better off than before."""
    terms, cards = given_
    worse = data.draw(st.sampled_from(cards))
    at = data.draw(st.integers(0, len(worse.holes) - 1))
    row = worse.rows[0]
    score = row.gross[at]
    assert isinstance(score, int)
    more = replace(worse, rows=(replace(row, gross=(*row.gross[:at], score + 1, *row.gross[at + 1 :])),))

    def place_of(board: LeaderBoard) -> int:
        return next(one.place or 0 for one in board.places if one.side == worse.side)

    board = LeaderBoard(terms, cards)
    assert place_of(board.with_card(more)) >= place_of(board)


@PATIENT
@given(competitions())
def test_totals_are_the_sums_of_holes(given_: tuple[Terms, list[RoundCard]]) -> None:
    """A total is the sum of what its holes count, and in net stroke play the gross total less the handicaps."""
    terms, cards = given_
    for place in LeaderBoard(terms, cards).places:
        values = [value for one in place.score.rounds for value in one.values]
        assert place.score.total == sum(value for value in values if value is not None)
        if terms.scoring.form is FormOfPlay.STROKE_PLAY:
            mine = [one for one in cards if one.side == place.side]
            gross = sum(score for one in mine for score in one.rows[0].gross if isinstance(score, int))
            assert place.score.total == gross - sum(one.handicap for one in mine if terms.scoring.net)


@PATIENT
@given(competitions())
def test_places_follow_the_totals_and_count_everybody(given_: tuple[Terms, list[RoundCard]]) -> None:
    """Nobody with a better total comes later; a place is one more than those before it; shared ones are equal."""
    terms, cards = given_
    places = LeaderBoard(terms, cards).places
    sign = 1 if terms.scoring.lower_wins else -1
    totals = [sign * one.score.total for one in places]
    assert totals == sorted(totals)
    for at, one in enumerate(places):
        same = [other for other in places if other.place == one.place]
        assert one.shared == (len(same) > 1)
        assert one.place == sum(1 for other in places if (other.place or 0) < (one.place or 0)) + 1
        assert at + 1 >= (one.place or 0)


@PATIENT
@given(competitions())
def test_why_names_the_comparison_that_decided(given_: tuple[Terms, list[RoundCard]]) -> None:
    """The last comparison favours the side before; those before it are equal; a shared place has none that differs."""
    terms, cards = given_
    board = LeaderBoard(terms, cards)
    for before, one in zip(board.places, board.places[1:], strict=False):
        answer = why(board, one.side)
        assert answer.before == before
        *equal, last = answer.steps
        assert all(step.mine == step.theirs for step in equal)
        assert last.differs == (one.place != before.place)
        if last.differs:
            assert one.side in answer.words
            assert last.mine is not None
            assert last.theirs is not None
            lower = terms.scoring.lower_wins or last.comparison.by.value == "handicap"
            assert (last.mine > last.theirs) == lower


@PATIENT
@given(competitions())
def test_countback_by_hand(given_: tuple[Terms, list[RoundCard]]) -> None:
    """Two cards tied in total are put in order by a reckoning of its own: sums of the last holes, gross less fraction."""
    terms, cards = given_
    if terms.scoring.form is not FormOfPlay.STROKE_PLAY or len(terms.holes) > 1:
        return
    exact = Terms(terms.scoring, terms.holes, ties=Ties((TieMethod.LAST_HOLES,), (TieMethod.LAST_HOLES,)))
    count = terms.holes[0]

    def by_hand(one: RoundCard) -> tuple[Fraction, ...]:
        gross = [score for score in one.rows[0].gross if isinstance(score, int)]
        off = one.handicap if terms.scoring.net else 0
        parts = [last for last in (count, 9, 6, 3, 1) if last < count or last == count]
        return tuple(sum(gross[-last:]) - Fraction(off * last, count) for last in dict.fromkeys(parts))

    order = sorted(cards, key=lambda one: (by_hand(one), one.side))
    assert [one.side for one in LeaderBoard(exact, cards).places] == [one.side for one in order]


@PATIENT
@given(competitions(), st.integers(1, 6), st.none() | st.integers(0, 5), st.booleans())
def test_a_cut_lets_the_best_on(
    given_: tuple[Terms, list[RoundCard]], places: int, within: int | None, ties: bool
) -> None:
    """Nobody who plays on is worse after the round than somebody who does not; with ties at least the places do."""
    terms, cards = given_
    if len(terms.holes) == 1:
        return
    cut = Cut(1, places, ties, within)
    board = LeaderBoard(replace(terms, cut=cut), [one for one in cards if one.round == 1])
    on = board.through
    assert on
    ranks = {side: score.after(1).rank(True) for side, score in board.scores.items()}
    off = set(ranks) - on
    assert all(ranks[one] <= ranks[other] for one in on for other in off)
    if ties:
        assert len(on) >= min(places, len(ranks))
        assert all(ranks[one] < ranks[other] for one in on for other in off)
    if within is not None:
        assert all(ranks[one] > min(ranks.values()) + within for one in off)
    assert {one.side for one in board.places if one.standing is Standing.MISSED_CUT} == off


@PATIENT
@given(competitions(), st.data())
def test_a_card_half_played_is_told_with_what_is_left(
    given_: tuple[Terms, list[RoundCard]], data: st.DataObject
) -> None:
    """Where a card ends early, what is left to play is what it lacks, and no tie is decided yet."""
    terms, cards = given_
    cut_at = data.draw(st.integers(1, len(cards[0].holes) - 1))
    row = cards[-1].rows[0]
    half = replace(
        cards[-1], rows=(replace(row, gross=row.gross[:cut_at] + (None,) * (len(row.gross) - cut_at)),)
    )
    board = LeaderBoard(terms, [*cards[:-1], half])
    mine = next(one for one in board.places if one.side == half.side)
    assert mine.left == len(half.holes) - cut_at
    assert mine.standing is Standing.PLAYING
    assert not board.final


def test_no_score_in_stroke_play_leaves_the_round_incomplete() -> None:
    """A hole without a score in stroke play gives no total that could win, and a complete card with one is out."""
    gross = [NO_SCORE, *[hole.par for hole in COURSE[1:]]]
    board = LeaderBoard(Terms(Scoring()), [card("a", gross), card("b", [6] * 18)])
    assert board.final
    assert [(one.side, one.place) for one in board.places] == [("b", 1), ("a", None)]
    on_course = LeaderBoard(Terms(Scoring()), [card("a", [*gross[:17], None]), card("b", [6] * 18)])
    assert not on_course.final
