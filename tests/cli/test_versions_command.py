"""``marram course versions`` lists versions, and ``marram relief --maps`` uses the one in force."""

import json
from datetime import date
from pathlib import Path

import pytest

from marram.course.versions.map_edits import Edit
from marram.course.versions.map_versions import MapVersions, default_folder
from marram.demo import COURSE
from marram.words.texts import text as said
from tests.cli.running import marram
from tests.course.test_versions import square


def test_versions_are_listed_and_used(tmp_path: Path) -> None:
    """The version in force on the day is named by both commands."""
    folder = tmp_path / "maps"
    MapVersions(COURSE, folder).save(
        [Edit("add", "new/1", square("new/1"))], base=1, who="A referee", in_force_from=date(2025, 6, 21)
    )
    listed = json.loads(
        marram(
            "course", "versions", str(COURSE), "--maps", str(folder), "--played-on", "2025-06-21", "--json"
        ).out
    )
    assert (listed["in_force"], len(listed["versions"])) == (2, 2)
    assert "by A referee" in marram("course", "versions", str(COURSE), "--maps", str(folder)).out
    for day, version in (("2025-06-21", 2), ("2025-06-20", 1)):
        found = marram(
            "relief", str(COURSE), "--hole", "1", "--ball", "4.0,55.004", "--maps", str(folder),
            "--played-on", day, "--json",
        )  # fmt: skip
        assert found.out, found.err
        assert json.loads(found.out)["map_version"] == version


def test_relief_is_drawn_on_the_map_the_desk_keeps(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without --maps the version in force comes from the default folder, and the text names it with its day."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    MapVersions(COURSE, default_folder(COURSE)).save(
        [Edit("add", "new/1", square("new/1"))], base=1, who="A referee", in_force_from=date(2025, 6, 21)
    )
    asked = ("relief", str(COURSE), "--hole", "1", "--ball", "4.0,55.004", "--played-on")
    assert (
        said("cli.relief.map_version", version="2, in force from 2025-06-21")
        in marram(*asked, "2025-06-21").out
    )
    assert said("cli.relief.map_version", version="1") in marram(*asked, "2025-06-20").out


def test_a_changed_course_file_is_said_by_both_commands(tmp_path: Path) -> None:
    """Rulings stay on the versions kept; what changed in the file is named, and where to decide about it."""
    course, folder = tmp_path / "course.geojson", tmp_path / "maps"
    course.write_bytes(COURSE.read_bytes())
    MapVersions(course, folder).save(
        [Edit("add", "new/1", square("new/1"))], base=1, who="A referee", in_force_from=date(2025, 6, 21)
    )
    document = json.loads(COURSE.read_text(encoding="utf-8"))
    document["features"].append(square("file/1", longitude=4.001))
    course.write_text(json.dumps(document), encoding="utf-8")
    asked = ("--maps", str(folder), "--played-on", "2025-06-21")

    listed = marram("course", "versions", str(course), *asked).out
    assert said("cli.versions.file_changed", changes="add file/1") in listed
    assert said("rulings.start.edit_map") in listed
    relief = marram("relief", str(course), "--hole", "1", "--ball", "4.0,55.004", *asked, "--json")
    assert json.loads(relief.out)["map_version"] == 2
    assert "has changed since" in relief.err
