"""What happened? The list of incidents by theme, with a search box."""

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.desk.consultation import consult
from marram.desk.listing import listing
from marram.desk.map_state import map_state
from marram.desk.workplace import show, workplace

router = APIRouter()


@router.get("/what")
def what(request: Request, q: str = "") -> HTMLResponse:
    """Show the incidents; those likely for the ball's place come first."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case)
    area = found.place.area if found.place else None
    return show(
        request,
        "what.html",
        case,
        map_state(desk.course, case, hole=found.hole),
        title="What happened?",
        hole=found.hole,
        place=found.place,
        q=q,
        themes=listing(q, area, placed=found.place is not None),
    )
