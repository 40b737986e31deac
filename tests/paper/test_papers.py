"""The Committee's papers: numbers agree with the green's closed form, drawings hold every hole."""

import re
from datetime import date
from xml.etree import ElementTree as ET

import numpy as np
import pytest
from shapely.geometry import LineString, Point

from marram.course import check, load
from marram.course.elevation import Elevations, read_elevations
from marram.course.green_frame import PACE, GreenFrame
from marram.course.hole_locations import propose
from marram.course.model import Course
from marram.course.slope import GreenSlopes, Surface, slope_limits
from marram.demo import COURSE, GREENS
from marram.errors import BadPlace
from marram.paper.green_drawing import SIZE, green_svg
from marram.paper.hole_location_sheet import sheet_pdf, sheet_svg
from marram.paper.marking_sheet import marking_pdf

ROUND_GREEN = GreenFrame(Point(0, 0).buffer(15, quad_segs=256), LineString([(0, -200), (0, 0)]))
SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def course() -> Course:
    return load(COURSE)


@pytest.mark.parametrize(("x", "y"), [(0, 0), (-5, 3), (6, -4)])
def test_the_hole_is_drawn_where_it_is_cut(x: float, y: float) -> None:
    """On a round green played northwards the picture is the plane itself, scaled about the middle."""
    root = ET.fromstring(green_svg(ROUND_GREEN, Point(x, y)))
    hole = root.find(f"{SVG}circle")
    assert hole is not None
    scale = (SIZE - 44) / 30
    assert float(hole.attrib["cx"]) == pytest.approx(SIZE / 2 + x * scale, abs=0.2)
    assert float(hole.attrib["cy"]) == pytest.approx(SIZE / 2 - y * scale, abs=0.2)


def test_the_numbers_drawn_are_those_of_the_sheet() -> None:
    """Five metres left of the middle: depth 15 m and the chord's end 15 - 5 = 10 m away, in paces of a yard."""
    root = ET.fromstring(green_svg(ROUND_GREEN, Point(-5, 0)))
    assert [text.text for text in root.iter(f"{SVG}text")] == [str(round(15 / PACE)), str(round(10 / PACE))]


def tilted(frame: GreenFrame, percent: float) -> Surface:
    """A green that falls evenly to the south, measured every two metres."""
    west, south, east, north = frame.green.buffer(3).bounds
    x, y = np.meshgrid(np.arange(west, east, 2), np.arange(south, north, 2))
    places = np.column_stack([x.ravel(), y.ravel(), percent / 100 * y.ravel()])
    return Surface(Elevations(places, np.zeros(len(places), dtype=np.intp)))


@pytest.mark.parametrize(("percent", "heavy"), [(2.0, False), (6.0, True)])
def test_arrows_point_down_the_slope_and_are_heavy_where_it_is_too_steep(percent: float, heavy: bool) -> None:
    """Played northwards, a fall to the south points down the page; 6 % is beyond 5.42 %, Lemons's figure at ten feet."""
    drawing = green_svg(ROUND_GREEN, Point(0, 0), tilted(ROUND_GREEN, percent), slope_limits(10))
    arrows = ET.fromstring(drawing).find(f"{SVG}g")
    assert arrows is not None
    assert len(arrows) > 20
    for arrow in arrows:
        (x0, y0), (x1, y1) = (
            tuple(map(float, one.split())) for one in arrow.attrib["d"][1:].split("M")[0].split("L")
        )
        assert x1 == pytest.approx(x0, abs=0.2)
        assert y1 - y0 > 10
        assert (float(arrow.attrib["stroke-width"]) > 2) is heavy


def test_a_green_without_elevations_has_no_arrows() -> None:
    """The drawing is as it was before slope could be given."""
    assert 'class="slope"' not in green_svg(ROUND_GREEN, Point(0, 0))


def test_the_sheet_says_what_was_done_about_slope(course: Course) -> None:
    """Not considered, or the figures it was held against; each hole says how its ground falls."""
    places = {1: course.hole(1).location}
    assert "Slope was not considered." in sheet_svg(course, places)
    slopes = GreenSlopes(course, read_elevations(course, [GREENS]), slope_limits(10))
    drawn = sheet_svg(course, places, slopes)
    assert "steeper than 5.42 % (for a green speed of 10 feet; at most 3.9 % is recommended)" in drawn
    assert re.search(r"falls \d\.\d % to the (back|front|left|right)", drawn)


def test_a_place_off_the_green_is_refused() -> None:
    """The message says how far off it is."""
    with pytest.raises(BadPlace, match="off the green"):
        green_svg(ROUND_GREEN, Point(20, 0))


def test_the_sheet_holds_every_green(course: Course) -> None:
    """Eighteen greens, eighteen holes; the PDF is one page of A4."""
    places = {number: one.place for number, one in propose(course).locations.items()}
    root = ET.fromstring(sheet_svg(course, places))
    assert len(list(root.iter(f"{SVG}circle"))) == len(course.holes) == 18
    pdf = sheet_pdf(course, places, title="A round", day=date(2025, 6, 21))
    fewer = sheet_pdf(course, dict(list(places.items())[:9]), title="A round", day=date(2025, 6, 21))
    assert pdf.startswith(b"%PDF")
    assert len(pdf) > len(fewer) > 10_000


def test_the_marking_sheet_is_set(course: Course) -> None:
    """A sheet is printed even where nothing is to be mended."""
    assert marking_pdf(course, [], day=date(2025, 6, 21)).startswith(b"%PDF")
    assert marking_pdf(course, check(COURSE), day=date(2025, 6, 21)).startswith(b"%PDF")
