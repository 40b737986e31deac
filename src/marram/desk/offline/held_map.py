"""The course map of a day for a phone, compressed as it is sent: made once for a map, and kept as long as the map is."""

from datetime import date
from threading import Lock

from marram.desk.offline.held_book import Held, compressed
from marram.desk.shell.workplace import Workplace
from marram.services.offline.course_map import map_bytes
from marram.words.language import language

_LOCK = Lock()


def held_map(desk: Workplace, day: date) -> Held:
    """Return the map that a desk works on for a day; the first to ask waits until it is written."""
    key = (held_map, language().code, day)
    with _LOCK:
        if key not in desk.course.kept:
            desk.course.kept[key] = compressed(
                map_bytes(desk.course, {**desk.map_told, "on": day.isoformat()})
            )
        found: Held = desk.course.kept[key]
    return found


__all__ = ["held_map"]
