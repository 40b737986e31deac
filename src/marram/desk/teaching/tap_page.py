"""Questions answered by a tap on a drawing: an image button sends where it was tapped, so that no script is needed."""

from functools import lru_cache
from secrets import randbelow
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import RedirectResponse, Response

from marram.course.model import Course
from marram.desk.shell.workplace import show, workplace
from marram.desk.teaching.quiz_page import MOST_QUESTIONS, SEEDS
from marram.errors import InputError
from marram.relief.geometry.outline import XY
from marram.relief.pictures.lettering import WIDTH
from marram.said import said
from marram.teach.book.permanent import address_of
from marram.teach.drawings.tapped import tapped_svg
from marram.teach.quizzes.taps import MOST_CORNERS, Judged, Kind, TapQuestion, judge, tap_questions
from marram.words.relief_options import option_words
from marram.words.texts import text

router = APIRouter()

SIDE = 320
"""CSS pixels: the side of the drawing on the page, whatever the device, so that a tap tells its place."""


@lru_cache(maxsize=64)
def asked(seed: int, number: int, course: Course) -> TapQuestion:
    """Return a question of the quiz; the same for the same course."""
    return next(tap_questions(seed * MOST_QUESTIONS + number, course))


@router.get("/quiz/drawing")
def drawing_quiz(  # noqa: PLR0917 - what an image button sends
    request: Request,
    seed: Annotated[int | None, Query(ge=0, lt=SEEDS)] = None,
    number: Annotated[int, Query(ge=1, lt=MOST_QUESTIONS)] = 1,
    taps: Annotated[str, Query(max_length=400)] = "",
    x: Annotated[float | None, Query(alias="tap.x")] = None,
    y: Annotated[float | None, Query(alias="tap.y")] = None,
    done: Annotated[bool, Query()] = False,
) -> Response:
    """Show a question on a drawing; with a tap, or all corners of an area, whether it is right and where it would have been."""
    if seed is None:
        return RedirectResponse(f"/quiz/drawing?{urlencode({'seed': randbelow(SEEDS), 'number': 1})}", 303)
    pixels = _read(taps)
    if x is not None and y is not None:
        pixels.append((x, y))
        if len(pixels) > MOST_CORNERS:
            raise InputError(
                said("An area has at most {most} corners here: begin it anew.", most=MOST_CORNERS)
            )
    one = asked(seed, number, workplace(request).course)
    places = [_on_ground(one, tap) for tap in pixels]
    over = bool(places) and (done or one.kind is not Kind.AREA)
    judged = judge(one, places) if over else None
    words = option_words(one.option.option)
    return show(
        request,
        "drawing_quiz.html",
        None,
        title=text("quizzes.title", number=number),
        one=one,
        told=one.placed.situation.told(workplace(request).course.name),
        task=text(f"quizzes.tap.{one.kind.value}", option=words.title, citation=words.citation),
        drawing=tapped_svg(one.placed, one.view(WIDTH), places, one.area if judged else None),
        image=f"/quiz/drawing.svg?{urlencode({'seed': seed, 'number': number, 'taps': _written(pixels)})}",
        judged=judged,
        verdict=_verdict(one, judged) if judged else (),
        taps=_written(pixels),
        count=len(pixels),
        seed=seed,
        number=number,
        side=SIDE,
        option=words,
        again=f"/quiz/drawing?{urlencode({'seed': seed, 'number': number})}",
        next_url=f"/quiz/drawing?{urlencode({'seed': seed, 'number': number + 1})}"
        if number + 1 < MOST_QUESTIONS
        else "",
        situation_url=address_of(one.placed.situation),
    )


@router.get("/quiz/drawing.svg")
def image(
    request: Request,
    seed: Annotated[int, Query(ge=0, lt=SEEDS)],
    number: Annotated[int, Query(ge=1, lt=MOST_QUESTIONS)],
    taps: Annotated[str, Query(max_length=400)] = "",
) -> Response:
    """Return the drawing of a question with what was tapped so far, without its answer."""
    one = asked(seed, number, workplace(request).course)
    places = [_on_ground(one, tap) for tap in _read(taps)]
    return Response(tapped_svg(one.placed, one.view(WIDTH), places), media_type="image/svg+xml")


def _read(taps: str) -> list[XY]:
    try:
        pairs = [tuple(map(float, pair.split(","))) for pair in taps.split(";") if pair]
        return [(x, y) for x, y in pairs]
    except ValueError:
        raise InputError(
            said("taps: {taps!r} is not a row of places such as 120,88;140,90.", taps=taps)
        ) from None


def _written(taps: list[XY]) -> str:
    return ";".join(f"{x:g},{y:g}" for x, y in taps)


def _on_ground(one: TapQuestion, tap: XY) -> XY:
    """Return the place on the ground that lies under a tap, in local metres."""
    view = one.view(float(SIDE))
    return view.left + tap[0] / view.scale, view.bottom + (view.pixels - tap[1]) / view.scale


def _verdict(one: TapQuestion, judged: Judged) -> tuple[str, ...]:
    if one.kind is Kind.AREA:
        return (text("quizzes.tap.shared", percent=f"{100 * judged.shared:.0f}"),)
    if judged.right:
        return ()
    if one.kind is Kind.REFERENCE:
        return (text("quizzes.tap.away", metres=f"{judged.away:.1f}"),)
    return tuple(text(f"quizzes.tap.outside.{bound.value}") for bound in judged.outside)
