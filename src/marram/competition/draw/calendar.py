"""Starting times as iCalendar (RFC 5545)."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

LINE = 75
"""Octets of a line at most; longer ones are folded (RFC 5545, 3.1)."""


@dataclass(frozen=True, slots=True)
class Appointment:
    """A start as it stands in a calendar.

    Attributes:
        name: what it is called.
        starts_at: with its time zone.
        minutes: how long it takes.
        where: the place.
        key: of it in all its versions; a calendar that has it already takes a later change over.
        change: 0 at first, one more with each change.
    """

    name: str
    starts_at: datetime
    minutes: int
    where: str
    key: str
    change: int = 0


def calendar(
    name: str, starts_at: datetime, *, minutes: int, where: str, key: str, made_at: datetime, change: int = 0
) -> str:
    """Return a calendar with one start; see :class:`Appointment`, and ``made_at`` of :func:`calendar_of`."""
    return calendar_of([Appointment(name, starts_at, minutes, where, key, change)], made_at)


def calendar_of(appointments: Iterable[Appointment], made_at: datetime) -> str:
    """Return a calendar with starts in the order given.

    Args:
        appointments: one at least, as the standard asks.
        made_at: with its time zone.
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//marram//starting times//EN"]
    for one in appointments:
        lines += [
            "BEGIN:VEVENT",
            f"UID:{_text(one.key)}",
            f"SEQUENCE:{one.change}",
            f"DTSTAMP:{_moment(made_at)}",
            f"DTSTART:{_moment(one.starts_at)}",
            f"DTEND:{_moment(one.starts_at + timedelta(minutes=one.minutes))}",
            f"SUMMARY:{_text(one.name)}",
            f"LOCATION:{_text(one.where)}",
            "END:VEVENT",
        ]
    return "".join(f"{_folded(line)}\r\n" for line in (*lines, "END:VCALENDAR"))


def _moment(moment: datetime) -> str:
    return moment.astimezone(UTC).strftime("%Y%m%dT%H%M%SZ")


def _text(words: str) -> str:
    for plain, escaped in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\r\n", "\\n"), ("\n", "\\n")):
        words = words.replace(plain, escaped)
    return words


def _folded(line: str) -> str:
    parts, octets = [""], 0
    for letter in line:
        size = len(letter.encode())
        if octets + size > LINE:
            parts.append(" ")
            octets = 1
        parts[-1] += letter
        octets += size
    return "\r\n".join(parts)
