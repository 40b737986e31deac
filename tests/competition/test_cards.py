"""A card in the scoring area: figures compared, rulings beside it settled, and outcomes that the Rules give."""

from collections.abc import Sequence
from datetime import date

import pytest

from marram.competition.cards.acts import (
    By,
    CardAct,
    Certified,
    Ended,
    Figure,
    FoundOut,
    HandicapShown,
    Returned,
    SettledAs,
    Settlement,
)
from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import CardOutcome, card_outcome
from marram.competition.cards.scorecard import Beside, Difference, Scorecard, scorecard
from marram.competition.conditions.choices import MaximumBy, Score
from marram.competition.conditions.event_file import Maximum
from marram.competition.results.card import NO_SCORE, HoleScore, Out, OutKind
from marram.competition.results.scoring import Scoring
from marram.errors import InputError
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.result import NeedFacts
from tests.competition.making import COURSE, strokes_on
from tests.competition.reference import reference

IN_2021, IN_2025 = date(2021, 6, 1), date(2025, 6, 21)
PENALTY = Beside("r1", 4, 1, "one stroke for a ball moved")
BOTH = (Certified(By.PLAYER), Certified(By.MARKER))


def figures(scores: Sequence[HoleScore], *, marker: Sequence[HoleScore] | None = None) -> list[CardAct]:
    """Return the figures of player and marker for every hole."""
    return [
        Figure(by, hole.number, score)
        for by, given in ((By.PLAYER, scores), (By.MARKER, marker or scores))
        for hole, score in zip(COURSE, given, strict=True)
        if score is not None
    ]


PAR = [hole.par for hole in COURSE]


def card(*after: CardAct, scores: Sequence[HoleScore] = PAR, started_at: int | None = None) -> Scorecard:
    """Return a card of these scores with what was entered after them."""
    return scorecard("player", 1, COURSE, [*figures(scores), *after], started_at=started_at)


def outcome(
    *after: CardAct,
    under: RuledUnder | None = None,
    beside: Sequence[Beside] = (),
    answers: dict[str, dict[str, object]] | None = None,
    scores: Sequence[HoleScore] = PAR,
    started_at: int | None = None,
) -> CardOutcome:
    """Return what becomes of such a card, by the Rules of 2023 where nothing else is said."""
    rules = under or RuledUnder(IN_2025, local_rules=())
    return card_outcome(card(*after, scores=scores, started_at=started_at), rules, beside, answers)


def expects(ident: str) -> dict[str, object]:
    """Return what a published value expects."""
    found: dict[str, object] = reference()[ident]["expected"]
    return found


def test_figures_are_compared_as_they_come() -> None:
    """A hole on which the two differ is named at once; put right, it is no longer; a scorer's figure does not count."""
    acts: list[CardAct] = [Figure(By.PLAYER, 1, 4), Figure(By.SCORER, 1, 5), Figure(By.PLAYER, 2, 5)]
    assert scorecard("p", 1, COURSE, acts).differences() == ()
    acts.append(Figure(By.MARKER, 1, 5))
    differing = scorecard("p", 1, COURSE, acts)
    assert differing.differences() == (Difference("p", 1, 4, 5),)
    assert differing.agreed("p", 1) is None
    acts.append(Figure(By.PLAYER, 1, 5))
    assert scorecard("p", 1, COURSE, acts).differences() == ()
    assert scorecard("p", 1, COURSE, acts).agreed("p", 1) == 5
    assert scorecard("p", 1, COURSE, acts).missing(By.MARKER) == tuple(range(2, 19))


def test_a_whole_card_in_order_is_settled() -> None:
    """Both figures of all holes, both certifications, returned: nothing is left, and the scores count."""
    found = outcome(*BOTH, Returned())
    assert found.settled
    assert found.out is None
    assert list(found.card.rows[0].gross) == PAR


def test_before_the_return_everything_left_to_do_is_named() -> None:
    """Differences, figures, certification, the ruling beside and the return: each stands in the list until done."""
    told = outcome(Figure(By.MARKER, 4, 9), beside=[PENALTY]).to_do
    words = "\n".join(told)
    assert "Hole 4: the player has 4, the marker 9" in words
    assert "The player has not certified" in words
    assert "one stroke for a ball moved" in words
    assert "not been returned" in words


@pytest.mark.parametrize(
    ("how", "left"), [(SettledAs.INCLUDED, 0), (SettledAs.DOES_NOT_CONCERN, 0), (SettledAs.NOT_INCLUDED, 1)]
)
def test_a_ruling_beside_the_card_is_settled_before_the_return(how: SettledAs, left: int) -> None:
    """Included or of no concern, nothing is left; not included, player and marker are told to put it right."""
    told = outcome(*BOTH, Settlement("r1", how), beside=[PENALTY]).to_do
    assert len([one for one in told if PENALTY.words in one]) == left


