"""The rulings of an event as the page of a day needs them: each entry is read once, for entries never change."""

from collections import defaultdict
from dataclasses import dataclass
from datetime import date, datetime, tzinfo
from threading import Lock

from marram.desk.log.titles import title_of
from marram.records.entry import Kept
from marram.records.log import Log
from marram.services.log.log import RULING
from marram.services.log.moments import happened_at
from marram.words.language import language


@dataclass(frozen=True, slots=True)
class DayRuling:
    """A ruling on the page of its day.

    Attributes:
        number: of its entry.
        title: what happened, in words.
        hour: the hour it was given in, 0 to 23, by the clocks of the club.
        place: longitude and latitude in degrees; ``None`` where they are not known.
    """

    number: int
    title: str
    hour: int
    place: tuple[float, float] | None


class DayRulings:
    """What was read of the log of an event so far; each look reads only what was added since.

    Args:
        log: the log.
        event: whose entries.
        zone: of the club's clocks; ``None``: that of this machine.
    """

    def __init__(self, log: Log, event: str, zone: tzinfo | None) -> None:
        self._log, self._event, self._zone = log, event, zone
        self._lock = Lock()
        self._forget("")

    def on(self, day: date) -> list[DayRuling]:
        """Return the rulings of a day of play, by number."""
        with self._lock:
            self._read_on()
            return list(self._found.get(day, ()))

    def _forget(self, spoken: str) -> None:
        self._spoken = spoken
        self._last: Kept | None = None
        self._found: dict[date, list[DayRuling]] = defaultdict(list)

    def _read_on(self) -> None:
        before = self._last
        there = before and self._log.numbered(self._event, before.number)
        if self._spoken != language().code or (before and (not there or there.digest != before.digest)):
            self._forget(language().code)  # other words, or other records were put in the place of these
        for one in self._log.entries(self._event, after=self._last.number if self._last else 0, kind=RULING):
            self._last = one
            if (day := _played_on(one)) is not None:
                self._found[day].append(_of(one, self._zone))


def _of(entry: Kept, zone: tzinfo | None) -> DayRuling:
    place = entry.told.get("place")
    at = (float(place["longitude"]), float(place["latitude"])) if place else None
    return DayRuling(entry.number, title_of(entry), happened_at(entry).astimezone(zone).hour, at)


def _played_on(entry: Kept) -> date | None:
    case = entry.content.get("case")
    try:
        return datetime.fromisoformat(case["played_on"]).date() if isinstance(case, dict) else None
    except (KeyError, ValueError):
        return None


__all__ = ["DayRuling", "DayRulings"]
