"""Cards out of the log: what was entered counts, nothing is overwritten, and what the Rules add is worked out each time."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path

import pytest

from marram.competition.cards.acts import By
from marram.competition.results.card import OutKind
from marram.demo import EVENT
from marram.records.entry import Entry
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.schema import read_json
from marram.services.cases.case import Act, Case
from marram.services.log.log import About, ruling_entry
from marram.services.results.event_results import EventResults
from tests.services.scoring import NOON, PARS, Scoring, scoring

MOVED = {
    "cause_known": "yes",
    "area_of_ball": "general_area",
    "movement_accidental": "no",
    "handling_allowed": "no",
}
UNPLAYABLE = {
    "area_of_ball": "general_area",
    "spot_of_ball_known": "yes",
    "last_stroke_from_penalty_area": "no",
}


@pytest.fixture
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Scoring]:
    with scoring(tmp_path_factory.mktemp("cards")) as found:
        yield found


@pytest.fixture
def key(kept: Scoring) -> tuple[str, str]:
    competition = kept.competition
    return competition.people["Fenwin Dulsey"], competition.rounds[0].id


def test_a_correction_points_at_what_it_corrects(kept: Scoring, key: tuple[str, str]) -> None:
    """The figure seen is replaced by an entry that names it; the others of that entry stay; the same again adds nothing."""
    (first,) = kept.enter(key, By.PLAYER, {1: 4, 2: 3})
    (second,) = kept.enter(key, By.PLAYER, {1: 5, 2: 3})

    assert second.corrects == first.id
    assert second.content["figures"] == {"1": 5}
    assert kept.enter(key, By.PLAYER, {1: 5, 2: 3}) == []
    card = kept.card(key).kept
    assert [card.score(By.PLAYER, hole) for hole in (1, 2, 3)] == [5, 3, None]
    assert not card.at_once


def test_two_scorers_at_once_stand_side_by_side(kept: Scoring, key: tuple[str, str]) -> None:
    """Neither saw the other's figure: both stand until somebody who sees both says which is right."""
    kept.enter(key, By.MARKER, {7: 4}, seen=0)
    kept.enter(key, By.MARKER, {7: 5}, seen=0)
    (both,) = kept.card(key).kept.at_once

    assert (both.hole, [one.score for one in both.given]) == (7, [4, 5])
    kept.enter(key, By.MARKER, {7: 4})
    card = kept.card(key).kept
    assert not card.at_once
    assert card.score(By.MARKER, 7) == 4


def test_a_figure_taken_away_is_none(kept: Scoring, key: tuple[str, str]) -> None:
    """An empty field that held a figure is entered as such."""
    kept.enter(key, By.PLAYER, {1: 4})
    kept.enter(key, By.PLAYER, {1: None})

    assert kept.card(key).card.figures == {}


def test_nothing_changes_a_returned_card_but_its_withdrawal(kept: Scoring, key: tuple[str, str]) -> None:
    """A figure entered after the return is kept and does not count (Rule 3.3b(2)); a return entered wrongly is withdrawn."""
    kept.whole(key)
    kept.enter(key, By.PLAYER, {1: 9})
    card = kept.card(key)

    assert card.card.so_far("Fenwin Dulsey", 1) == PARS[0]
    assert len(card.kept.late) == 1
    assert card.kept.returned is not None
    kept.entry("withdrawn", key, {}, corrects=card.kept.returned.id)
    assert kept.card(key).kept.returned is None


def test_a_ruling_with_a_penalty_lies_beside_the_card(kept: Scoring, key: tuple[str, str]) -> None:
    """Until it is settled there is something to do; not included it asks why; withdrawn it is gone."""
    ruling = kept.add(_ruling(key, 14, "ball_moved_by_player", MOVED))
    kept.whole(key)
    card = kept.card(key)

    assert [(one.ruling, one.hole, one.strokes) for one in card.beside] == [(ruling.id, 14, 1)]
    assert any("Say whether its penalty is included" in one for one in card.outcome.to_do)
    kept.entry("card_settled", key, {"ruling": ruling.id, "how": "not_included"})
    card = kept.card(key)
    (finding,) = card.outcome.questions
    assert finding.name == "hole_score_wrong-14"
    facts = {"why_too_low": "penalty_not_known"}
    kept.entry("card_answered", key, {"finding": finding.name, "facts": facts})
    card = kept.card(key)
    assert card.outcome.settled
    assert card.outcome.added == {("Fenwin Dulsey", 14): 1}  # Rule 3.3b(3), Exception
    kept.entry("withdrawn", key, {}, corrects=ruling.id)
    assert kept.card(key).beside == ()


