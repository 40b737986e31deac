"""When something happened, where the clock of the device and that of the desk do not go together; an entry keeps both times."""

from datetime import datetime, timedelta

from marram.records.entry import Kept

SAME_TIME = timedelta(minutes=10)
"""How far the clock of a device and that of the desk are apart before it counts (own choice)."""

DEVICE_AHEAD = "device_ahead"
"""What the content of an entry says of it: by how many seconds the device's clock was ahead of the desk's as it arrived."""


def device_ahead(sent_at: datetime | None, now: datetime) -> int | None:
    """Return by how many seconds a device's clock is ahead of the desk's; ``None``: not told, or they go together.

    Args:
        sent_at: the time by the device's clock as it sent the entry.
        now: the time by the desk's clock as it arrived.
    """
    if sent_at is None or sent_at.tzinfo is None or abs(sent_at - now) <= SAME_TIME:
        return None
    return round((sent_at - now).total_seconds())


def happened_at(entry: Kept) -> datetime:
    """Return when an entry was given, by the desk's clock as far as it is known.

    What the device said is put right by how far its clock was off as the entry arrived. What would lie after the arrival
    cannot be: then the arrival counts.
    """
    given = datetime.fromisoformat(entry.told["given_at"])
    kept = datetime.fromisoformat(entry.recorded_at)
    off = entry.content.get(DEVICE_AHEAD) if isinstance(entry.content, dict) else None
    if isinstance(off, int):
        given -= timedelta(seconds=off)
    return kept if given > kept + SAME_TIME else given
