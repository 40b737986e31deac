"""Recording a ruling: the form on its page, and what one tap does."""

from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import Annotated
from urllib.parse import parse_qsl

from fastapi import APIRouter, Form, Request
from fastapi.responses import RedirectResponse
from pydantic import BaseModel

from marram.desk.competition.conditions import COOKIE
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.who import may, who_asks
from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.desk.rulings.story import together
from marram.desk.rulings.story_view import consult_story
from marram.desk.shell.workplace import Workplace, workplace_on
from marram.errors import InputError
from marram.records.entry import new_ident
from marram.records.starting_sheet import GroupOfDay, Known
from marram.rules.engine.request import fact_named
from marram.said import said
from marram.services.address_case import case_at
from marram.services.case import Act, Case
from marram.services.log import About, ruling_entry

router = APIRouter()

OFFICIAL = "official"
"""The cookie that remembers who used this device last, by identifier."""
A_DAY = 24 * 3600


@dataclass(frozen=True)
class RecordForm:
    """What the form on the page of a ruling needs.

    Attributes:
        ident: the identifier that the entry will have, so that two taps make one entry.
        given_at: when the ruling was shown, ISO 8601 in UTC.
        case: the case, as its address holds it.
        groups: the groups of the day.
        officials: who officiates.
        by: who used this device last.
    """

    ident: str
    given_at: str
    case: str
    groups: list[GroupOfDay]
    officials: list[Known]
    by: str


def record_form(request: Request, case: CaseAddress) -> RecordForm | None:
    """Return what the form needs; ``None`` where the desk keeps no records, or the case is one of the former Rules."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or case.conditions.former or not may(request, "POST /record"):
        return None
    return RecordForm(
        new_ident(),
        datetime.now(UTC).isoformat(timespec="seconds"),
        case.url("").removeprefix("?"),
        kept.groups_on(case.conditions.on),
        kept.officials() if who_asks(request).person is None else [],
        request.cookies.get(OFFICIAL, ""),
    )


class Recorded(BaseModel):
    """The form as it was filled in."""

    ident: str
    given_at: datetime
    case: str
    by: str = ""
    player: str = ""
    note: str = ""
    otherwise: str = ""
    corrects: str = ""


@router.post("/record")
def record(request: Request, filled: Annotated[Recorded, Form()]) -> RedirectResponse:
    """Record a ruling, and show the entry. The same form sent twice makes one entry."""
    kept = kept_here(request)
    pairs = parse_qsl(filled.case, keep_blank_values=True)
    address = together(read_address(pairs, request.cookies.get(COOKIE, ""), kept.event))
    desk = workplace_on(request, address.conditions.on)
    round_ = kept.round_on(address.conditions.on)
    about = About(
        by=who_asks(request).person or filled.by or None,
        player=filled.player or None,
        round=round_.id if round_ else None,
        note=filled.note,
        otherwise=filled.otherwise,
        corrects=_corrected(kept, filled.corrects),
    )
    entry = ruling_entry(_as_ruled(desk, address), filled.given_at, about, ident=filled.ident)
    found = kept.shared.append(kept.event_id, entry)
    answer = RedirectResponse(f"/log/{found.number}", 303)
    if filled.by:
        answer.set_cookie(OFFICIAL, filled.by, max_age=A_DAY, httponly=True, samesite="strict")
    return answer


def _as_ruled(desk: Workplace, address: CaseAddress) -> Case:
    """Return the case with every fact it was ruled on: those of the map and those taken for granted as well."""
    case = case_at(address, desk.made_with)
    acts: list[Act] = []
    for act, part in zip(case.incidents, consult_story(desk.course, address).parts, strict=True):
        facts = dict(act.facts)
        for name, value in part.found.known.items():
            fact = fact_named(name)
            facts[name] = fact.token(fact.parse(value))
        acts.append(replace(act, facts=facts))
    return replace(case, incidents=tuple(acts))


def _corrected(kept: KeptHere, number: str) -> str | None:
    """Return the identifier of the entry that is corrected.

    Raises:
        InputError: there is no entry of this number.
    """
    if not number.strip():
        return None
    digits = number.strip()
    entry = (
        kept.log.numbered(kept.event_id, int(digits))
        if digits.isascii() and digits.isdecimal() and len(digits) < 9
        else None
    )
    if entry is None:
        raise InputError(
            said(
                "There is no entry {number} in the log. Give the number of the entry to be corrected.",
                number=digits[:20],
            )
        )
    return entry.id
