"""Setting every sheet of an event takes a while: how far it is, is told."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from marram.cli import long_work
from marram.cli.papers import ALL, Source, print_sheets
from marram.course.progress import Progress
from marram.demo import COURSE, EVENT


def test_every_sheet_moves_the_bar_and_so_does_setting_them(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    told: list[tuple[str, float]] = []

    @contextmanager
    def heard() -> Iterator[Progress]:
        yield lambda what, part: told.append((what, part))

    monkeypatch.setattr(long_work, "shown", heard)
    pdf = tmp_path / "all.pdf"
    source = Source(str(EVENT), None, COURSE, 1, None, None)

    print_sheets(ALL, source, paper="A4", yards=False, pdf=pdf, html=None, as_json=False)

    parts = [part for what, part in told if what == "sheets"]
    assert len(parts) > 3
    assert parts == sorted(set(parts))
    assert told[-1] == ("setting", 0.5)
    assert pdf.read_bytes().startswith(b"%PDF")
    assert str(pdf) in capsys.readouterr().out
