"""The conditions of the competition: date of play, form of play, Local Rules; kept in a cookie."""

from typing import Annotated
from urllib.parse import parse_qsl, urlencode, urlsplit

from fastapi import APIRouter, Form, Request
from fastapi.responses import HTMLResponse, RedirectResponse
from pydantic import BaseModel

from marram.desk.competition.adoptable import by_area
from marram.desk.competition.conditions import COOKIE, conditions_of, cookie_of
from marram.desk.shell.back import within
from marram.desk.shell.workplace import show, workplace
from marram.rules.facts.conditions import form_of_play, sides
from marram.services.cases.conditions import KEYS, NONE, in_competition
from marram.words.texts import text

router = APIRouter()
YEAR = 366 * 24 * 3600


@router.get("/settings")
def settings(request: Request, back: str = "/") -> HTMLResponse:
    """Show the conditions, to be changed."""
    desk = workplace(request)
    pairs = dict(parse_qsl(urlsplit(back).query)) | dict(request.query_params)
    now = conditions_of(pairs, request.cookies.get(COOKIE, ""), desk.event)
    return show(
        request,
        "settings.html",
        None,
        title=text("conditions.title"),
        conditions=now,
        back=within(back),
        forms=form_of_play.answers,
        side_forms=sides.answers,
        local_rules=by_area(desk.course),
    )


class Filled(BaseModel):
    """The form of the conditions as it was filled in."""

    on: str = ""
    form: str = NONE
    sides: str = NONE
    local: list[str] = []
    local_known: str = "yes"
    handed: str = NONE
    club: str = ""
    back: str = "/"


@router.post("/settings")
def keep(request: Request, filled: Annotated[Filled, Form()]) -> RedirectResponse:
    """Keep the conditions, and go back to where the official was, with them in force."""
    desk = workplace(request)
    given = filled.model_dump(include={"on", "form", "sides", "handed", "club"})
    given["local"] = (",".join(filled.local) or NONE) if filled.local_known == "yes" else "open"
    kept = in_competition(conditions_of(given, "", desk.event))
    answer = RedirectResponse(_with(within(filled.back), kept.pairs()), 303)
    answer.set_cookie(COOKIE, cookie_of(kept, desk.event), max_age=YEAR, httponly=True, samesite="lax")
    return answer


def _with(back: str, pairs: list[tuple[str, str]]) -> str:
    parts = urlsplit(back)
    rest = [(key, value) for key, value in parse_qsl(parts.query) if key not in KEYS]
    return f"{parts.path}?{urlencode([*rest, *pairs], safe=',')}"
