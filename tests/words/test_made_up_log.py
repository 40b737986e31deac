"""The pages of the log speak the reader's language, but for names of people and what they wrote."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from marram.desk.app import create_app
from marram.records.starting_sheet import GroupOfDay
from tests.clubs import club
from tests.desk.asking import TestClient
from tests.desk.test_log import RULING, form
from tests.words.made_up import speaking
from tests.words.outside import names_of
from tests.words.unmarked import seen_in, unmarked


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[TestClient]:
    with club(tmp_path) as kept:
        yield TestClient(create_app(kept_here=kept))


def test_the_pages_of_the_log_say_nothing_of_their_own(desk: TestClient, locales: Path) -> None:
    """The form on a ruling, the list and an entry with note, reason, correction and an earlier ruling."""
    kept = desk.app.state.kept_here  # type: ignore[attr-defined]
    groups: list[GroupOfDay] = kept.groups_on(kept.event.played_on)
    people = {one.name for group in groups for one in group.players} | {one.name for one in kept.officials()}
    more = {
        "by": kept.officials()[0].id,
        "player": groups[0].players[0].id,
        "note": "2.5",
        "otherwise": "1.5",
    }
    with speaking(locales):
        desk.post("/record", data=form(desk))
        desk.post("/record", data={**form(desk), **more, "corrects": "1"})
        desk.post("/record", data=form(desk))
        receipts = {f"{one.receipt}" for one in kept.log.entries(kept.event_id)}
        names = {*names_of(desk.app.state.workplace.course), *people, *receipts, kept.event.name}  # type: ignore[attr-defined]
        for page in (RULING, "/log", "/log/1", "/log/2", "/log/3"):
            assert unmarked(seen_in(desk.get(page).text), names) == set(), page
