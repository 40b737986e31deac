"""The desk as an application: one course, one event, no state but the address of each page."""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from fastapi import Depends, FastAPI

from marram import __version__
from marram.course import load
from marram.course.mending.keeping import newest_usable
from marram.course.versions.hole_days import HoleDays
from marram.course.versions.map_versions import MapVersions
from marram.demo import COURSE, EVENT, GREENS
from marram.desk.course.mending import register_mending
from marram.desk.live.hub import Hub
from marram.desk.log.kept import KeptHere
from marram.desk.people.door import Door
from marram.desk.people.doorkeeper import Doorkeeper, signed
from marram.desk.people.routes import routes_of
from marram.desk.rooms import ROUTERS
from marram.desk.shell.assets import DESK, ROOMS, AsItLies, ForEver
from marram.desk.shell.compressing import Compressing
from marram.desk.shell.errors import register
from marram.desk.shell.guard import Guard
from marram.desk.shell.placing import Placing
from marram.desk.shell.workplace import Workplace, with_holes, workplaces
from marram.desk.teaching.closed_book import ClosedBook
from marram.services.cases.event import Event, read_event
from marram.services.ground.holes import green_slopes

if TYPE_CHECKING:
    from marram.desk.secure.handing_out import HandedOut


def create_app(
    course_path: str | Path | None = None,
    event: Path | Mapping[str, Any] | Event | None = None,
    maps: Path | None = None,
    elevations: Sequence[Path] = (),
    elevations_crs: str | None = None,
    *,
    hosts: Sequence[str] = (),
    kept_here: KeptHere | None = None,
    door: Door | None = None,
    reached_at: str | None = None,
    handed_out: "HandedOut | None" = None,
) -> FastAPI:
    """Return the application for one course.

    Args:
        course_path: the course map; ``None`` takes the demonstration course, and its event with it.
        event: the competition: a JSON file, what it holds, or an :class:`Event`; ``None`` for none.
        maps: the folder that keeps versions of the map, which a map that cannot be used yet needs to be mended;
            ``None``: the map is not edited here.
        elevations: files with elevations of the greens, for hole locations; see ``docs/course-map.md``.
        elevations_crs: their coordinate system, where they are not in degrees.
        hosts: names and addresses the desk is reached by, beside those of this machine; others are refused.
        kept_here: the records it works with, in place of course map, event and folder.
        door: where people sign in; ``None``: whoever reaches the desk may do everything.
        reached_at: the address others reach it by, ending in a slash, for links that let people join.
        handed_out: where phones get the authority that makes the connection secure.

    Raises:
        BadCourse: the map cannot be used, and no versions are kept in which it could be mended.
        InputError: the map cannot be read at all, or the event cannot be used; every fault is listed.
    """
    if course_path is None and kept_here is None:
        course_path, event, elevations = COURSE, event or EVENT, elevations or (GREENS,)
    app = FastAPI(
        title="marram",
        version=__version__,
        docs_url=None,
        redoc_url=None,
        openapi_url="/api/openapi.json",
        dependencies=[Depends(signed)],
    )
    app.state.door, app.state.reached_at, app.state.handed_out = door, reached_at, handed_out
    kept, hole_days = _kept_by_day(course_path, maps, kept_here)
    course = load(course_path or COURSE, lines_needed=False) if kept is None else newest_usable(kept)
    alone = read_event(None if kept_here else event)
    app.state.workplace = Workplace(course, (lambda: kept_here.event) if kept_here else lambda: alone)
    app.state.kept_here = kept_here
    app.state.drawn_beside = None
    app.state.live = None if kept_here is None else Hub(kept_here)
    app.state.maps = kept
    app.state.on_map = None if kept is None else workplaces(app.state.workplace, kept)
    app.state.with_holes = with_holes()
    app.state.drafts = {}
    app.state.course_file = None if course_path is None else Path(course_path)
    app.state.hole_days = hole_days
    app.state.elevations, app.state.elevations_crs = tuple(elevations), elevations_crs
    green_slopes(app.state.workplace.course, elevations, elevations_crs, None)  # says now what cannot be read
    for room in ROOMS:
        if (folder := DESK / room / "static").is_dir():
            app.mount(f"/static/{room}", AsItLies(directory=folder), name=f"static-{room}")
            app.mount(f"/static/{{version}}/{room}", ForEver(room), name=f"kept-{room}")
    register(app)
    app.add_middleware(ClosedBook)
    app.add_middleware(Doorkeeper)
    app.add_middleware(Placing)
    app.add_middleware(Compressing)
    app.add_middleware(Guard, hosts=hosts)
    register_mending(app)
    for router in ROUTERS:
        app.include_router(router)
    app.state.routes = routes_of(app, ROUTERS)
    return app


def _kept_by_day(
    course_path: str | Path | None, maps: Path | None, kept_here: KeptHere | None
) -> tuple[MapVersions | None, HoleDays | None]:
    """Return where map versions and hole locations are kept by day; ``None`` where they are not."""
    if kept_here is not None:
        return kept_here.maps(), kept_here.holes()
    if maps is None or course_path is None:
        return None, None
    return MapVersions(Path(course_path), maps), HoleDays(Path(maps) / "hole-locations")
