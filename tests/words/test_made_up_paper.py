"""Every word on paper goes through the catalogue: under a made-up language no plain letter is left."""

from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path
from typing import Any

import pytest

import marram.paper.hole_location_sheet as hole_sheet
import marram.paper.marking_sheet as marking
from marram.course import check, load
from marram.course.greens.hole_locations import propose
from marram.demo import COURSE, GREENS
from marram.errors import BadCourse
from marram.paper.hole_location_sheet import sheet_pdf, sheet_svg
from marram.paper.marking_sheet import marking_pdf
from marram.services.ground.holes import green_slopes
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import plain_values, seen_in, unmarked

BAD = Path(__file__).parents[1] / "bad" / "course"
DAY = date(2025, 6, 21)
KEYS = {"language", "drawing", "paper"}
"""What a template needs beside words."""


@pytest.fixture(autouse=True)
def made_up(locales: Path) -> Iterator[None]:
    with speaking(locales):
        yield


@pytest.fixture
def printed(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What is printed, in place of a document."""
    texts: list[str] = []

    def print_it(_template: str, data: Mapping[str, Any], drawings: Mapping[str, str] | None = None) -> bytes:
        texts.extend(words_in(data))
        texts.extend(one for drawing in (drawings or {}).values() for one in seen_in(drawing))
        return b""

    monkeypatch.setattr(hole_sheet, "typeset", print_it)
    monkeypatch.setattr(marking, "typeset", print_it)
    return texts


def words_in(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, Mapping):
        yield from (one for key, value in data.items() if key not in KEYS for one in words_in(value))
    elif isinstance(data, list):
        yield from (one for value in data for one in words_in(value))


@pytest.mark.parametrize("speed", [None, 9.0])
def test_the_hole_location_sheet_is_told_in_the_language(printed: list[str], speed: float | None) -> None:
    """As a document and as a drawing, with the slope of the greens and without."""
    course = load(COURSE)
    places = {number: one.place for number, one in propose(course).locations.items()}
    slopes = green_slopes(course, [GREENS] if speed else [], None, speed)

    sheet_pdf(course, places, title="Ada", day=DAY, slopes=slopes)
    sheet_pdf(course, places, title="Ada", day=DAY, slopes=slopes, for_players=True)
    said = [*printed, *seen_in(sheet_svg(course, places, slopes))]

    assert len(said) > 60
    assert unmarked(said, {*names_of(course), "Ada"}) == set()


def test_the_marking_sheet_is_told_in_the_language(printed: list[str]) -> None:
    """The sheet with its tasks, each what is to be mended and what to do."""
    faults, names = 0, {"marram"}
    for path in sorted(BAD.glob("*")):
        try:
            course = load(path)
        except BadCourse:
            continue
        found = check(path)
        names |= names_of(course) | {value for one in found for value in plain_values(one.sentence)}
        marking_pdf(course, found, day=DAY)
        faults += len(found)

    assert faults > 100
    assert unmarked(printed, names) == set()


def test_no_template_of_a_document_holds_a_word_of_its_own() -> None:
    """Between the markup of a template stands nothing but its data."""
    import re

    for path in Path(hole_sheet.__file__).parent.glob("*.typ"):
        for line in path.read_text(encoding="utf-8").splitlines():
            plain = re.findall(r"\[([^\[\]#]*[A-Za-z]{3,}[^\[\]#]*)\]", line.partition("//")[0])
            assert plain == [], f"{path.name}: {line}"
