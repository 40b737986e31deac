"""Real maps, © OpenStreetMap contributors, ODbL 1.0: usable at once, or after what is proposed was accepted."""

import pytest

from marram.course.mending.draft import accept, read_draft
from tests.course.real_maps import real_map


@pytest.mark.parametrize("name", ["links-18.geojson", "clipped-13.osm"])
def test_maps_that_can_be_used_stay_usable_as_they_are_written_anew(name) -> None:
    """As a document to be edited a map has the very faults its file has, and can be used as before."""
    assert read_draft(real_map(name)).usable


def test_nineteen_lines_without_a_number_are_each_asked_for() -> None:
    """No line of play has a number: each is asked for, with every number still free; chosen, the map can be used."""
    draft = read_draft(real_map("bare-19-lines.osm"))
    assert not draft.usable
    asked = [one for one in draft.proposals if one.mending == "number_hole"]
    assert len(asked) == len(draft.errors) == 19
    for number in range(1, 19):
        proposal = next(one for one in draft.proposals if one.mending == "number_hole")
        choice = next(one for one in proposal.choices if one.words == f"Take it as hole {number}")
        draft = accept(draft, choice)
    assert draft.usable
    assert list(draft.course.holes) == list(range(1, 19))
