"""Markup and escape codes in the names of a map: nothing raw reaches the terminal, a drawing or a sheet."""

from pathlib import Path

import pytest

from marram.course import load
from marram.course.model import Course
from marram.demo import COURSE
from tests.cli.running import marram
from tests.hostile_names import hostile_course, markup_in, orders_in


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return hostile_course(tmp_path_factory.mktemp("hostile"))


def in_the_burn(course: Course) -> list[str]:
    """A ball in the burn of the ninth hole, with where it crossed the edge and where it was played from."""
    burn = next(one for one in course.features if one.name == "The Burn")
    line = course.hole(9).line
    across = line.intersection(burn.geometry)
    places = {
        "--ball": across.interpolate(0.5, normalized=True),
        "--entry": across.interpolate(0.0),
        "--previous": line.interpolate(20),
    }
    found = ["--hole", "9"]
    for option, place in places.items():
        longitude, latitude = course.plane.to_degrees(place.x, place.y)
        found += [option, f"{longitude:.7f},{latitude:.7f}"]
    return found


@pytest.mark.parametrize("form", [(), ("--json",)])
@pytest.mark.parametrize("command", ["check", "mend", "marking", "holes", "versions"])
def test_commands_print_no_order_to_the_terminal(path: Path, command: str, form: tuple[str, ...]) -> None:
    """In words and as JSON, which is escaped."""
    done = marram("course", command, str(path), *form)
    assert orders_in(done.out + done.err) == set()
    assert "Traceback" not in done.err


def test_drawings_and_sheets_hold_names_as_text(path: Path, tmp_path: Path) -> None:
    """The drawings of relief and of the holes have no element that a name made; the sheets are made."""
    drawing, areas, holes = tmp_path / "relief.svg", tmp_path / "areas.geojson", tmp_path / "holes.svg"
    pdf, marking = tmp_path / "holes.pdf", tmp_path / "marking.pdf"
    runs = (
        marram(
            "relief", str(path), *in_the_burn(load(COURSE)), "--svg", str(drawing), "--geojson", str(areas)
        ),
        marram("course", "holes", str(path), "--svg", str(holes), "--pdf", str(pdf)),
        marram("course", "marking", str(path), "--pdf", str(marking)),
    )
    for done in runs:
        assert done.code == 0, done.err
        assert orders_in(done.out + done.err) == set()
    for file in (drawing, holes):
        assert markup_in(file.read_text()) == [], file.name
    for file in (drawing, holes, areas):
        assert orders_in(file.read_text()) == set(), file.name
    for file in (pdf, marking):
        assert file.read_bytes().startswith(b"%PDF")
        assert b"/JavaScript" not in file.read_bytes()
