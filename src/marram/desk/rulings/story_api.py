"""JSON for a situation: ``/api/situation``, the incidents numbered as on the pages: ``1.what=…&2.what=…``."""

from dataclasses import asdict
from typing import Any

from fastapi import APIRouter, Request

from marram.desk.rulings.api import VERSION, conditions_told, token
from marram.desk.rulings.story_view import consult_situation
from marram.desk.shell.workplace import workplace

router = APIRouter(prefix="/api")


@router.get("/situation")
def situation(request: Request) -> dict[str, Any]:
    """Each incident's result by itself, what is known between them, and the combined result.

    ``combined`` is null while an incident is open or left to judgement; a result of the kind ``need_facts`` in it
    asks what separates two incidents.
    """
    desk = workplace(request)
    view = consult_situation(desk.course, desk.read(request))
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
    }
