"""The book for phones is kept on the disk: made once for a program, whole or not at all."""

import gzip
import os
import subprocess
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from marram.desk.offline import book_on_disk, held_book
from marram.services.cases.conditions import Conditions

BOOK = gzip.compress(b'{"marram": 1}')
UNDER = "on=2025-06-21&form=stroke_play"


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    return book_on_disk.folder()


@pytest.mark.usefixtures("folder")
def test_a_desk_that_starts_again_makes_no_book(monkeypatch: pytest.MonkeyPatch) -> None:
    """What the first desk made the second one sends, with the same tag; another day has a book of its own."""
    made: list[str] = []

    def run(command: list[str], **_: Any) -> subprocess.CompletedProcess[bytes]:
        made.append(command[-1])
        return subprocess.CompletedProcess(command, 0, b'{"marram": 1}')

    monkeypatch.setattr(subprocess, "run", run)
    monkeypatch.setattr(held_book, "_HELD", {})
    first = held_book.held_book(Conditions(date(2025, 6, 21)))
    monkeypatch.setattr(held_book, "_HELD", {})
    second = held_book.held_book(Conditions(date(2025, 6, 21)))

    assert second == first
    assert len(made) == 1
    held_book.held_book(Conditions(date(2023, 6, 21)))
    assert len(made) == 2


@pytest.mark.usefixtures("folder")
def test_another_program_has_a_book_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where a source or a word changed, what was kept is not read."""
    book_on_disk.keep(UNDER, BOOK)
    assert book_on_disk.read(UNDER) == BOOK
    monkeypatch.setattr(book_on_disk, "_sources", lambda: b"another program")

    assert book_on_disk.read(UNDER) is None


@pytest.mark.parametrize(
    "damage", [BOOK[:-4], b"", BOOK[:12] + b"\0\0\0" + BOOK[15:]], ids=["cut", "empty", "changed"]
)
def test_a_book_that_is_not_whole_is_made_anew(folder: Path, damage: bytes) -> None:
    """A file cut short or changed counts as none, and is kept over."""
    book_on_disk.keep(UNDER, BOOK)
    (file,) = folder.iterdir()
    file.write_bytes(damage)

    assert book_on_disk.read(UNDER) is None
    book_on_disk.keep(UNDER, BOOK)
    assert book_on_disk.read(UNDER) == BOOK


def test_what_nobody_read_for_longest_is_forgotten(folder: Path) -> None:
    """No more are kept than an event needs."""
    for number in range(book_on_disk.MOST + 2):
        book_on_disk.keep(f"{UNDER}&n={number}", BOOK)
        for at, file in enumerate(sorted(folder.iterdir(), key=lambda one: one.stat().st_mtime)):
            os.utime(file, (at, at))

    assert len(list(folder.iterdir())) == book_on_disk.MOST
    assert book_on_disk.read(f"{UNDER}&n=0") is None


def test_a_folder_that_cannot_be_used_is_no_fault(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing is kept, and nothing breaks."""
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "file"))
    book_on_disk.keep(UNDER, BOOK)

    assert book_on_disk.read(UNDER) is None
