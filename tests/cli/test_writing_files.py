"""Files that a command writes: all of them, or none."""

import os
import stat
from pathlib import Path

import pytest

from marram.cli.writing import write_files
from marram.demo import COURSE
from marram.errors import InputError
from tests.cli.running import marram

RELIEF = ("relief", str(COURSE), "--hole", "7", "--ball", "3.9961,55.0078")


def test_nothing_is_written_where_one_place_cannot_take_its_file(tmp_path: Path) -> None:
    """Every fault is listed, and the file that could have been written is not."""
    good, nowhere, folder = tmp_path / "good", tmp_path / "none" / "file", tmp_path / "folder"
    folder.mkdir()
    with pytest.raises(InputError) as refused:
        write_files({good: b"1", nowhere: b"2", folder: b"3"})
    assert [str(nowhere) in refused.value.faults[0], str(folder) in refused.value.faults[1]] == [True, True]
    assert not good.exists()


def test_a_drawing_is_written_only_with_its_areas(tmp_path: Path) -> None:
    """The command refuses both files where one of them has no folder; then writes both."""
    svg, areas = tmp_path / "relief.svg", tmp_path / "none" / "relief.geojson"
    refused = marram(*RELIEF, "--svg", str(svg), "--geojson", str(areas))
    assert refused.code == 2
    assert "there is no folder" in refused.err
    assert not svg.exists()

    areas.parent.mkdir()
    assert marram(*RELIEF, "--svg", str(svg), "--geojson", str(areas)).code == 0
    assert svg.exists()
    assert areas.exists()


def test_a_drawing_that_cannot_be_made_yet_is_said_not_to_be_written(tmp_path: Path) -> None:
    """With no place for any option there is nothing to draw; the file asked for is named."""
    svg = tmp_path / "relief.svg"
    found = marram(
        "relief", str(COURSE), "--hole", "7", "--ball", "3.9961,55.0078",
        "--incident", "play_again_from_previous_spot", "--fact", "second_ball=nothing_yet", "--svg", str(svg),
    )  # fmt: skip
    assert found.code == 3
    assert f"{svg} not written" in found.err
    assert not svg.exists()


def test_one_file_named_for_two_is_refused(tmp_path: Path) -> None:
    """Also where it is named in two ways; nothing is written."""
    one, same = tmp_path / "out", tmp_path / "." / "x" / ".." / "out"
    (tmp_path / "x").mkdir()
    refused = marram(*RELIEF, "--svg", str(one), "--geojson", str(same))

    assert refused.code == 2
    assert "is named for two files" in refused.err
    assert not one.exists()


def test_a_failure_while_writing_leaves_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The disk is full at the second file: the first is as it was, and no draft is left behind."""
    first, second = tmp_path / "first", tmp_path / "second"
    first.write_bytes(b"before")
    calls: list[int] = []

    def full_at_the_second(number: int) -> None:
        calls.append(number)
        if len(calls) == 2:
            raise OSError(28, "No space left on device")

    monkeypatch.setattr("marram.cli.writing.os.fsync", full_at_the_second)
    with pytest.raises(InputError, match="second cannot be written: No space left on device"):
        write_files({first: b"1", second: b"2"})

    assert first.read_bytes() == b"before"
    assert [path.name for path in tmp_path.iterdir()] == ["first"]


def test_a_device_is_written_to_and_stays_one(tmp_path: Path) -> None:
    """What is no file is written to as it stands: nothing takes its place."""
    write_files({Path(os.devnull): b"gone", tmp_path / "file": b"kept"})

    assert stat.S_ISCHR(Path(os.devnull).stat().st_mode)
    assert (tmp_path / "file").read_bytes() == b"kept"


def test_a_place_that_fails_late_leaves_all_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the second of three files cannot take its place, the first is what it was and nothing is left over."""
    old, new, last = tmp_path / "a", tmp_path / "b", tmp_path / "c"
    old.write_bytes(b"before")
    replace = Path.replace

    def refuse(draft: Path, place: Path) -> Path:
        if place == new:
            raise OSError(28, "No space left on device")
        return replace(draft, place)

    monkeypatch.setattr(Path, "replace", refuse)
    with pytest.raises(InputError, match="No space left"):
        write_files({old: b"1", new: b"2", last: b"3"})

    assert old.read_bytes() == b"before"
    assert [path.name for path in tmp_path.iterdir()] == ["a"]


def test_no_command_writes_over_the_map_it_reads(tmp_path: Path) -> None:
    """Drawings, sheets and mended copies are refused where they would take the place of the map, before any work."""
    course, link = tmp_path / "course.geojson", tmp_path / "link"
    course.write_bytes(COURSE.read_bytes())
    link.symlink_to(course)
    relief = ("relief", str(course), "--hole", "7", "--ball", "3.9961,55.0078")
    for command in (
        (*relief, "--geojson", str(course)),
        (*relief, "--svg", str(link)),
        ("course", "holes", str(course), "--svg", str(course)),
        ("course", "marking", str(course), "--pdf", str(course)),
        ("course", "mend", str(course), "--accept", "1", "--output", str(course)),
    ):
        refused = marram(*command)
        assert refused.code == 2
        assert "would be written over" in refused.err
    assert course.read_bytes() == COURSE.read_bytes()
