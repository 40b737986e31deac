"""JSON for a situation: ``/api/situation``, the incidents numbered as on the pages: ``1.what=…&2.what=…``."""

from dataclasses import asdict
from typing import Any

from fastapi import APIRouter, Request

from marram.desk.rulings.api import VERSION, case_sent, conditions_told, token
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.rulings.story_view import consult_story
from marram.desk.shell.workplace import Workplace, workplace
from marram.services.cases.address_case import case_at

router = APIRouter(prefix="/api")


@router.get("/situation")
def situation(request: Request) -> dict[str, Any]:
    """Each incident's result by itself, what is known between them, and the combined result.

    ``combined`` is null while an incident is open or left to judgement; a result of the kind ``need_facts`` in it
    asks what separates two incidents.
    """
    desk = workplace(request)
    return _ruled(desk, desk.read(request))


@router.post("/situation")
def situation_case(request: Request, document: dict[str, Any]) -> dict[str, Any]:
    """The same of a case as JSON."""
    return _ruled(*case_sent(request, document))


def _ruled(desk: Workplace, case: CaseAddress) -> dict[str, Any]:
    view = consult_story(desk.course, case)
    return {
        "marram": VERSION,
        "conditions": conditions_told(view.case.conditions),
        **desk.map_told,
        "incidents": [
            {
                "number": part.number,
                "what": part.found.case.what,
                "known": {name: token(name, answer) for name, answer in part.found.known.items()},
                "from_map": sorted(part.found.from_map),
                "decided_by": part.found.judge,
                "result": asdict(part.sheet),
            }
            for part in view.parts
        ],
        "between": view.case.between,
        "combined": None if view.sheet is None else asdict(view.sheet),
        "corrections": [
            {"words": words, "incidents": numbers} for words, numbers in view.corrections.items()
        ],
        "total_strokes": {
            who.value: "disqualified" if total is None else total for who, total in view.totals.items()
        },
        "count": None if view.count is None else asdict(view.count),
        "case": case_at(view.case, desk.made_with).document(),
    }
