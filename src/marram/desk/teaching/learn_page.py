"""Learning by questions that come again when they are about to be forgotten; what was learned is kept on the device alone."""

import json
from datetime import UTC, datetime
from functools import lru_cache
from threading import Lock
from typing import Annotated, Any

from fastapi import APIRouter, Query, Request, Response
from fastapi.responses import HTMLResponse

from marram.desk.people.answers import NO_STORE
from marram.desk.shell.templating import templates
from marram.desk.shell.workplace import workplace
from marram.errors import InputError
from marram.said import said
from marram.teach.book.permanent import address_of
from marram.teach.quizzes.drafting import Question
from marram.teach.quizzes.learning import question_about, reviewed, to_keep, units
from marram.teach.quizzes.told import letter, why_not
from marram.words.citations import named
from marram.words.language import language
from marram.words.texts import text, texts_of

router = APIRouter()

SEEDS = 1_000_000
_drawing_up = Lock()


@router.get("/quiz/learn")
def learn(request: Request) -> HTMLResponse:
    """The page, which a phone keeps; the script asks for questions, or takes those that are kept."""
    told = {"words": texts_of("quizzes_script"), "event": workplace(request).event, "language": language}
    answer = templates().TemplateResponse(request, "learn.html", told)
    answer.headers.update(NO_STORE)
    return answer


@router.get("/api/quiz/question")
def one_question(
    request: Request,
    unit: Annotated[str, Query(max_length=80)],
    seed: Annotated[int, Query(ge=0, lt=SEEDS)] = 0,
) -> dict[str, Any]:
    """Return a question about an incident with its answers and why each is right or not."""
    found = question_about(unit, seed)
    if found is None:
        raise InputError(said("No question was found about {unit} with this seed: give another.", unit=unit))
    return told_of(found, workplace(request).course.name)


@router.get("/api/quiz/reviewed")
def review(
    right: bool,
    at: datetime,
    card: Annotated[str, Query(max_length=600)] = "",
) -> dict[str, Any]:
    """Return the card of an incident after one more answer; nothing is kept."""
    try:
        held = json.loads(card) if card else None
        if held is not None and not isinstance(held, dict):
            raise ValueError
    except ValueError:
        raise InputError(said("card: this is no card as it was returned before.")) from None
    return reviewed(held, right, at if at.tzinfo else at.replace(tzinfo=UTC))


@router.get("/api/quiz/kept")
def kept(request: Request) -> Response:
    """Return the incidents to learn, and questions about each of them, for where there is no network."""
    body = kept_today(workplace(request).course.name)
    return Response(body, media_type="application/json", headers={"Cache-Control": "private, no-cache"})


def kept_today(course: str) -> bytes:
    """Return what phones keep today, told on a course; made once a day."""
    with _drawing_up:  # many phones ask at once; it is drawn up once
        return _kept(course, datetime.now(UTC).toordinal(), language().code)


@lru_cache(maxsize=2)
def _kept(course: str, day: int, _language: str) -> bytes:
    held = [told_of(one, course) for one in to_keep(day % SEEDS)]
    return json.dumps({"marram": 1, "units": units(), "questions": held}, ensure_ascii=False).encode()


def told_of(one: Question, course: str) -> dict[str, Any]:
    """Return a question as the script shows it."""
    situation = one.situation
    return {
        "unit": situation.incident,
        "told": list(situation.told(course)),
        "level": text(f"situations.level.{situation.level}"),
        "ask": text("quizzes.choose"),
        "whole": text("quizzes.choose_whole"),
        "answers": [
            {"letter": letter(at), "words": each.words, "why": why_not(one, each), "right": at == one.right}
            for at, each in enumerate(one.answers)
        ],
        "headline": situation.headline,
        "citations": list(map(named, situation.ruling.citations)),
        "situation": address_of(situation),
    }
