"""Where does the ball lie? The official taps the map, or uses the phone's position."""

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.desk.rulings.consultation import consult
from marram.desk.rulings.story import last_places
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.words.texts import text

router = APIRouter()


@router.get("/ball")
def ball(request: Request) -> HTMLResponse:
    """Show one hole; once the ball is placed, say what the map knows of the place."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case)
    state = map_state(
        desk.course, case, hole=found.hole, pick="ball", pick_url=case.pick_url("/ball", "ball")
    )
    return show(
        request,
        "ball.html",
        case,
        state,
        title=text("rulings.ball.title"),
        hole=found.hole,
        place=found.place,
        same_place=last_places(case),
        keeps_maps=request.app.state.maps is not None,
        next_path="/case" if case.what else "/what",
    )
