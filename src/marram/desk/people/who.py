"""Who asks: the role and the person of a request, as the doorkeeper found them."""

import hmac
from dataclasses import dataclass
from hashlib import sha256

from fastapi import Request

from marram.desk.people.roles import CHIEF, PUBLIC, sees

SIGNED_BY = "csrf"
"""The field of a form that shows it is one of the desk's own."""
SIGNED_BY_HEADER = "x-csrf-token"
"""The header that shows the same of what a script sends."""


@dataclass(frozen=True, slots=True)
class Who:
    """Who asks.

    Attributes:
        role: one of :data:`marram.desk.people.roles.ROLES`.
        person: the person's identifier; ``None`` where nobody is signed in.
        sign_in: the identifier of the sign-in; likewise.
        secret: what the device's cookie holds; empty where it holds none.
        open: whether the desk lets in everybody who reaches it: this machine alone.
    """

    role: str
    person: str | None = None
    sign_in: str | None = None
    secret: str = ""
    open: bool = False

    @property
    def signature(self) -> str:
        """What a form of this device carries, so that no other page can send it; empty at an open desk."""
        if self.open or not self.secret:
            return ""
        return hmac.new(self.secret.encode(), b"a form of marram", sha256).hexdigest()

    def signed(self, given: object) -> bool:
        """Whether something sent carries the signature of this device."""
        return self.open or (
            bool(self.secret)
            and isinstance(given, str)
            and hmac.compare_digest(self.signature.encode(), given.encode("utf-8", "replace"))
        )


OPEN = Who(CHIEF, open=True)
"""Whoever reaches an open desk: it serves this machine alone, or keeps no records."""
NOBODY = Who(PUBLIC)


def who_asks(request: Request) -> Who:
    """Return who asks; nobody where the doorkeeper said nothing."""
    found = request.scope.get("marram_who")
    return found if isinstance(found, Who) else NOBODY


def may(request: Request, route: str) -> bool:
    """Whether whoever asks may use a route of the table, such as ``GET /log``."""
    who = who_asks(request)
    return who.open or who.role in request.app.state.routes.rights.get(route, frozenset())


def may_see(request: Request, field: str) -> bool:
    """Whether whoever asks sees what is personal, such as ``player_name``."""
    who = who_asks(request)
    return who.open or sees(who.role, field)
