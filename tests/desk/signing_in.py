"""A desk with a door for tests: its records, and devices that are signed in."""

import re
from datetime import UTC, datetime, timedelta

from fastapi import FastAPI

from marram.desk.app import create_app
from marram.desk.log.kept import KeptHere
from marram.desk.people.door import COOKIE, Door
from marram.desk.people.roles import PUBLIC
from marram.records.invitations import invite
from marram.records.sign_ins import join
from tests.desk.asking import TestClient

SIGNATURE = re.compile(r'name="csrf" (?:content|value)="(\w{64})"')


def guarded(kept: KeptHere, **door: object) -> FastAPI:
    """A desk with a door."""
    return create_app(kept_here=kept, door=Door(kept.records, kept.event_id, **door))  # type: ignore[arg-type]


def secret_of(kept: KeptHere, role: str, **how: int) -> str:
    """The secret of a new link."""
    now = datetime.now(UTC)
    return invite(kept.records, kept.event_id, role, now=now, expires_at=now + timedelta(hours=1), **how)[1]


def signed_in(app: FastAPI, kept: KeptHere, role: str, name: str = "") -> TestClient:
    """A device signed in in a role; nobody for the public."""
    client = TestClient(app, follow_redirects=False)
    if role == PUBLIC:
        return client
    signed = join(
        kept.records,
        kept.event_id,
        secret_of(kept, role),
        person=None,
        name="Fenwin Dulsey" if role == "player" else name or f"Invented {role}",
        device="a test",
        now=datetime.now(UTC),
    )
    assert signed
    client.cookies.set(COOKIE, signed)
    return client


def signature(client: TestClient, page: str) -> str:
    """The signature that the forms of a page carry."""
    found = SIGNATURE.search(client.get(page).text)
    assert found, page
    return found[1]
