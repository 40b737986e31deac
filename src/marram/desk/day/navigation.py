"""The one navigation: the rooms that a role finds, in the order of the hour, and which of them one is in."""

from dataclasses import dataclass
from datetime import datetime

from fastapi import Request

from marram.desk.day.hour import hour_at
from marram.desk.log.kept import KeptHere
from marram.desk.people.hours import BEFORE, HOURS
from marram.desk.people.rights import ROOMS, Room
from marram.desk.people.who import who_asks
from marram.errors import InputError
from marram.records.starting_sheet import groups, rounds, time_zone
from marram.services.day.round_of_day import now_at

COOKIE = "marram_hour"
"""The cookie that holds the hour somebody chose, where the clock is not to decide."""

LAST = 99
SHOWN = 4
"""Rooms that stand side by side; the others open below (own choice: thumb-sized at 320 px)."""


@dataclass(frozen=True)
class Place:
    """A room in the navigation.

    Attributes:
        name: its name.
        url: its first page.
        here: whether one is in it.
    """

    name: str
    url: str
    here: bool = False


@dataclass(frozen=True)
class Navigation:
    """The navigation of a page.

    Attributes:
        first: the rooms that stand side by side.
        more: the others.
        hour: the hour they are ordered by.
        signed_in: whether somebody is signed in.
    """

    first: tuple[Place, ...]
    more: tuple[Place, ...]
    hour: str
    signed_in: bool


def rooms_for(role: str, hour: str, rooms: tuple[Room, ...] = ROOMS) -> list[Room]:
    """Return the rooms of a role, in the order of an hour."""
    found = [one for one in rooms if one.for_role(role)]
    return sorted(found, key=lambda one: one.order.get(hour, LAST))


def navigation(request: Request) -> Navigation | None:
    """Return the navigation of a page; ``None`` where there is one room only: a desk without records, nobody signed in."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None:
        return None
    who = who_asks(request)
    try:
        hour = hour_of(request, kept)
    except InputError:  # the records cannot be read: the page that says so still stands
        hour = BEFORE
    rooms = rooms_for(who.role, hour)
    if request.app.state.door is None:  # nobody signs in at an open desk
        rooms = [one for one in rooms if one.name != "people"]
    if len(rooms) < 2:
        return None
    here = room_of(request)
    places = [Place(one.name, one.entry, one.name == here) for one in rooms]
    return Navigation(tuple(places[:SHOWN]), tuple(places[SHOWN:]), hour, who.person is not None)


def room_of(request: Request) -> str:
    """Return the name of the room that a page stands in; empty where it stands in none."""
    route = request.app.state.routes.asked(request.method, request.url.path)
    return next((one.name for one in ROOMS if route in one.rights), "")


def hour_of(request: Request, kept: KeptHere) -> str:
    """Return the hour: the one somebody chose on this device, else what the clock says."""
    chosen = request.cookies.get(COOKIE, "")
    return chosen if chosen in HOURS else hour_unchosen(request, kept)


def hour_unchosen(request: Request, kept: KeptHere) -> str:
    """Return the hour where nobody chose one: what the desk was started in, as a demonstration is, or else by the clock."""
    started_in: str | None = getattr(request.app.state, "hour", None)
    return started_in or hour_by_clock(kept)


def hour_by_clock(kept: KeptHere, now: datetime | None = None) -> str:
    """Return the hour of the event by the clock of the club."""
    moment = now or club_time(kept)
    known = rounds(kept.records, kept.event_id)
    today = [one for one in known if one.day == moment.date()]
    starts = [each.starts_at for one in today for each in groups(kept.records, one.id)]
    return hour_at(moment, [one.day for one in known if one.day], [one for one in starts if one])


def club_time(kept: KeptHere) -> datetime:
    """Return the time on the clocks of the club; on those of the machine where its zone is not known."""
    return now_at(time_zone(kept.records, kept.event_id))
