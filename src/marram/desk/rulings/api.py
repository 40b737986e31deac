"""JSON for programs. Every answer has the version key ``marram``; errors have one shape.

A case is given as on the pages: ``what=…``, ``hole=…``, ``ball=latitude,longitude``, facts by name.
"""

from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import Response

from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.consultation import consult
from marram.desk.rulings.relief_view import relief_views
from marram.desk.shell.assets import ASKED_ANEW, FOR_EVER
from marram.desk.shell.compressing import sent_to_all
from marram.desk.shell.workplace import Workplace, with_flag, workplace, workplace_on
from marram.errors import BadPlace, InputError, UnknownIncident, shown
from marram.rules.engine.request import fact_named
from marram.rules.facts import vocabulary
from marram.rules.incidents import INCIDENTS
from marram.said import said
from marram.services.cases.address_case import address_of, case_at
from marram.services.cases.case_file import read_case
from marram.services.cases.conditions import Conditions
from marram.services.ground.marked import zones_not_offered

router = APIRouter(prefix="/api")
VERSION = 1
"""The version of the JSON; it rises when a key changes its meaning or goes."""


@router.get("/course")
def course(request: Request) -> Response:
    """The course as GeoJSON, in drawing order; fetched again only when it has changed."""
    desk = workplace(request)
    headers = {"ETag": desk.drawing_tag, "Cache-Control": "no-cache"}
    if request.headers.get("if-none-match") == desk.drawing_tag:
        return Response(status_code=304, headers=headers)
    return Response(desk.drawing, media_type="application/geo+json", headers=headers)


@router.get("/course/{tag}/{part}")
def course_part(request: Request, tag: str, part: str) -> Response:
    """The course drawn for the map on the screen: ``overview``, ``hole-N`` or ``whole``; kept for ever under its tag."""
    desk = workplace(request)
    drawn = desk.map_parts.part(part)
    if drawn is None:
        raise BadPlace(
            said(
                "{part}: there is no such part of the drawing. Ask for overview, whole, or hole-7 for a hole of the "
                "course.",
                part=shown(part),
            )
        )
    current = desk.drawing_tag.strip('"') == tag
    headers = {
        "ETag": f'"{desk.drawing_tag[1:-1]}-{part}"',
        "Cache-Control": FOR_EVER if current else ASKED_ANEW,
    }
    if request.headers.get("if-none-match") == headers["ETag"]:
        return Response(status_code=304, headers=headers)
    return sent_to_all(request.headers, drawn, "application/geo+json", headers)


@router.get("/incidents")
def incidents() -> dict[str, Any]:
    """Everything that can have happened."""
    return {
        "marram": VERSION,
        "incidents": [
            {
                "name": one.name,
                "title": one.title,
                "rule": one.rule,
                "theme": one.theme,
                "keywords": one.keywords,
            }
            for one in INCIDENTS
        ],
    }


@router.get("/facts")
def facts() -> dict[str, Any]:
    """The vocabulary: every fact with its question and the answers it allows."""
    return {
        "marram": VERSION,
        "facts": [
            {
                "name": fact.name,
                "question": fact.question,
                "help": fact.help,
                "source": fact.source,
                "decided_by": fact.decided_by.value,
                "answers": {fact.token(answer): words for answer, words in fact.answers.items()},
                "unit": fact.unit,
                "kind": "choice" if fact.answers else "date" if fact.is_date else "number",
            }
            for _, fact in sorted(vocabulary().items())
        ],
    }


@router.get("/area")
def area(request: Request) -> dict[str, Any]:
    """What the map knows of the place given as ``ball``."""
    desk = workplace(request)
    found = consult(desk.course, desk.read(request))
    if found.place is None or found.hole is None:
        raise BadPlace(
            said("There is no place to look up. Give ball=latitude,longitude, and hole=number if known.")
        )
    return {
        "marram": VERSION,
        **desk.map_told,
        "hole": found.hole.number,
        "area": found.place.area.value if found.place.area else "out_of_bounds",
        "words": found.place.words,
        "things": list(found.place.things),
        "metres_to_hole": round(found.place.metres, 2),
        "facts": found.place.facts,
        "doubts": list(found.place.doubts),
    }


@router.get("/rule")
def rule(request: Request) -> dict[str, Any]:
    """The next question of a case, or its ruling, in words and with the facts it rests on."""
    desk = workplace(request)
    return _ruled(desk, desk.read(request))


@router.post("/rule")
def rule_case(request: Request, document: dict[str, Any], number: int = 1) -> dict[str, Any]:
    """The same of a case as JSON, for the incident with this number."""
    desk, case = case_sent(request, document, number)
    return _ruled(desk, case)


def case_sent(
    request: Request, document: Mapping[str, Any], number: int | None = None
) -> tuple[Workplace, CaseAddress]:
    """Return a case sent as JSON, as the page about one of its incidents holds it, and the desk on its map.

    Args:
        request: the request.
        document: the case.
        number: the incident, from 1; ``None``: all of them together.

    Raises:
        InputError: the case cannot be used, or has no such incident; every fault is listed.
    """
    case = read_case(document)
    if number is not None and not 1 <= number <= len(case.incidents):
        raise InputError(
            said(
                "number: the case has no incident {number}; it has {count}.",
                number=number,
                count=len(case.incidents),
            )
        )
    about = len(case.incidents) + 1 if number is None else number
    address = address_of(CaseAddress, case, about)
    return with_flag(workplace_on(request, case.played_on), address), address


def _ruled(desk: Workplace, case: CaseAddress) -> dict[str, Any]:
    found = consult(desk.course, case)
    if found.sheet is None:
        raise UnknownIncident(said("Nobody said what happened. Give what=…; /api/incidents lists the names."))
    return {
        "marram": VERSION,
        "what": case.what,
        "conditions": conditions_told(case.conditions),
        **desk.map_told,
        "known": {name: token(name, answer) for name, answer in found.known.items()},
        "from_map": sorted(found.from_map),
        "decided_by": found.judge,
        "result": asdict(found.sheet),
        "not_offered": one.here_words if (one := zones_not_offered(desk.course, found)) else None,
        "case": case_at(case, desk.made_with).document(),
    }


@router.get("/relief")
def relief(request: Request) -> dict[str, Any]:
    """The relief options of a ruling, drawn to scale as GeoJSON where the map can draw them."""
    desk = workplace(request)
    found = consult(desk.course, desk.read(request))
    return {
        "marram": VERSION,
        **desk.map_told,
        "kind": found.sheet.kind if found.sheet else "nothing_said",
        "options": [view.drawing() for view in relief_views(desk.course, found)],
    }


def token(name: str, answer: Any) -> str:
    """Return an answer as an address writes it."""
    fact = fact_named(name)
    return fact.token(fact.parse(answer))


def conditions_told(conditions: Conditions) -> dict[str, Any]:
    """Return the conditions as an answer tells them."""
    return dict(conditions.pairs()) | {"edition": conditions.edition}
