"""The register says in which editions each Local Rule stands; the Rules as encoded agree."""

from functools import cache

import pytest

from marram.rules.editions import EDITIONS
from marram.rules.engine.export import graph_of
from marram.rules.engine.graph import GraphNode, vertices
from marram.rules.facts.conditions import LOCAL_RULES
from marram.rules.incidents import INCIDENTS
from marram.rules.local_rules.register import REGISTER


@cache
def years_in_which_it_matters() -> dict[str, set[int]]:
    """For each code, the editions in which some incident's graph still asks whether it is in force."""
    found: dict[str, set[int]] = {code: set() for code in LOCAL_RULES}
    code_of = {fact: code for code, fact in LOCAL_RULES.items()}
    for incident in INCIDENTS:
        for day in EDITIONS:
            for vertex in vertices(graph_of(incident.name, day)):
                if isinstance(vertex, GraphNode) and vertex.fact in code_of:
                    found[code_of[vertex.fact]].add(day.year)
    return found


@pytest.mark.parametrize("code", LOCAL_RULES)
def test_it_changes_a_ruling_in_the_editions_of_the_register_and_in_no_other(code: str) -> None:
    """A Local Rule that can be adopted can change a ruling in each edition that has it, and only there."""
    assert years_in_which_it_matters()[code] == set(REGISTER[code].editions)
