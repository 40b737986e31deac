"""The drawings of a ruling, fetched by its page after the words: who waits on the course reads first.

A page that a script asks for comes without them and asks for them as soon as it stands; one that is opened by its
address holds them, so that without JavaScript nothing is missing.
"""

from collections.abc import Iterator
from concurrent.futures import CancelledError, Future
from contextlib import suppress
from dataclasses import replace
from typing import Annotated

from fastapi import APIRouter, Depends, Request
from fastapi.responses import RedirectResponse, Response
from markupsafe import Markup

from marram.course.model import Course
from marram.desk.rulings.consultation import Consultation, consult
from marram.desk.rulings.drawn_beside import DrawnBeside, Figures
from marram.desk.rulings.recently import recently
from marram.desk.rulings.relief_view import OptionView, figures_of, relief_views
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


def begin_drawings(request: Request, course: Course, found: Consultation) -> "Future[Figures | None] | None":
    """Have the drawings of a ruling made beside the desk, if that can be: they are asked for in a moment."""
    beside: DrawnBeside | None = request.app.state.drawn_beside
    if beside is None:
        return None
    return recently(course, found.case, lambda: beside.begin(course, found.case), "drawn beside")


def with_figures(request: Request, course: Course, found: Consultation) -> tuple[OptionView, ...]:
    """Return the options of a ruling with their drawings, made beside the desk where that can be."""
    begun = begin_drawings(request, course, found)
    views = relief_views(course, found)
    figures: Figures | None = None
    if begun is not None:
        with suppress(CancelledError):  # the desk is being stopped
            figures = begun.result()
    if figures is None:
        figures = recently(course, found.case, lambda: figures_of(course, found), "figures")
    return tuple(
        replace(view, figure=Markup(figures.get(view.letter, "")))  # noqa: S704 - our own drawings, which escape names
        for view in views
    )


@router.get("/drawings")
def drawings(request: Request, _: OneAfterTheOther) -> Response:
    """Return the drawings of the options of a case, by their letters; while it still asks, lead to its question."""
    desk = workplace(request)
    case = desk.read(request)
    found = consult(desk.course, case) if case.what else None
    if found is None or found.sheet is None or found.sheet.question:
        return RedirectResponse(case.url("/case"), 303)
    options = with_figures(request, desk.course, found)
    return templates().TemplateResponse(request, "_drawings.html", {"options": options})
