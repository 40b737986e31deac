"""The Committee's papers: numbers agree with the green's closed form, drawings hold every hole."""

import re
from dataclasses import replace
from datetime import date
from io import BytesIO
from pathlib import Path
from xml.etree import ElementTree as ET

import numpy as np
import pytest
from pypdf import PdfReader
from shapely.geometry import LineString, Point

from marram.course import check, load
from marram.course.fault import Fault, Severity
from marram.course.greens.elevation import Elevations, read_elevations
from marram.course.greens.green_frame import PACE, GreenFrame
from marram.course.greens.hole_locations import propose
from marram.course.greens.slope import GreenSlopes, Surface, slope_limits
from marram.course.model import Course
from marram.demo import COURSE, GREENS
from marram.errors import BadPlace
from marram.paper.green_drawing import SIZE, green_svg
from marram.paper.hole_location_sheet import sheet_pdf, sheet_rows, sheet_svg
from marram.paper.marking_drawing import marking_svg
from marram.paper.marking_sheet import marking_pdf, numbered
from marram.paper.paper_size import PaperSize
from marram.words.texts import text as said
from tests.course.drawing import drawn, nine_holes, write

ROUND_GREEN = GreenFrame(Point(0, 0).buffer(15, quad_segs=256), LineString([(0, -200), (0, 0)]))
DAY = date(2025, 6, 21)
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
    assert said("holes.slope.not_considered") in sheet_svg(course, places)
    slopes = GreenSlopes(course, read_elevations(course, [GREENS]), slope_limits(10))
    told = sheet_svg(course, places, slopes)
    assert "steeper than 5.42 % (" in told
    assert re.search(r"falls \d\.\d % to the (back|front|left|right)", told)


def test_a_place_off_the_green_is_refused() -> None:
    """The message says how far off it is."""
    with pytest.raises(BadPlace, match="off the green"):
        green_svg(ROUND_GREEN, Point(20, 0))


def test_the_sheet_holds_every_green(course: Course) -> None:
    """Eighteen greens, eighteen holes."""
    places = {number: one.place for number, one in propose(course).locations.items()}
    root = ET.fromstring(sheet_svg(course, places))
    assert len(list(root.iter(f"{SVG}circle"))) == len(course.holes) == 18


@pytest.mark.parametrize("paper", PaperSize)
@pytest.mark.parametrize("for_players", [False, True])
def test_eighteen_holes_are_one_page(course: Course, paper: PaperSize, for_players: bool) -> None:
    """Of A4 (ISO 216: 210 by 297 mm) and of Letter (ANSI A: 8.5 by 11 inches), every hole with its depth, in one type."""
    places = {number: one.place for number, one in propose(course).locations.items()}
    slopes = GreenSlopes(course, read_elevations(course, [GREENS]), slope_limits(10))
    pdf = sheet_pdf(
        course, places, title="A round", day=DAY, slopes=slopes, for_players=for_players, paper=paper
    )
    (page,) = PdfReader(BytesIO(pdf)).pages
    inches = [float(one) / 72 for one in (page.mediabox.width, page.mediabox.height)]
    assert inches == pytest.approx((210 / 25.4, 297 / 25.4) if paper is PaperSize.A4 else (8.5, 11), abs=0.01)
    told = page.extract_text()
    for row in sheet_rows(course, places):
        assert re.search(rf"\b{row.hole}\s+{row.par}\s+{row.depth}\s+{row.side[0]}", told), row.hole
    fonts = {str(one.get_object()["/BaseFont"]) for one in page["/Resources"]["/Font"].values()}
    assert {name.partition("+")[2].partition("-")[0] for name in fonts} == {"AtkinsonHyperlegibleNext"}
    assert (said("holes.slope.falls", percent=1, way="").split()[0] in told) is not for_players


