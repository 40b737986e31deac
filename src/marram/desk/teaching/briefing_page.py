"""A briefing as slides: each page has an address; the presenter's view of the same page tells ruling, why, what comes next, the time."""

from collections.abc import Callable
from datetime import UTC, datetime
from functools import lru_cache
from typing import Annotated, Any
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from fastapi.responses import Response

from marram.course.model import Course
from marram.desk.shell.workplace import show, workplace
from marram.teach.briefings.deck import Deck, Page, Topic
from marram.teach.briefings.drawing_up import drawing_of, drawn_up, way_of
from marram.teach.briefings.printing import flag_of
from marram.teach.quizzes.given_away import title_gives_away
from marram.words.language import language
from marram.words.texts import text, worded

router = APIRouter()

MOST_PAGES = 40
WAY = 2
"""What is shown of a page after its ruling: the way there as a picture."""
STEPS_WITH_TWO = 2
"""Questions up to which the way on a slide shows two other answers at each, and one beyond (own choice: what is read from the back)."""


@router.get("/briefing")
def briefing(  # noqa: PLR0917 - an address
    request: Request,
    kind: Annotated[str, Query()] = "beginners",
    topic: Annotated[list[str] | None, Query()] = None,
    seed: Annotated[int, Query(ge=0)] = 1,
    count: Annotated[int, Query(ge=1, le=MOST_PAGES)] = 20,
    number: Annotated[int, Query(ge=1, le=MOST_PAGES)] = 1,
    shown: Annotated[int, Query(ge=0, le=WAY)] = 0,
    presenter: Annotated[int, Query(ge=0, le=1)] = 0,
    begun: Annotated[int | None, Query(ge=0)] = None,
) -> Response:
    """Show one page of a briefing; its ruling once it is asked for, or at once to the presenter."""
    here = workplace(request)
    given = tuple(topic or ())
    if kind == "local_rules" and not given:
        given = tuple(here.event.local_rules or ())
    deck = _deck(Topic(kind, given, seed, count), here.course, worded())
    now = int(datetime.now(UTC).timestamp())
    start = now if begun is None else begun
    same: dict[str, object] = {"kind": kind, "topic": list(given), "seed": seed, "count": count}
    view: dict[str, object] = {"presenter": 1, "begun": start} if presenter else {}

    def address(page: int, **more: object) -> str:
        return f"/briefing?{urlencode({**same, **view, 'number': page, **more}, doseq=True)}"

    def room(page: int, **more: object) -> str:
        return f"/briefing?{urlencode({**same, 'number': page, **more}, doseq=True)}"

    return slide(
        request,
        deck,
        number,
        address,
        shown=shown,
        presenter=bool(presenter),
        begun=start,
        room=room,
        briefing=room(1),
    )


def slide(
    request: Request,
    deck: Deck,
    number: int,
    address: Callable[..., str],
    *,
    shown: int,
    presenter: bool,
    begun: int,
    room: Callable[..., str],
    briefing: str,
    back_url: str = "",
) -> Response:
    """Show one page of a deck.

    Args:
        request: the request.
        deck: the deck.
        number: the page, from 1; the last where there are fewer.
        address: the address of a page, with what else it is to hold.
        shown: what the room sees of it: the question, its ruling too (1), the way to it (:data:`WAY`).
        presenter: whether this is the presenter's view.
        begun: when the briefing began, in seconds since 1970.
        room: the address of a page as the room sees it.
        briefing: the name that the windows of this briefing know each other by.
        back_url: where its pages are edited; empty where it is not kept.
    """
    course = workplace(request).course
    at = min(number, len(deck.pages))
    page = deck.pages[at - 1]
    told = bool(shown) or presenter
    key = (page.incident, tuple(page.facts.items()), page.form)
    now = int(datetime.now(UTC).timestamp())
    ways = _ways(*key, language().code) if told else ("", "")
    return show(
        request,
        "briefing.html",
        None,
        title=deck.title,
        page={part: page.part(part).split("\n") for part in ("told", "question", "ruling", "why")},
        heading=page.part("title")
        if told or not _gives_away(page)
        else text("briefings.situation", number=at),
        flag=flag_of(page),
        place=text("briefings.page", number=at, count=len(deck.pages)),
        briefing=briefing,
        back_url=back_url,
        number=at,
        shown=shown,
        drawing=_drawing(*key, course, language().code),
        told=told,
        ways=ways,
        WAY=WAY,
        presenter=presenter,
        minutes=max(0, now - begun) // 60,
        briefing_began=begun,
        next_title=deck.pages[at].part("title") if at < len(deck.pages) else "",
        show_url=address(at, shown=shown + 1) if shown < (WAY if ways[0] else 1) else "",
        show_words="briefings.show_way"
        if shown
        else "briefings.show_room"
        if presenter
        else "briefings.show",
        before_url=address(at - 1) if at > 1 else "",
        next_url=address(at + 1) if at < len(deck.pages) else "",
        other_url=room(at, shown=shown) if presenter else address(at, shown=shown, presenter=1),
        should_be=deck.minutes_until(at),
        whole=deck.minutes,
    )


def _gives_away(page: Page) -> bool:
    """Return whether the title as made tells the room what it is asked; the teacher's own stands as it is."""
    return "title" not in page.edited and title_gives_away(
        page.part("title"), page.part("told"), page.part("ruling")
    )


@lru_cache(maxsize=8)
def _deck(topic: Topic, course: Course, _worded: str) -> Deck:
    return drawn_up(topic, course)


@lru_cache(maxsize=128)
def _drawing(
    incident: str, facts: tuple[tuple[str, Any], ...], form: str, course: Course, _language: str
) -> str:
    return drawing_of(Page(incident, dict(facts), form, {}), course)


@lru_cache(maxsize=128)
def _ways(incident: str, facts: tuple[tuple[str, Any], ...], form: str, _language: str) -> tuple[str, str]:
    page = Page(incident, dict(facts), form, {})
    return way_of(page), way_of(page, wide=True, prefix="wide-way", two_until=STEPS_WITH_TWO)
