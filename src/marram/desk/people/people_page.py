"""Who is signed in, ended from here; and links by which others join."""

from datetime import timedelta
from typing import Annotated, Literal

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, Field

from marram.desk.people.answers import door_of, page
from marram.desk.people.moments import moments_of
from marram.desk.people.roles import CHIEF, INVITES, ROLES
from marram.desk.people.who import who_asks
from marram.desk.shell.reached import only_here, qr_code, reached_by
from marram.errors import InputError
from marram.records.invitations import invite, open_invitations, take_back
from marram.records.people import names
from marram.records.sign_ins import all_signed_in, end
from marram.said import said
from marram.words.texts import text

router = APIRouter()

MOST_USES = 500
"""How many may join by one link at most (own choice): a field of players."""
MOST_HOURS = 8 * 24


class Inviting(BaseModel):
    """The form as it was filled in."""

    role: Literal["chief_referee", "referee", "committee", "scorer", "starter", "player"]
    uses: int = Field(1, ge=1, le=MOST_USES)
    hours: int = Field(12, ge=1, le=MOST_HOURS)


class Named(BaseModel):
    """The form that ends a sign-in, or takes an invitation back."""

    id: str


@router.get("/people")
def people(request: Request) -> Response:
    """Show who is signed in, and which links are open."""
    return _page(request)


@router.post("/people/invite")
def invite_here(request: Request, filled: Annotated[Inviting, Form()]) -> Response:
    """Make a link and show it, once, also as a QR code: its secret is kept nowhere."""
    door, who = door_of(request), who_asks(request)
    if filled.role not in INVITES[who.role]:
        raise InputError(said("Only a chief referee invites a chief referee."))
    now = door.clock()
    _, secret = invite(
        door.records,
        door.event,
        filled.role,
        now=now,
        expires_at=now + timedelta(hours=filled.hours),
        uses=filled.uses,
        by=who.person,
    )
    link = f"{reached_by(request)}join/{secret}"
    return _page(request, link=link, link_role=filled.role)


@router.post("/people/take-back")
def take_back_here(request: Request, filled: Annotated[Named, Form()]) -> Response:
    """Take a link back: nobody joins by it any more; who did stays."""
    door = door_of(request)
    take_back(door.records, door.event, door.clock(), ident=filled.id)
    return RedirectResponse("/people", 303)


@router.post("/people/end")
def end_here(request: Request, filled: Annotated[Named, Form()]) -> Response:
    """End the sign-in of a device."""
    door, who = door_of(request), who_asks(request)
    ended = [one for one in all_signed_in(door.records, door.event, door.clock()) if one.id == filled.id]
    if any(one.role == CHIEF for one in ended) and who.role != CHIEF:
        raise InputError(said("Only a chief referee ends the sign-in of a chief referee."))
    end(door.records, door.event, filled.id, door.clock())
    return RedirectResponse("/people", 303)


def _page(request: Request, link: str = "", link_role: str = "") -> Response:
    door, who = door_of(request), who_asks(request)
    now = door.clock()
    signed_in = all_signed_in(door.records, door.event, now)
    return page(
        request,
        "people.html",
        title=text("people.people.title"),
        signed_in=signed_in,
        invitations=open_invitations(door.records, door.event, now),
        known=names(door.records),
        me=who,
        roles=[one for one in ROLES if one in INVITES[who.role]],
        may_end=lambda role: role != CHIEF or who.role == CHIEF,
        moment=moments_of(door.records, door.event),
        link=link,
        link_role=link_role,
        code=qr_code(link) if link else "",
        authority=_authority(request),
        only_here=bool(link) and only_here(request),
    )


def _authority(request: Request) -> dict[str, str] | None:
    """Return where phones get the authority of a secure connection, with its code; ``None`` where there is none."""
    told = request.app.state.handed_out
    if told is None:
        return None
    return {"address": told.address, "fingerprint": told.fingerprint, "code": qr_code(told.address)}
