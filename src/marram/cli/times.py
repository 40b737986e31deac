"""``marram calendar`` and ``marram sunset``: starting times in calendars, and the last of them before the sun sets."""

from datetime import UTC, date, datetime, time
from hashlib import sha256
from pathlib import Path
from zoneinfo import ZoneInfo

from marram.cli import long_work
from marram.cli.show import print_json
from marram.cli.writing import write_files
from marram.competition.draw.calendar import Appointment, calendar_of
from marram.competition.draw.daylight import last_start, polar_night, sunset
from marram.course.loading import load
from marram.errors import InputError, did_you_mean, shown
from marram.paper.event.on_paper import OnPaper
from marram.said import said, sentences
from marram.services.sheets.event_papers import papers_of_file
from marram.words.texts import clock_words, count_text, long_day_words, text


def zone_named(name: str) -> ZoneInfo:
    """Return a time zone by its name.

    Raises:
        InputError: there is no such zone.
    """
    try:
        return ZoneInfo(name)
    except (KeyError, ValueError, OSError):
        raise InputError(
            said("There is no time zone {name}; give one such as Europe/London.", name=shown(name))
        ) from None


USUAL_MINUTES = 270
"""How long an appointment for a round is where nobody said it (own choice)."""


def write_calendar(
    event: Path,
    file: Path,
    time_zone: str,
    players: list[str],
    round_: int,
    draw: Path | None,
    minutes: int | None,
    change: int,
) -> None:
    """Write the starts of players, or of everybody, into one calendar."""
    zone = zone_named(time_zone)
    sheet = papers_of_file(event, round_=round_, draw=draw).event
    if sheet.day is None:
        raise InputError(said("The day of the round is not known. Give it in the event."))
    lasts = minutes or sheet.found.minutes_in(sheet.round) or USUAL_MINUTES
    made = appointments(sheet, sheet.day, zone, lasts, change)
    faults = [
        sentences(
            said("{name} has no starting time in this round.", name=shown(name)), did_you_mean(name, made)
        )
        for name in players
        if name not in made
    ]
    if not made:
        faults.append(said("No group has a starting time in this round. Draw it first."))
    if faults:
        raise InputError(*faults)
    chosen = [made[name] for name in (players or made)]
    write_files({file: calendar_of(chosen, datetime.now(UTC)).encode()})
    print(count_text("draw.calendar", len(chosen), path=file))


def appointments(
    sheet: OnPaper, day: date, zone: ZoneInfo, minutes: int, change: int
) -> dict[str, Appointment]:
    """Return the start of each player of a round, by name, in the order of the starting sheet."""
    found = {}
    for group in sheet.groups:
        at = datetime.combine(day, time.fromisoformat(group.time), zone)
        where = ", ".join(filter(None, (sheet.found.club, text("draw.tee", tee=group.tee))))
        for name in group.players:
            key = sha256(f"{sheet.name}\n{sheet.round}\n{name}".encode()).hexdigest()[:32]
            called = text("draw.start_of", event=sheet.name, player=name)
            found[name] = Appointment(called, at, minutes, where, key, change)
    return found


def tell_sunset(course: Path, day: str, time_zone: str, minutes: int, as_json: bool) -> None:
    """Print when the sun sets, and when the last group must have started."""
    zone = zone_named(time_zone)
    try:
        on = date.fromisoformat(day)
    except ValueError:
        raise InputError(said("--day is {given}; give a day such as 2025-06-21.", given=shown(day))) from None
    with long_work.shown():
        longitude, latitude = load(course).plane.to_degrees(0.0, 0.0)
    evening, last = sunset(on, latitude, longitude), last_start(on, latitude, longitude, minutes)
    sets = None if evening is None else evening.astimezone(zone)
    starts = None if last is None else last.astimezone(zone)
    if as_json:
        print_json(
            {
                "marram": 1,
                "kind": "sunset",
                "day": on.isoformat(),
                "sunset": None if sets is None else sets.isoformat(timespec="minutes"),
                "last_start": None if starts is None else starts.isoformat(timespec="minutes"),
                "minutes": minutes,
                "polar_night": polar_night(on, latitude, longitude),
            }
        )
    elif polar_night(on, latitude, longitude):
        print(text("draw.polar_night", day=long_day_words(on)))
    elif sets is None or starts is None:
        print(text("draw.no_sunset", day=long_day_words(on)))
    else:
        print(
            text(
                "draw.sunset",
                day=long_day_words(on),
                sunset=clock_words(sets),
                last=clock_words(starts),
                minutes=minutes,
            )
        )
