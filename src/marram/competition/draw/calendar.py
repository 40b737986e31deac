"""A player's starting time as iCalendar (RFC 5545)."""

from datetime import UTC, datetime, timedelta

LINE = 75
"""Octets of a line at most; longer ones are folded (RFC 5545, 3.1)."""


def calendar(
    name: str, starts_at: datetime, *, minutes: int, where: str, key: str, made_at: datetime, change: int = 0
) -> str:
    """Return a calendar with one event.

    Args:
        name: what the event is called.
        starts_at: with its time zone.
        minutes: how long it takes.
        where: the place.
        key: of the event in all its versions; a calendar that has it already takes a later change over.
        made_at: with its time zone.
        change: 0 at first, one more with each change.
    """
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//marram//starting times//EN",
        "BEGIN:VEVENT",
        f"UID:{_text(key)}",
        f"SEQUENCE:{change}",
        f"DTSTAMP:{_moment(made_at)}",
        f"DTSTART:{_moment(starts_at)}",
        f"DTEND:{_moment(starts_at + timedelta(minutes=minutes))}",
        f"SUMMARY:{_text(name)}",
        f"LOCATION:{_text(where)}",
        "END:VEVENT",
        "END:VCALENDAR",
    ]
    return "".join(f"{_folded(line)}\r\n" for line in lines)


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
