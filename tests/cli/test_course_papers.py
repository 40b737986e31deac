"""``marram course holes`` and ``marking``: proposed, edited, printed."""

import json
from pathlib import Path

import pytest

from marram.course import load
from marram.demo import COURSE, GREENS
from tests.cli.running import marram


def test_locations_are_proposed_edited_and_printed(tmp_path: Path) -> None:
    """What --json prints can be edited, read back and printed; an edited hole moves and nothing else."""
    proposed = json.loads(marram("course", "holes", str(COURSE), "--json").out)
    assert len(proposed["locations"]) == 18
    proposed["locations"][0]["latitude"] += 0.000009
    edited = tmp_path / "edited.json"
    edited.write_text(json.dumps(proposed), encoding="utf-8")
    pdf = tmp_path / "sheet.pdf"
    found = marram("course", "holes", str(COURSE), "--locations", str(edited), "--pdf", str(pdf), "--json")
    again = json.loads(found.out)["locations"]
    assert found.code == 0, found.err
    assert pdf.read_bytes().startswith(b"%PDF")
    kept = [row["from_front"] for row in proposed["locations"][1:]]
    assert [row["from_front"] for row in again[1:]] == pytest.approx(kept, abs=0.002)
    assert abs(again[0]["from_front"] - proposed["locations"][0]["from_front"]) > 0.1


def test_recent_locations_are_kept_away_from(tmp_path: Path) -> None:
    """The R&A's guidance on running a competition: not within three paces of a recent hole."""
    first = json.loads(marram("course", "holes", str(COURSE), "--json").out)
    recent = tmp_path / "recent.json"
    recent.write_text(json.dumps(first), encoding="utf-8")
    second = json.loads(marram("course", "holes", str(COURSE), "--recent", str(recent), "--json").out)
    for before, after in zip(first["locations"], second["locations"], strict=True):
        metres = ((before["latitude"] - after["latitude"]) * 111_000) ** 2
        metres += ((before["longitude"] - after["longitude"]) * 111_000 * 0.57) ** 2
        assert metres**0.5 > 2.6


def test_a_file_of_another_kind_is_named(tmp_path: Path) -> None:
    """The message says where to start from."""
    other = tmp_path / "other.json"
    other.write_text("{}", encoding="utf-8")
    found = marram("course", "holes", str(COURSE), "--locations", str(other))
    assert found.code == 2
    assert "holds no hole locations" in found.err


def test_the_marking_sheet_is_printed(tmp_path: Path) -> None:
    """As text and as PDF."""
    pdf = tmp_path / "marking.pdf"
    found = marram("course", "marking", str(COURSE), "--pdf", str(pdf))
    assert found.code == 0
    assert "Marking sheet of" in found.out
    assert pdf.read_bytes().startswith(b"%PDF")


def test_elevations_tell_the_slope_of_each_hole(tmp_path: Path) -> None:
    """With elevations every location has its slope and none is beyond the figure for the speed (5.42 % at ten feet)."""
    pdf = tmp_path / "sheet.pdf"
    given = ("course", "holes", str(COURSE), "--elevations", str(GREENS), "--green-speed", "10")
    found = marram(*given, "--pdf", str(pdf), "--json")
    assert found.code == 0, found.err
    told = json.loads(found.out)
    assert told["slope_considered"] is True
    assert all(0 <= row["slope"]["percent"] <= 5.42 for row in told["locations"])
    assert all(row["warnings"] == [] for row in told["locations"])
    assert "for a green speed of 10 feet" in " ".join(marram(*given).out.split())
    assert pdf.read_bytes().startswith(b"%PDF")


def test_without_elevations_slope_is_said_not_to_be_considered() -> None:
    """The text says so, and so does the JSON."""
    assert "Slope was not considered" in marram("course", "holes", str(COURSE)).out
    assert json.loads(marram("course", "holes", str(COURSE), "--json").out)["slope_considered"] is False


def test_a_green_speed_without_elevations_is_refused() -> None:
    """It would be ignored in silence."""
    found = marram("course", "holes", str(COURSE), "--green-speed", "10")
    assert found.code == 2
    assert "give --elevations FILE" in found.err


def test_an_edited_hole_on_a_steep_place_is_warned_of(tmp_path: Path) -> None:
    """A hole cut on the edge of a green says that it is less than four paces from it."""
    edited = json.loads(marram("course", "holes", str(COURSE), "--json").out)
    (first,) = [row for row in edited["locations"] if row["hole"] == 1]
    course = load(COURSE)
    green = course.hole(1).green
    assert green is not None
    place = green.geometry.buffer(-1).exterior.coords[0]
    first["longitude"], first["latitude"] = course.plane.to_degrees(*place)
    path = tmp_path / "edited.json"
    path.write_text(json.dumps(edited), encoding="utf-8")
    found = marram("course", "holes", str(COURSE), "--locations", str(path))
    assert "hole 1: It is 1.0 paces" in found.out


def test_an_unknown_paper_is_refused_and_nothing_is_written(tmp_path: Path) -> None:
    """Exit code 2, the papers that there are, no file; on Letter for players the sheet is written."""
    pdf = tmp_path / "sheet.pdf"
    wrong = marram("course", "holes", str(COURSE), "--pdf", str(pdf), "--paper", "foolscap")
    assert (wrong.code, pdf.exists()) == (2, False)
    assert "--paper is 'foolscap'" in wrong.err
    assert (
        marram("course", "holes", str(COURSE), "--pdf", str(pdf), "--paper", "letter", "--for-players").code
        == 0
    )
    assert pdf.read_bytes().startswith(b"%PDF")


def test_a_course_without_a_name_is_called_by_its_file(tmp_path: Path) -> None:
    """No sheet is of nothing."""
    document = json.loads(COURSE.read_text())
    del document["features"][0]["properties"]["name"]
    path = tmp_path / "nameless.geojson"
    path.write_text(json.dumps(document))
    for command, title in (
        ("holes", "Hole locations of nameless.geojson"),
        ("marking", "Marking sheet of nameless.geojson"),
    ):
        assert marram("course", command, str(path)).out.startswith(f"{title}\n")
