"""Laws over all leaves: what must hold of every outcome the Rules as encoded can end in."""

from datetime import date

import pytest

from marram.rules.editions import EDITION_2019
from marram.rules.engine.request import book
from marram.rules.engine.tree import leaves_on
from marram.rules.facts.conditions import FormOfPlay, form_of_play
from marram.rules.penalty import PenaltyKind
from marram.rules.relief_option import ReliefKind
from marram.rules.ruling import Action, HandOver, Judgement, NotCovered, Ruling, WhichBall
from marram.words.english import catalogue
from tests.rules.pinned import EVERY


def rulings(name: str, day: date) -> list[Ruling]:
    return [leaf for leaf in leaves_on(book(name).root, day) if isinstance(leaf, Ruling)]


NOT_DECIDED = {
    ("dropped_with_disability", EDITION_2019): "the Modified Rules of 2019 were not found in print"
}
"""Incidents that an edition answers with a refusal only, and why."""


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_no_incident_is_only_refused(name: str, day: date) -> None:
    """Some path of every incident is decided in every edition, and a refusal always says where to look."""
    found = list(leaves_on(book(name).root, day))

    decided = any(isinstance(leaf, Ruling | Judgement) for leaf in found)
    assert decided is ((name, day) not in NOT_DECIDED)
    assert all(leaf.citation for leaf in found if isinstance(leaf, NotCovered))


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_every_ruling_cites_a_provision_that_has_words(name: str, day: date) -> None:
    """Each citation of a ruling, a penalty, an option or a reason has a statement in the catalogue."""
    said = catalogue("PROVISIONS")
    for ruling in rulings(name, day):
        cited = {*ruling.citations, *(one.citation for one in ruling.penalties)}
        cited |= {one.citation for one in ruling.relief} | {one.citation for one in ruling.reasons}
        cited |= {one.otherwise.citation for one in ruling.corrections if one.otherwise}

        assert ruling.citations, ruling
        if missing := sorted(cited - said.keys()):
            pytest.fail(
                f"{name} on {day} cites what has no statement: {', '.join(missing)}. "
                "Enter it in PROVISIONS of words/english/rule_NN.py, of a Local Rule local_X.py.",
                pytrace=False,
            )


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_every_note_has_words(name: str, day: date) -> None:
    """Each note, caution, correction and criterion has a sentence in the catalogue."""
    said = catalogue("NOTES")
    for leaf in leaves_on(book(name).root, day):
        if isinstance(leaf, Ruling):
            keys = {*leaf.notes, *leaf.cautions, *(one.what for one in leaf.corrections)}
        elif isinstance(leaf, Judgement):
            keys = set(leaf.criteria)
        elif isinstance(leaf, HandOver):
            keys = set()
        else:
            keys = {leaf.why}

        if missing := sorted(keys - said.keys()):
            pytest.fail(
                f"{name} on {day} says what has no words: {', '.join(missing)}. "
                "Enter it in NOTES of words/english/rule_NN.py, of a Local Rule local_X.py.",
                pytrace=False,
            )


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_every_ruling_says_what_happens_next(name: str, day: date) -> None:
    """Each ruling names the next action."""
    assert all(ruling.action is not None for ruling in rulings(name, day))


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_relief_options_stand_where_the_action_says_so(name: str, day: date) -> None:
    """A ruling that tells the player to take relief lists the options."""
    for ruling in rulings(name, day):
        if ruling.action in (Action.TAKE_RELIEF, Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF):
            assert ruling.relief, ruling


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_free_relief_carries_no_stroke(name: str, day: date) -> None:
    """An option called free costs nothing; stroke and distance always costs its stroke."""
    for ruling in rulings(name, day):
        for option in ruling.relief:
            if option.kind in (ReliefKind.FREE, ReliefKind.NEAREST_SPOT, ReliefKind.REPLAY):
                assert option.penalty == 0, option
            if option.kind in (
                ReliefKind.STROKE_AND_DISTANCE,
                ReliefKind.LATERAL,
                ReliefKind.BACK_ON_THE_LINE,
            ):
                assert option.penalty >= 1, option


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_a_disqualified_player_does_not_play_on(name: str, day: date) -> None:
    """Disqualification of the player never stands beside an instruction to take relief or replace the ball."""
    for ruling in rulings(name, day):
        if any(
            one.kind is PenaltyKind.DISQUALIFICATION and one.who.value in ("player", "side")
            for one in ruling.penalties
        ):
            assert ruling.action in (Action.HOLE_OVER, Action.PLAY_ON), ruling


MAY_BE_SUBSTITUTED = ("14.2a Exception", "5.7d", "4.2c(2)")
"""Provisions that let another ball be used when a ball is replaced."""


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_a_replaced_ball_is_not_substituted(name: str, day: date) -> None:
    """Rule 14.2a: the original ball is replaced, except where a provision says that another may be."""
    for ruling in rulings(name, day):
        if ruling.action is Action.REPLACE:
            allowed = any(one.startswith(MAY_BE_SUBSTITUTED) for one in ruling.citations)
            assert ruling.which_ball is WhichBall.ORIGINAL or allowed, ruling


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_options_name_size_and_limits(name: str, day: date) -> None:
    """Only what is not measured in club-lengths has no size: a zone, a ball that lies, a spot the notice sizes."""
    unmeasured = {
        ReliefKind.DROPPING_ZONE, ReliefKind.PROVISIONAL, ReliefKind.NEAREST_SPOT, ReliefKind.PREFERRED_LIE,
        ReliefKind.REPLAY, ReliefKind.STROKE_AND_DISTANCE,
    }  # fmt: skip
    for ruling in rulings(name, day):
        for option in ruling.relief:
            assert option.club_lengths is not None or option.kind in unmeasured, option
            assert option.limits or option.kind is ReliefKind.PROVISIONAL, option


ONLY_IN: dict[PenaltyKind, set[FormOfPlay]] = {
    PenaltyKind.LOSS_OF_HOLE: {FormOfPlay.MATCH_PLAY},
    PenaltyKind.HOLES_DEDUCTED: {FormOfPlay.MATCH_PLAY, FormOfPlay.PAR_BOGEY},
    PenaltyKind.POINTS_DEDUCTED: {FormOfPlay.STABLEFORD},
}
"""Levels of penalty that exist in some forms of play only (Rules 1.3c(2), 4.1b, 21.1c and 21.3c of 2019)."""


@pytest.mark.parametrize(("name", "day"), EVERY)
def test_a_level_of_penalty_fits_the_form_of_play(name: str, day: date) -> None:
    """Holes are lost or deducted only where holes are won, points only where points are counted."""
    for ruling in rulings(name, day):
        asked = [one.answers for one in ruling.reasons if one.fact == form_of_play.name]
        for one in ruling.penalties:
            if one.kind in ONLY_IN:
                assert asked, ruling
                assert set(asked[0]) <= ONLY_IN[one.kind], ruling
