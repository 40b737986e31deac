"""``marram course versions`` lists versions, and ``marram relief --maps`` uses the one in force."""

import json
from datetime import date
from pathlib import Path

from marram.course.map_edits import Edit
from marram.course.versions import MapVersions
from marram.demo import COURSE
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
