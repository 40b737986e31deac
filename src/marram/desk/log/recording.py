"""Recording a ruling: the form on its page, and what one tap does."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Annotated
from urllib.parse import parse_qsl

from fastapi import APIRouter, Depends, Request
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, ValidationError
from starlette.datastructures import UploadFile
from starlette.exceptions import HTTPException

from marram.desk.competition.conditions import COOKIE
from marram.desk.log.begun import begun_here
from marram.desk.log.here import OFFICIAL, can_decide, now, person_here, remember, signed_in_here
from marram.desk.log.kept import KeptHere, kept_here
from marram.desk.people.who import may
from marram.desk.rulings.case_address import CaseAddress, read_address
from marram.desk.rulings.chosen import Choice
from marram.desk.rulings.story import OPTION_TAKEN, together
from marram.desk.rulings.story_view import consult_story
from marram.desk.shell.workplace import Workplace, workplace_on
from marram.errors import InputError
from marram.records.entry import Entry, new_ident
from marram.records.open_cases import forget_pages
from marram.records.photographs import photograph
from marram.records.starting_sheet import GroupOfDay, Known
from marram.rules.engine.request import fact_named
from marram.said import said
from marram.services.cases.address_case import case_at
from marram.services.cases.case import Act, Case
from marram.services.kinds.rulings import Instead
from marram.services.log.log import About, Earlier, earlier, ruling_entry

router = APIRouter()

INSTEAD = ("0", "1", "2", "3", "4", "hole_lost", "disqualified")
"""What can be given in place of what was computed, as the form says it: penalty strokes, or a word."""
MOST_PHOTOGRAPHS = 4
"""Photographs of one entry at most (own choice)."""


@dataclass(frozen=True)
class RecordForm:
    """What the form on the page of a ruling needs.

    Attributes:
        ident: the identifier that the entry will have, so that two taps make one entry.
        given_at: when the ruling was shown, ISO 8601 in UTC.
        case: the case, as its address holds it.
        groups: the groups of the day.
        officials: who officiates; empty where somebody is signed in.
        by: who used this device last, or has the case in hand.
        player: the player the case was begun for.
        for_player: the address of the page that is shown to the player.
        options: what the player can have taken, where that was not told yet.
        instead: what can be given in place of what was computed.
        answers: the entry of a second opinion that whoever uses this device can answer with this ruling.
        ask: the address of the page that asks for a second opinion.
        earlier: rulings of this event about the same situation, the latest first.
        differing: how many of all earlier ones, also of other events, would not go the same way.
    """

    ident: str
    given_at: str
    case: str
    groups: list[GroupOfDay]
    officials: list[Known]
    by: str
    player: str
    for_player: str
    options: Sequence[Choice] = ()
    instead: Sequence[str] = INSTEAD
    answers: str = ""
    ask: str = ""
    earlier: Sequence[Earlier] = ()
    differing: int = 0


def record_form(request: Request, case: CaseAddress, options: Sequence[Choice] = ()) -> RecordForm | None:
    """Return what the form needs; ``None`` where the desk keeps no records, or the case is one of the former Rules."""
    kept: KeptHere | None = request.app.state.kept_here
    if kept is None or case.conditions.former or not may(request, "POST /record"):
        return None
    begun = begun_here(request, case)
    before = _earlier(request, kept, case)
    return RecordForm(
        begun.case.id if begun and begun.case.is_open else new_ident(),
        now().isoformat(timespec="seconds"),
        case.url("").removeprefix("?"),
        kept.groups_on(case.conditions.on),
        [] if signed_in_here(request) else kept.officials(),
        (begun.case.by if begun else "") or person_here(request),
        (begun.case.player if begun else "") or "",
        case.url("/player"),
        () if any(one.told for one in options) else options,
        answers=next((one.asked.id for one in begun.opinions if one.is_open), "")
        if begun and can_decide(request, kept)
        else "",
        ask="" if begun else case.url("/opinions/ask"),
        earlier=[one for one in before if one.entry.event == kept.event_id],
        differing=sum(not one.same for one in before),
    )


def _earlier(request: Request, kept: KeptHere, case: CaseAddress) -> list[Earlier]:
    """Return earlier rulings about the same situation as a case that can be recorded."""
    address = together(case)
    try:
        entry = ruling_entry(_as_ruled(workplace_on(request, address.conditions.on), address), now())
    except InputError:  # a question is still open: it is shown, and nothing is recorded yet
        return []
    return earlier(kept.log, entry)


class Recorded(BaseModel):
    """The form as it was filled in."""

    ident: str
    given_at: datetime
    sent_at: datetime | None = None
    case: str
    by: str = ""
    player: str = ""
    option: str = ""
    note: str = ""
    otherwise: str = ""
    instead: str = ""
    corrects: str = ""
    as_given: bool = False
    photographs: list[bytes] = []


async def recorded(request: Request) -> Recorded:
    """Read the form as it was sent; its photographs are read whole."""
    async with request.form() as form:
        words = {key: value for key, value in form.items() if isinstance(value, str) and key != "photographs"}
        sent = [one for one in form.getlist("photographs") if isinstance(one, UploadFile)]
        if len(sent) > MOST_PHOTOGRAPHS:
            raise InputError(
                said(
                    "{count} photographs are too many; give {most} at most.",
                    count=len(sent),
                    most=MOST_PHOTOGRAPHS,
                )
            )
        pictures = [content for one in sent if (content := await one.read())]
    try:
        return Recorded(**words, photographs=pictures)  # type: ignore[arg-type]
    except ValidationError as error:
        faults = [f"{one['loc'][0]}: {one['msg']}" for one in error.errors()]
        raise HTTPException(422, "; ".join(faults)) from None


@router.post("/record")
def record(request: Request, filled: Annotated[Recorded, Depends(recorded)]) -> RedirectResponse:
    """Record a ruling, and show the entry. The same form sent twice makes one entry."""
    kept = kept_here(request)
    found = kept.add(entry_of(request, filled))
    forget_pages(kept.records, found.id)
    answer = RedirectResponse(f"/log/{found.number}", 303)
    remember(answer, **{OFFICIAL: filled.by})
    return answer


def entry_of(request: Request, filled: Recorded) -> Entry:
    """Return the entry that a form makes as it was filled in.

    Raises:
        InputError: it cannot be recorded; every fault is listed.
    """
    kept = kept_here(request)
    pairs = parse_qsl(filled.case, keep_blank_values=True)
    address = together(read_address(pairs, request.cookies.get(COOKIE, ""), kept.event))
    if filled.option:
        taken = {f"{OPTION_TAKEN}_{len(address.kept)}": filled.option}
        fact_named(*taken).parse(filled.option)
        address = replace(address, between={**address.between, **taken})
    desk = workplace_on(request, address.conditions.on)
    round_ = kept.round_on(address.conditions.on)
    by = person_here(request) if signed_in_here(request) else filled.by
    about = About(
        by=by or None,
        player=filled.player or None,
        round=round_.id if round_ else None,
        note=filled.note,
        otherwise=filled.otherwise,
        instead=_instead(filled),
        photographs=[photograph(one, as_given=filled.as_given) for one in filled.photographs],
        corrects=_corrected(kept, filled.corrects),
    )
    return ruling_entry(_as_ruled(desk, address), filled.given_at, about, ident=filled.ident)


def _instead(filled: Recorded) -> Instead | None:
    """Return what was given in place of what was computed; ``None`` where nothing was said of it.

    Raises:
        InputError: it is none of what can be given, or no reason stands beside it.
    """
    if not filled.instead:
        return None
    if filled.instead not in INSTEAD:
        raise InputError(
            said(
                "{given} cannot be given instead; give one of {known}.",
                given=filled.instead[:20],
                known=", ".join(INSTEAD),
            )
        )
    if not filled.otherwise.strip():
        raise InputError(said("It was ruled otherwise than computed. Say why."))
    strokes = int(filled.instead) if filled.instead.isdecimal() else None
    return Instead(strokes, filled.instead == "disqualified", filled.instead == "hole_lost")


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
