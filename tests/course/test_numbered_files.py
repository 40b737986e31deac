"""Versions of maps and of hole locations are kept by one store: whole, exclusive, on the disk, readable."""

import os
import stat
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest

from marram.course.versions import numbered_files
from marram.course.versions.hole_days import HoleDays
from marram.course.versions.numbered_files import NumberedFiles
from marram.course.versions.version_files import VersionFiles
from marram.errors import InputError


def test_both_stores_are_this_one(tmp_path: Path) -> None:
    """What holds here holds for the versions of a map and for those of a day's holes."""
    assert isinstance(VersionFiles(tmp_path).shelf, NumberedFiles)
    assert isinstance(HoleDays(tmp_path).shelf, NumberedFiles)


@pytest.mark.parametrize(("mask", "mode"), [(0o022, 0o644), (0o027, 0o640), (0o077, 0o600)])
def test_a_file_is_readable_as_the_users_files_are(tmp_path: Path, mask: int, mode: int) -> None:
    """0666 less the umask: a copy or a backup made by another user of the group finds it readable."""
    before = os.umask(mask)
    try:
        NumberedFiles(tmp_path).keep("1.json", b"{}")
    finally:
        os.umask(before)

    assert stat.S_IMODE((tmp_path / "1.json").stat().st_mode) == mode


def test_file_and_folder_are_brought_to_the_disk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """First the file, before it has its name; then the folder, so that the name stays too."""
    brought: list[tuple[bool, bool]] = []
    path = tmp_path / "kept" / "1.json"

    def noted(number: int, real: Any = os.fsync) -> None:
        brought.append((stat.S_ISDIR(os.fstat(number).st_mode), path.exists()))
        real(number)

    monkeypatch.setattr(numbered_files.os, "fsync", noted)
    assert NumberedFiles(path.parent).keep(path.name, b"{}")

    assert brought == [(False, False), (True, True)]


def test_of_many_who_take_a_number_one_gets_it(tmp_path: Path) -> None:
    """The others are told, what was written stays as it was, and no draft is left behind."""
    store, path = NumberedFiles(tmp_path), tmp_path / "1.json"
    with ThreadPoolExecutor(8) as many:
        got = list(many.map(lambda who: store.keep(path.name, f"{who}".encode()), range(40)))

    assert got.count(True) == 1
    assert path.read_text() == str(got.index(True))
    assert list(tmp_path.iterdir()) == [path]


def test_a_full_disk_leaves_nothing_half_written(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One sentence says that nothing was saved; neither a version nor a draft is there."""

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(numbered_files.os, "fsync", full)
    with pytest.raises(InputError, match=r"Nothing was saved: .*No space left on device"):
        NumberedFiles(tmp_path).keep("1.json", b"{}")

    assert not list(tmp_path.iterdir())
