"""What happened? The list of incidents by theme, with a search box."""

from dataclasses import replace

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse

from marram.desk.rulings.consultation import consult
from marram.desk.rulings.teaching import is_taught
from marram.desk.shell.listing import Theme, listing
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.services.conditions import Conditions
from marram.words.texts import text

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
        title=text("rulings.what.title"),
        hole=found.hole,
        place=found.place,
        q=q,
        themes=_covered(listing(q, area, placed=found.place is not None), case.conditions),
    )


def _covered(themes: tuple[Theme, ...], conditions: Conditions) -> tuple[Theme, ...]:
    """Return the incidents that are ruled on under these conditions: before 2019 only those for teaching."""
    if not conditions.former:
        return themes
    kept = (
        replace(theme, incidents=tuple(one for one in theme.incidents if is_taught(one)), open=True)
        for theme in themes
    )
    return tuple(theme for theme in kept if theme.incidents)
