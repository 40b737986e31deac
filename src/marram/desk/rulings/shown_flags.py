"""Flagsticks shown on this device, by day and hole: offered again in the next case on a hole that the map lacks, never taken unasked."""

import re

from fastapi import Request
from fastapi.responses import Response

from marram.course.model import Course
from marram.desk.rulings.case_address import CaseAddress
from marram.services.cases.places import Degrees

COOKIE = "marram_flags"
DAY = 24 * 3600
"""Seconds: hole locations are of one day."""
MOST = 36
"""So many flagsticks are kept; older ones are forgotten first."""
NEAR = 2000.0
"""Metres: a flagstick farther from the map is another course's (own choice)."""

_ONE = re.compile(r"(\d{4}-\d\d-\d\d)~(\d{1,3})~(-?\d{1,3}\.\d{1,8})~(-?\d{1,3}\.\d{1,8})")
_Key = tuple[str, int]


def flag_shown(request: Request, course: Course, case: CaseAddress) -> Degrees | None:
    """Return where this device was last shown the flagstick of the hole of a case on its day, if it was."""
    if case.hole is None:
        return None
    found = _kept(request).get((case.conditions.on.isoformat(), case.hole))
    if found is None or abs(found[0]) > 90 or abs(found[1]) > 180:
        return None
    x, y = course.plane.to_metres(found[1], found[0])
    return found if abs(x) < NEAR + _reach(course) and abs(y) < NEAR + _reach(course) else None


def keep_flag(response: Response, request: Request, case: CaseAddress) -> Response:
    """Keep the flagstick that a case shows, for the next case on that hole and day on this device."""
    if case.flag is None or case.hole is None:
        return response
    key = (case.conditions.on.isoformat(), case.hole)
    flags = {known: at for known, at in _kept(request).items() if known != key} | {key: case.flag}
    written = [f"{day}~{hole}~{at[0]:.7f}~{at[1]:.7f}" for (day, hole), at in list(flags.items())[-MOST:]]
    response.set_cookie(COOKIE, "!".join(written), max_age=DAY, httponly=True, samesite="lax")
    return response


def _kept(request: Request) -> dict[_Key, Degrees]:
    kept = (_ONE.fullmatch(one) for one in request.cookies.get(COOKIE, "").split("!"))
    return {(one[1], int(one[2])): (float(one[3]), float(one[4])) for one in kept if one}


def _reach(course: Course) -> float:
    """Return how far the map reaches from the origin of its plane, metres."""
    return max((abs(edge) for one in course.features for edge in one.geometry.bounds), default=0.0)
