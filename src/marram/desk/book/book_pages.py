"""The pages of the book: contents, a Rule, a theme, a provision, an incident, a situation with its drawing and ruling."""

from dataclasses import dataclass
from functools import lru_cache

from fastapi import APIRouter, Request, Response

from marram.course.model import Course
from marram.desk.people.answers import page
from marram.desk.shell.workplace import workplace
from marram.errors import InputError
from marram.rules.former_names import incident_now
from marram.rules.incidents import incident
from marram.said import said
from marram.teach.book.contents import (
    RULES,
    Entry,
    definitions,
    entries,
    local_rules,
    of_rule,
    slug_of,
    themes,
)
from marram.teach.book.permanent import situation_at
from marram.teach.book.reading import of_incident, page_of, ruled_of
from marram.teach.drawings.grounds import WhyNone
from marram.teach.drawings.placing import Placed, placed
from marram.teach.drawings.scene import relief_svgs, scene_svg
from marram.teach.drawings.told import why_none
from marram.teach.situations.reaching import reached
from marram.teach.situations.situation import Situation
from marram.words.citations import named
from marram.words.language import translate
from marram.words.texts import text

router = APIRouter()


@dataclass(frozen=True, slots=True)
class Drawings:
    """The drawings of a situation, or why there is none; and the telling, with the hole it was placed on."""

    told: tuple[str, ...]
    scene: str
    relief: tuple[str, ...]
    none: str


@router.get("/book")
def contents(request: Request) -> Response:
    """Show the contents: the Rules, and what can have happened, by theme."""
    return page(
        request,
        "book.html",
        title=text("book.title"),
        description=text("book.description"),
        rules=[(number, text(f"book.rule.{number}"), len(of_rule(number))) for number in RULES],
        definitions=len(definitions()),
        local=len(local_rules()),
        themes=[(translate()(theme), found) for theme, found in themes().items()],
        say=translate(),
    )


@router.get("/book/rule/{number}")
def rule(request: Request, number: int) -> Response:
    """Show the provisions of a Rule."""
    if number not in RULES:
        raise InputError(said("There is no Rule {number}. The Rules are numbered 1 to 25.", number=number))
    name = text("book.rule_named", number=number, title=text(f"book.rule.{number}"))
    return _list(request, name, of_rule(number))


@router.get("/book/definitions")
def the_definitions(request: Request) -> Response:
    """Show the Definitions that rulings rest on."""
    return _list(request, text("book.definitions"), definitions())


@router.get("/book/local-rules")
def the_local_rules(request: Request) -> Response:
    """Show the Model Local Rules that rulings rest on."""
    return _list(request, text("book.local_rules"), local_rules())


def _list(request: Request, title: str, found: list[Entry]) -> Response:
    return page(
        request,
        "provisions.html",
        title=title,
        description=text("book.list_description", title=title, count=len(found)),
        entries=found,
    )


@router.get("/book/provision/{slug}")
def provision(request: Request, slug: str) -> Response:
    """Show a provision: what it says, its Exceptions, what changed in it, situations."""
    entry = entries().get(slug)
    if entry is None:
        raise InputError(
            said(
                "{slug}: no ruling rests on such a provision. /book lists those that rulings rest on.",
                slug=slug,
            )
        )
    return page(
        request,
        "provision.html",
        title=text("book.provision", citation=named(entry.citation)),
        description=entry.statement,
        found=page_of(entry),
        say=translate(),
    )


@router.get("/book/incident/{incident_name}")
def happened(request: Request, incident_name: str) -> Response:
    """Show what can have happened, with situations and the provisions their rulings rest on."""
    one = incident(incident_now(incident_name))
    if not reached().get(one.name):
        raise InputError(said("{name}: no ruling of the book is about this by itself.", name=one.name))
    situations, provisions = of_incident(one.name)
    title = translate()(one.title)
    return page(
        request,
        "incident.html",
        title=title,
        description=text("book.incident_description", title=title),
        situations=situations,
        provisions=[entries()[slug_of(each)] for each in provisions],
    )


@router.get("/book/situation/{incident_name}")
def situation(request: Request, incident_name: str) -> Response:
    """Show a situation with its drawing, its ruling on both editions, and why; the address holds all of it."""
    pairs = tuple(request.query_params.multi_items())
    drawings = _drawn(incident_name, pairs, workplace(request).course)
    found = ruled_of(incident_name, pairs)
    return page(
        request,
        "situation.html",
        title=translate()(incident(incident_now(incident_name)).title),
        description=" ".join((*drawings.told[1:], found.now)),
        drawings=drawings,
        found=found,
        slug_of=slug_of,
        known=entries(),
    )


def _drawn(name: str, pairs: tuple[tuple[str, str], ...], course: Course) -> Drawings:
    one, there = _placed(name, pairs, course)
    called = course.name or text("shell.the_course")
    if isinstance(there, Placed):
        return Drawings(there.situation.told(called), scene_svg(there), relief_svgs(there), "")
    return Drawings(one.told(called), "", (), why_none(there))


@lru_cache(maxsize=128)
def _placed(
    name: str, pairs: tuple[tuple[str, str], ...], course: Course
) -> tuple[Situation, Placed | WhyNone]:
    one = situation_at(name, pairs)
    return one, placed(one, course)
