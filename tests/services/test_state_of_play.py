"""The state of play: the last suspension decides, and what was said of resuming it, until that time has come."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from marram.desk.live.play import play_told
from marram.desk.log.kept import KeptHere
from marram.errors import InputError
from marram.records.entry import new_ident
from marram.services.day.state_of_play import StateOfPlay, state_of_play
from marram.services.day.suspension import on_now, resuming, suspending, suspensions
from marram.services.kinds.suspension import Cause, Suspension
from tests.clubs import club

NOON = datetime(2025, 6, 21, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)


@pytest.fixture
def kept(tmp_path: Path) -> Iterator[KeptHere]:
    with club(tmp_path) as found:
        yield found


def stop(kept: KeptHere, at: datetime, how: Suspension = Suspension.IMMEDIATE) -> None:
    kept.add(suspending(new_ident(), at, how, Cause.LIGHTNING))


def resume(kept: KeptHere, *at: datetime) -> None:
    stopped = on_now(kept.log, kept.event_id)
    assert stopped is not None
    for one in at:
        kept.add(resuming(new_ident(), NOON, stopped, one, in_position_at=one - HOUR / 6))


def test_play_that_was_never_stopped_has_no_state(kept: KeptHere) -> None:
    """Nothing is told, and no page shows a banner."""
    assert state_of_play(kept.log, kept.event_id) is None
    assert play_told(kept) == {"words": "", "until": ""}


def test_the_last_suspension_decides(kept: KeptHere) -> None:
    """A second stop after play was resumed is told as stopped again, whatever was said of the first."""
    stop(kept, NOON, Suspension.NORMAL)
    resume(kept, NOON + HOUR)
    stop(kept, NOON + 2 * HOUR)

    assert state_of_play(kept.log, kept.event_id) == StateOfPlay(Suspension.IMMEDIATE, NOON + 2 * HOUR)
    told = play_told(kept, NOON + 9 * HOUR)
    assert "Play is stopped" in told["words"]
    assert told["until"] == ""


def test_when_play_goes_on_is_told_until_then(kept: KeptHere) -> None:
    """Of two who said a time the later holds: nobody is sent out while another still says to wait."""
    stop(kept, NOON)
    resume(kept, NOON + 3 * HOUR, NOON + 2 * HOUR)

    found = state_of_play(kept.log, kept.event_id)
    assert found is not None
    assert (found.at, found.in_position_at) == (NOON + 3 * HOUR, NOON + 3 * HOUR - HOUR / 6)
    assert found.by_several
    told = play_told(kept, NOON + HOUR)
    assert told["words"].startswith("Play goes on at ")
    assert datetime.fromisoformat(told["until"]) == NOON + 3 * HOUR
    assert play_told(kept, NOON + 3 * HOUR)["words"] == ""


def test_who_has_seen_what_was_said_settles_it(kept: KeptHere) -> None:
    """One of the two times, said again, or an earlier one, holds alone; what comes unseen beside it stands beside it."""
    stop(kept, NOON)
    resume(kept, NOON + 3 * HOUR, NOON + 2 * HOUR)
    both = suspensions(kept.log, kept.event_id)[0]
    seen = [one.id for one in both.resumed]
    assert len(seen) == 2
    for hours in (1, 2):
        kept.add(resuming(new_ident(), NOON, both, NOON + hours * HOUR, settles=seen))
        found = state_of_play(kept.log, kept.event_id)
        assert found is not None
        assert found.at == NOON + hours * HOUR
        assert found.by_several == (hours == 2)
    after = suspensions(kept.log, kept.event_id)[0]
    with pytest.raises(InputError, match="meanwhile"):
        resuming(new_ident(), NOON, after, NOON + HOUR, settles=seen)
