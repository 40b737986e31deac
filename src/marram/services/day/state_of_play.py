"""Whether play goes on: the last suspension of an event, and when play is resumed, as every official must know it at once."""

from dataclasses import dataclass
from datetime import datetime

from marram.records.log import Log
from marram.services.day.suspension import RESUMED, SUSPENDED, holding
from marram.services.kinds.suspension import Suspension


@dataclass(frozen=True, slots=True)
class StateOfPlay:
    """Play is stopped, or it is said when it goes on.

    Attributes:
        how: how it was stopped.
        since: since when.
        at: when it goes on, the latest that somebody said; ``None``: nobody has said.
        in_position_at: by when players are to be where they stopped; ``None``: not said.
        by_several: whether several people said when, and nobody settled it yet.
    """

    how: Suspension
    since: datetime
    at: datetime | None = None
    in_position_at: datetime | None = None
    by_several: bool = False

    def holds(self, now: datetime) -> bool:
        """Whether it is still to be told: play is stopped, or goes on only later."""
        return self.at is None or now < self.at


def state_of_play(log: Log, event: str) -> StateOfPlay | None:
    """Return the last suspension of an event with what became of it; ``None`` where play was never stopped."""
    return log.records.until_written((state_of_play, event), lambda: _state_of_play(log, event))


def _state_of_play(log: Log, event: str) -> StateOfPlay | None:
    stopped = log.entries(event, kind=SUSPENDED)
    if not stopped:
        return None
    last = stopped[-1]
    since = datetime.fromisoformat(last.told["given_at"])
    how = Suspension(last.content["how"])
    said_so = log.entries(event, kind=RESUMED, after=last.number)
    resumed = [
        one.content for one in holding(one for one in said_so if one.content.get("suspension") == last.id)
    ]
    if not resumed:
        return StateOfPlay(how, since)
    goes_on = max(resumed, key=lambda one: datetime.fromisoformat(one["at"]))
    ready = goes_on.get("in_position_at")
    return StateOfPlay(
        how,
        since,
        datetime.fromisoformat(goes_on["at"]),
        datetime.fromisoformat(ready) if ready else None,
        len(resumed) > 1,
    )
