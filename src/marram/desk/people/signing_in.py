"""Signing in by a password, where somebody wanted one; and signing out."""

from typing import Annotated

from fastapi import APIRouter, Form, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel

from marram.desk.people.answers import NO_STORE, device_of, door_of, page, too_often
from marram.desk.people.door import let_in, let_out
from marram.desk.people.roles import ROLES
from marram.desk.people.who import who_asks
from marram.desk.shell.back import within
from marram.records.sign_ins import end, password_of, sign_in_again
from marram.words.texts import text

router = APIRouter()

LONGEST = 200
"""Letters of a password that are taken (own choice): more would only make work."""


class SigningIn(BaseModel):
    """The form as it was filled in."""

    name: str = ""
    password: str = ""
    next: str = "/now"


@router.get("/sign-in")
def ask(request: Request, next: str = "/now") -> Response:
    """Ask for name and password, and say that a link does without."""
    return _page(request, next)


@router.post("/sign-in")
def sign_in(request: Request, filled: Annotated[SigningIn, Form()]) -> Response:
    """Sign in who knows the password. Who is not there is refused in the same words, after the same work."""
    door = door_of(request)
    name = " ".join(filled.name.split())
    if wait := too_often(request, door, name):
        return wait
    found = password_of(door.records, door.event, name)
    fits = len(filled.password) <= LONGEST and door.fits(filled.password, found[1] if found else None)
    if found is None or not fits:
        door.by_address.failed(request.client.host if request.client else "")
        door.by_name.failed(name.casefold())
        return _page(request, filled.next, [text("people.sign_in.wrong")], name)
    person, _, roles = found
    secret = sign_in_again(
        door.records,
        door.event,
        person,
        min(roles, key=ROLES.index),
        device=device_of(request),
        now=door.clock(),
    )
    answer = RedirectResponse(within(filled.next), 303, headers=NO_STORE)
    let_in(request, answer, secret)
    return answer


@router.post("/sign-out")
def sign_out(request: Request) -> Response:
    """End the sign-in of this device, and empty what the browser keeps of the desk."""
    door, who = door_of(request), who_asks(request)
    if who.sign_in is not None:
        end(door.records, door.event, who.sign_in, door.clock())
    found = RedirectResponse("/sign-in", 303, headers={**NO_STORE, "Clear-Site-Data": '"cache"'})
    let_out(request, found)
    return found


def _page(request: Request, next_: str, faults: list[str] | None = None, name: str = "") -> Response:
    door_of(request)
    return page(
        request,
        "sign_in.html",
        title=text("people.sign_in.title"),
        next=within(next_),
        faults=faults or [],
        name=name,
    )
