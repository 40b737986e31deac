"""What is made ready beside a desk: the log's words and days as entries come, the book; each read once."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest

from marram.demo import COURSE, EVENT
from marram.desk.app import create_app
from marram.desk.log.day_rulings import DayRulings
from marram.desk.log.kept import KeptHere, keep_here
from marram.desk.offline import held_map
from marram.desk.readying import book_steps, log_steps, map_steps
from marram.records.making import made
from marram.records.searching import index_some
from marram.rules.facts.conditions import FormOfPlay, Sides
from marram.services.cases.case import Act, Case
from marram.services.cases.conditions import conditions_of_event
from marram.services.keeping import start
from marram.services.log.log import ruling_entry
from marram.services.log.searching import words_of
from marram.teach.book.contents import entries
from tests.clubs import club
from tests.desk.asking import TestClient

DAY = date(2025, 6, 21)
NOW = datetime(2025, 6, 21, 10, tzinfo=UTC)
RED = {"found_in_penalty_area": "yes", "last_stroke_from_penalty_area": "no", "penalty_area_colour": "red"}
CASE = Case(DAY, (Act("ball_in_penalty_area", RED),), FormOfPlay.STROKE_PLAY, Sides.INDIVIDUAL, ())


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def test_a_day_reads_each_entry_once_and_shows_what_was_added(
    kept: KeptHere, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second look asks for what came after the first; another day has none of it."""
    asked: list[int] = []
    read = kept.log.entries

    def entries_after(event: str, **given: Any) -> Any:
        asked.append(given["after"])
        return read(event, **given)

    monkeypatch.setattr(kept.log, "entries", entries_after)
    days = DayRulings(kept.log, kept.event_id, kept.zone)
    kept.add(ruling_entry(CASE, NOW))
    first = days.on(DAY)
    kept.add(ruling_entry(replace(CASE, hole=3), NOW))

    assert [one.number for one in first] == [1]
    assert [one.number for one in days.on(DAY)] == [1, 2]
    assert days.on(date(2025, 6, 22)) == []
    assert asked == [0, 1, 2]


def test_a_day_begins_anew_where_other_records_stand_in_the_place_of_these(
    kept: KeptHere, tmp_path: Path
) -> None:
    """A copy was put back: what was read of the entries that are gone is shown no more."""
    days = DayRulings(kept.log, kept.event_id, kept.zone)
    kept.add(ruling_entry(CASE, NOW))
    assert len(days.on(DAY)) == 1
    with made(tmp_path / "other.db") as records:
        start(records, "Quillsand Links", course_file=COURSE, maps=tmp_path / "none", event=EVENT)
        other = keep_here(records)
        days._log, days._event = other.log, other.event_id

        assert days.on(DAY) == []


def test_every_entry_has_its_words_once_the_log_is_ready(kept: KeptHere) -> None:
    """More entries than one step takes: nothing is left for the first search to do."""
    for hole in range(1, 19):
        for _ in range(2):
            kept.add(ruling_entry(replace(CASE, hole=hole), NOW))

    for step in log_steps(kept):
        step()

    assert index_some(kept.records, words_of) == 0


def test_the_book_is_made_ready_page_by_page() -> None:
    """There is a step for each provision that has a page, and a step does what it says without a desk."""
    steps = list(book_steps())

    assert len(steps) > len(entries())
    steps[0]()


def test_the_first_phone_finds_its_map_ready(kept: KeptHere, monkeypatch: pytest.MonkeyPatch) -> None:
    """What was made beside the desk is sent; nothing is made while a phone waits."""
    app = create_app(kept_here=kept)
    for step in map_steps(app):
        step()

    def made_now(*_: Any) -> bytes:
        raise AssertionError("a phone waits for its map")

    monkeypatch.setattr(held_map, "map_bytes", made_now)
    answer = TestClient(app).get("/api/offline/map")

    assert answer.json()["on"] == conditions_of_event(kept.event).on.isoformat()
