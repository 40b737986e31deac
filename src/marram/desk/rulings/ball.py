"""Where does the ball lie? The official taps the map, or uses the phone's position."""

from dataclasses import replace

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.course.model import Course
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import Consultation, consult
from marram.desk.rulings.shown_flags import keep_flag
from marram.desk.rulings.story import choosing, last_places
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.relief.place.edges_near import EdgeNear, edges_near
from marram.rules.incidents.incident import Incident
from marram.services.cases.flag import flag_missing
from marram.services.cases.likely import likely_here
from marram.services.ground.lies import to_plane
from marram.words.texts import text

router = APIRouter()

SHOWN = 40.0
"""Metres: the way to an edge farther off than this is told, but not drawn (a choice of ours)."""


@router.get("/ball")
def ball(request: Request) -> Response:
    """Show one hole; once the ball is placed, say what the map knows of the place."""
    desk = workplace(request)
    case = desk.read(request)
    if flag_missing(desk.course, case):
        return RedirectResponse(case.url("/flag"), 303)
    if case.hole is None and not desk.course.holes:  # which hole it is nothing on the map tells
        return RedirectResponse(case.url("/flag", places={}), 303)
    found = consult(desk.course, case)
    edges = _edges(desk.course, case, found)
    state = map_state(
        desk.course,
        case,
        hole=found.hole,
        pick="ball",
        pick_url=case.pick_url("/ball", "ball"),
        edges=[one for one in edges if one.metres <= SHOWN],
    )
    page = show(
        request,
        "ball.html",
        case,
        state,
        title=text("rulings.ball.title"),
        hole=found.hole,
        place=found.place,
        edges=edges,
        likely=_likely(desk.course, found),
        same_place=last_places(case),
        keeps_maps=request.app.state.maps is not None,
        next_path="/case" if case.what else "/what",
    )
    return keep_flag(page, request, case)


def _edges(course: Course, case: CaseAddress, found: Consultation) -> tuple[EdgeNear, ...]:
    """Return the edges near the ball, once it is placed."""
    if found.hole is None or found.place is None:
        return ()
    ball = to_plane(course, case.places["ball"])
    return edges_near(course, found.hole.number, ball, case.accuracy.get("ball", 0.0))


def _likely(course: Course, found: Consultation) -> list[tuple[str, Incident]]:
    """Return the addresses of the incidents that are likely where the ball lies, while none is chosen."""
    case, place = found.case, found.place
    if place is None or found.hole is None or case.what or case.conditions.former:
        return []
    here = replace(case, hole=found.hole.number)
    ball = to_plane(course, case.places["ball"])
    return [(choosing(here, one.name), one) for one in likely_here(course, ball, place.area, case.conditions)]
