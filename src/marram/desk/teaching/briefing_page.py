"""A briefing as slides: each page has an address; the presenter's view of the same page tells ruling, why, what comes next, the time."""

from datetime import UTC, datetime
from functools import lru_cache
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import Response

from marram.course.model import Course
from marram.desk.shell.workplace import show, workplace
from marram.teach.briefings.deck import Deck, Topic
from marram.teach.briefings.drawing_up import drawing_of, drawn_up, way_of
from marram.words.texts import text

router = APIRouter()

MOST_PAGES = 40


@router.get("/briefing")
def briefing(  # noqa: PLR0917 - an address
    request: Request,
    kind: Annotated[str, Query()] = "beginners",
    topic: Annotated[list[str] | None, Query()] = None,
    seed: Annotated[int, Query(ge=0)] = 1,
    count: Annotated[int, Query(ge=1, le=MOST_PAGES)] = 20,
    number: Annotated[int, Query(ge=1, le=MOST_PAGES)] = 1,
    shown: Annotated[int, Query(ge=0, le=1)] = 0,
    presenter: Annotated[int, Query(ge=0, le=1)] = 0,
    begun: Annotated[int | None, Query(ge=0)] = None,
) -> Response:
    """Show one page of a briefing; its ruling once it is asked for, or at once to the presenter."""
    here = workplace(request)
    given = tuple(topic or ())
    if kind == "local_rules" and not given:
        given = tuple(here.event.local_rules or ())
    deck = _deck(Topic(kind, given, seed, count), here.course)
    at = min(number, len(deck.pages))
    now = int(datetime.now(UTC).timestamp())
    start = now if begun is None else begun
    same: dict[str, object] = {"kind": kind, "topic": list(given), "seed": seed, "count": count}
    if presenter:
        same |= {"presenter": 1, "begun": start}

    def address(page: int, **more: object) -> str:
        return f"/briefing?{urlencode({**same, 'number': page, **more}, doseq=True)}"

    page = deck.pages[at - 1]
    return show(
        request,
        "briefing.html",
        None,
        title=deck.title,
        page={part: page.part(part).split("\n") for part in ("title", "told", "question", "ruling", "why")},
        place=text("briefings.page", number=at, count=len(deck.pages)),
        drawing=_drawing(deck, at, here.course),
        told=bool(shown or presenter),
        ways=_ways_at(deck.topic, here.course, at) if shown or presenter else ("", ""),
        presenter=bool(presenter),
        minutes=max(0, now - start) // 60,
        begun=start,
        next_title=deck.pages[at].part("title") if at < len(deck.pages) else "",
        show_url=address(at, shown=1),
        before_url=address(at - 1) if at > 1 else "",
        next_url=address(at + 1) if at < len(deck.pages) else "",
        presenter_url=address(at, presenter=1),
    )


@lru_cache(maxsize=8)
def _deck(topic: Topic, course: Course) -> Deck:
    return drawn_up(topic, course)


@lru_cache(maxsize=128)
def _drawing_at(topic: Topic, course: Course, at: int) -> str:
    return drawing_of(_deck(topic, course).pages[at - 1], course)


@lru_cache(maxsize=128)
def _ways_at(topic: Topic, course: Course, at: int) -> tuple[str, str]:
    page = _deck(topic, course).pages[at - 1]
    return way_of(page), way_of(page, wide=True, prefix="wide-way")


def _drawing(deck: Deck, at: int, course: Course) -> str:
    return _drawing_at(deck.topic, course, at)
