"""The records of the invented club, for a test of its own: made once in a run of the tests, and copied after that."""

import json
import shutil
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from marram.demo import COURSE, EVENT
from marram.desk.log.kept import KeptHere, keep_here
from marram.records.database import Records, opened
from marram.records.making import made
from marram.services.keeping import start


@contextmanager
def club(folder: Path, event: Path | Mapping[str, Any] = EVENT) -> Iterator[KeptHere]:
    """The club as a desk keeps it."""
    with club_records(folder, event) as records:
        yield keep_here(records)


@contextmanager
def club_records(folder: Path, event: Path | Mapping[str, Any] = EVENT) -> Iterator[Records]:
    """Its records, in ``club.db`` of a folder, with the demonstration course and an event."""
    given = event.read_text() if isinstance(event, Path) else json.dumps(event)
    file = folder / "club.db"
    shutil.copyfile(_first(given), file)
    with opened(file) as records:
        yield records


@cache
def _first(event: str) -> Path:
    """A file of records that nobody writes to any more."""
    folder = Path(_folder().name)
    file = folder / f"{len(list(folder.iterdir()))}.db"
    with made(file) as records:
        start(records, "Quillsand Links", course_file=COURSE, maps=folder / "none", event=json.loads(event))
    return file


@cache
def _folder() -> TemporaryDirectory[str]:
    """Goes with the run of the tests."""
    return TemporaryDirectory(prefix="marram-clubs-")
