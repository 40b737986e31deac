"""What every page of the desk needs: the course, the event, the templates."""

import hashlib
import json
from collections import OrderedDict
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property, lru_cache
from threading import Lock
from typing import Any

from fastapi import FastAPI, Request
from fastapi.responses import HTMLResponse

from marram import __version__
from marram.course.greens.cut_holes import with_holes_cut
from marram.course.model import Course, Hole
from marram.course.versions.hole_days import HoleDays, HoleVersion
from marram.course.versions.map_versions import MapVersions, Version
from marram.desk.competition.conditions import COOKIE
from marram.desk.log.begun import begun_here, keep_begun
from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.desk.rulings.story import choosing, other_incidents
from marram.desk.shell.back import back_of, keep_back, to_a_case
from marram.desk.shell.map_drawing import course_drawing
from marram.desk.shell.map_parts import WHOLE, MapParts, part_of
from marram.desk.shell.templating import templates
from marram.errors import InputError
from marram.relief.place.place_facts import PlaceFacts
from marram.rules.facts.green import wrong_green_interference
from marram.rules.facts.relief import no_play_zone_interference
from marram.rules.incidents import incident
from marram.rules.incidents.incident import Incident
from marram.services.cases.case import MadeWith
from marram.services.cases.event import Event
from marram.services.cases.flag import course_of
from marram.services.cases.made_with import made_with
from marram.services.ground.interference import NO_PLAY_ZONE, WRONG_GREEN

MOST_MAPS = 8
"""How many maps are held ready at a time, of different days or versions (own choice; one takes some megabytes)."""


@dataclass(frozen=True)
class Workplace:
    """The course and the event a desk serves."""

    course: Course
    events: Callable[[], Event]
    """What gives the event as its conditions stand."""
    map_version: Version | None = None
    """The version of the map, where versions are kept."""
    map_since: date | None = None
    """The first day on which the version has this map; ``None`` for the map as its file holds it."""
    mapped: "Workplace | None" = None
    """The workplace with the holes that the map has, where a case shows the flagstick of one that it lacks."""
    holes: HoleVersion | None = None
    """The hole locations of the day, where some were set: the holes of ``course`` are cut there."""

    @property
    def event(self) -> Event:
        """The event as its conditions stand."""
        return self.events()

    @property
    def map_told(self) -> dict[str, Any]:
        """The version of the map and of the day's hole locations, as every JSON answer that rests on them names it."""
        version, since = self.map_version, self.map_since
        return {
            "map_version": version.number if version else None,
            "map_in_force_from": since.isoformat() if since else None,
            "map_saved_by": version.who if version and since else None,
            "holes_version": self.holes.number if self.holes else None,
            "holes_saved_by": self.holes.who if self.holes else None,
        }

    @property
    def made_with(self) -> MadeWith:
        """What a case is written by at this desk."""
        version = self.map_version
        return made_with(version.number if version else None, self.map_since if version else None)

    @cached_property
    def drawing(self) -> bytes:
        """The course as GeoJSON for the map on the screen, made once."""
        if self.mapped is not None:
            return self.mapped.drawing
        return json.dumps(course_drawing(self.course), separators=(",", ":")).encode()

    @cached_property
    def drawing_tag(self) -> str:
        """A tag that changes with the drawing, so that a phone fetches it once."""
        return f'"{hashlib.sha256(self.drawing).hexdigest()[:20]}"'

    @cached_property
    def map_parts(self) -> MapParts:
        """The drawing in parts, for a phone that fetches first what it shows."""
        return MapParts(self.course)

    def map_addresses(self, hole: int | None, day: date) -> dict[str, str]:
        """Return where the map of a page is fetched: the part that it shows first, and the whole drawn finely."""
        if self.mapped is not None:
            return self.mapped.map_addresses(hole if hole in self.mapped.course.holes else None, day)
        tag = self.drawing_tag.strip('"')
        return {
            name: f"/api/course/{tag}/{part}?on={day.isoformat()}"
            for name, part in (("first", part_of(hole)), ("whole", WHOLE))
        }

    def read(self, request: Request) -> CaseAddress:
        """Return the case that the address of this request holds."""
        return read_address(request.query_params.multi_items(), request.cookies.get(COOKIE, ""), self.event)

    def hole(self, case: CaseAddress) -> Hole | None:
        """Return the hole of a case, or ``None`` when none is chosen."""
        return None if case.hole is None else self.course.hole(case.hole)


def workplace(request: Request) -> Workplace:
    """Return the workplace of the desk that got this request.

    It stands on the map in force on the day of its case, with the holes cut where they were set for that day.
    """
    found: Workplace = request.app.state.workplace
    try:
        case = found.read(request)
    except InputError:  # the page itself says what is wrong with its address
        return found
    return with_flag(workplace_on(request, case.conditions.on), case)


