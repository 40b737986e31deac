"""Rule 11: replay or play as it lies, in both editions."""

from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

import marram
from marram.rules.facts.deflection import Deflector, PuttHit, WouldHaveStopped
from marram.rules.ruling import Action, Ruling, Stroke, WhichBall

DAYS = {"2019": date(2022, 12, 31), "2023": date(2023, 1, 1)}
REPLAYED = {
    # Rules of Golf 2019, Rule 11.1b Exception 2: any person, animal or movable obstruction on the green,
    # except ball-marker, ball at rest, flagstick and attendant.
    "2019": {
        PuttHit.PLAYER,
        PuttHit.CLUB_USED,
        PuttHit.INSECT,
        PuttHit.OTHER_PERSON,
        PuttHit.ANIMAL,
        PuttHit.BALL_IN_MOTION,
        PuttHit.OTHER_MOVABLE_OBSTRUCTION,
    },
    # Rules of Golf 2023, Rule 11.1b(2): the player, the club used and insects no longer.
    "2023": {
        PuttHit.OTHER_PERSON,
        PuttHit.ANIMAL,
        PuttHit.BALL_IN_MOTION,
        PuttHit.OTHER_MOVABLE_OBSTRUCTION,
    },
}


def decide(incident: str, facts: dict[str, Any], day: date, form: str = "stroke_play") -> Ruling:
    result = marram.rule(incident, facts, played_on=day, form_of_play=form, local_rules=[])
    assert isinstance(result, Ruling), result
    return result


@pytest.mark.parametrize("edition", DAYS)
@pytest.mark.parametrize("hit", PuttHit)
def test_a_putt_is_replayed_after_exactly_the_hits_the_edition_names(edition: str, hit: PuttHit) -> None:
    """A stroke from the green is replayed after the hits listed in the edition, and after no other."""
    facts = {"putt_hit": hit, "hit_on_green_certain": True, "both_on_green": True}
    result = decide("putt_hit_something", facts, DAYS[edition])

    assert (result.action is Action.REPLAY) == (hit in REPLAYED[edition])
    assert (result.stroke is Stroke.DOES_NOT_COUNT) == (hit in REPLAYED[edition])


@pytest.mark.parametrize(("edition", "citation"), [("2019", "14.7a"), ("2023", "11.1b(2)")])
def test_failing_to_replay_is_a_wrong_place_only_in_2019(edition: str, citation: str) -> None:
    """Not replaying was playing from a wrong place in 2019 and a breach of its own since 2023.

    Source: Clarification 11.1b/1 of each edition.
    """
    facts = {"putt_hit": "animal", "hit_on_green_certain": "yes"}
    result = decide("putt_hit_something", facts, DAYS[edition])

    assert [one.otherwise.citation for one in result.corrections if one.otherwise] == [citation]


@given(
    st.sampled_from([Deflector.OWN_SIDE, Deflector.OTHER_PLAYER, Deflector.OUTSIDER]),
    st.sampled_from(list(WouldHaveStopped)),
    st.booleans(),
    st.sampled_from(list(DAYS.values())),
)
def test_a_deliberately_stopped_ball_is_never_played_as_it_lies(
    by: Deflector, where: WouldHaveStopped, green: bool, day: date
) -> None:
    """Whoever stopped it and wherever: the ball is dropped, placed or replayed, original or another (11.2c)."""
    facts = {"deflector": by, "would_have_stopped": where, "played_from_green": green}
    result = decide("deliberately_deflected", facts, day)

    assert result.action in (Action.REPLAY, Action.PLACE, Action.TAKE_RELIEF)
    assert (result.action is Action.REPLAY) == green
    assert bool(result.penalties) == (by is not Deflector.OUTSIDER)
    if where is not WouldHaveStopped.OUT_OF_BOUNDS or green:
        assert result.which_ball is WhichBall.ORIGINAL_OR_ANOTHER


@pytest.mark.parametrize("incident", ["deliberately_deflected", "hopeless_ball_stopped"])
@pytest.mark.parametrize("form", ["stableford", "maximum_score", "par_bogey"])
def test_a_ball_left_in_the_way_stops_nobody_s_ball_on_purpose(incident: str, form: str) -> None:
    """Rule 11.2a: it does not apply to a ball at rest or a ball-marker left in place, so that nobody bears a penalty."""
    facts = {"could_still_score": "yes", "deflector": "ball_or_marker_left"}
    wanted = facts if incident == "hopeless_ball_stopped" else {"deflector": "ball_or_marker_left"}
    ruling = decide(incident, wanted, DAYS["2023"], form)
    assert (ruling.penalties, ruling.action, ruling.stroke) == ((), Action.PLAY_AS_IT_LIES, Stroke.COUNTS)
