"""Times of the records as people read them, on the clocks of the machine."""

from datetime import datetime

from marram.words.texts import clock_words, short_day_words, text


def moment(written: str) -> str:
    """Return a time, ISO 8601 in UTC, as day and time."""
    found = datetime.fromisoformat(written).astimezone()
    return text("days.moment", day=short_day_words(found.date()), time=clock_words(found))