def with_flag(found: Workplace, case: CaseAddress) -> Workplace:
    """Return the workplace with the hole of a case cut where its flagstick stands, if the case says so."""
    if case.flag is None or case.hole is None:
        return found
    return replace(found, course=course_of(found.course, case), mapped=found)


def workplace_on(request: Request, day: date) -> Workplace:
    """Return the workplace of the desk that got this request, on the map and the holes of a day.

    A page that only shows something stands on one map throughout, which is looked up once.
    """
    if request.method != "GET":
        return workplace_of(request.app, day)
    known: dict[date, Workplace] = request.scope.setdefault("marram.workplaces", {})
    if day not in known:
        known[day] = workplace_of(request.app, day)
    return known[day]


def workplace_of(app: FastAPI, day: date) -> Workplace:
    """Return the workplace of a desk, on the map and the holes of a day."""
    found: Workplace = app.state.workplace
    maps: MapVersions | None = app.state.maps
    kept: HoleDays | None = app.state.hole_days
    if maps is not None:
        here = maps.map_on(day)
        on_map: Callable[[int, date], Workplace] = app.state.on_map
        found = on_map(here.version.number, here.since)
    holes = kept.latest(day) if kept is not None else None
    if holes is None:
        return found
    cut: Cut = app.state.with_holes
    return cut(found, holes)


Cut = Callable[["Workplace", HoleVersion], "Workplace"]


def with_holes() -> Cut:
    """Return what gives a workplace with the holes cut as set for a day; it holds the last few ready."""
    ready: OrderedDict[tuple[int, date, int], tuple[Workplace, Workplace]] = OrderedDict()
    lock = Lock()

    def cut(found: Workplace, holes: HoleVersion) -> Workplace:
        key = (id(found), holes.day, holes.number)
        with lock:
            before = ready.get(key)
            if before is None or before[0] is not found:
                course = with_holes_cut(found.course, holes.places)
                before = ready[key] = found, replace(found, course=course, holes=holes)
                while len(ready) > MOST_MAPS:
                    ready.popitem(last=False)
            return before[1]

    return cut


def workplaces(found: Workplace, maps: MapVersions) -> Callable[[int, date], Workplace]:
    """Return what gives the workplace on the map of a version, by number, since a day; it holds the last few ready."""

    @lru_cache(maxsize=MOST_MAPS)
    def on_map(number: int, since: date) -> Workplace:
        version = maps.versions()[number - 1]
        course = maps.course(number, since)
        told = since if version.saved_at else None
        return replace(found, course=course, map_version=version, map_since=told)

    return on_map


def hints(case: CaseAddress | None, place: PlaceFacts | None) -> list[Incident]:
    """Return incidents that the map points at and nobody has chosen: a ball in a no play zone or on a wrong green is easily missed."""
    if case is None or place is None or case.conditions.former:  # the former Rules are for teaching only
        return []
    found = (
        (NO_PLAY_ZONE, no_play_zone_interference.name),
        (WRONG_GREEN, wrong_green_interference.name),
    )
    return [incident(what) for what, fact in found if fact in place.facts and case.what != what]


def show(
    request: Request,
    template: str,
    case: CaseAddress | None,
    map_state: Mapping[str, Any] | None = None,
    status: int = 200,
    **context: Any,
) -> HTMLResponse:
    """Return a page.

    Args:
        request: the request it answers.
        template: the name of the template.
        case: the case so far; ``None`` on error pages.
        map_state: what the map is to show; ``None`` on pages without a map.
        status: the HTTP status.
        context: what else the template needs.
    """
    try:
        desk = workplace(request)
    except InputError:  # a version of the map cannot be read: this is the page that says so
        desk = request.app.state.workplace
    if map_state is not None and case is not None:
        map_state = {**map_state, "course": desk.map_addresses(map_state["hole"], case.conditions.on)}
    here = request.url.path + (f"?{request.url.query}" if request.url.query else "")
    back = back_of(request)
    begun = begun_here(request, case)
    answer = templates().TemplateResponse(
        request,
        template,
        {
            "back_url": back,
            "back_to_case": to_a_case(back),
            "case": case,
            "event": desk.event,
            "course": desk.course,
            "map_version": desk.map_version,
            "map_since": desk.map_since,
            "holes_cut": desk.holes,
            "version": __version__,
            "here": here,
            "map_state": map_state,
            "hints": hints(case, context.get("place")),
            "status": status,
            "others": other_incidents(case) if case else (),
            "choosing": choosing,
            "begun": begun,
            "keeps_log": request.app.state.kept_here is not None,
            **context,
        },
        status_code=status,
    )
    keep_back(request, answer)
    keep_begun(request, case, begun, str(context.get("title", "")), answer)
    return answer
