"""Rules 6.3 to 6.5: what substitution, wrong balls and strokes out of turn cost, in every form of play."""

from datetime import date

import pytest

import marram
from marram.rules.editions import EDITION_2019, EDITION_2023, EDITIONS
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.facts.substitution import WhySubstituted
from marram.rules.penalty import PenaltyKind, Who
from marram.rules.ruling import Action, Ruling, Stroke, WhichBall

STROKE_PLAY = [form for form in FormOfPlay if form is not FormOfPlay.MATCH_PLAY]


@pytest.mark.parametrize("form", FormOfPlay)
@pytest.mark.parametrize("why", [WhySubstituted.REPLACING, WhySubstituted.NO_PROCEDURE])
def test_a_stroke_at_an_incorrectly_substituted_ball_became_cheaper_in_2023(
    form: FormOfPlay, why: WhySubstituted
) -> None:
    """Rule 6.3b(3): the general penalty in 2019, one stroke since 2023, whatever the form of play."""
    facts = {
        "why_substituted": why,
        "original_ball_unavailable": False,
        "played_since_put_down": True,
        "substituted_in_wrong_place": False,
    }
    kinds = []
    for day in (EDITION_2019, EDITION_2023):
        result = marram.rule("another_ball_put_in_play", facts, played_on=day, form_of_play=form)
        assert isinstance(result, Ruling)
        kinds.append([(one.kind, one.citation) for one in result.penalties])

    assert kinds == [[(PenaltyKind.GENERAL, "6.3b(3)")], [(PenaltyKind.STROKES, "6.3b(3)")]]


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("form", STROKE_PLAY)
def test_a_stroke_at_a_wrong_ball_never_counts_in_stroke_play(day: date, form: FormOfPlay) -> None:
    """Rule 6.3c(1): two strokes are added, the strokes with the wrong ball are not."""
    for corrected in (True, False):
        facts = {
            "ball_struck": "wrong",
            "wrong_ball_moving_in_water": False,
            "wrong_ball_corrected": corrected,
            "next_hole_started": False,
        }
        result = marram.rule("wrong_ball_played", facts, played_on=day, form_of_play=form)

        assert isinstance(result, Ruling)
        assert [one.strokes for one in result.penalties] == [2]
        assert result.stroke is Stroke.DOES_NOT_COUNT


@pytest.mark.parametrize("day", EDITIONS)
def test_the_owner_of_a_ball_played_by_another_is_never_penalised(day: date) -> None:
    """Rule 6.3c(2): whatever is known, the owner gets no penalty, and may use another ball."""
    found = list(leaves_on(book("ball_played_by_another_player").root, day))

    assert all(isinstance(leaf, Ruling) and not leaf.penalties for leaf in found)
    assert all(isinstance(leaf, Ruling) and leaf.which_ball is not WhichBall.ORIGINAL for leaf in found)


@pytest.mark.parametrize("day", EDITIONS)
def test_out_of_turn_only_an_agreement_for_advantage_is_penalised(day: date) -> None:
    """Rule 6.4: in match play never, in stroke play only those who agreed in order to give an advantage."""
    for leaf in leaves_on(book("played_out_of_turn").root, day):
        assert isinstance(leaf, Ruling)
        answers = {reason.fact: reason.answers for reason in leaf.reasons}
        if answers.get("agreed_for_advantage") == (True,):
            assert [(one.kind, one.who) for one in leaf.penalties] == [(PenaltyKind.GENERAL, Who.EACH_PLAYER)]
        else:
            assert not leaf.penalties


@pytest.mark.parametrize("day", EDITIONS)
def test_ready_golf_always_comes_with_its_caution(day: date) -> None:
    """Rule 6.4b(2): out of turn only where nobody is endangered, distracted or interfered with."""
    for form in STROKE_PLAY:
        result = marram.rule(
            "played_out_of_turn", {"agreed_for_advantage": False}, played_on=day, form_of_play=form
        )

        assert isinstance(result, Ruling)
        assert result.cautions == ("ready_golf_only_when_safe",)


@pytest.mark.parametrize("day", EDITIONS)
@pytest.mark.parametrize("form", FormOfPlay)
def test_a_concession_ends_a_hole_in_match_play_only(day: date, form: FormOfPlay) -> None:
    """Rule 6.5: in stroke play a conceded putt ends nothing."""
    result = marram.rule(
        "hole_completed",
        {"how_hole_ended": "conceded", "next_hole_started": "no"},
        played_on=day,
        form_of_play=form,
    )

    assert isinstance(result, Ruling)
    assert (result.action is Action.HOLE_OVER) == (form is FormOfPlay.MATCH_PLAY)
