"""A class: everybody's phone without an account, and the teacher who sees what was misunderstood and opens the explanation."""

from collections.abc import Mapping
from datetime import UTC, datetime
from secrets import token_urlsafe
from typing import Annotated

from fastapi import APIRouter, Form, Query, Request, Response
from fastapi.responses import RedirectResponse

from marram.desk.log.kept import kept_here
from marram.desk.people.answers import NO_STORE, page
from marram.desk.people.who import may
from marram.desk.shell.errors import answer
from marram.desk.shell.reached import only_here, qr_code, reached_by
from marram.desk.shell.workplace import workplace
from marram.records.classes import (
    MOST_QUESTIONS,
    Taught,
    answer_class,
    answered_by,
    answers_of,
    begin_class,
    class_of,
    classes,
    end_class,
    explain_class,
    next_question,
)
from marram.teach.book.permanent import address_of
from marram.teach.classes.understood import understood
from marram.teach.quizzes.drafting import Question
from marram.teach.quizzes.quiz import numbered
from marram.teach.quizzes.told import letter, why_not
from marram.words.texts import text

router = APIRouter()

COOKIE = "marram_class"
SHOWN_PROVISIONS = 8
"""Provisions that the teacher sees, those misunderstood by most (own choice)."""


def asked(seed: int, number: int) -> Question:
    """Return a question of a class."""
    return numbered(seed, number, MOST_QUESTIONS + 1)


def state_of(one: Taught) -> str:
    """Return what a phone compares: it shows its page anew where this is another."""
    return f"{one.number}:{int(one.is_explained)}:{int(one.ended_at is not None)}"


@router.get("/class")
def begin_or_join(request: Request, code: Annotated[str, Query(max_length=20)] = "") -> Response:
    """Ask for the code of a class; to whoever may teach, offer to begin one."""
    kept = kept_here(request)
    if code:
        found = class_of(kept.records, kept.event_id, code)
        if found is not None:
            return RedirectResponse(f"/class/{found.code}", 303)
    teaches = may(request, "POST /class")
    return page(
        request,
        "class.html",
        title=text("classes.title"),
        unknown=code,
        teaches=teaches,
        going_on=[one for one in classes(kept.records, kept.event_id) if one.ended_at is None]
        if teaches
        else [],
    )


@router.post("/class")
def begin(request: Request) -> Response:
    """Begin a class, and show it to its teacher."""
    kept = kept_here(request)
    one = begin_class(kept.records, kept.event_id, datetime.now(UTC))
    return RedirectResponse(f"/class/{one.code}/teacher", 303)


@router.get("/class/{code}")
def phone(request: Request, code: str) -> Response:
    """Show the question before the class, or, once the teacher opened it, the explanation."""
    one = _class(request, code)
    if one is None:
        return _none(request)
    kept, device = kept_here(request), request.cookies.get(COOKIE, "")
    chosen = answered_by(kept.records, one, device) if device else None
    found = page(request, "class_phone.html", title=text("classes.title"), **_shown(request, one, chosen))
    if not device:
        found.set_cookie(COOKIE, token_urlsafe(16), httponly=True, samesite="lax", path="/class")
    return found


@router.post("/class/{code}")
def answer_it(
    request: Request,
    code: str,
    number: Annotated[int, Form(ge=1, le=MOST_QUESTIONS)],
    place: Annotated[int, Form(ge=0, le=7)],
) -> Response:
    """Keep the answer of a phone; one to a question that is over counts for nothing."""
    one = _class(request, code)
    if one is None:
        return _none(request)
    kept, device = kept_here(request), request.cookies.get(COOKIE, "")
    found = RedirectResponse(f"/class/{one.code}", 303, headers=NO_STORE)
    if not device:
        device = token_urlsafe(16)
        found.set_cookie(COOKIE, device, httponly=True, samesite="lax", path="/class")
    if number == one.number and place < len(asked(one.seed, number).answers):
        answer_class(kept.records, one, device[:36], place, datetime.now(UTC))
    return found


@router.get("/class/{code}/teacher")
def teacher(request: Request, code: str) -> Response:
    """Show the teacher the question, how it was answered, and what was misunderstood so far by provision."""
    one = _class(request, code)
    if one is None:
        return _none(request)
    kept = kept_here(request)
    every = answers_of(kept.records, one)
    tally: Mapping[int, int] = every.get(one.number, {})
    link = f"{reached_by(request)}class/{one.code}"
    found = understood([(asked(one.seed, number), chosen) for number, chosen in every.items()])
    return page(
        request,
        "class_teacher.html",
        title=text("classes.title"),
        link=link,
        only_here=only_here(request),
        picture=qr_code(link, 6),
        answered=sum(tally.values()),
        tally=[tally.get(at, 0) for at in range(len(asked(one.seed, one.number).answers))],
        understood=[each for each in found if each.wrong][:SHOWN_PROVISIONS],
        **_shown(request, one, None),
    )


@router.post("/class/{code}/teacher")
def lead(
    request: Request,
    code: str,
    number: Annotated[int, Form(ge=1, le=MOST_QUESTIONS)],
    step: Annotated[str, Form(pattern="^(explain|next|end)$")],
) -> Response:
    """Open the explanation for all, go on to the next question, or end the class."""
    one = _class(request, code)
    if one is None:
        return _none(request)
    kept = kept_here(request)
    if number == one.number:  # a second tap on a page that is over changes nothing
        if step == "explain":
            explain_class(kept.records, one)
        elif step == "next":
            next_question(kept.records, one)
        else:
            end_class(kept.records, one, datetime.now(UTC))
    return RedirectResponse(f"/class/{one.code}/teacher", 303, headers=NO_STORE)


def _class(request: Request, code: str) -> Taught | None:
    kept = kept_here(request)
    return class_of(kept.records, kept.event_id, code)


def _none(request: Request) -> Response:
    return answer(request, 404, "no_class", [text("classes.none")])


def _shown(request: Request, one: Taught, chosen: int | None) -> dict[str, object]:
    """Return what both pages show of a question; why, only once the explanation is open."""
    question = asked(one.seed, one.number)
    situation = question.situation
    opened = one.is_explained
    return {
        "one": one,
        "state": state_of(one),
        "told": situation.told(workplace(request).course.name),
        "chosen": chosen,
        "answers": [
            {
                "place": at,
                "letter": letter(at),
                "words": each.words,
                "right": opened and at == question.right,
                "why": why_not(question, each) if opened else "",
            }
            for at, each in enumerate(question.answers)
        ],
        "was_right": chosen == question.right,
        "headline": situation.headline if opened else "",
        "citations": situation.ruling.citations if opened else (),
        "situation_url": address_of(situation) if opened else "",
    }
