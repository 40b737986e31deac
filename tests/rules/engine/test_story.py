"""A story keeps count: of strokes, of which ball an act was about, and of what its acts show by themselves.

Sources: Rules of Golf 2019 and 2023, Rules 1.3c(4), 17.1d, 18.1 and 18.3c; the acts are those of
``tests/published/stories``.
"""

from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from marram.errors import InputError
from marram.rules.facts.several import StoryBall, Taken, taken_as
from marram.rules.incidents import INCIDENTS
from marram.rules.penalty import OWN, PenaltyKind, Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Action, Ruling
from marram.rules.story import kinds_of_acts
from marram.rules.story.story import Happened, StoryResult, rule_story
from marram.words.story import story_sheet
from tests.published.test_stories import ACTS

DAYS = {"2019": date(2021, 6, 1), "2023": date(2024, 6, 1)}
FREE = ("holed", "put_back_right", "dropped_right", "in_bounds", "resumed_in_time")
"""Acts without a penalty and without relief to choose."""


def act(name: str, option: str | None = None, **more: Any) -> Happened:
    return Happened(ACTS[name]["incident"], ACTS[name]["facts"], option, **more)


def told(*acts: Happened, form: str = "stroke_play", edition: str = "2023", **more: Any) -> StoryResult:
    between = more.pop("between", {})
    return rule_story(acts, between, played_on=DAYS[edition], form_of_play=form, local_rules=[], **more)


def settled(*acts: Happened, answer: int, form: str, edition: str) -> StoryResult:
    """Answer whatever is asked, always with the same one of the answers offered."""
    known: dict[str, Any] = {}
    while True:
        result = told(*acts, form=form, edition=edition, between=known)
        if not isinstance(result.combined, NeedFacts):
            return result
        stakes = result.combined.stakes
        known[result.combined.fact] = stakes[answer % len(stakes)].answers[0]


@given(
    st.lists(st.sampled_from(sorted(ACTS)), min_size=2, max_size=4),
    st.integers(0, 2),
    st.sampled_from(["stroke_play", "match_play", "stableford"]),
    st.sampled_from(sorted(DAYS)),
)
@settings(max_examples=150, deadline=None)
def test_no_story_costs_more_than_its_acts(names: list[str], answer: int, form: str, edition: str) -> None:
    """Whatever is answered, the total is at most what the acts cost one by one, with the dearest relief of each."""
    result = settled(*(act(name) for name in names), answer=answer, form=form, edition=edition)
    if result.count is None or result.count.penalty_strokes is None:
        return
    most = 0
    for part in result.parts:
        assert isinstance(part, Ruling)
        most += sum(
            one.strokes for one in part.penalties if one.kind in (PenaltyKind.STROKES, PenaltyKind.GENERAL)
        )
        most += max((option.penalty for option in part.relief), default=0)
    provisional = any(name.startswith(("prov", "second_prov")) for name in names)
    late = "late_ball_played" in names or "out_ball_played" in names
    assert result.count.penalty_strokes <= most + provisional + late


@given(st.lists(st.sampled_from(sorted(ACTS)), min_size=1, max_size=3), st.integers(0, 2))
@settings(max_examples=100, deadline=None)
def test_a_match_is_lost_on_a_hole_once(names: list[str], answer: int) -> None:
    """However many acts lose the hole, it is lost once, and no stroke stands beside it."""
    result = settled(
        *(act(name) for name in names), act("wrong_place"), answer=answer, form="match_play", edition="2023"
    )
    if not isinstance(result.combined, Ruling):
        return
    own = [one for one in result.combined.penalties if one.who in OWN]
    lost = [one for one in own if one.kind is PenaltyKind.GENERAL and not one.citation.startswith("5.5")]
    if [one.who for one in lost[:1]] == [Who.ONE_PARTNER]:
        lost = lost[1:] or lost  # one partner was out of the hole before the side lost it (Rule 23.9a)
    assert len(lost) <= 1
    if lost:
        assert not [one for one in own if one.kind is PenaltyKind.STROKES]
        assert result.count is not None
        assert result.count.penalty_strokes is None


def test_one_partner_loses_a_hole_once() -> None:
    """In Four-Ball a partner out of the hole loses nothing more by a later breach alone; both may still lose it by one."""

    def four_ball(whom_else: str) -> Happened:
        given = {**ACTS["sand_tested"]["facts"], "sides": "four_ball", "whom_else": whom_else}
        return Happened(ACTS["sand_tested"]["incident"], given)

    alone = told(four_ball("neither"), four_ball("neither"), form="match_play").combined
    both = told(four_ball("neither"), four_ball("helped_partner"), form="match_play").combined
    assert isinstance(alone, Ruling)
    assert isinstance(both, Ruling)
    assert [one.who for one in alone.penalties] == [Who.ONE_PARTNER]
    assert [one.who for one in both.penalties] == [Who.ONE_PARTNER, Who.EACH_PARTNER]


