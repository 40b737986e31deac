"""``marram incidents``, ``facts`` and ``graph`` list what there is, as text and as JSON."""

import json

from marram.rules.incidents import INCIDENTS
from tests.cli.running import marram


def test_every_incident_is_listed() -> None:
    """The list has every incident by name and title."""
    text = marram("incidents").out.replace("\n    ", " ")
    assert all(one.name in text for one in INCIDENTS)
    rows = json.loads(marram("incidents", "--json").out)["incidents"]
    assert [row["name"] for row in rows] == [one.name for one in INCIDENTS]


def test_incidents_are_found_by_words() -> None:
    """All words must stand in the title, name or keywords."""
    rows = json.loads(marram("incidents", "moved", "player", "--json").out)["incidents"]
    assert "ball_moved_by_player" in [row["name"] for row in rows]
    assert len(rows) < len(INCIDENTS)


def test_facts_of_an_incident_are_those_that_can_matter() -> None:
    """The list for an incident is shorter than the vocabulary and holds the area of the ball."""
    every = json.loads(marram("facts", "--json").out)["facts"]
    some = json.loads(marram("facts", "ball_moved_by_player", "--json").out)["facts"]
    assert 0 < len(some) < len(every)
    assert "area_of_ball" in {row["fact"] for row in some}


def test_a_fact_is_told_by_its_name() -> None:
    """A question that the interview asks by name is told with its answers, one between two incidents too."""
    (row,) = json.loads(marram("facts", "earlier_mistake_1", "--json").out)["facts"]
    assert {one["token"] for one in row["answers"]} == {"corrected", "same_ball", "something_else"}
    incident_first = json.loads(marram("facts", "ball_in_hole", "--json").out)["facts"]
    assert len(incident_first) > 1


def test_the_graph_is_a_closed_document() -> None:
    """Each branch leads to a vertex of the document, and every vertex but the root is led to."""
    document = json.loads(marram("graph", "ball_moved_by_player", "--edition", "2023").out)
    size = len(document["vertices"])
    targets = {branch["to"] for vertex in document["vertices"] for branch in vertex.get("branches", ())}
    assert document["marram"] == 1
    assert targets == set(range(1, size))


def test_local_rules_are_listed_with_what_they_change() -> None:
    """Every code of the register stands in the list; a single one comes with what to know."""
    from marram.rules.local_rules.register import REGISTER

    rows = json.loads(marram("local-rules", "--json").out)["local_rules"]
    assert [row["code"] for row in rows] == list(REGISTER)
    assert "stroke and distance" in marram("local-rules", "e-5").out
    refused = marram("local-rules", "Z-9")
    assert refused.code == 2
    assert "'Z-9'" in refused.err
