"""The desk as an application: one course, one event, no state but the address of each page."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from fastapi import FastAPI
from fastapi.staticfiles import StaticFiles

from marram import __version__
from marram.course import load
from marram.course.versions import MapVersions
from marram.demo import COURSE, EVENT
from marram.desk.errors import register
from marram.desk.event import Event, read_event
from marram.desk.pages import ROUTERS
from marram.desk.workplace import HERE, Workplace


def create_app(
    course_path: str | Path | None = None,
    event: Path | Mapping[str, Any] | Event | None = None,
    maps: Path | None = None,
) -> FastAPI:
    """Return the application for one course.

    Args:
        course_path: the course map; ``None`` takes the demonstration course, and its event with it.
        event: the competition: a JSON file, what it holds, or an :class:`Event`; ``None`` for none.
        maps: the folder that keeps versions of the map; ``None``: the map is not edited here.

    Raises:
        BadCourse, InputError: the map or the event cannot be used; every fault is listed.
    """
    if course_path is None:
        course_path, event = COURSE, event or EVENT
    app = FastAPI(
        title="marram", version=__version__, docs_url=None, redoc_url=None, openapi_url="/api/openapi.json"
    )
    app.state.workplace = Workplace(load(course_path), read_event(event))
    app.state.maps = None if maps is None else MapVersions(Path(course_path), maps)
    app.state.by_version = {}
    app.mount("/static", StaticFiles(directory=HERE / "static"), name="static")
    register(app)
    for router in ROUTERS:
        app.include_router(router)
    return app
