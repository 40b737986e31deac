"""Work that takes a while and does not tell how far it is: a bar without an end says what goes on, and goes with it."""

from threading import Event
from types import SimpleNamespace
from typing import Any

import pytest

from marram.cli import long_work
from marram.words.texts import text


class Bar:
    """A bar that keeps what it was told."""

    def __init__(self) -> None:
        self.told: list[dict[str, Any]] = []
        self.there = Event()
        self.stopped = False
        self.task_ids = [0]

    def update(self, _task: int, **told: Any) -> None:
        self.told.append(told)
        self.there.set()

    def stop(self) -> None:
        self.stopped = True


@pytest.fixture
def bar(monkeypatch: pytest.MonkeyPatch) -> Bar:
    made = Bar()
    terminal = SimpleNamespace(isatty=lambda: True)
    monkeypatch.setattr(long_work, "sys", SimpleNamespace(stderr=terminal))
    monkeypatch.setattr(long_work, "_bar", lambda: made)
    monkeypatch.setattr(long_work, "PATIENCE", 0.0)
    return made


def test_a_bar_without_an_end_appears_while_the_work_goes_on(bar: Bar) -> None:
    """Its words say what is done; once the work tells how far it is, it has an end; afterwards it is gone."""
    with long_work.shown("draw") as tell:
        assert bar.there.wait(30)
        assert bar.told == [{"total": None, "description": text("cli.progress.draw")}]
        tell("sheets", 0.5)
    assert bar.told[-1] == {"total": 1.0, "completed": 0.5, "description": text("cli.progress.sheets")}
    assert bar.stopped


def test_work_that_is_done_at_once_shows_none(bar: Bar, monkeypatch: pytest.MonkeyPatch) -> None:
    """Within the patience nothing appears, and nothing does afterwards."""
    monkeypatch.setattr(long_work, "PATIENCE", 3600.0)
    with long_work.shown("draw"):
        pass
    assert bar.told == []
    assert not bar.stopped


def test_work_without_words_of_its_own_waits_until_it_is_told(bar: Bar) -> None:
    """Maps that are opened say by themselves what they do."""
    with long_work.shown() as tell:
        assert bar.told == []
        tell("reading", 0.25)
    assert [one["completed"] for one in bar.told] == [0.25]
