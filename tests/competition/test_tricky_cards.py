"""Returned cards that a Committee argues about, each with the published text that settles it.

Each outcome is read from the text that its test names. Read in 2023's Rules 3.3b, 21.1b to 21.3b and
23.2b, in 2019's Rule 23.2b and in Model Local Rules L-1 and L-2 (a Danish edition), unless a test says otherwise.
"""

import json

import pytest

from marram.competition.cards.acts import (
    By,
    CardAct,
    Certified,
    Figure,
    FoundOut,
    HandicapShown,
    Returned,
    SettledAs,
    Settlement,
)
from marram.competition.cards.findings import RuledUnder
from marram.competition.cards.outcome import CardOutcome, card_outcome
from marram.competition.cards.scorecard import Beside, scorecard
from marram.competition.conditions.choices import MaximumBy, Score
from marram.competition.conditions.event_file import Maximum
from marram.competition.results.board import LeaderBoard
from marram.competition.results.card import NO_SCORE, OutKind
from marram.competition.results.scoring import Scoring
from marram.competition.results.terms import Terms
from marram.records.entry import Kept
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.services.cards.beside_card import beside_card
from tests.competition.making import COURSE, strokes_on
from tests.competition.test_cards import BOTH, IN_2021, IN_2025, PAR, figures, outcome

NET = (Scoring(score=Score.GROSS), Scoring(score=Score.NET))
NOT_THE_MARKER = {"scorecard_fault-player": {"marker_at_fault": False}}


def under(year: object, handicap: int = 12, local_rules: tuple[str, ...] = ()) -> RuledUnder:
    """Return net stroke play with a Playing Handicap."""
    on_holes = dict(zip((one.number for one in COURSE), strokes_on(COURSE, handicap), strict=True))
    return RuledUnder(
        IN_2021 if year == 2021 else IN_2025,
        local_rules=local_rules,
        scorings=NET,
        handicap=handicap,
        strokes={"player": on_holes},
    )


@pytest.mark.parametrize(
    ("year", "local_rules", "handicap"), [(2021, (), 10), (2025, ("L-2",), 10), (2025, (), 12)]
)
def test_a_lower_handicap_on_the_card_is_the_one_that_counts(
    year: int, local_rules: tuple[str, ...], handicap: int
) -> None:
    """Rule 3.3b(4) until 2022 and Model Local Rule L-2: the lower one stands; since 2023 the Committee's own does."""
    found = outcome(*BOTH, HandicapShown(10), Returned(), under=under(year, local_rules=local_rules))
    assert found.out is None
    assert found.card.handicap == handicap
    assert sum(found.card.rows[0].strokes) == handicap
    (place,) = LeaderBoard(Terms(Scoring(score=Score.NET)), [found.card]).places
    assert place.score.total == sum(PAR) - handicap


def test_a_lower_handicap_of_a_plus_player_is_a_higher_plus() -> None:
    """The same for a plus one who shows a plus three: what is lower is the number with its sign (Appendix C)."""
    found = outcome(*BOTH, HandicapShown(-3), Returned(), under=under(2021, 0))
    assert (found.out, found.card.handicap) == (None, -3)


@pytest.mark.parametrize("shown", [14, None])
@pytest.mark.parametrize(("year", "local_rules"), [(2021, ()), (2025, ("L-2",))])
def test_a_higher_or_missing_handicap_costs_the_net_result_only(
    shown: int | None, year: int, local_rules: tuple[str, ...]
) -> None:
    """Rule 3.3b(4) until 2022, then Model Local Rule L-2: out of the net competition; the gross result stands."""
    found = outcome(*BOTH, HandicapShown(shown), Returned(), under=under(year, local_rules=local_rules))
    assert found.out is not None
    assert (found.out.score, found.out.citation) == (Score.NET, "3.3b(4)" if year == 2021 else "L-2")


def test_a_hole_found_not_to_have_been_completed_is_too_late() -> None:
    """Rule 3.3c: after the card is returned nothing can be corrected, and nobody needs to be asked."""
    found = outcome(*BOTH, Returned(), FoundOut(5, NO_SCORE))
    assert found.questions == ()
    assert found.out is not None
    assert (found.out.kind, found.out.citation) == (OutKind.DISQUALIFIED, "3.3c")


DOUBLE_PAR = Maximum(MaximumBy.TIMES_PAR, 2)


