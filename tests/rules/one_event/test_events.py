"""An event told in any of the ways an official may come in by ends in one ruling.

``events.json`` holds events, each with the ways into it and the facts that tell it in each::

    {"event": "what happened", "source": "...", "edition": "both" | "2019" | "2023", "local_rules": ["E-12"]?,
     "forms": ["stroke_play"]?, "sides": "three_ball"?,
     "ways": [{"incident": "ball_dropped", "facts": {"way_of_dropping": "right"}, "by": "opponent"?}, ...]}

A way told ``by`` the opponent has the parts changed: its player is the opponent of the others' player.

Facts that are left open are compared over all their answers; a hand-over is followed. What is compared are the penalties,
with whose they are, and what happens to the ball.
"""

import json
from itertools import combinations
from pathlib import Path
from typing import Any

import pytest

from marram.rules.editions import EDITION_2019, EDITION_2023
from marram.rules.engine.graph import GraphNode, Vertex, vertices
from marram.rules.facts.conditions import FormOfPlay, Sides
from tests.rules.one_event.ways import contradictions, told

EVENTS: list[dict[str, Any]] = json.loads((Path(__file__).parent / "events.json").read_text(encoding="utf-8"))
DAYS = {"2019": (EDITION_2019,), "2023": (EDITION_2023,), "both": (EDITION_2019, EDITION_2023)}


FORMS = (FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY)
COMPARED = [
    pytest.param(event, form, id=f"{event['event']}-{form.value}")
    for event in EVENTS
    for form in FORMS
    if form.value in event.get("forms", [form.value])
]


@pytest.mark.parametrize(("event", "form"), COMPARED)
def test_every_way_into_an_event_ends_alike(event: dict[str, Any], form: FormOfPlay) -> None:
    """Whatever is answered to the questions that two ways share, both end in the same penalties and the same ball."""
    adopted = tuple(event.get("local_rules", ()))
    sides = Sides(event["sides"]) if "sides" in event else None
    for day in DAYS[event["edition"]]:
        left = [
            (way, told(way["incident"], tuple(way["facts"].items()), day, form, adopted, sides=sides))
            for way in event["ways"]
        ]
        for (way, first), (other, second) in combinations(left, 2):
            shared = _asked(first) & _asked(second)
            by_other = "by" in way, "by" in other
            found = list(contradictions(first, second, shared, form, equal=True, by_other=by_other))
            assert not found, f"{day} {way['incident']} / {other['incident']}\n" + "\n".join(map(str, found))


def _asked(root: Vertex) -> frozenset[Any]:
    return frozenset(one.fact for one in vertices(root) if isinstance(one, GraphNode))


@pytest.mark.parametrize("event", EVENTS, ids=lambda one: one["event"])
def test_an_event_is_told_in_two_ways_at_least(event: dict[str, Any]) -> None:
    """Each has a source and differing ways, so that something is compared."""
    assert event["source"]
    ways = [json.dumps(way, sort_keys=True) for way in event["ways"]]
    assert len(set(ways)) == len(ways) > 1
