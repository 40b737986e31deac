"""The pages of what changed: from edition to edition, by a clarification, by a Local Rule; each change at an address that stays."""

from datetime import date, timedelta
from enum import StrEnum
from functools import lru_cache
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request, Response

from marram.course.model import Course
from marram.desk.people.answers import page
from marram.desk.shell.workplace import workplace
from marram.errors import InputError
from marram.rules.editions import CLARIFIED_ON, EDITIONS, FORMER_RULES, LAST_CHANGE_KNOWN
from marram.rules.facts.conditions import LOCAL_RULES
from marram.said import said
from marram.services.cases.given import day_or_edition
from marram.teach.book.contents import entries, slug_of
from marram.teach.what_changed.adoption import MOST_SHOWN, adoption, codes_on
from marram.teach.what_changed.drawing import ShownOnGround, on_ground
from marram.teach.what_changed.kept import found
from marram.teach.what_changed.telling import ToldChange, called, title_of, told
from marram.words.language import language
from marram.words.texts import text, worded

router = APIRouter()

OLDEST, NEWEST = str(EDITIONS[0].year), str(EDITIONS[-1].year)


class First(StrEnum):
    """Which changes come first."""

    COMMON = "common"
    RARE = "rare"


@router.get("/book/changes")
def overview(request: Request) -> Response:
    """Show what there is to compare: editions, days of clarifications, Local Rules."""
    years = [str(day.year) for day in (FORMER_RULES, *EDITIONS)]
    return page(
        request,
        "changes.html",
        title=text("what_changed.page.title"),
        description=text("what_changed.page.lead"),
        pairs=[
            (text("what_changed.page.pair", earlier=one, later=other), _list(one, other))
            for one, other in zip(years[-2::-1], years[:0:-1], strict=True)
        ],
        clarified=[
            (title_of(len(_told(*days)), *days), _list(*days))
            for days in (
                ((day - timedelta(days=1)).isoformat(), day.isoformat()) for day in CLARIFIED_ON[::-1]
            )
        ],
        local_rules=[
            (code, adoption_title, f"/book/changes/local-rule/{code}")
            for code, adoption_title in _local_rules()
        ],
    )


@router.get("/book/changes/since")
def listed(
    request: Request,
    earlier: Annotated[str, Query(max_length=10)] = OLDEST,
    later: Annotated[str, Query(max_length=10)] = NEWEST,
    first: First = First.COMMON,
) -> Response:
    """Show what changed between two editions or days, each with how it was and how it is."""
    changed = list(_told(earlier, later))
    if not changed:
        days = ", ".join(day.isoformat() for day in CLARIFIED_ON)
        raise InputError(
            said(
                "Nothing that marram knows is decided otherwise on {later} than on {earlier}. Days inside an edition "
                "on which something was: {days}.",
                earlier=earlier,
                later=later,
                days=days,
            )
        )
    rare = first is First.RARE
    other = First.COMMON if rare else First.RARE
    return page(
        request,
        "changes_since.html",
        title=title_of(len(changed), earlier, later),
        description=text("what_changed.page.lead"),
        changed=[(one, _address(one, earlier, later)) for one in (changed[::-1] if rare else changed)],
        rare=rare,
        other_url=f"{_list(earlier, later)}&first={other.value}",
    )


@router.get("/book/changes/since/{key}")
def change(
    request: Request,
    key: str,
    earlier: Annotated[str, Query(max_length=10)] = OLDEST,
    later: Annotated[str, Query(max_length=10)] = NEWEST,
) -> Response:
    """Show one change: how it was, how it is, and the situation that shows it, drawn and ruled both ways."""
    one = next((each for each in _told(earlier, later) if each.key == key), None)
    if one is None:
        raise InputError(
            said(
                "{key}: no such change between {earlier} and {later}.", key=key, earlier=earlier, later=later
            )
        )
    return page(
        request,
        "change.html",
        title=one.title,
        description=one.now,
        one=one,
        rulings=((_called(earlier), one.example.before), (_called(later), one.example.after)),
        drawn=_drawn_since(key, earlier, later, workplace(request).course, language().code),
        provision=one.rule if slug_of(one.rule) in entries() else "",
        slug_of=slug_of,
        all_url=_list(earlier, later),
        all_title=title_of(len(_told(earlier, later)), earlier, later),
    )


@router.get("/book/changes/local-rule/{code}")
def by_local_rule(
    request: Request,
    code: str,
    on: Annotated[str, Query(max_length=10)] = NEWEST,
    first: First = First.COMMON,
) -> Response:
    """Show what adopting a Local Rule changes, wherever it is met, the first of it drawn."""
    day = day_or_edition(on, "on")
    one = adoption(code, day, rare_first=first is First.RARE)
    return page(
        request,
        "change_by_local_rule.html",
        title=text("what_changed.adopted", code=one.code, title=one.title),
        description=one.statement,
        one=one,
        whole=MOST_SHOWN,
        drawn=_first_drawn(one.code, day, workplace(request).course, language().code),
        provision=one.code if slug_of(one.code) in entries() else "",
        slug_of=slug_of,
    )


def _list(earlier: str, later: str) -> str:
    return f"/book/changes/since?{urlencode({'earlier': earlier, 'later': later})}"


def _address(one: ToldChange, earlier: str, later: str) -> str:
    return f"/book/changes/since/{one.key}?{urlencode({'earlier': earlier, 'later': later})}"


def _called(given: str) -> str:
    if "-" in given:
        return text("what_changed.page.day", day=called(given))
    return text("what_changed.page.edition", year=given)


def _told(earlier: str, later: str) -> tuple[ToldChange, ...]:
    first, second = _days(earlier, later)
    return _in_words(first, second, worded())


@lru_cache(maxsize=16)
def _in_words(first: date, second: date, _worded: str) -> tuple[ToldChange, ...]:
    return tuple(told(found(first, second), first, second))


def _days(earlier: str, later: str) -> tuple[date, date]:
    first, second = day_or_edition(earlier, "earlier"), day_or_edition(later, "later")
    if not FORMER_RULES <= first < second:
        raise InputError(
            said(
                "earlier={earlier} and later={later}: give two days or editions since {first}, the earlier one first.",
                earlier=earlier,
                later=later,
                first=FORMER_RULES.year,
            )
        )
    return first, second


@lru_cache(maxsize=2)
def _titles(_language: str) -> tuple[tuple[str, str], ...]:
    return tuple((code, adoption(code, LAST_CHANGE_KNOWN).title) for code in codes_on(LAST_CHANGE_KNOWN))


def _local_rules() -> tuple[tuple[str, str], ...]:
    return _titles(language().code)


@lru_cache(maxsize=128)
def _drawn_since(key: str, earlier: str, later: str, course: Course, _language: str) -> ShownOnGround | None:
    one = next(each for each in _told(earlier, later) if each.key == key)
    return on_ground(one.example, _days(earlier, later), course)


@lru_cache(maxsize=128)
def _first_drawn(code: str, day: date, course: Course, _language: str) -> tuple[str, ShownOnGround | None]:
    """Return the first incident whose situation has ground to draw, with its drawing."""
    fact = LOCAL_RULES[code].name
    for each in adoption(code, day).met:
        drawn = on_ground(each.example, (day, day), course, ({fact: "no"}, {fact: "yes"}))
        if drawn is not None:
            return each.example.incident, drawn
    return "", None
