"""Stories of two to four acts end in the total, the ball and the next stroke that the published Rules give.

The expectations in ``stories/*.json`` were written from the Rules before a story was run. ``stories/acts.json``
names the acts: an incident with its facts. A story::

    {
      "name": "what happened",
      "source": "a published ruling, or the Rules it was derived from",
      "edition": "2019" | "2023" | "both",
      "form": "stroke_play" | "match_play" | ...,
      "sides": "four_ball", "local_rules": ["E-1"],
                                                   optional
      "acts": ["unplayable>lateral", "wrong_place"],
                                                   acts in order; after ``>`` the option that was taken; with ``!``
                                                   another player's act; with ``=`` the strokes told from then
                                                   until the next act
      "between": {"intervening_event_1": "yes"},   what an official would answer if asked; told only when asked
      "strokes_before": 1, "next_stroke": 6,       optional
      "total": 3,                                  penalty strokes of the player; or by who gets them; or by edition;
                                                   or "disqualified", or "hole_lost" (in a match, by one penalty)
      "action": "play_as_it_lies"                  optional
    }
"""

import json
from dataclasses import replace
from typing import Any

import pytest

from marram.rules.penalty import PenaltyKind, Who
from marram.rules.result import NeedFacts
from marram.rules.ruling import Ruling
from marram.rules.story.story import ANOTHER_PLAYER, Happened, StoryResult, rule_story, total_strokes
from tests.published.cases import DAYS, HERE

FOLDER = HERE / "stories"
ACTS: dict[str, dict[str, Any]] = json.loads((FOLDER / "acts.json").read_text(encoding="utf-8"))
STORIES: list[dict[str, Any]] = [
    story
    for path in sorted(FOLDER.glob("*.json"))
    if path.name != "acts.json"
    for story in json.loads(path.read_text(encoding="utf-8"))
]
KEYS = {
    "name", "source", "edition", "form", "sides", "local_rules", "acts", "between", "strokes_before", "next_stroke", "total", "action",
}  # fmt: skip
RUNS = [
    pytest.param(story, edition, id=f"{story['name']}::{edition}")
    for story in STORIES
    for edition in (["2019", "2023"] if story["edition"] == "both" else [story["edition"]])
]
MOST_QUESTIONS = 2
"""More questions between acts than this no story here needs."""


def told(story: dict[str, Any]) -> list[Happened]:
    shared = {"sides": story["sides"]} if "sides" in story else {}
    acts = []
    for act in story["acts"]:
        name, _, strokes = act.partition("=")
        name, _, option = name.partition(">")
        by = ANOTHER_PLAYER if name.endswith("!") else None
        one = ACTS[name.rstrip("!")]
        facts = {**shared, **one["facts"]}
        acts.append(
            Happened(one["incident"], facts, option or None, by=by, strokes=int(strokes) if strokes else None)
        )
    return acts


def ruled(story: dict[str, Any], edition: str) -> tuple[StoryResult, list[str]]:
    """Return what the Rules say of a story, and the questions between its acts: each answered once it was asked."""
    answers: dict[str, str] = story.get("between", {})
    known: dict[str, str] = {}
    while True:
        result = rule_story(
            told(story),
            known,
            played_on=DAYS[edition],
            form_of_play=story["form"],
            local_rules=story.get("local_rules", []),
            strokes_before=story.get("strokes_before"),
        )
        asked = result.combined
        if not isinstance(asked, NeedFacts):
            return result, list(known)
        assert asked.fact in answers, f"asks {asked.fact}, which the acts or the story answer"
        known[asked.fact] = answers[asked.fact]


def totals(ruling: Ruling) -> dict[str, int | None]:
    people = dict.fromkeys([Who.PLAYER, *(one.who for one in ruling.penalties)])
    return {
        who.value: total_strokes(
            replace(ruling, penalties=tuple(o for o in ruling.penalties if o.who is who))
        )
        for who in people
    }


def expected(story: dict[str, Any], edition: str) -> dict[str, int]:
    total = story["total"]
    if isinstance(total, dict) and set(total) <= set(DAYS):
        total = total[edition]
    return total if isinstance(total, dict) else {"player": total}


@pytest.mark.parametrize(("story", "edition"), RUNS)
def test_story_as_published(story: dict[str, Any], edition: str) -> None:
    """The total of everybody, what to do with the ball and the next stroke are as the Rules have them."""
    result, asked = ruled(story, edition)
    ruling = result.combined
    assert isinstance(ruling, Ruling), result
    got = totals(ruling)
    if story["total"] == "disqualified":
        assert got["player"] is None
    elif story["total"] == "hole_lost":
        assert [one.kind for one in ruling.penalties if one.kind is not PenaltyKind.HOLES_DEDUCTED] == [
            PenaltyKind.GENERAL
        ]
    else:
        wanted = expected(story, edition)
        assert {who: total for who, total in got.items() if total or who in wanted} == wanted
    if "action" in story:
        assert ruling.action is not None
        assert ruling.action.value == story["action"]
    if "next_stroke" in story:
        assert result.next_stroke == story["next_stroke"]
    assert len(asked) <= MOST_QUESTIONS


def test_stories_are_many_and_whole() -> None:
    """There are at least 300 stories of two to four acts, each with its source, no key mistyped, none told twice."""
    assert len(STORIES) >= 300
    assert len({story["name"] for story in STORIES}) == len(STORIES)
    for story in STORIES:
        assert set(story) <= KEYS, story["name"]
        assert story["source"], story["name"]
        assert 2 <= len(story["acts"]) <= 4, story["name"]


def test_every_act_is_told() -> None:
    """No act stands in the list that no story tells."""
    assert {
        act.partition("=")[0].partition(">")[0].rstrip("!") for story in STORIES for act in story["acts"]
    } == set(ACTS)