def test_more_than_eighteen_holes_take_more_pages(course: Course) -> None:
    """Nine more holes are a second page, not smaller greens."""
    places = {number: one.place for number, one in propose(course).locations.items()}
    holes = {**course.holes, **{n + 18: replace(course.holes[n], number=n + 18) for n in range(1, 10)}}
    more = replace(course, holes=holes)
    pdf = sheet_pdf(more, {**places, **{n + 18: places[n] for n in range(1, 10)}}, title="All", day=DAY)
    assert len(PdfReader(BytesIO(pdf)).pages) == 2


def test_the_marking_sheet_is_set(course: Course) -> None:
    """A sheet is printed even where nothing is to be mended."""
    assert marking_pdf(course, [], day=date(2025, 6, 21)).startswith(b"%PDF")
    assert marking_pdf(course, check(COURSE), day=date(2025, 6, 21)).startswith(b"%PDF")


@pytest.mark.parametrize(("paper", "width"), [(PaperSize.A4, 595), (PaperSize.LETTER, 612)])
def test_the_marking_sheet_is_set_on_either_paper(paper: PaperSize, width: int) -> None:
    """Every page of it, with the same words."""
    printed = PdfReader(BytesIO(marking_pdf(load(COURSE), check(COURSE), day=date(2025, 6, 21), paper=paper)))
    assert {round(float(page.mediabox.width)) for page in printed.pages} == {width}
    assert "What was looked at" in printed.pages[0].extract_text()


def test_places_are_drawn_along_the_hole_with_their_numbers(course: Course) -> None:
    """The line of play runs from left to right: 100 m apart on the ground is 100 m on the scale bar's measure."""
    line = course.hole(3).line
    places = {7: line.interpolate(100), 8: line.interpolate(0)}
    root = ET.fromstring(marking_svg(course, places, line))
    at = {text.text: (float(text.attrib["x"]), float(text.attrib["y"])) for text in root.iter(f"{SVG}text")}
    bar = next(
        path.attrib["d"]
        for path in root.iter(f"{SVG}path")
        if re.fullmatch(r"M10 \S+v5h\S+v-5", path.attrib["d"])
    )
    length = float(bar.split("h")[1].split("v")[0])
    metres = next(int(words.split()[0]) for words in at if words.endswith(" m"))
    ground = places[7].distance(places[8])
    apart = ((at["7"][0] - at["8"][0]) ** 2 + (at["7"][1] - at["8"][1]) ** 2) ** 0.5
    assert apart == pytest.approx(ground * length / metres, abs=0.3)
    assert at["7"][0] > at["8"][0]


def test_stakes_are_drawn_in_their_colour(tmp_path: Path) -> None:
    """White, red and yellow stakes on the sheet are told apart; one off the picture is left out."""
    stakes = [
        drawn(Point(60 + 20 * k, 300), f"stake {k}", marram="stake", colour=colour)
        for k, colour in enumerate(("white", "red", "yellow"))
    ]
    far = drawn(Point(60, 650), "far", marram="stake", colour="white")
    links = load(write(tmp_path / "map.geojson", [*nine_holes(), *stakes, far]))
    root = ET.fromstring(marking_svg(links, {1: Point(80, 300)}, links.hole(5).line))
    assert [circle.attrib["fill"] for circle in root.iter(f"{SVG}circle")] == [
        "#ffffff",
        "#b4232a",
        "#e7c000",
    ]


def test_every_task_with_a_place_has_a_number_of_its_own(course: Course) -> None:
    """Numbers run from 1 over all sheets; a task without a place has none."""
    lon, lat = course.plane.to_degrees(course.hole(3).location.x, course.hole(3).location.y)
    placed = Fault(Severity.WARNING, "a", "a", "a.", longitude=lon, latitude=lat)
    bare = Fault(Severity.WARNING, "b", "b", "b.", hole=3)
    far = Fault(Severity.WARNING, "c", "c", "c.", hole=9, longitude=lon, latitude=lat)
    found = {
        (sheet.hole, fault.check): number
        for sheet, tasks in numbered(course, [far, bare, placed])
        for fault, number, _ in tasks
    }
    assert found == {(3, "b"): None, (3, "a"): 1, (9, "c"): 2}
