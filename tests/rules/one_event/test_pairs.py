"""Incidents that can be the same event do not contradict each other.

Two incidents can be the same event if both ask a *telling* fact: one that few incidents ask, because it is about what
happened and not about where the ball lay, what relief is measured from, or what follows a wrong place; or if they are
*alike*: one of them shares half of its questions with the other, and both a quarter of their provisions. Where such
a pair ends differently although all facts that both ask are answered alike, and whatever else is answered,
somebody must judge it: mended, or in ``judged.json`` as two events, because ….
"""

import json
from collections import Counter
from datetime import date
from itertools import combinations
from pathlib import Path

import pytest

from marram.rules.editions import EDITIONS, FIRST_DAY
from marram.rules.engine.graph import vertices
from marram.rules.facts.conditions import FormOfPlay
from marram.rules.incidents import INCIDENTS
from marram.rules.ruling import Ruling
from tests.rules.one_event.ways import CONDITIONS, contradictions, graph_under

TELLING = 8
"""A fact is telling if at most so many incidents ask it (3 % of them; own choice: the next common facts, such as
``played_since_put_down``, are about how far things have come)."""

ALIKE = (0.5, 0.25)
"""Which part of the questions of one, and of the provisions of both, two incidents share that are alike (own choice)."""

NAMES = [
    one.name for one in INCIDENTS if one.covered_from == FIRST_DAY and not one.name.startswith("teaching_")
]
JUDGED: dict[str, str] = json.loads((Path(__file__).parent / "judged.json").read_text(encoding="utf-8"))


def provisions(name: str, day: date, form: FormOfPlay) -> frozenset[str]:
    """Return the provisions, without their paragraphs, that an incident's rulings rest on."""
    return frozenset(
        citation.partition("(")[0]
        for one in vertices(graph_under(name, day, form)[0])
        if isinstance(one, Ruling)
        for citation in one.citations
    )


def pairs_to_compare(day: date, form: FormOfPlay) -> list[tuple[str, str]]:
    """Return the pairs of incidents that both ask a telling fact, or are alike."""
    asked = {name: graph_under(name, day, form)[1] - CONDITIONS for name in NAMES}
    times = Counter(fact for facts in asked.values() for fact in facts)
    cited = {name: provisions(name, day, form) for name in NAMES}

    def alike(first: str, second: str) -> bool:
        questions = len(asked[first] & asked[second]) / max(1, min(len(asked[first]), len(asked[second])))
        both = len(cited[first] & cited[second]) / max(1, len(cited[first] | cited[second]))
        return questions >= ALIKE[0] and both >= ALIKE[1]

    return [
        (first, second)
        for first, second in combinations(NAMES, 2)
        if any(times[fact] <= TELLING for fact in asked[first] & asked[second]) or alike(first, second)
    ]


@pytest.mark.parametrize("form", [FormOfPlay.STROKE_PLAY, FormOfPlay.MATCH_PLAY], ids=lambda one: one.value)
@pytest.mark.parametrize("day", EDITIONS)
def test_incidents_that_can_be_one_event_can_agree(day: date, form: FormOfPlay) -> None:
    """With equal answers to all shared facts, both can end in the same ruling; other pairs are judged by name."""
    compared = pairs_to_compare(day, form)
    unjudged = {}
    for first, second in compared:
        if f"{first} | {second}" in JUDGED:
            continue
        (here, asked), (there, also_asked) = graph_under(first, day, form), graph_under(second, day, form)
        found = next(contradictions(here, there, asked & also_asked, form, equal=False), None)
        if found is not None:
            unjudged[f"{first} | {second}"] = str(found)

    assert len(compared) > 200
    assert not unjudged, "\n\n".join(f"{pair}\n{found}" for pair, found in unjudged.items())


def test_every_judged_pair_is_of_incidents_that_exist() -> None:
    """No line of the judged pairs outlives its incidents, and each says why they are two events."""
    for pair, because in JUDGED.items():
        first, second = pair.split(" | ")
        assert {first, second} <= set(NAMES)
        assert because
