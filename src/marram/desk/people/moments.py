"""Times of the records as people read them, on the clocks of the club."""

from collections.abc import Callable
from datetime import datetime

from marram.records.database import Records
from marram.records.starting_sheet import time_zone
from marram.services.day.round_of_day import zone_named
from marram.words.texts import clock_words, short_day_words, text


def moments_of(records: Records, event: str) -> Callable[[str | datetime], str]:
    """Return what writes a time, ISO 8601, as day and time on the clocks of an event's club; of the machine where its zone is unknown."""
    zone = zone_named(time_zone(records, event))

    def moment(written: str | datetime) -> str:
        known = datetime.fromisoformat(written) if isinstance(written, str) else written
        found = known.astimezone(zone)
        return text("days.moment", day=short_day_words(found.date()), time=clock_words(found))

    return moment