@pytest.mark.parametrize(
    ("form", "maximum", "returned", "is_out"),
    [
        (FormOfPlay.STABLEFORD, None, COURSE[4].par, True),
        (FormOfPlay.STABLEFORD, None, COURSE[4].par + 2, False),
        (FormOfPlay.MAXIMUM_SCORE, DOUBLE_PAR, 2 * COURSE[4].par - 1, True),
        (FormOfPlay.MAXIMUM_SCORE, DOUBLE_PAR, 2 * COURSE[4].par + 1, False),
        (FormOfPlay.PAR_BOGEY, None, COURSE[4].par, True),
        (FormOfPlay.PAR_BOGEY, None, COURSE[4].par + 1, False),
    ],
)
def test_picked_up_and_yet_a_score_on_the_card(
    form: FormOfPlay, maximum: Maximum | None, returned: int, is_out: bool
) -> None:
    """Rules 21.1b(2), 21.2b(2), 21.3b(2): without holing out only no score, or one that counts no better, may stand."""
    scores = [*PAR[:4], returned, *PAR[5:]]
    rules = RuledUnder(IN_2025, form=form, local_rules=(), scorings=(Scoring(form, maximum=maximum),))
    found = outcome(*BOTH, Returned(), FoundOut(5, NO_SCORE), under=rules, scores=scores)
    assert found.questions == ()
    assert (found.out is not None) is is_out


def test_a_returned_score_below_the_players_own_note_is_looked_into() -> None:
    """Rule 3.3b(3) turns on the actual score: the marker's lower figure may be too low, a higher one just stands."""
    lower = [*figures(PAR, marker=[PAR[0] - 1, *PAR[1:]]), *BOTH, Returned()]
    higher = [*figures(PAR, marker=[PAR[0] + 1, *PAR[1:]]), *BOTH, Returned()]
    rules = RuledUnder(IN_2025, local_rules=())

    def ruled(acts: list[CardAct]) -> CardOutcome:
        return card_outcome(scorecard("player", 1, COURSE, acts), rules)

    assert "Find out the actual score" in "".join(ruled(lower).to_do)
    assert ruled([*lower, FoundOut(1, PAR[0] - 1)]).settled
    assert ruled(higher).settled


@pytest.mark.parametrize("missing", [(By.PLAYER,), (By.MARKER,), (By.PLAYER, By.MARKER)])
def test_missing_certification_costs_two_strokes_once(missing: tuple[By, ...]) -> None:
    """Model Local Rule L-1: not certified by player, marker or both, two strokes on the last hole of the round."""
    certified = [one for one in BOTH if one.by not in missing]
    answers = {f"scorecard_fault-{one.value}": {"marker_at_fault": False} for one in By}
    found = outcome(
        *certified,
        Returned(),
        under=RuledUnder(IN_2025, local_rules=("L-1",)),
        answers=answers,
        started_at=10,
    )
    assert dict(found.added) == {("player", 9): 2}
    assert found.out is None


def four_ball(
    *after: CardAct, local_rules: tuple[str, ...] = (), year: int = 2025, **scores: list[int]
) -> CardOutcome:
    """Return what becomes of the card of a side in Four-Ball."""
    balls = tuple(scores)
    acts = [
        Figure(by, hole.number, score, ball)
        for ball, given in scores.items()
        for by in (By.PLAYER, By.MARKER)
        for hole, score in zip(COURSE, given, strict=True)
    ]
    rules = RuledUnder(IN_2021 if year == 2021 else IN_2025, sides=Sides.FOUR_BALL, local_rules=local_rules)
    return card_outcome(scorecard("side", 1, COURSE, [*acts, *after], balls=balls), rules, (), NOT_THE_MARKER)


def test_missing_certification_of_a_side_costs_each_partner() -> None:
    """Rule 23.2b(1): one card, certified by one partner; with Model Local Rule L-1 each partner gets the strokes (our reading)."""
    found = four_ball(Returned(), local_rules=("L-1",), a=PAR, b=PAR)
    assert dict(found.added) == {("a", 18): 2, ("b", 18): 2}
    (one,) = found.findings
    assert isinstance(one.result, Ruling)
    assert "23.2b(1)" in one.result.citations


def test_one_partner_certifies_for_the_side() -> None:
    """Rule 23.2b(1), alike in 2019 (a Polish edition): it is enough that one of the partners certifies."""
    for year in (2021, 2025):
        assert four_ball(*BOTH, Returned(), year=year, a=PAR, b=PAR).settled