def test_scorecard_01_and_07_too_high_stands_too_low_or_missing_disqualifies() -> None:
    """Actual 5 returned as 6 stands, as 4 disqualifies; a blank hole disqualifies."""
    for actual, returned, result in zip(
        *zip(*reference()["scorecard-07"]["inputs"]["cases"], strict=True),
        reference()["scorecard-07"]["expected"]["results"],
        strict=True,
    ):
        scores = [NO_SCORE if returned is None else returned, *PAR[1:]]
        after = (*BOTH, Returned(), *(() if returned is None else (FoundOut(1, actual),)))
        found = outcome(*after, scores=scores, answers={"hole_score_wrong-1": {"why_too_low": "other"}})
        if result == "disqualified":
            assert found.out is not None
            assert (found.out.kind, found.out.citation) == (OutKind.DISQUALIFIED, "3.3b(3)")
        else:
            assert found.out is None
            assert found.card.rows[0].gross[0] == result
    assert expects("scorecard-01") == {"higher": "stands", "lower": "disqualified", "missing": "disqualified"}


def test_scorecard_02_a_penalty_not_known_of_is_added_before_the_close() -> None:
    """Only an unknown penalty was left out: its strokes are added while the competition is open; doubted, it disqualifies."""
    assert expects("scorecard-02")["effect"] == "Committee adds penalty strokes"
    after = (*BOTH, Returned(), Settlement("r1", SettledAs.NOT_INCLUDED))
    asked = outcome(*after, beside=[PENALTY])
    (question,) = asked.questions
    assert isinstance(question.result, NeedFacts)
    assert question.result.fact == "why_too_low"

    def why(word: str, *, closed: bool = False) -> CardOutcome:
        return outcome(
            *after,
            under=RuledUnder(IN_2025, local_rules=(), closed=closed),
            beside=[PENALTY],
            answers={"hole_score_wrong-4": {"why_too_low": word}},
        )

    added = why("penalty_not_known")
    assert (added.out, added.added, added.card.rows[0].gross[3]) == (None, {("player", 4): 1}, 5)
    assert why("penalty_doubtful").out == Out("player", OutKind.DISQUALIFIED, "3.3b(3)", None, 1)
    late = why("penalty_not_known", closed=True)
    assert (late.out, late.card.rows[0].gross[3]) == (None, 4)


@pytest.mark.parametrize(
    "by", [(By.PLAYER,), (By.MARKER,), ()], ids=["marker missing", "player missing", "both missing"]
)
def test_scorecard_03_missing_certification(by: tuple[By, ...]) -> None:
    """Without certification by player, marker or both the side is out; with L-1 the last hole costs two strokes more."""
    assert expects("scorecard-03") == {"default": "disqualified", "L-1": {"strokes": 2, "hole": "last"}}
    after = [*(Certified(one) for one in by), Returned()]
    name = "scorecard_fault-" + ("marker" if By.PLAYER in by else "player")
    answers: dict[str, dict[str, object]] = {name: {"marker_at_fault": False}}
    strict = outcome(*after, answers=answers)
    assert strict.out == Out("player", OutKind.DISQUALIFIED, "3.3b(2)", None, 1)
    soft = outcome(*after, answers=answers, under=RuledUnder(IN_2025, local_rules=("L-1",)), started_at=10)
    assert soft.out is None
    assert soft.added == {("player", 9): 2}


def test_whether_the_marker_is_at_fault_is_asked() -> None:
    """Why certification is missing is a question to the Committee, never assumed."""
    (question,) = outcome(Certified(By.PLAYER), Returned()).questions
    assert isinstance(question.result, NeedFacts)
    assert question.result.fact == "marker_at_fault"


@pytest.mark.parametrize(
    ("day", "shown", "codes", "out"),
    [
        (IN_2021, None, (), True),
        (IN_2021, 15, (), True),
        (IN_2021, 9, (), False),
        (IN_2025, None, (), False),
        (IN_2025, 15, (), False),
        (IN_2025, None, ("L-2",), True),
    ],
)
def test_scorecard_04_and_05_handicap_on_the_card(
    day: date, shown: int | None, codes: tuple[str, ...], out: bool
) -> None:
    """Until 2022, and since 2023 with L-2, none or one too high puts the player out of the net competition; else nothing."""
    assert expects("scorecard-04")["2023"] == "no penalty"
    assert "L-2" in expects("scorecard-05")
    strokes = dict(zip(range(1, 19), strokes_on(COURSE, 12), strict=True))
    under = RuledUnder(
        day,
        local_rules=codes,
        scorings=(Scoring(), Scoring(score=Score.NET)),
        handicap=12,
        strokes={"player": strokes},
    )
    found = outcome(*BOTH, HandicapShown(shown), Returned(), under=under)
    assert (found.out is not None) == out
    if found.out is not None:
        assert found.out.score is Score.NET


