"""Drawn relief against a verifier that shares no code with it, on made maps, the demo course and a real one.

What the verifier holds against an answer, and how fine it looks, is told in ``tests/relief/verifier``; many more
balls are tried by ``python bench/verify_relief.py``.
"""

import pytest

from marram.demo import COURSE
from tests.course.real_maps import real_map
from tests.relief.verifier.made_maps import COURSES, MAPS, made
from tests.relief.verifier.real_maps import as_geojson
from tests.relief.verifier.run import try_map

SEED = 5


def told(tally):
    """The violations in words, for the message of a failing test."""
    return [
        f"{question.sort}, hole {question.hole}, {question.edition}, ball {question.ball}, crossing {question.crossing}: "
        f"{option['citation'] if option else ''} {violation.sort}: {violation.what}"
        for question, option, violation in tally.found
    ]


@pytest.mark.parametrize("name", MAPS)
def test_made_maps(name, tmp_path):
    """On a map that holds what real ones trip over, every place accepted is allowed and every reference point right."""
    tally = try_map(made(name, tmp_path, SEED), 16, name=COURSES.get(name), seed=SEED)
    assert told(tally) == []
    assert tally.counts["areas"] > 20


def test_demo_course():
    """So it is on the demo course."""
    tally = try_map(COURSE, 20, seed=SEED)
    assert told(tally) == []
    assert tally.counts["areas"] > 25


@pytest.mark.parametrize(
    ("name", "number"), [("links-18.geojson", False), ("clipped-13.osm", False), ("bare-19-lines.osm", True)]
)
def test_real_maps(name, number, tmp_path):
    """So it is on the open maps, one of them with its lines of play numbered."""
    tally = try_map(as_geojson(real_map(name), tmp_path, number=number), 14, seed=SEED)
    assert told(tally) == []
    assert tally.counts["areas"] > 15
