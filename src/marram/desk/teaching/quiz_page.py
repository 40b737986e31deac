"""A quiz: each question has an address of its own, which gives the same question to everybody who opens it."""

from dataclasses import dataclass
from secrets import randbelow
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import HTMLResponse, RedirectResponse, Response

from marram.desk.shell.workplace import show, workplace
from marram.teach.book.permanent import address_of
from marram.teach.book.reading import explained
from marram.teach.drawings.placing import Placed, placed
from marram.teach.drawings.scene import scene_svg
from marram.teach.quizzes.drafting import Question
from marram.teach.quizzes.quiz import numbered
from marram.teach.quizzes.told import letter, why_not
from marram.words.texts import text

router = APIRouter()

SEEDS = 1_000_000
MOST_QUESTIONS = 1000
"""Seeds are below the one, questions of a quiz up to the other, so that each question has a seed of its own."""


@dataclass(frozen=True, slots=True)
class Choice:
    """An answer as the page shows it: its letter and words, and, once one was chosen, why it is right or not."""

    place: int
    letter: str
    words: str
    right: bool
    chosen: bool
    headline: str
    why: str


@router.get("/quiz")
def quiz(
    request: Request,
    seed: Annotated[int | None, Query(ge=0, lt=SEEDS)] = None,
    number: Annotated[int, Query(ge=1, lt=MOST_QUESTIONS)] = 1,
    answer: Annotated[int | None, Query(ge=0, le=7)] = None,
) -> Response:
    """Show a question; with an answer, whether it is right, and why."""
    if seed is None:
        return RedirectResponse(_address(randbelow(SEEDS), 1), 303)
    one = numbered(seed, number, MOST_QUESTIONS)
    return _page(request, one, seed, number, answer)


def _page(request: Request, one: Question, seed: int, number: int, answer: int | None) -> HTMLResponse:
    situation = one.situation
    answered = answer is not None and answer < len(one.answers)
    choices = [
        Choice(
            place,
            letter(place),
            found.words,
            place == one.right,
            place == answer,
            found.headline,
            why_not(one, found),
        )
        for place, found in enumerate(one.answers)
    ]
    there = placed(situation, workplace(request).course)
    shown = there.situation if isinstance(there, Placed) else situation
    facts = {"what": situation.incident, "on": situation.played_on.isoformat(), "form": situation.form.value}
    return show(
        request,
        "quiz.html",
        None,
        title=text("quizzes.title", number=number),
        told=shown.told(workplace(request).course.name),
        scene=scene_svg(there) if isinstance(there, Placed) else "",
        found=explained(situation) if answered else None,
        situation_url=address_of(situation),
        level=text(f"situations.level.{situation.level}"),
        choices=choices,
        answered=answered,
        was_right=answer == one.right,
        headline=situation.headline,
        citations=situation.ruling.citations,
        seed=seed,
        number=number,
        next_url=_address(seed, number + 1) if number + 1 < MOST_QUESTIONS else "",
        case_url=f"/case?{urlencode({**facts, **situation.facts})}",
    )


def _address(seed: int, number: int) -> str:
    return f"/quiz?{urlencode({'seed': seed, 'number': number})}"
