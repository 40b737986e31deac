"""The first page: the whole course; pick a hole, or tap where the ball lies."""

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.course.versions.map_versions import MapVersions
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.services.marked import without_local_rule
from marram.words.texts import text

router = APIRouter()


@router.get("/")
def start(request: Request) -> HTMLResponse:
    """Show the course and its holes."""
    desk = workplace(request)
    case = desk.read(request)
    state = map_state(desk.course, case, pick="ball", pick_url=case.pick_url("/ball", "ball"))
    maps: MapVersions | None = request.app.state.maps
    return show(
        request,
        "start.html",
        case,
        state,
        title=text("rulings.start.title"),
        marked=without_local_rule(desk.course, case.conditions.local, desk.event.adopted),
        keeps_maps=maps is not None,
        file_changed=maps is not None and maps.file_news() is not None,
    )
