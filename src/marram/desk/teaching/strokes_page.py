"""Which stroke is next? A story at a permanent address, answered without a script."""

from secrets import randbelow
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import RedirectResponse, Response

from marram.desk.shell.workplace import show, workplace
from marram.desk.teaching.quiz_page import MOST_QUESTIONS, SEEDS
from marram.teach.quizzes.strokes import strokes_questions
from marram.words.texts import text

router = APIRouter()


@router.get("/quiz/strokes")
def strokes_quiz(
    request: Request,
    seed: Annotated[int | None, Query(ge=0, lt=SEEDS)] = None,
    number: Annotated[int, Query(ge=1, lt=MOST_QUESTIONS)] = 1,
    answer: Annotated[int | None, Query(ge=0, le=99)] = None,
) -> Response:
    """Show a story with numbers to choose from; with an answer, the count and the mistake that leads to each."""
    if seed is None:
        return RedirectResponse(_address(randbelow(SEEDS), 1), 303)
    one = next(strokes_questions(seed * MOST_QUESTIONS + number))
    count = one.count
    total = text(
        "quizzes.strokes.sum",
        before=count.before,
        made=count.made,
        penalties=count.total,
        next=count.next_stroke,
    )
    return show(
        request,
        "strokes_quiz.html",
        None,
        title=text("quizzes.title", number=number),
        one=one,
        told=one.told(workplace(request).course.name),
        answer=answer if answer in {each.stroke for each in one.answers} else None,
        total=total,
        seed=seed,
        number=number,
        next_url=_address(seed, number + 1) if number + 1 < MOST_QUESTIONS else "",
    )


def _address(seed: int, number: int) -> str:
    return f"/quiz/strokes?{urlencode({'seed': seed, 'number': number})}"
