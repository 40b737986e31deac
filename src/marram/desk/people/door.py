"""The door of a desk: its cookies, who is signed in by them, passwords, and how often one may try."""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from functools import cached_property
from secrets import token_urlsafe
from threading import Semaphore
from time import monotonic

from fastapi import Request, Response

from marram.desk.people.limits import Limit
from marram.desk.people.roles import CHIEF, PUBLIC
from marram.desk.people.who import Who
from marram.records import invitations, sign_ins
from marram.records.database import Records

COOKIE = "marram_signed_in"
COOKIE_BY_TLS = "__Host-marram_signed_in"
"""The name under TLS: browsers then take it only from this host, whole and secure (RFC 6265bis, 4.1.3.2)."""
BEFORE = "marram_before"
"""The cookie that forms are signed by before anybody is signed in."""

FIRST_LINK_LASTS = timedelta(hours=1)
"""How long the link of the first start holds (own choice)."""

JOINING = (20, 60.0)
"""Failed tries of an address to join or sign in, and the seconds in which they may be made (own choice)."""
BY_NAME = (5, 60.0)
"""The same for one name, from wherever (own choice)."""

AT_ONCE = 2
"""Passwords that are worked out at a time: each takes 64 MiB and all of a core (RFC 9106's second recommended setting)."""


@dataclass
class Door:
    """The door.

    Attributes:
        records: where sign-ins are kept.
        event: the event that people sign in to.
        clock: tells the time.
        ticking: tells seconds, for the limits.
    """

    records: Records
    event: str
    clock: Callable[[], datetime] = lambda: datetime.now(UTC)
    ticking: Callable[[], float] = monotonic
    _working: Semaphore = field(default_factory=lambda: Semaphore(AT_ONCE))

    @cached_property
    def by_address(self) -> Limit:
        """How often an address may fail."""
        return Limit(*JOINING, self.ticking)

    @cached_property
    def by_name(self) -> Limit:
        """How often it may fail for a name."""
        return Limit(*BY_NAME, self.ticking)

    def who(self, secret: str) -> Who:
        """Return who holds a secret.

        Raises:
            InputError: the records cannot be read.
        """
        signed, _, before = secret.partition("\n")
        found = sign_ins.signed_in(self.records, self.event, signed, self.clock()) if signed else None
        if found is None:
            return Who(PUBLIC, secret=before)
        return Who(found.role, found.person, found.id, signed)

    def first_link(self) -> str | None:
        """Return the secret of a new link for the chief referee, where none is signed in; links made so before are over.

        Raises:
            InputError: it cannot be kept.
        """
        now = self.clock()
        invitations.take_back(self.records, self.event, now, by_start=True)
        if any(one.role == CHIEF for one in sign_ins.all_signed_in(self.records, self.event, now)):
            return None
        _, secret = invitations.invite(
            self.records, self.event, CHIEF, now=now, expires_at=now + FIRST_LINK_LASTS
        )
        return secret

    def hashed(self, password: str) -> str:
        """Return a password as it is kept."""
        from argon2 import PasswordHasher  # noqa: PLC0415 - only where somebody wants a password

        with self._working:
            return PasswordHasher().hash(password)

    def fits(self, password: str, kept: str | None) -> bool:
        """Whether a password is the one that is kept; where none is, it takes as long to say no."""
        from argon2 import PasswordHasher  # noqa: PLC0415 - the same
        from argon2.exceptions import InvalidHashError, VerificationError  # noqa: PLC0415 - the same

        hasher = PasswordHasher()
        with self._working:
            try:
                return hasher.verify(kept or self._nobodys, password) and kept is not None
            except (VerificationError, InvalidHashError):
                return False

    @cached_property
    def _nobodys(self) -> str:
        from argon2 import PasswordHasher  # noqa: PLC0415 - the same

        return PasswordHasher().hash(token_urlsafe(16))


def secret_in(request: Request) -> str:
    """Return what the cookies of a device hold: the secret of a sign-in, and of the time before it, in two lines."""
    cookies = request.cookies
    signed = cookies.get(COOKIE_BY_TLS if by_tls(request) else COOKIE, "")
    return f"{signed[:200]}\n{cookies.get(BEFORE, '')[:200]}"


def by_tls(request: Request) -> bool:
    """Whether the device reaches the desk by TLS."""
    return request.url.scheme == "https"


def let_in(request: Request, response: Response, secret: str) -> None:
    """Have a device keep the secret of its sign-in: no script reads it, no other site sends it, no clear line carries it."""
    response.set_cookie(
        COOKIE_BY_TLS if by_tls(request) else COOKIE,
        secret,
        max_age=int(sign_ins.LASTS.total_seconds()),
        path="/",
        httponly=True,
        samesite="lax",
        secure=by_tls(request),
    )
    response.delete_cookie(BEFORE, path="/")


def let_out(request: Request, response: Response) -> None:
    """Have a device forget the secret of its sign-in."""
    name = COOKIE_BY_TLS if by_tls(request) else COOKIE
    response.delete_cookie(name, path="/", httponly=True, samesite="lax", secure=by_tls(request))


def before(request: Request, response: Response, secret: str) -> None:
    """Have a device keep what its forms are signed by before it is signed in."""
    response.set_cookie(BEFORE, secret, path="/", httponly=True, samesite="strict", secure=by_tls(request))
