"""The conditions of the event that a desk keeps, for the Committee: told in words, changed, and what a change touches."""

import hashlib
from collections.abc import Mapping
from typing import Annotated, Any

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse

from marram.competition.conditions.choices import ConductPenalty, CountbackStrokes, Score, TieMethod
from marram.desk.cards.scoring_here import ScoringHere, scoring_here, tap_here
from marram.desk.competition.adoptable import by_area
from marram.desk.competition.kept_form import Filled, days_given
from marram.desk.log.here import now
from marram.desk.people.answers import page
from marram.desk.shell.workplace import workplace_on
from marram.errors import InputError
from marram.paper.sheet import Words
from marram.records.canonical import canonical
from marram.records.entry import new_ident
from marram.records.starting_sheet import conditions, rounds
from marram.services.day.conditions_changing import conditions_changing
from marram.services.day.conditions_touched import touched
from marram.services.sheets.event_papers import SheetName
from marram.services.sheets.event_papers_kept import papers_of_records
from marram.words.texts import text

router = APIRouter()


@router.get("/conditions")
def conditions_page(request: Request, changed: str = "") -> Response:
    """Show the conditions, and the form that changes them as long as the competition is open."""
    return _page(request, scoring_here(request), changed=bool(changed))


@router.post("/conditions")
def change(request: Request, filled: Annotated[Filled, Form()]) -> Response:
    """Change the conditions; what cannot hold together is refused, and all that was filled in stays on the page."""
    here = scoring_here(request)
    tap = tap_here(request, filled.tapped)
    if here.kept.log.entry(tap.ident) is None:
        given = filled.given()
        try:
            here.refuse_closed()
            if filled.stood != _state(here):
                raise InputError(text("conditions_kept.meanwhile"))
            days = days_given(filled.days, rounds(here.records, here.event))
            here.add(conditions_changing(here, given, tap, days))
        except InputError as error:
            return _page(request, here, given=given, days=filled.days, faults=error.faults)
    return RedirectResponse("/conditions?changed=1", 303)


def _state(here: ScoringHere) -> str:
    """Return what tells the conditions apart from others."""
    known = [[one.name, one.day.isoformat() if one.day else None] for one in rounds(here.records, here.event)]
    whole = canonical({"conditions": conditions(here.records, here.event), "rounds": known})
    return hashlib.sha256(whole.encode()).hexdigest()[:20]


def _page(
    request: Request,
    here: ScoringHere,
    *,
    changed: bool = False,
    given: Mapping[str, Any] | None = None,
    days: list[str] | None = None,
    faults: tuple[str, ...] = (),
) -> Response:
    known = rounds(here.records, here.event)
    stand = conditions(here.records, here.event)
    course = workplace_on(request, here.kept.event.played_on or now().date()).course
    notice = papers_of_records(here.records, here.kept.event.name, course=course).sheet(SheetName.NOTICE)
    answer = page(
        request,
        "event_conditions.html",
        title=text("conditions_kept.title"),
        told=[one for one in notice.parts if isinstance(one, Words)],
        closed=here.closed is not None,
        changed=changed,
        faults=list(faults),
        touched=list(touched(here)),
        now={key: value for key, value in {**stand, **(given or {})}.items() if value is not None},
        rounds=[
            (one.name or number, day)
            for number, (one, day) in enumerate(
                zip(known, days or [one.day.isoformat() if one.day else "" for one in known], strict=False),
                start=1,
            )
        ],
        local_rules=by_area(course),
        scores=[one.value for one in Score],
        methods=[one.value for one in TieMethod],
        strokes=[one.value for one in CountbackStrokes],
        steps=[one.value for one in ConductPenalty],
        stood=_state(here),
        tapped=new_ident(),
    )
    if faults:
        answer.status_code = 422
    return answer