def test_scorecard_06_nothing_is_changed_after_the_return() -> None:
    """A figure entered after the return is refused with the Rule."""
    assert expects("scorecard-06")["after_return"] == "no change by player"
    with pytest.raises(InputError, match=r"3\.3b\(2\)"):
        card(*BOTH, Returned(), Figure(By.PLAYER, 1, 3))


def test_a_card_returned_late_is_out_unless_the_marker_caused_it() -> None:
    """Not returned promptly disqualifies; where the Committee finds the marker at fault it does not."""
    for at_fault, out in ((False, True), (True, False)):
        found = outcome(
            *BOTH, Returned(promptly=False), answers={"scorecard_fault-late": {"marker_at_fault": at_fault}}
        )
        assert (found.out is not None) == out


def test_par_bogey_02_too_low_without_effect() -> None:
    """Par/Bogey: a returned score too low that changes no win, tie or loss carries no penalty; one that does disqualifies."""
    assert expects("par-bogey-02")["no_effect"] == "no penalty"
    under = RuledUnder(
        IN_2025, FormOfPlay.PAR_BOGEY, local_rules=(), scorings=(Scoring(FormOfPlay.PAR_BOGEY),)
    )
    after = (*BOTH, Returned())
    lost = outcome(*after, FoundOut(1, 7), under=under, scores=[6, *PAR[1:]])
    assert (lost.out, lost.questions) == (None, ())
    won = outcome(
        *after,
        FoundOut(1, 5),
        under=under,
        scores=[4, *PAR[1:]],
        answers={"hole_score_wrong-1": {"why_too_low": "other"}},
    )
    assert won.out is not None


@pytest.mark.parametrize(
    ("form", "maximum", "out"),
    [
        (FormOfPlay.STROKE_PLAY, None, True),
        (FormOfPlay.STABLEFORD, None, False),
        (FormOfPlay.PAR_BOGEY, None, False),
        (FormOfPlay.MAXIMUM_SCORE, Maximum(MaximumBy.TIMES_PAR, 2), False),
    ],
)
def test_par_bogey_03_a_hole_without_a_score(form: FormOfPlay, maximum: Maximum | None, out: bool) -> None:
    """A hole not completed disqualifies in stroke play only; elsewhere it counts as the form says."""
    assert expects("par-bogey-03")["effect"] == "hole lost"
    under = RuledUnder(IN_2025, form, local_rules=(), scorings=(Scoring(form, maximum=maximum),))
    found = outcome(*BOTH, Returned(), under=under, scores=[NO_SCORE, *PAR[1:]])
    assert (found.out is not None) == out
    assert found.card.rows[0].gross[0] == NO_SCORE


def test_four_ball_11_and_12_one_card_for_the_side() -> None:
    """A gross score of one partner is enough for a hole; of neither the side is out; whose it is must be clear."""
    assert expects("four-ball-11")["neither_stroke"] == "disqualified"
    assert expects("four-ball-12") == {"cards": 1, "score_type": "gross", "must_identify_partner": True}
    under = RuledUnder(IN_2025, sides=Sides.FOUR_BALL, local_rules=())

    def pair(last: Sequence[CardAct]) -> CardOutcome:
        acts = [Figure(by, hole, 4, "a") for hole in range(1, 18) for by in (By.PLAYER, By.MARKER)]
        whole = scorecard("pair", 1, COURSE, [*acts, *last, *BOTH, Returned()], balls=("a", "b"))
        return card_outcome(whole, under)

    assert pair([Figure(By.PLAYER, 18, 5, "b"), Figure(By.MARKER, 18, 5, "b")]).out is None
    assert pair([]).out is not None
    with pytest.raises(InputError, match="has no ball on this card"):
        scorecard("pair", 1, COURSE, [Figure(By.PLAYER, 1, 4, "somebody")], balls=("a", "b"))


def test_a_ruling_that_disqualifies_puts_the_side_out_once_it_is_taken() -> None:
    """A disqualification in the log lies beside the card until somebody says that it concerns it."""
    ruling = Beside("r2", None, 0, "disqualified", "1.2a")
    assert outcome(*BOTH, Returned(), beside=[ruling]).to_do
    taken = outcome(*BOTH, Returned(), Settlement("r2", SettledAs.INCLUDED), beside=[ruling])
    assert taken.out == Out("player", OutKind.DISQUALIFIED, "1.2a", None, 1)


@pytest.mark.parametrize("kind", OutKind)
def test_withdrawn_no_return_and_the_like(kind: OutKind) -> None:
    """A round that ends otherwise puts the side out as it was said, and asks nothing more."""
    found = outcome(Ended(kind))
    assert found.settled
    assert found.out is not None
    assert found.out.kind is kind


def test_what_does_not_fit_the_card_is_refused_with_every_fault() -> None:
    """A hole that is not on it and a score that is none are told together."""
    with pytest.raises(InputError) as refused:
        scorecard("p", 1, COURSE, [Figure(By.PLAYER, 19, 4), Figure(By.PLAYER, 2, 0)])
    assert len(refused.value.faults) == 2
