"""Joining by a link: the page it leads to, and what happens when somebody says who they are."""

from typing import Annotated

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel

from marram.desk.people.answers import NO_STORE, device_of, door_of, page, too_often
from marram.desk.people.door import let_in
from marram.desk.people.who import who_asks
from marram.desk.shell.errors import answer
from marram.errors import InputError
from marram.records.invitations import invited
from marram.records.sign_ins import PLAYER, end, in_role, join
from marram.words.texts import text

router = APIRouter()


@router.get("/join/{secret}")
def ask_who(request: Request, secret: str) -> Response:
    """Ask who joins. Looking at the page uses nothing up, so that a preview of the link does no harm."""
    return _page(request, secret)


class Joining(BaseModel):
    """The form as it was filled in."""

    person: str = ""
    name: str = ""


@router.post("/join/{secret}")
def join_here(request: Request, secret: str, filled: Annotated[Joining, Form()]) -> Response:
    """Sign somebody in by the link, and show what they need now."""
    door = door_of(request)
    if wait := too_often(request, door):
        return wait
    before = who_asks(request)
    try:
        signed = join(
            door.records,
            door.event,
            secret,
            person=filled.person or None,
            name=filled.name,
            device=device_of(request),
            now=door.clock(),
        )
    except InputError as error:
        return _page(request, secret, list(error.faults))
    if signed is None:
        return _over(request)
    if before.sign_in is not None:
        end(door.records, door.event, before.sign_in, door.clock())
    found = RedirectResponse("/now", 303, headers=NO_STORE)
    let_in(request, found, signed)
    return found


def _page(request: Request, secret: str, faults: list[str] | None = None) -> Response:
    door = door_of(request)
    if wait := too_often(request, door):
        return wait
    found = invited(door.records, door.event, secret, door.clock())
    if found is None:
        return _over(request)
    known = [] if found.role == PLAYER else in_role(door.records, door.event, found.role)
    return page(
        request,
        "join.html",
        title=text("people.join.title"),
        role=found.role,
        known=known,
        faults=faults or [],
    )


def _over(request: Request) -> Response:
    """Say that a link is none, or over, and count it as a failure."""
    door_of(request).by_address.failed(request.client.host if request.client else "")
    return answer(request, 410, "link_over", [text("people.join.over")])
