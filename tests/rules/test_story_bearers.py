"""A story that names who bears one breach: partners' forms of play are then known, and no other breach is taken for that one.

Rules of Golf 2019 and 2023, Rule 23.9a: a breach is the player's alone unless it helped the partner or hindered an opponent.
"""

import pytest

from marram.rules.penalty import Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.rules.story.story import Happened, StoryResult, rule_story

MOVED = Happened(
    "ball_moved_by_player",
    {
        "cause_known": "yes",
        "movement_accidental": "yes",
        "moved_while": "something_else",
        "area_of_ball": "general_area",
    },
)
SAND = Happened("sand_touched", {"ball_and_bunker": "lies_in_it", "sand_touch": "testing"})
HELPED = Happened("four_ball_penalty", {"side_breach": "general", "whom_else": "helped_partner"})


def ruled(*acts: Happened, edition: int) -> StoryResult:
    return rule_story(acts, edition=edition, form_of_play="stroke_play", local_rules=[])


@pytest.mark.parametrize("edition", [2019, 2023])
def test_an_act_of_four_ball_tells_who_plays_together(edition: int) -> None:
    """Without sides told, the breach that the act of Four-Ball speaks of is borne by both partners, once."""
    result = ruled(SAND, HELPED, edition=edition)
    assert isinstance(result.combined, Ruling)
    assert [(one.who, one.strokes) for one in result.combined.penalties] == [(Who.EACH_PARTNER, 2)]


@pytest.mark.parametrize("edition", [2019, 2023])
def test_who_bears_one_breach_is_not_said_of_another(edition: int) -> None:
    """That one touching of the sand helped the partner says nothing of an earlier one: who bears that is asked."""
    result = ruled(SAND, SAND, HELPED, edition=edition)
    first, second, _ = result.parts
    assert isinstance(first, NeedFacts)
    assert first.fact == "whom_else"
    assert isinstance(second, Ruling)


@pytest.mark.parametrize("edition", [2019, 2023])
def test_each_breach_keeps_its_bearer(edition: int) -> None:
    """The ball moved is the player's stroke alone, the sand tested both partners' two."""
    alone = Happened(MOVED.incident, {**MOVED.facts, "whom_else": "neither"})
    result = rule_story(
        (alone, SAND, HELPED), {"intervening_event_1": "yes", "acts_related_1": "no", "ball_settled_1": "yes"},
        edition=edition, form_of_play="stroke_play", local_rules=[],
    )  # fmt: skip
    assert isinstance(result.combined, Ruling), result.combined
    assert sorted((one.who.value, one.strokes) for one in result.combined.penalties) == [
        ("each_partner", 2),
        ("one_partner", 1),
    ]
