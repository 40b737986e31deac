"""The first page: the whole course; pick a hole, or tap where the ball lies."""

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.course.checks.hole_checks import missing_numbers
from marram.course.versions.map_versions import MapVersions
from marram.desk.course.mending import MEND, lines_to_mend
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.services.cases.places import FLAG
from marram.services.ground.marked import without_local_rule
from marram.words.texts import text

router = APIRouter()


@router.get("/")
def start(request: Request) -> Response:
    """Show the course and its holes."""
    desk = workplace(request)
    case = desk.read(request)
    maps: MapVersions | None = request.app.state.maps
    mapped = bool(desk.course.holes)  # else a ball alone tells no hole
    if not mapped and maps is not None and lines_to_mend(request, maps, case.conditions.on):
        return RedirectResponse(MEND, 303)
    state = map_state(
        desk.course, case, pick="ball" if mapped else None, pick_url=case.pick_url("/ball", "ball")
    )
    return show(
        request,
        "start.html",
        case,
        state,
        title=text("rulings.start.title"),
        marked=without_local_rule(desk.course, case.conditions.local, desk.event.adopted),
        missing=bool(missing_numbers(desk.course.holes)),
        without_hole=case.pairs(without=("hole", FLAG)),
        keeps_maps=maps is not None,
        file_changed=maps is not None and maps.file_news() is not None,
    )
