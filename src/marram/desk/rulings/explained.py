"""Why a case is ruled so, for whoever wants it explained: the way as a picture, the principle, what players believe."""

from fastapi import APIRouter, Request, Response
from fastapi.responses import RedirectResponse

from marram.desk.rulings.consultation import consult
from marram.desk.shell.workplace import show, workplace
from marram.services.cases.flag import flag_missing
from marram.teach.lesson import lesson
from marram.words.texts import text

router = APIRouter()


@router.get("/explained")
def explained_page(request: Request) -> Response:
    """Show how the ruling of a case came about; a case that is not ruled yet goes back to its question."""
    desk = workplace(request)
    case = desk.read(request)
    if not case.what or flag_missing(desk.course, case):
        return RedirectResponse(case.url("/case"), 303)
    found = consult(desk.course, case)
    if found.sheet is None or found.sheet.kind != "ruling":
        return RedirectResponse(case.url("/case"), 303)
    return show(
        request,
        "explained.html",
        case,
        title=text("rulings.explained.title"),
        found=lesson(case.what, found.known, **case.conditions.request()),
        back_url=case.url("/case"),
    )