def test_names_of_incidents_that_show_something_exist() -> None:
    """What an act shows is read off its incident; a slip in a name would make it show nothing."""
    names = {one.name for one in INCIDENTS}
    shown = [getattr(kinds_of_acts, key) for key in vars(kinds_of_acts) if key.isupper()]
    told_of = {name for one in shown if isinstance(one, frozenset) for name in one}
    assert told_of
    assert told_of <= names


def test_a_ball_of_another_player_keeps_its_name() -> None:
    """What is to be done with another player's ball is said under its name, and leaves the player's own alone."""
    result = told(act("hit_other_ball"), act("dog_moved", ball="other_players"))
    assert isinstance(result.combined, Ruling)
    assert result.combined.action is Action.PLAY_AS_IT_LIES
    assert [(one.ball, one.act, one.action) for one in result.other_balls] == [
        (StoryBall.OTHER_PLAYERS, 2, Action.REPLACE)
    ]
    words = story_sheet(result, form_of_play="stroke_play")
    assert words is not None
    assert any(step.startswith("Of the other player's ball (incident 2)") for step in words.steps)


def test_a_provisional_ball_is_named_with_its_act() -> None:
    """Told with the act, it is not asked which ball the act was about."""
    result = told(act("provisional"), act("moved", ball="provisional"), act("prov_original_found"))
    assert result.count is not None
    assert result.count.penalty_strokes == 0


def test_strokes_told_replace_those_an_act_shows() -> None:
    """Two strokes were made after the drop: both count, and the next one is found from them."""
    result = told(act("red_found", "lateral", strokes=2), act("moved"), strokes_before=1)
    assert result.count is not None
    assert (result.count.made, result.count.penalty_strokes, result.next_stroke) == (2, 2, 6)


def test_relief_that_must_be_taken_is_foretold() -> None:
    """A ball out of bounds: nothing is spent yet, one stroke is to come, and the next stroke is the third."""
    result = told(act("advice_caddie"), act("out"), strokes_before=1)
    assert result.count is not None
    assert (result.count.penalty_strokes, result.count.relief_to_come, result.next_stroke) == (0, 1, 3)
    assert result.count.total == 1


def test_stroke_and_distance_may_be_taken_at_any_time() -> None:
    """A player may go back whatever the ruling offers (Rule 18.1), but not once the hole is completed."""
    result = told(act("moved", "stroke_and_distance"))
    assert result.count is not None
    assert result.count.penalty_strokes == 2
    with pytest.raises(InputError, match="option_taken_1: no ruling offers stroke_and_distance"):
        told(act("holed", "stroke_and_distance"))


def test_every_option_has_its_own_name() -> None:
    """No two options of one ruling are taken by the same word, so that each can be told."""
    for name in (
        "unplayable_bunker",
        "unplayable_after_water",
        "water_then_lost",
        "water_again",
        "red_found",
    ):
        (part,) = told(act(name)).parts
        assert isinstance(part, Ruling)
        taken = [taken_as(option) for option in part.relief]
        assert len(set(taken)) == len(taken), name
        assert Taken.NOTHING_YET not in taken


@pytest.mark.parametrize("number", [-1, 1000, True, 1.5, "2"])
def test_numbers_of_strokes_that_cannot_be_are_refused(number: Any) -> None:
    """Each is named with what to give, before anything is ruled."""
    with pytest.raises(InputError, match="give a whole number of strokes from 0 to 999") as found:
        told(act("moved", strokes=number), act("holed"), strokes_before=number)
    assert len(found.value.faults) == 2


@pytest.mark.parametrize("name", FREE)
def test_an_act_without_penalty_adds_nothing(name: str) -> None:
    """After a stroke from a wrong place it leaves the total as it was."""
    result = told(act("wrong_place"), act(name), between={"ball_settled_1": "yes"})
    assert result.count is not None
    assert result.count.penalty_strokes == 2


def test_rule_1_3c4_is_cited_only_where_several_acts_cost_something() -> None:
    """Two acts without a penalty rest on their own Rules."""
    free = told(act("in_bounds"), act("holed")).combined
    both = told(act("wrong_place"), act("moved")).combined
    assert isinstance(free, Ruling)
    assert isinstance(both, Ruling)
    assert "1.3c(4)" not in free.citations
    assert both.citations[0] == "1.3c(4)"