def test_a_partners_score_that_does_not_count_may_be_too_low() -> None:
    """Rule 23.2b(2): only the score that counts for the side is the side's answer for the hole."""
    worse = [one + 2 for one in PAR]
    harmless = four_ball(*BOTH, Returned(), FoundOut(3, 9, "b"), a=PAR, b=worse)
    assert harmless.out is None
    assert isinstance(harmless.findings[0].result, Ruling | NeedFacts)


def test_points_deducted_until_2022_are_taken_off_the_round() -> None:
    """Rule 21.1c of 2019: for clubs, starting time and delay points come off the total, not off a hole."""
    late = Beside("r1", 1, 0, "two points deducted", deducted=2)
    rules = RuledUnder(
        IN_2021, form=FormOfPlay.STABLEFORD, local_rules=(), scorings=(Scoring(FormOfPlay.STABLEFORD),)
    )
    acts = [*BOTH, Settlement("r1", SettledAs.INCLUDED), Returned()]
    found = outcome(*acts, under=rules, beside=(late,))
    (place,) = LeaderBoard(Terms(Scoring(FormOfPlay.STABLEFORD)), [found.card]).places
    assert place.score.total == 36 - 2
    spared = [*BOTH, Settlement("r1", SettledAs.DOES_NOT_CONCERN), Returned()]
    assert outcome(*spared, under=rules, beside=(late,)).card.deducted == 0


def test_a_penalty_of_disqualification_not_known_of_is_no_exception() -> None:
    """Rule 3.3b(3): the exception is for penalty strokes; doubt that was not raised with the Committee ends it too."""
    for why in ("penalty_doubtful", "penalty_is_disqualification", "other"):
        answers = {"hole_score_wrong-3": {"why_too_low": why}}
        found = outcome(*BOTH, Returned(), FoundOut(3, 5), answers=answers)
        assert found.out is not None
        assert found.out.citation == "3.3b(3)"


def test_two_holes_too_low_for_one_unknown_penalty_each() -> None:
    """Rule 3.3b(3) Exception: the Committee adds the strokes to the hole or holes concerned."""
    answers = {f"hole_score_wrong-{hole}": {"why_too_low": "penalty_not_known"} for hole in (3, 4)}
    found = outcome(*BOTH, Returned(), FoundOut(3, PAR[2] + 1), FoundOut(4, PAR[3] + 2), answers=answers)
    assert dict(found.added) == {("player", 3): 1, ("player", 4): 2}
    assert found.out is None


def test_nothing_is_added_after_the_close() -> None:
    """Rules 3.3b(3) Exception and 20.2e(2): strokes that were not known of are added before the close only."""
    rules = RuledUnder(IN_2025, local_rules=(), closed=True)
    answers = {"hole_score_wrong-3": {"why_too_low": "penalty_not_known"}}
    found = outcome(*BOTH, Returned(), FoundOut(3, 5), under=rules, answers=answers)
    assert (dict(found.added), found.out) == ({}, None)


def test_a_marker_alone_does_not_certify_for_the_player() -> None:
    """Rule 3.3b(2): both must; without a Local Rule the penalty is disqualification, alike in 2019 and 2023."""
    for day in (IN_2021, IN_2025):
        found = outcome(
            Certified(By.MARKER),
            Returned(),
            under=RuledUnder(day, local_rules=()),
            answers=NOT_THE_MARKER,
        )
        assert found.out is not None
        assert found.out.citation == "3.3b(2)"


def kept_ruling(**content: object) -> Kept:
    """Return a ruling of the log with what it holds."""
    body = {"kind": "ruling", "hole": 1, "player": "p", "content": content}
    return Kept("event", 1, "r1", "2021-06-01T10:00:00Z", json.dumps(body), "", "")


def test_a_ruling_that_takes_points_off_lies_beside_the_card() -> None:
    """Rule 21.1c of 2019: the log's ruling on a late start in Stableford brings its points to the card."""
    late = {"kind": "points_deducted", "who": "player", "citation": "5.3a", "strokes": 2}
    outcome_ = {"combined": {"penalties": [late]}, "count": {"total": 0}}
    (beside,) = beside_card([kept_ruling(headline="late", outcome=outcome_)])
    assert (beside.strokes, beside.deducted) == (0, 2)
    assert beside_card([kept_ruling(outcome=outcome_, instead={"penalty_strokes": 0})]) == ()
