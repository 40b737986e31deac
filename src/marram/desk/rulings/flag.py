"""Where does the flagstick stand? Asked once of a hole that the map has no line of play for; all else follows from it."""

from dataclasses import replace

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response

from marram.desk.rulings.shown_flags import flag_shown
from marram.desk.shell.map_state import map_state
from marram.desk.shell.workplace import show, workplace
from marram.services.cases.places import FLAG
from marram.words.texts import text

router = APIRouter()


@router.get("/flag")
def flag_page(request: Request) -> Response:
    """Ask where the flagstick of the hole stands: a tap on the map, or the place of the phone; first of which hole."""
    desk = workplace(request)
    case = desk.read(request)
    on_map = (desk.mapped or desk).course
    if case.hole in on_map.holes:  # its flagstick stands where the hole is cut on the map of the day
        return RedirectResponse(case.url("/ball", flag=None), 303)
    path = "/case" if case.what and case.places else "/ball"
    pick = None if case.hole is None else FLAG  # of which hole it is comes first
    shown = flag_shown(request, on_map, case)
    return show(
        request,
        "flag.html",
        case,
        map_state(
            on_map, replace(case, flag=case.flag or shown), pick=pick, pick_url=case.pick_url(path, FLAG)
        ),
        title=text("rulings.flag.title", number=case.hole) if case.hole else text("rulings.start.title"),
        number=case.hole,
        as_before=None if shown is None else case.url(path, flag=shown),
        without_hole=case.pairs(without=("hole", FLAG)),
        other="/" if on_map.holes else "/flag",
    )
