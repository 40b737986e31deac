"""The drawings of a ruling, fetched by its page after the words: who waits on the course reads first.

A page that a script asks for comes without them and asks for them as soon as it stands; one that is opened by its
address holds them, so that without JavaScript nothing is missing.
"""

from collections.abc import Iterator
from typing import Annotated

from fastapi import APIRouter, Depends, Request
from fastapi.responses import RedirectResponse, Response

from marram.desk.rulings.consultation import consult
from marram.desk.rulings.relief_view import relief_views
from marram.desk.shell.templating import templates
from marram.desk.shell.workplace import workplace

router = APIRouter()


def _while_drawn() -> Iterator[None]:
    yield


OneAfterTheOther = Annotated[None, Depends(_while_drawn, scope="function", max_concurrency=1)]
"""Drawings are made for one after the other: so many at once would hold up the words of everybody else."""


def come_later(request: Request) -> bool:
    """Whether a script asked for this page, which then asks for the drawings."""
    return request.headers.get("HX-Request") == "true"


@router.get("/drawings")
def drawings(request: Request, _: OneAfterTheOther) -> Response:
    """Return the drawings of the options of a case, by their letters; while it still asks, lead to its question."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case) if case.what else None
    if found is None or found.sheet is None or found.sheet.question:
        return RedirectResponse(case.url("/case"), 303)
    options = relief_views(desk.course, found)
    return templates().TemplateResponse(request, "_drawings.html", {"options": options})
