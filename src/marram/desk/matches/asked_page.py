"""A ruling asked for in a match: the case is begun for who asks, with what the match itself shows (Rule 20.1b)."""

from typing import Annotated
from uuid import UUID, uuid5

from fastapi import APIRouter, Form, HTTPException, Request
from fastapi.responses import RedirectResponse

from marram.competition.matches.asking import RULING_REQUESTED, facts_of_request
from marram.desk.log.here import DEVICE, GROUP, OFFICIAL, device_here, person_here, remember
from marram.desk.matches.match_page import Number, match_here
from marram.desk.rulings.case_address import CaseAddress
from marram.desk.shell.workplace import workplace
from marram.records.entry import ident
from marram.records.open_cases import begin
from marram.rules.engine.request import fact_named
from marram.services.kinds.matches import Side

router = APIRouter()

_BEGUN = {"yes": True, "no": False, "": None}


@router.post("/matches/{number}/{player}/{against}/asked")
def asked(
    request: Request,
    *,
    number: Number,
    player: UUID,
    against: UUID,
    tapped: Annotated[str, Form()],
    by: Annotated[Side, Form()],
    about: Annotated[int, Form(ge=1, le=99)],
    begun: Annotated[str, Form(pattern="^(yes|no|)$")] = "",
) -> RedirectResponse:
    """Begin the case of a ruling that a side asks for, and go to what is still to be answered of it."""
    here, now = match_here(request, (number, player, against))
    if about not in now.meeting.match.holes:
        raise HTTPException(422)
    people = now.meeting.sides[0 if by is Side.FIRST else 1]
    case = str(uuid5(UUID(ident(tapped, "tapped")), people[0]))
    official, group = person_here(request), now.meeting.group.id
    begin(here.records, here.event, case, by=official or None, player=people[0], group=group)
    known = facts_of_request(now.state, about, next_hole_begun=_BEGUN[begun])
    address = CaseAddress(
        workplace(request).read(request).conditions.of_competition(),
        hole=about,
        what=RULING_REQUESTED,
        facts={name: fact_named(name).token(value) for name, value in known.items()},
        begun=case,
    )
    answer = RedirectResponse(address.url("/case"), 303)
    remember(answer, **{OFFICIAL: official, GROUP: group, DEVICE: device_here(request)})
    return answer
