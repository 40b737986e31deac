"""Whoever watches the records hears of what another process adds, on both databases, and of nothing else."""

from pathlib import Path

from marram.desk.live.watching import changes
from marram.records.database import Records, opened
from marram.records.log import Log
from marram.records.people import names
from marram.records.whereabouts import report
from tests.records.conftest import NOON, note
from tests.records.full import fill

LOOKS = 100
"""Looks within which a change must be seen: ten seconds, for a machine that does much else."""


def test_a_change_of_another_process_is_heard_of_once(records: Records, address: str, tmp_path: Path) -> None:
    """An entry, and where somebody is; before and between there is nothing to hear."""
    event = fill(records, tmp_path / "maps")
    person = min(names(records))
    with opened(address) as elsewhere, changes(records) as changed:
        assert not changed()
        for add in (
            lambda: Log(elsewhere).append(event, note()),
            lambda: report(elsewhere, event, person, hole=7, words="", now=NOON),
        ):
            add()
            assert any(changed() for _ in range(LOOKS))
            assert [changed() for _ in range(3)].count(True) <= 1
            assert not changed()
