"""The page of whoever is signed in: role, password, devices; and the same for a script."""

from typing import Annotated, Any

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel

from marram.desk.people.answers import NO_STORE, door_of, page
from marram.desk.people.moments import moments_of
from marram.desk.people.roles import PLAYER
from marram.desk.people.signing_in import LONGEST
from marram.desk.people.who import who_asks
from marram.errors import InputError
from marram.records.people import names
from marram.records.sign_ins import all_signed_in, end, has_password, set_password
from marram.said import said
from marram.words.texts import text

router = APIRouter()

SHORTEST = 10
"""Letters of a password at least (own choice; NIST SP 800-63B asks for eight)."""


class Passwords(BaseModel):
    """The form as it was filled in; an empty password is none."""

    password: str = ""


class Ending(BaseModel):
    """The form that ends the sign-in of another device."""

    id: str


@router.get("/me")
def me(request: Request) -> Response:
    """Show who is signed in here."""
    return _page(request)


@router.post("/me/password")
def keep_password(request: Request, filled: Annotated[Passwords, Form()]) -> Response:
    """Keep a password, or none."""
    door, who = door_of(request), who_asks(request)
    if who.person is None:
        raise InputError(said("Nobody is signed in here. Sign in first."))
    given = filled.password
    if given and not SHORTEST <= len(given) <= LONGEST:
        return _page(request, [text("people.me.length", least=SHORTEST, most=LONGEST)])
    set_password(door.records, who.person, door.hashed(given) if given else None, door.clock())
    return RedirectResponse("/me", 303)


@router.post("/me/end")
def end_other(request: Request, filled: Annotated[Ending, Form()]) -> Response:
    """End the sign-in of another device of the same person."""
    door, who = door_of(request), who_asks(request)
    mine = all_signed_in(door.records, door.event, door.clock())
    if any(one.id == filled.id and one.person == who.person for one in mine):
        end(door.records, door.event, filled.id, door.clock())
    return RedirectResponse("/me", 303)


@router.get("/api/me")
def me_as_data(request: Request, response: Response) -> dict[str, Any]:
    """Return who is signed in here, and the signature that what a script sends must carry as ``X-CSRF-Token``."""
    who = who_asks(request)
    response.headers.update(NO_STORE)
    return {"marram": 1, "role": who.role, "person": who.person, "open": who.open, "csrf": who.signature}


def _page(request: Request, faults: list[str] | None = None) -> Response:
    door, who = door_of(request), who_asks(request)
    mine = [one for one in all_signed_in(door.records, door.event, door.clock()) if one.person == who.person]
    person = who.person or ""
    return page(
        request,
        "me.html",
        title=text("people.me.title"),
        who=who,
        name=names(door.records, [person]).get(person, ""),
        devices=mine,
        has_password=has_password(door.records, person),
        wants_password=who.role != PLAYER,
        moment=moments_of(door.records, door.event),
        faults=faults or [],
    )
