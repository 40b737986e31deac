"""A drawing tells lengths as the reader's place does, on every line of it: nothing in metres alone where yards are usual."""

import re
from xml.etree import ElementTree as ET

import pytest

from marram.relief import svg
from marram.words.place import writing_in, written_as
from tests.relief.test_drawing import CASES, SVG, areas

METRES_ALONE = re.compile(r"\d m\b(?!\))|m²")
YARDS = re.compile(r"\d (yd|ft|in|sq ft)\b")


def written(name: str) -> str:
    page = ET.fromstring(svg(areas(name)))
    return " | ".join(one.text or "" for one in page.iter() if one.tag in (f"{SVG}text", f"{SVG}desc"))


@pytest.mark.parametrize("name", CASES)
def test_no_length_is_in_metres_alone_for_an_american_reader(name: str) -> None:
    with written_as(writing_in("US")):
        told = written(name)
    assert YARDS.search(told), told
    assert not METRES_ALONE.search(told), told


@pytest.mark.parametrize("name", CASES)
def test_elsewhere_metres_come_first(name: str) -> None:
    told = written(name)
    assert METRES_ALONE.search(told), told
    assert not re.search(r"[: ]\d+(\.\d+)?\s(yd|ft)", told), told


def test_a_bar_of_yards_is_as_long_as_it_says() -> None:
    """Both bars, in their units, are of one scale: the picture itself stays the same."""
    metric = written("unplayable")
    with written_as(writing_in("US")):
        yards = written("unplayable")
    assert re.search(r"\| \d+ m \|", metric), metric
    assert re.search(r"\| \d+ yd \|", yards), yards