def test_results_follow_every_card(kept: Scoring, key: tuple[str, str]) -> None:
    """Read on from where one was or from the beginning: the same places; a disqualification and a withdrawal leave them."""
    competition = kept.competition
    players = list(competition.people.values())
    before = kept.now()
    assert before.results[0].board.places[0].place is None
    for strokes, player in enumerate(players[:4]):
        kept.whole((player, key[1]), (PARS[0] + strokes, *PARS[1:]))
        assert kept.now().results[0].board.places == _anew(kept)
    kept.whole((players[4], key[1]), marker_certified=False)
    asked = kept.card((players[4], key[1])).outcome.questions[0]
    facts = {"marker_at_fault": "no"}
    kept.entry("card_answered", (players[4], key[1]), {"finding": asked.name, "facts": facts})
    kept.entry("card_ended", (players[5], key[1]), {"how": "withdrawn"})
    places = kept.now().results[0].board.places

    assert places == _anew(kept)
    assert [(one.side, one.place) for one in places[:4]] == [
        (competition.labels[player], number) for number, player in enumerate(players[:4], start=1)
    ]
    out = {one.side: (one.out.kind, one.out.citation) for one in places if one.out}
    assert out[competition.labels[players[4]]] == (OutKind.DISQUALIFIED, "3.3b(2)")
    assert out[competition.labels[players[5]]] == (OutKind.WITHDRAWN, "")


def test_the_cut_falls_alike_card_by_card(tmp_path: Path) -> None:
    """Read on card by card, through the cut and after it, a board is the one that is worked out anew."""
    event = {**read_json(EVENT, "event"), "cut": {"after_round": 1, "places": 5, "ties": True}}
    with scoring(tmp_path, event) as kept:
        rounds, players = kept.competition.rounds, list(kept.competition.people.values())
        kept.now()
        for place, player in enumerate(players):
            kept.whole((player, rounds[0].id), (PARS[0] + place, *PARS[1:]))
            assert kept.now().results[0].board.places == _anew(kept)
        assert kept.now().results[0].board.through is not None
        kept.whole((players[4], rounds[1].id))
        assert kept.now().results[0].board.places == _anew(kept)
        returned = kept.card((players[4], rounds[0].id)).kept.returned
        assert returned
        kept.entry("withdrawn", (players[4], rounds[0].id), {}, corrects=returned.id)
        kept.enter((players[4], rounds[0].id), By.MARKER, {1: 30})
        assert kept.now().results[0].board.places == _anew(kept)


def _anew(kept: Scoring) -> object:
    return EventResults(kept.log, kept.event).now(kept.competition, {}).results[0].board.places


def test_what_is_not_known_of_a_penalty_lies_beside_too(kept: Scoring, key: tuple[str, str]) -> None:
    """Relief at a price was offered and nobody recorded what the player did; with the option taken, the strokes are known."""
    unknown = kept.add(_ruling(key, 3, "unplayable_ball", UNPLAYABLE))
    assert [(one.hole, one.strokes) for one in kept.card(key).beside] == [(3, 0)]
    kept.add(_ruling(key, 4, "unplayable_ball", UNPLAYABLE, option="lateral"))
    kept.add(_ruling(key, 5, "unplayable_ball", UNPLAYABLE, option="as_it_lies"))
    kept.add(replace(_ruling(key, 6, "ball_moved_by_player", MOVED), corrects=unknown.id))

    assert [(one.hole, one.strokes) for one in kept.card(key).beside] == [(4, 1), (6, 1)]


def _ruling(
    key: tuple[str, str],
    hole: int,
    incident: str,
    facts: Mapping[str, str],
    option: str | None = None,
    *,
    sides: Sides = Sides.INDIVIDUAL,
) -> Entry:
    case = Case(
        NOON.date(),
        (Act(incident, dict(facts), option=option),),
        FormOfPlay.STROKE_PLAY,
        sides,
        ("E-5", "E-8"),
        hole,
    )
    return ruling_entry(case, NOON, About(player=key[0], round=key[1]))
