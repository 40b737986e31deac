"""Who uses this device, and which device it is."""

from datetime import UTC, datetime, tzinfo

from fastapi import Request, Response

from marram.desk.log.kept import KeptHere
from marram.desk.people.roles import LEADING
from marram.desk.people.who import who_asks
from marram.errors import InputError
from marram.records.entry import ident, new_ident
from marram.words import texts

OFFICIAL = "official"
"""The cookie that remembers who used this device last, by identifier, where nobody is signed in."""
DEVICE = "device"
"""The cookie that tells one device from another, so that none overwrites what another holds."""
GROUP = "group"
"""The cookie that remembers the group ruled for last."""
A_DAY = 24 * 3600


def person_here(request: Request) -> str:
    """Return who uses this device: the one who is signed in, else the one named last; empty where nobody is known."""
    return who_asks(request).person or _ident(request, OFFICIAL)


def signed_in_here(request: Request) -> bool:
    """Whether somebody is signed in, so that nobody has to be named."""
    return who_asks(request).person is not None


def device_here(request: Request) -> str:
    """Return the identifier of this device; a new one where it has none."""
    return _ident(request, DEVICE) or new_ident()


def group_here(request: Request) -> str:
    """Return the group ruled for last on this device; empty where there is none."""
    return _ident(request, GROUP)


def remember(answer: Response, **what: str) -> None:
    """Have the device remember for a day what is not empty, by the name of its cookie."""
    for name, value in what.items():
        if value:
            answer.set_cookie(name, value, max_age=A_DAY, httponly=True, samesite="strict")


def can_decide(request: Request, kept: KeptHere) -> bool:
    """Whether whoever uses this device answers second opinions: the chief referee, or anybody at an open desk."""
    who = who_asks(request)
    if not who.open:
        return who.role in LEADING
    return not person_here(request) or person_here(request) in {one.id for one in kept.chiefs()}


def moment_words(moment: str, zone: tzinfo | None) -> str:
    """Return a moment, ISO 8601, as the clocks of a zone show it: the time, with the day where it is another.

    Args:
        moment: the moment.
        zone: the zone, such as the club's (`KeptHere.zone`); ``None``: that of this machine.
    """
    return texts.moment_words(
        datetime.fromisoformat(moment).astimezone(zone), datetime.now(UTC).astimezone(zone).date()
    )


def now() -> datetime:
    """Return the time, in UTC."""
    return datetime.now(UTC)


def _ident(request: Request, cookie: str) -> str:
    try:
        return ident(request.cookies.get(cookie, ""), cookie)
    except InputError:
        return ""
